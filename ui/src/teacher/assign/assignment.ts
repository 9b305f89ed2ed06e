import type { NewAssignment } from '../../lib/backend';
import type { MessageId } from '../../lib/words';
import { plusDays } from '../new-class/new-class';

export const MOST_CONCEPTS = 6;
export const MOST_ITEMS = 20;

/** Days that an assignment is open unless the teacher chooses otherwise. */
const USUAL_DAYS = 7;

/** The assignment that the form starts with. */
export function beginAssignment(today: string, concepts: string[], seats: number[]): NewAssignment {
  return {
    concepts: concepts.slice(0, MOST_CONCEPTS),
    items_each: 4,
    from: today,
    due: plusDays(today, USUAL_DAYS),
    seats: [...seats].sort((a, b) => a - b),
  };
}

export type AssignFault = 'concepts' | 'amount' | 'dates' | 'seats';

/** Message ids of what is wrong, by field. */
export function assignFaults(
  draft: NewAssignment,
  whole_class: boolean,
): Partial<Record<AssignFault, MessageId>> {
  const found: Partial<Record<AssignFault, MessageId>> = {};
  if (draft.concepts.length === 0) found.concepts = 'assign-fault-concepts-none';
  if (draft.concepts.length > MOST_CONCEPTS) found.concepts = 'assign-fault-concepts-many';
  const whole = Number.isInteger(draft.items_each);
  if (!whole || draft.items_each < 1 || draft.items_each > MOST_ITEMS) {
    found.amount = 'assign-fault-amount';
  }
  if (draft.from === '' || draft.due === '' || draft.due < draft.from) {
    found.dates = 'assign-fault-dates';
  }
  if (!whole_class && draft.seats.length === 0) found.seats = 'assign-fault-seats';
  return found;
}
