import type { ReportField, ReportInfo, ReportValues } from '../../lib/backend';
import { USUAL_MINUTES } from '../talk/talk';

/** All choices of the print screen, also those that this report does not ask for. */
export type Chosen = Required<ReportValues> & {
  /** The one seat of a report that is otherwise for all. */
  only: number | null;
  /** For which day a page is: today, the next school day, or that of `date`. */
  day: 'today' | 'next' | 'other';
};
export type FieldKind = ReportField['kind'];

/** A short number can be typed again. */
export function freshSeed(): number {
  return (crypto.getRandomValues(new Uint32Array(1))[0] ?? 1) % 1_000_000;
}

export function firstChoice(seat: number): Chosen {
  return {
    seat,
    only: null,
    concept: '',
    seats: [],
    minutes: USUAL_MINUTES,
    day: 'today',
    date: '',
    concepts: [],
    level: 2,
    count: 10,
    with_key: true,
    with_names: true,
    seed: freshSeed(),
    halves: true,
  };
}

/** A sheet on some concepts; on several of them with fewer exercises of each. */
export const sheetOf = (concepts: string[]): Pick<Chosen, 'concepts' | 'count'> => ({
  concepts,
  count: concepts.length > 1 ? 3 : 10,
});

/** The names of a field's values. */
const VALUES: Record<FieldKind, (keyof ReportValues)[]> = {
  seat: ['seat'],
  // All seats, unless one is chosen.
  seat_or_all: [],
  group: ['concept', 'seats'],
  minutes: ['minutes'],
  // Today, unless another day is chosen.
  day: [],
  concepts: ['concepts'],
  level: ['level'],
  count: ['count'],
  key: ['with_key'],
  names: ['with_names'],
  numbers: ['seed'],
  halves: ['halves'],
  paper: [],
  space: [],
};

export function asks(report: ReportInfo, kind: FieldKind): boolean {
  return report.fields.some((field) => field.kind === kind);
}

/** The chosen values that this report asks for. */
export function valuesFor(report: ReportInfo, chosen: Chosen, today: string): ReportValues {
  const names = report.fields.flatMap((field) => VALUES[field.kind]);
  const values: ReportValues = Object.fromEntries(names.map((name) => [name, chosen[name]]));
  if (asks(report, 'seat_or_all') && chosen.only !== null) values.seat = chosen.only;
  if (asks(report, 'day') && chosen.day !== 'today') {
    // The page of a day without school is for the school day after it.
    const date = chosen.day === 'next' ? dayAfter(today) : chosen.date;
    if (date !== '') values.date = date;
  }
  return values;
}

function dayAfter(date: string): string {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, day + 1)).toISOString().slice(0, 10);
}

export function mostOfEach(report: ReportInfo): number | null {
  const counted = report.fields.find((field) => field.kind === 'count');
  return counted ? counted.most : null;
}

/** The fields with a fault. */
export function faults(report: ReportInfo, chosen: Chosen): FieldKind[] {
  const found: FieldKind[] = [];
  const most = mostOfEach(report);
  if (asks(report, 'concepts') && chosen.concepts.length === 0) found.push('concepts');
  if (asks(report, 'group') && chosen.seats.length === 0) found.push('group');
  const { count } = chosen;
  if (most !== null && !(Number.isInteger(count) && count >= 1 && count <= most)) {
    found.push('count');
  }
  return found;
}
