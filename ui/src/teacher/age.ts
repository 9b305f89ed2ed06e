import { say } from '../lib/words';

/** How long ago, in words: "today", "yesterday", "5 days ago". */
export function ageWords(days: number | null): string {
  if (days === null) return say('desk-age-none');
  if (days <= 0) return say('desk-age-today');
  return days === 1 ? say('desk-age-yesterday') : say('desk-age-days', { days });
}
