import type {
  GroupChosen,
  GroupMember,
  GroupRecord,
  GroupsView,
  GroupView,
  GroupWishes,
  KeptGroup,
} from '../../lib/backend';
import type { MessageId } from '../../lib/words';

/** The most slots, groups at once, and students in a group. */
export const MOST_SLOTS = 6;
export const MOST_AT_ONCE = 12;
export const MOST_SIZE = 12;

type Sitting = Pick<GroupView, 'slot' | 'concept' | 'members' | 'partners'>;

export const chosenOf = (groups: Sitting[]): GroupChosen[] =>
  groups.map(({ slot, concept, members, partners }) => ({
    slot,
    concept: concept.id,
    seats: members.map((one) => one.seat),
    partners: partners.map((one) => one.seat),
  }));

/**
 * The first name of each student by seat. Two students with one first name are told apart by
 * their seats. Where `instead` returns words, they stand for the name.
 */
export function firstNames(
  students: GroupMember[],
  instead: (one: GroupMember) => string | null,
): Map<number, string> {
  const first = (one: GroupMember) => one.name?.trim().split(/\s+/)[0] ?? '';
  const seats = new Map(students.map((one) => [one.seat, one]));
  const all = [...seats.values()];
  return new Map(
    all.map((one) => {
      const alike = all.filter((other) => first(other) === first(one)).length > 1;
      return [one.seat, instead(one) ?? (alike ? `${first(one)} ${one.seat}` : first(one))];
    }),
  );
}

/** A kept group to go on with: those who do not have it yet, and who was absent. */
export function goOn(group: KeptGroup, records: GroupRecord[]): GroupChosen {
  const has = (seat: number) =>
    records.some((one) => one.seat === seat && one.concept === group.concept.id && one.has_it);
  const seats = [...group.members, ...group.missed].map(({ seat }) => seat);
  return {
    slot: group.slot,
    concept: group.concept.id,
    seats: [...new Set(seats)].filter((seat) => !has(seat)).sort((a, b) => a - b),
    partners: group.partners.map(({ seat }) => seat),
  };
}

/**
 * The groups of the next day with what a group goes on with: one group of a concept in a time, and
 * nobody in two groups at once.
 */
export function withNext(
  before: GroupChosen[],
  group: KeptGroup,
  next: GroupChosen,
): GroupChosen[] {
  const isSame = (one: GroupChosen) => one.concept === next.concept && one.slot === next.slot;
  const rest = before.filter((one) => !isSame(one));
  const elsewhere = rest.filter((one) => one.slot === next.slot).flatMap((one) => one.seats);
  const earlier = [...group.members, ...group.missed].map(({ seat }) => seat);
  const others = before
    .filter(isSame)
    .flatMap((one) => one.seats)
    .filter((seat) => !earlier.includes(seat));
  const seats = [...new Set([...others, ...next.seats])]
    .filter((seat) => !elsewhere.includes(seat))
    .sort((a, b) => a - b);
  return seats.length === 0 ? rest : [...rest, { ...next, seats }];
}

/**
 * Moves a seat from one group to another; null is no group. Removes groups left empty.
 */
export function moved(
  groups: GroupChosen[],
  seat: number,
  from: number | null,
  to: number | null,
): GroupChosen[] {
  if (from === to) return groups;
  return groups
    .map((group, at) => {
      if (at === from) return { ...group, seats: group.seats.filter((one) => one !== seat) };
      if (at === to && !group.seats.includes(seat)) {
        return { ...group, seats: [...group.seats, seat].sort((a, b) => a - b) };
      }
      return group;
    })
    .filter((group) => group.seats.length > 0);
}

/** Moves a seat into a new group. */
export function started(
  groups: GroupChosen[],
  seat: number,
  from: number | null,
  slot: number,
  concept: string,
): GroupChosen[] {
  const without = from === null ? groups : moved(groups, seat, from, null);
  return [...without, { slot, concept, seats: [seat], partners: [] }].sort(
    (a, b) => a.slot - b.slot,
  );
}

/** Gives one group another concept. */
export const onConcept = (groups: GroupChosen[], at: number, concept: string): GroupChosen[] =>
  groups.map((group, place) => (place === at ? { ...group, concept } : group));

/** How good a plan is; null where order alone gives no number that says so. */
export function goodness(view: GroupsView): 'best' | 'gap' | 'rough' | null {
  if (!view.level_known) return null;
  if (view.proven_gap <= 0) return 'best';
  return view.proven_gap < 0.5 ? 'gap' : 'rough';
}

/** The message id of what is wrong with the wishes, or null. */
export function wishFault(wishes: GroupWishes): MessageId | undefined {
  const whole = (n: number, most: number) => Number.isInteger(n) && n >= 1 && n <= most;
  if (!whole(wishes.slots, MOST_SLOTS)) return 'groups-fault-slots';
  if (!whole(wishes.groups_at_once, MOST_AT_ONCE)) return 'groups-fault-at-once';
  if (!whole(wishes.size_most, MOST_SIZE) || !whole(wishes.size_least, wishes.size_most)) {
    return 'groups-fault-size';
  }
  return undefined;
}

/** A gap in percent, rounded up: "at most" must hold. */
export const gapPercent = (gap: number): number => Math.ceil(gap * 1000) / 10;

/** How a change affects a plan's worth: direction and percent. */
export function effectOf(
  before: number,
  after: number,
): { kind: 'less' | 'more' | 'same'; percent: number } {
  const percent = before === 0 ? 0 : Math.round((Math.abs(after - before) / before) * 1000) / 10;
  if (percent === 0) return { kind: 'same', percent };
  return { kind: after < before ? 'less' : 'more', percent };
}
