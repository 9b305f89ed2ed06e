import { datesBetween, weekdayOf } from '../new-class/new-class';
import type { SchoolYear } from '../../lib/backend';

/** Dates without school that lie beside each other, as one. */
export interface Closure {
  first: string;
  last: string;
  /** The closed dates in it. */
  dates: string[];
}

/** The closures as ranges: dates with no school day between them belong together. */
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

/** The dates of a range that would else be school days. */
export function closedDates(first: string, last: string, weekdays: number[]): string[] {
  return datesBetween(first, last === '' ? first : last).filter((date) =>
    weekdays.includes(weekdayOf(date)),
  );
}

/** Adds dates to closures: sorted, each once. */
export const withDates = (closures: string[], dates: string[]) =>
  [...new Set([...closures, ...dates])].sort();

/** A month of the grid: its dates, and the number of empty places before the first. */
export interface Month {
  first: string;
  lead: number;
  dates: string[];
}

/** The months of a school year. */
export function months(year: SchoolYear): Month[] {
  const found: Month[] = [];
  for (const date of datesBetween(year.first_day, year.last_day)) {
    const open = found.at(-1);
    if (open?.first.slice(0, 7) === date.slice(0, 7)) open.dates.push(date);
    else found.push({ first: date, lead: weekdayOf(date) - 1, dates: [date] });
  }
  return found;
}
