import { locale } from './chosen.svelte';
import { dateFormat, listFormat, numberFormat } from './formats';
import { inSigns } from './signs.svelte';

/** A number such as 1,234, with a true minus sign. */
export function number(value: number | bigint, digits = 0): string {
  const format = numberFormat('en-US', { maximumFractionDigits: digits });
  return inSigns(format.format(value)).replace('-', '−');
}

export function percent(share: number): string {
  return inSigns(numberFormat(locale(), { style: 'percent' }).format(share));
}

/** An exact decimal such as `-1234.50`, grouped, with all digits and a true minus sign. */
export function exact(text: string): string {
  const [, sign, whole, part] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text) ?? [];
  if (whole === undefined) return text;
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole;
  return (sign === '-' ? '−' : '') + inSigns(part === undefined ? grouped : `${grouped}.${part}`);
}

export type DateStyle = 'day' | 'weekday' | 'short';

const STYLES: Record<DateStyle, Intl.DateTimeFormatOptions> = {
  day: { day: 'numeric', month: 'long', year: 'numeric' },
  weekday: { weekday: 'long', day: 'numeric', month: 'long' },
  short: { day: 'numeric', month: 'short' },
};

/** A date `YYYY-MM-DD` in words. */
export function date(iso: string, style: DateStyle = 'weekday'): string {
  const [year = 0, month = 1, day = 1] = iso.split('-').map(Number);
  // Formatted in UTC: the same day in each time zone.
  const at = new Date(Date.UTC(year, month - 1, day, 12));
  const options = { ...STYLES[style], timeZone: 'UTC' };
  return dateFormat(locale(), options).format(at);
}

/** The words with a capital first letter. */
export function opening(words: string): string {
  const [first = ''] = words;
  return first.toLocaleUpperCase(locale()) + words.slice(first.length);
}

/** A list in words: "a, b, and c". */
export function list(things: string[]): string {
  return listFormat(locale(), { type: 'conjunction' }).format(things);
}
