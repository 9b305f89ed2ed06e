import type { Confidence } from '../backend/contract';
import { say } from '../words';

/** The four ratings in their order. */
export const CONFIDENCES: readonly Confidence[] = [0, 1, 2, 3];

/** A rating in words; nothing for one that was not given. */
export function confidenceWords(value: Confidence | null): string {
  return say(value === null ? 'confidence-none' : `confidence-${value}`);
}
