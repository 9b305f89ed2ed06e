import type { ReportField, ReportInfo, ReportValues } from '../../lib/backend';
import { USUAL_MINUTES } from '../talk/talk';

/** What has been chosen on the print screen, whatever the report at hand asks for. */
export type Chosen = Required<ReportValues>;
export type FieldKind = ReportField['kind'];

/** Short enough to be typed again. */
export function freshSeed(): number {
  return (crypto.getRandomValues(new Uint32Array(1))[0] ?? 1) % 1_000_000;
}

export function firstChoice(seat: number): Chosen {
  return {
    seat,
    concept: '',
    seats: [],
    minutes: USUAL_MINUTES,
    concepts: [],
    level: 2,
    count: 10,
    with_key: true,
    with_names: true,
    seed: freshSeed(),
  };
}

/** The values that a field stands for. */
const VALUES: Record<FieldKind, (keyof ReportValues)[]> = {
  seat: ['seat'],
  group: ['concept', 'seats'],
  minutes: ['minutes'],
  concepts: ['concepts'],
  level: ['level'],
  count: ['count'],
  key: ['with_key'],
  names: ['with_names'],
  numbers: ['seed'],
  paper: [],
  space: [],
};

export function asks(report: ReportInfo, kind: FieldKind): boolean {
  return report.fields.some((field) => field.kind === kind);
}

/** Of all that was chosen, what this report asks for. */
export function valuesFor(report: ReportInfo, chosen: Chosen): ReportValues {
  const names = report.fields.flatMap((field) => VALUES[field.kind]);
  return Object.fromEntries(names.map((name) => [name, chosen[name]]));
}

/** The most exercises of each concept, if the report asks how many. */
export function mostOfEach(report: ReportInfo): number | null {
  const counted = report.fields.find((field) => field.kind === 'count');
  return counted ? counted.most : null;
}

/** The fields that keep the report from being made as they are. */
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
