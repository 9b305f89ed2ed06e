import type { GroupsView } from '../../lib/backend';

/** A suggestion that is not kept yet. It stays while other screens are shown. */
export interface Draft {
  plan: GroupsView | null;
  /** Whether it was changed by hand. A new suggestion would lose the changes. */
  edited: boolean;
}

const drafts = $state<Record<string, Draft>>({});

/** The suggestion for a class. */
export const draftOf = (classId: string): Draft => drafts[classId] ?? { plan: null, edited: false };

export function putDraft(classId: string, draft: Draft): void {
  drafts[classId] = draft;
}
