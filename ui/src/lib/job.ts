import type { JobResult, JobState } from './backend';

const POLL_MS = 200;

/** Follows a long job to its end. Returns null if `read` returns nothing. */
export async function follow(
  read: () => Promise<JobState | undefined>,
  onstate: (state: JobState) => void,
): Promise<JobResult | null> {
  for (;;) {
    const state = await read();
    if (!state) return null;
    if (state.result) return state.result;
    onstate(state);
    await new Promise((done) => setTimeout(done, POLL_MS));
  }
}
