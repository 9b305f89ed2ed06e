import type { Confidence } from '../backend/contract';
import { say } from '../words';

export const CONFIDENCES: readonly Confidence[] = [0, 1, 2, 3];

/** A rating in words, also for no rating. */
export function confidenceWords(value: Confidence | null): string {
  return say(value === null ? 'confidence-none' : `confidence-${value}`);
}
