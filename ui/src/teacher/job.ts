import type { JobResult, JobState } from '../lib/backend';
import { desk } from './desk.svelte';

/** Time between two requests for the state of a long job. */
const POLL_MS = 200;

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

/** Follows a long job to its end. Returns null if its state cannot be read; the desk says why. */
export async function follow(
  job: number,
  onstate: (state: JobState) => void,
): Promise<JobResult | null> {
  for (;;) {
    const state = await desk.ask('job', { job });
    if (!state) return null;
    if (state.result) return state.result;
    onstate(state);
    await pause(POLL_MS);
  }
}
