import type { OwnDesk, OwnImport } from '../../lib/backend';
import { say } from '../../lib/words';
import { desk } from '../desk.svelte';
import { tally } from './own';

/** Says what came of an import, and offers to undo it; `onown` gets the desk after that. */
export function sayImported(classId: string, one: OwnImport, onown: (own: OwnDesk) => void): void {
  const { taken, refused } = tally(one);
  const undo = async () => {
    const after = await desk.ask('undo_own_import', { class: classId, number: one.number });
    if (after) onown(after);
  };
  desk.say(say('own-imported', { count: taken, refused }), taken === 0 ? null : undo);
}
