import { say } from '../../lib/words';
import { desk } from '../desk.svelte';

/** Saves the class pack where the teacher chooses, and says where it is, or why it is not. */
export async function savePack(classId: string): Promise<boolean> {
  const made = await desk.ask('save_class_pack', { class: classId });
  if (!made) return false;
  await desk.refresh();
  desk.say(
    made.place === null
      ? say('pack-not-saved')
      : say('pack-saved', { file: made.file_name, place: made.place }),
  );
  return true;
}
