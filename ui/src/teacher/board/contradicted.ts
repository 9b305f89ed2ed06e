import type {
  CalibrationVerdict,
  Comparison,
  ConceptName,
  GroupMember,
  Contradiction,
} from '../../lib/backend';

/** A concept, with the students whose ratings and results disagree on it. */
export interface ConceptLine {
  concept: ConceptName;
  sure: Contradiction[];
  unsure: Contradiction[];
}

/** A student, with the concepts on which ratings and results disagree. */
export interface StudentLine {
  student: GroupMember;
  sure: Contradiction[];
  unsure: Contradiction[];
  /** The verdict over all answers of the year, if ratings and results disagree in it. */
  verdict: CalibrationVerdict | null;
}

const size = ({ sure, unsure }: { sure: unknown[]; unsure: unknown[] }) =>
  sure.length + unsure.length;

/** The concepts of both lists, those of most students first. */
export function byConcept({ sure_but_wrong, unsure_but_right }: Comparison): ConceptLine[] {
  const found = new Map<string, ConceptLine>();
  const line = ({ concept }: Contradiction) => {
    const made = found.get(concept.id) ?? { concept, sure: [], unsure: [] };
    found.set(concept.id, made);
    return made;
  };
  for (const one of sure_but_wrong) line(one).sure.push(one);
  for (const one of unsure_but_right) line(one).unsure.push(one);
  return [...found.values()].sort((a, b) => b.sure.length - a.sure.length || size(b) - size(a));
}

/** The students of both lists, and those of whom it is true over the whole year. */
export function byStudent(comparison: Comparison): StudentLine[] {
  const of = (list: Contradiction[], seat: number) =>
    list.filter((one) => one.student.seat === seat);
  return comparison.students
    .map(({ student, verdict }) => ({
      student,
      sure: of(comparison.sure_but_wrong, student.seat),
      unsure: of(comparison.unsure_but_right, student.seat),
      verdict: verdict === 'over' || verdict === 'under' ? verdict : null,
    }))
    .filter((line) => size(line) > 0 || line.verdict !== null)
    .sort((a, b) => b.sure.length - a.sure.length || size(b) - size(a));
}
