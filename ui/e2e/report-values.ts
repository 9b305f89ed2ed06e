import type { ReportInfo, ReportValues } from '../src/lib/backend/contract';

/** The values of `offered` that a report asks for. */
export function valuesFor(report: ReportInfo, offered: ReportValues): ReportValues {
  const asked = new Set(report.fields.map(({ kind }) => kind));
  return {
    ...(asked.has('seat') && { seat: offered.seat }),
    ...(asked.has('group') && { concept: offered.concept, seats: offered.seats }),
    ...(asked.has('minutes') && { minutes: offered.minutes }),
    ...(asked.has('concepts') && { concepts: offered.concepts }),
    ...(asked.has('level') && { level: offered.level }),
    ...(asked.has('count') && { count: offered.count }),
    ...(asked.has('key') && { with_key: offered.with_key }),
    ...(asked.has('names') && { with_names: offered.with_names }),
    ...(asked.has('numbers') && { seed: offered.seed }),
  };
}
