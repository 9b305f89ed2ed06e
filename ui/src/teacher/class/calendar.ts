import { datesBetween, weekdayOf } from '../new-class/new-class';
import type { SchoolYear } from '../../lib/backend';

/** A range of dates without school. */
export interface Closure {
  first: string;
  last: string;
  dates: string[];
}

/** The closures as ranges: dates without a school day between them form one range. */
export function closureRanges(closures: string[], weekdays: number[]): Closure[] {
  const ranges: Closure[] = [];
  for (const date of [...closures].sort()) {
    const open = ranges.at(-1);
    const between = open ? datesBetween(open.last, date).slice(1, -1) : [];
    if (open && between.every((day) => !weekdays.includes(weekdayOf(day)))) {
      open.last = date;
      open.dates.push(date);
    } else {
      ranges.push({ first: date, last: date, dates: [date] });
    }
  }
  return ranges;
}

/** The dates of a range that are school days. */
export function closedDates(first: string, last: string, weekdays: number[]): string[] {
  return datesBetween(first, last === '' ? first : last).filter((date) =>
    weekdays.includes(weekdayOf(date)),
  );
}

/** Adds dates to closures. Returns them sorted, each once. */
export const withDates = (closures: string[], dates: string[]) =>
  [...new Set([...closures, ...dates])].sort();

/** A month: its dates, and the number of empty cells before the first. */
export interface Month {
  first: string;
  lead: number;
  dates: string[];
}

export function months(year: SchoolYear): Month[] {
  const found: Month[] = [];
  for (const date of datesBetween(year.first_day, year.last_day)) {
    const open = found.at(-1);
    if (open?.first.slice(0, 7) === date.slice(0, 7)) open.dates.push(date);
    else found.push({ first: date, lead: weekdayOf(date) - 1, dates: [date] });
  }
  return found;
}
