import { CallFailed, type CallError } from '../lib/backend';
import { asError } from '../lib/ui';

/** Whether a call is running, and the error of the last one. */
export class Asking {
  busy = $state(false);
  error = $state.raw<CallError | null>(null);

  /** Returns the result, or undefined if it failed. */
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
