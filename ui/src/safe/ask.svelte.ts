import { CallFailed, type CallError } from '../lib/backend';
import { asError } from '../lib/ui';

/** One thing at a time is asked of the program; what went wrong stays to be read. */
export class Asking {
  busy = $state(false);
  error = $state.raw<CallError | null>(null);

  /** What came of it; nothing when it failed. */
  async run<T>(doing: () => Promise<T>): Promise<T | undefined> {
    this.busy = true;
    this.error = null;
    try {
      return await doing();
    } catch (thrown) {
      if (!(thrown instanceof CallFailed)) throw thrown;
      this.error = asError(thrown);
      return undefined;
    } finally {
      this.busy = false;
    }
  }
}
