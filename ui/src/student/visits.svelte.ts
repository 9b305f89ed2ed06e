import { call } from '../lib/backend';
import { inSample } from '../lib/session.svelte';

const VISIT_MS = 5000;

/** Visits the class folders while a student's screens are shown. Silent as long as it works. */
export class Visits {
  /** How many newer class packs came for the student. */
  packs = $state(0);
  /** Whether the student's hand-in has been waiting for several school days. */
  late = $state(false);

  constructor(private readonly student: string) {}

  private async visit(done: boolean): Promise<void> {
    if (inSample()) return;
    try {
      const visited = await call('visit_folders', { done });
      if (visited.took_pack.includes(this.student)) this.packs += 1;
      this.late = visited.late.includes(this.student);
    } catch {
      // The next visit tries again; Hand in shows what is in the way.
    }
  }

  /** Visits until the returned function is called, which leaves what is new at once. */
  go(): () => void {
    void this.visit(false);
    const visiting = setInterval(() => void this.visit(false), VISIT_MS);
    const onhide = () => document.visibilityState === 'hidden' && void this.visit(true);
    document.addEventListener('visibilitychange', onhide);
    return () => {
      clearInterval(visiting);
      document.removeEventListener('visibilitychange', onhide);
      void this.visit(true);
    };
  }
}
