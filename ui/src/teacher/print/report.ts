import type { ReportField, ReportInfo, ReportValues } from '../../lib/backend';
import { USUAL_MINUTES } from '../talk/talk';

/** All choices of the print screen, also those that this report does not ask for. */
export type Chosen = Required<ReportValues> & {
  /** The one seat of a report that is otherwise for all. */
  only: number | null;
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
    concepts: [],
    level: 2,
    count: 10,
    with_key: true,
    with_names: true,
    seed: freshSeed(),
    date: '',
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
  concepts: ['concepts'],
  level: ['level'],
  count: ['count'],
  key: ['with_key'],
  names: ['with_names'],
  numbers: ['seed'],
  // Today or the next school day, unless one is chosen.
  day: [],
  halves: ['halves'],
  paper: [],
  space: [],
};

export function asks(report: ReportInfo, kind: FieldKind): boolean {
  return report.fields.some((field) => field.kind === kind);
}

/** The chosen values that this report asks for. */
export function valuesFor(report: ReportInfo, chosen: Chosen): ReportValues {
  const names = report.fields.flatMap((field) => VALUES[field.kind]);
  const values: ReportValues = Object.fromEntries(names.map((name) => [name, chosen[name]]));
  if (asks(report, 'seat_or_all') && chosen.only !== null) values.seat = chosen.only;
  if (asks(report, 'day') && chosen.date !== '') values.date = chosen.date;
  return values;
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
