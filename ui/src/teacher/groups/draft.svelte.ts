import type { GroupsFirst, GroupsView } from '../../lib/backend';

/** A suggestion that is not kept yet. It stays while other screens are shown. */
export interface Draft {
  plan: GroupsView | null;
  /** Whether it was changed by hand. A new suggestion would lose the changes. */
  edited: boolean;
  /** The groups that the suggestion began with. */
  first: GroupsFirst | null;
}

let shares = $state(false);

/**
 * Whether the share of each student is shown: only once it is asked for. It is no longer shown after
 * the program was started again.
 */
export const sharesAsked = (): boolean => shares;

export function askShares(on: boolean): void {
  shares = on;
}

const drafts = $state<Record<string, Draft>>({});

/** The suggestion for a class. */
export const draftOf = (classId: string): Draft =>
  drafts[classId] ?? { plan: null, edited: false, first: null };

export function putDraft(classId: string, draft: Partial<Draft>): void {
  drafts[classId] = { ...draftOf(classId), ...draft };
}
