import { call, type ClassFolderState } from '../../lib/backend';
import { follow } from '../../lib/job';
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

  private take(next: ClassFolderState, isNewest: boolean): void {
    // A job is in one answer alone, also in one that is not the newest.
    if (next.job) {
      this.onjob?.(next.job.job);
      void this.followed(next.job.job);
    }
    if (!isNewest) return;
    const waited = this.state?.packs_waiting ?? 0;
    this.state = next;
    // A pack was put, and its version is another one now.
    if (next.packs_waiting < waited) void desk.follow();
  }

  /** Waits for the end of an import, and shows what it brought. */
  private async followed(job: number): Promise<void> {
    try {
      await follow(
        () => call('job', { job }),
        () => undefined,
      );
    } catch {
      // The Files screen says what became of an import.
    }
    await desk.follow();
  }

  /**
   * Names the folder, stops using it, or uses it again. A failure is shown below the screen. Returns
   * whether it worked.
   */
  async change(
    name: 'name_class_folder' | 'stop_class_folder' | 'use_class_folder',
  ): Promise<boolean> {
    const isNewest = this.newest.start();
    const next = await desk.ask(name, {});
    if (next) this.take(next, isNewest());
    return next !== undefined;
  }

  private async look(): Promise<void> {
    const isNewest = this.newest.start();
    try {
      const next = await call('class_folder', {});
      this.take(next, isNewest());
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

/**
 * How a new class pack reaches the devices: by the class folder, by another computer that saves the
 * packs of this class, or by a file that the teacher gives out.
 */
export function packWay(): 'folder' | 'elsewhere' | 'file' {
  if (desk.summary?.saves_packs === false) return 'elsewhere';
  return classFolder.state?.folder == null ? 'file' : 'folder';
}
