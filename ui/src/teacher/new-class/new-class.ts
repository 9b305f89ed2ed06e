import type { CopyClass, NewClass } from '../../lib/backend';
import type { MessageId } from '../../lib/words';

export interface ClassForm {
  title: string;
  /** Whether names are pasted; otherwise only the number of seats counts. */
  by_names: boolean;
  names: string[];
  /** What must be answered or mended in the table of names first. */
  open_questions: number;
  seat_count: number;
  first_day: string;
  last_day: string;
  weekdays: number[];
  closures: string[];
  grades: number[];
  rotation_days: number;
  concepts_a_day: number;
  /** The class whose rotation and first lessons are copied; null for a new rotation. */
  copy_from: string;
  /** Number of concepts in that class's rotation. */
  copied_concepts: number;
}

export const MOST_SEATS = 60;
export const LONGEST_TITLE = 60;
export const LONGEST_ROTATION_DAYS = 20;
export const MOST_CONCEPTS_A_DAY = 12;
/** The most calendar days of a school year. */
export const LONGEST_YEAR_DAYS = 400;

const DAY_MS = 86_400_000;
const at = (iso: string) => Date.parse(`${iso}T00:00:00Z`);
const iso = (ms: number) => new Date(ms).toISOString().slice(0, 10);
const isDate = (text: string) => /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(at(text));

/** ISO weekday of a date, 1 is Monday. */
export const weekdayOf = (date: string) => ((new Date(at(date)).getUTCDay() + 6) % 7) + 1;

export function datesBetween(first: string, last: string): string[] {
  if (!isDate(first) || !isDate(last)) return [];
  const days = Math.round((at(last) - at(first)) / DAY_MS) + 1;
  if (days < 1 || days > LONGEST_YEAR_DAYS) return [];
  return Array.from({ length: days }, (_, n) => iso(at(first) + n * DAY_MS));
}

export const plusDays = (date: string, days: number) => iso(at(date) + days * DAY_MS);

/** The school year around a date: from the last week of August to the first of June. */
export function defaultForm(today: string): ClassForm {
  const year = Number(today.slice(0, 4)) - (Number(today.slice(5, 7)) < 7 ? 1 : 0);
  return {
    title: '',
    by_names: true,
    names: [],
    open_questions: 0,
    seat_count: 24,
    first_day: mondayFrom(`${year}-08-25`),
    last_day: plusDays(mondayFrom(`${year + 1}-06-01`), 4),
    weekdays: [1, 2, 3, 4, 5],
    closures: [],
    grades: [],
    rotation_days: 10,
    concepts_a_day: 6,
    copy_from: '',
    copied_concepts: 0,
  };
}

const mondayFrom = (date: string) => plusDays(date, (8 - weekdayOf(date)) % 7);

/** The totals that the form shows. */
export interface Totals {
  seats: number;
  school_days: number;
  /** Passes that begin in the year. */
  passes: number;
  /** Concepts of the grades that fit into the rotation. */
  concepts: number;
  /** All concepts of the grades. */
  offered: number;
}

export function totals(form: ClassForm, conceptsByGrade: Record<number, number>): Totals {
  const closures = new Set(form.closures);
  const school_days = datesBetween(form.first_day, form.last_day).filter(
    (date) => form.weekdays.includes(weekdayOf(date)) && !closures.has(date),
  ).length;
  const copied = form.copy_from !== '';
  const by_grades = form.grades.reduce((sum, grade) => sum + (conceptsByGrade[grade] ?? 0), 0);
  const offered = copied ? form.copied_concepts : by_grades;
  return {
    seats: form.by_names ? form.names.length : form.seat_count,
    school_days,
    passes: form.rotation_days > 0 ? Math.ceil(school_days / form.rotation_days) : 0,
    concepts: copied ? offered : Math.min(offered, form.rotation_days * form.concepts_a_day),
    offered,
  };
}

export type FormField = 'title' | 'seats' | 'dates' | 'weekdays' | 'grades' | 'rotation';

/** Message ids of what is wrong, by field. */
export function faults(form: ClassForm, sum: Totals): Partial<Record<FormField, MessageId>> {
  const found: Partial<Record<FormField, MessageId>> = {};
  const title = form.title.trim();
  if (title === '') found.title = 'new-class-fault-title-empty';
  else if (Array.from(title).length > LONGEST_TITLE) found.title = 'new-class-fault-title-long';
  if (!(sum.seats >= 1)) {
    found.seats = form.by_names ? 'new-class-fault-names-none' : 'new-class-fault-seats-none';
  } else if (sum.seats > MOST_SEATS || !Number.isInteger(sum.seats)) {
    found.seats = 'new-class-fault-seats-many';
  } else if (form.by_names && form.open_questions > 0) {
    found.seats = 'new-class-fault-names-open';
  }
  if (!isDate(form.first_day) || !isDate(form.last_day)) found.dates = 'new-class-fault-dates-none';
  else if (form.last_day < form.first_day) found.dates = 'new-class-fault-dates-order';
  else if (datesBetween(form.first_day, form.last_day).length === 0) {
    found.dates = 'new-class-fault-dates-long';
  } else if (form.weekdays.length > 0 && sum.school_days === 0) {
    found.dates = 'new-class-fault-no-day';
  }
  if (form.weekdays.length === 0) found.weekdays = 'new-class-fault-weekdays';
  if (form.copy_from !== '') return found;
  if (form.grades.length === 0) found.grades = 'new-class-fault-grades';
  const whole = (n: number, most: number) => Number.isInteger(n) && n >= 1 && n <= most;
  if (
    !whole(form.rotation_days, LONGEST_ROTATION_DAYS) ||
    !whole(form.concepts_a_day, MOST_CONCEPTS_A_DAY)
  ) {
    found.rotation = 'new-class-fault-rotation';
  }
  return found;
}

function frame(form: ClassForm): Pick<NewClass, 'title' | 'names' | 'year'> {
  const names = form.by_names ? form.names : Array.from({ length: form.seat_count }, () => '');
  return {
    title: form.title.trim(),
    names: [...names],
    year: {
      first_day: form.first_day,
      last_day: form.last_day,
      weekdays: [...form.weekdays].sort((a, b) => a - b),
      closures: [...form.closures].sort(),
    },
  };
}

export const asCopyClass = (form: ClassForm): CopyClass => ({
  ...frame(form),
  from: form.copy_from,
});

export function asNewClass(form: ClassForm): NewClass {
  return {
    ...frame(form),
    grades: [...form.grades].sort((a, b) => a - b),
    rotation_days: form.rotation_days,
    concepts_a_day: form.concepts_a_day,
  };
}
