import type { WarmUp, WarmUpChoice, WarmUpConcept } from '../../lib/backend';

/** Swaps of one exercise in a pass at most, as in the program. */
const MOST_SWAPS = 200;

/** The concepts to show: those that were not left out and have an exercise. */
export function taken(warmUp: WarmUp): WarmUpConcept[] {
  return warmUp.concepts.filter((one) => !one.choice.left_out && one.exercise !== null);
}

/** The next exercise, in place of an own one too. */
export function swapped(choice: WarmUpChoice): WarmUpChoice {
  return { ...choice, own: null, swaps: (choice.swaps + 1) % (MOST_SWAPS + 1) };
}
