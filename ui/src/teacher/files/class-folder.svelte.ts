import { call, type ClassFolderState } from '../../lib/backend';
import { deskLocked, inSample } from '../../lib/session.svelte';
import { Newest } from '../../lib/requests';
import { desk } from '../desk.svelte';

const LOOK_MS = 5000;

/** The class folder, looked after while the desk is open, whatever screen is shown. */
class ClassFolder {
  state = $state.raw<ClassFolderState | null>(null);
  /** Called with each import that is started; the Files screen shows it. */
  onjob: ((job: number) => void) | null = null;
  private readonly newest = new Newest();

  private take(next: ClassFolderState): void {
    this.state = next;
    if (next.job) this.onjob?.(next.job.job);
  }

  /** Names the folder, or stops using it. A failure is shown below the screen. */
  async change(name: 'name_class_folder' | 'stop_class_folder'): Promise<void> {
    const isNewest = this.newest.start();
    const next = await desk.ask(name, {});
    if (next && isNewest()) this.take(next);
  }

  private async look(): Promise<void> {
    const isNewest = this.newest.start();
    try {
      const next = await call('class_folder', {});
      if (isNewest()) this.take(next);
    } catch {
      // The screens that need the desk say when it cannot be opened.
    }
  }

  /** Looks after the folder until the returned function is called. */
  lookAfter(): () => void {
    if (!deskLocked() && !inSample()) void this.look();
    const looking = setInterval(() => {
      const used = this.state === null || this.state.folder !== null;
      if (used && !deskLocked() && !inSample()) void this.look();
    }, LOOK_MS);
    return () => clearInterval(looking);
  }
}

export const classFolder = new ClassFolder();
