import type { PlacedConcept, SchoolYear } from '../../lib/backend';
import type { MessageId } from '../../lib/words';
import { datesBetween, weekdayOf } from '../new-class/new-class';

const schoolDays = (year: SchoolYear) =>
  datesBetween(year.first_day, year.last_day).filter(
    (date) => year.weekdays.includes(weekdayOf(date)) && !year.closures.includes(date),
  ).length;

/** The message id of what is wrong with a year, or null. */
export function yearFault(year: SchoolYear): MessageId | undefined {
  if (year.first_day === '' || year.last_day === '') return 'new-class-fault-dates-none';
  if (year.last_day < year.first_day) return 'new-class-fault-dates-order';
  if (datesBetween(year.first_day, year.last_day).length === 0) return 'new-class-fault-dates-long';
  if (year.weekdays.length === 0) return 'new-class-fault-weekdays';
  return schoolDays(year) === 0 ? 'new-class-fault-no-day' : undefined;
}

/** The school days, and the passes that begin in the year. */
export function yearSum(year: SchoolYear, rotation_days: number) {
  const school_days = schoolDays(year);
  return { school_days, passes: Math.ceil(school_days / Math.max(1, rotation_days)) };
}

/** Counts the first lessons outside the year. */
export const lessonsOutside = (rotation: PlacedConcept[][], year: SchoolYear): number =>
  rotation
    .flat()
    .filter(({ taught_from: on }) => on !== null && (on < year.first_day || on > year.last_day))
    .length;
