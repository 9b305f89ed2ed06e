import { date, dateFormat, locale, opening, say } from '../lib/words';
import { desk } from './desk.svelte';

function inUtc(date: string, options: Intl.DateTimeFormatOptions): string {
  const format = dateFormat(locale(), { timeZone: 'UTC', ...options });
  return format.format(new Date(`${date}T00:00:00Z`));
}

/** The name of ISO weekday 1 (Monday) to 7. 2024-01-01 was a Monday. */
export const weekdayName = (weekday: number, width: 'short' | 'narrow' | 'long' = 'short') =>
  inUtc(`2024-01-0${weekday}`, { weekday: width });

/** The month of a date, such as "October 2026". */
export const monthName = (date: string) => inUtc(date, { year: 'numeric', month: 'long' });

export function ageWords(days: number | null): string {
  if (days === null) return say('desk-age-none');
  if (days <= 0) return say('desk-age-today');
  return days === 1 ? say('desk-age-yesterday') : say('desk-age-days', { days });
}

/** A school date as "Today", "Tomorrow" or its weekday and date. */
export function dayName(iso: string): string {
  const days = Math.round((Date.parse(iso) - Date.parse(desk.today)) / 86_400_000);
  if (days === 0) return say('days-today');
  return days === 1 ? say('days-tomorrow') : opening(date(iso));
}
