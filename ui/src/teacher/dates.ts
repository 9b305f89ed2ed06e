import { dateFormat, language, LOCALES, say } from '../lib/words';

function inUtc(date: string, options: Intl.DateTimeFormatOptions): string {
  const format = dateFormat(LOCALES[language()], { timeZone: 'UTC', ...options });
  return format.format(new Date(`${date}T00:00:00Z`));
}

/** The name of ISO weekday 1 (Monday) to 7. 2024-01-01 was a Monday. */
export const weekdayName = (weekday: number, width: 'short' | 'narrow' | 'long' = 'short') =>
  inUtc(`2024-01-0${weekday}`, { weekday: width });

/** "October 2026" of any date in the month. */
export const monthName = (date: string) => inUtc(date, { year: 'numeric', month: 'long' });

/** How long ago, in words: "today", "yesterday", "5 days ago". */
export function ageWords(days: number | null): string {
  if (days === null) return say('desk-age-none');
  if (days <= 0) return say('desk-age-today');
  return days === 1 ? say('desk-age-yesterday') : say('desk-age-days', { days });
}
