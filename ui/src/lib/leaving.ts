/** What screens still do as they are left. */
const going = new Set<Promise<unknown>>();

/** Tells of something a screen does as it is left, such as keeping what was typed. */
export function asLeaving(doing: Promise<unknown>): void {
  going.add(doing);
  void doing.catch(() => undefined).finally(() => going.delete(doing));
}

/** Comes once all of it is done, well or not: whoever locks a door waits for it. */
export async function left(): Promise<void> {
  await Promise.allSettled(going);
}
