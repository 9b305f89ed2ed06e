/** Gives a runner that does what it is asked one after another, so that each sees
 * what the one before left behind. A failure does not stop those that follow. */
export function inOrder(): <T>(next: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (next) => {
    const run = last.then(next);
    last = run.catch(() => undefined);
    return run;
  };
}
