const running = new Set<Promise<unknown>>();

/**
 * Returns a runner for writes that build on each other: each starts when the one before
 * has ended. A failed write rejects its own promise and does not stop the next ones.
 */
export function inOrder(): <T>(write: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (write) => {
    const run = last.then(write);
    last = run.catch(() => undefined).finally(() => running.delete(run));
    running.add(run);
    return run;
  };
}

/**
 * Resolves when all writes of all runners have ended, also those of screens that were
 * left. Await it before a student's data is locked.
 */
export async function allWritten(): Promise<void> {
  await Promise.allSettled(running);
}

/** Tells whether an answer belongs to the newest request or comes too late. */
export class Newest {
  #started = 0;

  /** Starts a request. Returns whether it is still the newest one. */
  start(): () => boolean {
    this.#started += 1;
    const mine = this.#started;
    return () => mine === this.#started;
  }

  /** Makes the answers to all requests so far too late. */
  drop(): void {
    this.#started += 1;
  }
}
