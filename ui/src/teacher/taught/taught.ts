import type { HelpNumbers, HelpView, NewTaughtAgain, TaughtAgainEntry } from '../../lib/backend';
import { date, kebab, number, say } from '../../lib/words';

/** What is said of an entry, and when to look again. */
export function helpWords({ says, next_on }: HelpView): string {
  const words = say(
    says === 'cannot_tell' && next_on === null
      ? 'taught-says-cannot-tell-ever'
      : `taught-says-${kebab(says)}`,
  );
  const waits = ['cannot_tell', 'too_soon', 'no_answers'].includes(says);
  return waits && next_on !== null ? `${words} ${lookAgain(next_on)}` : words;
}

/** When to look again at what cannot be told yet. */
export const lookAgain = (on: string): string => say('taught-next', { date: date(on, 'weekday') });

/** How many of those taught were taught once more; empty if none, or if the verdict is elsewhere. */
export const onceMoreWords = ({ help, members }: TaughtAgainEntry): string =>
  help.once_more === 0 || help.says === 'taught_once_more'
    ? ''
    : say('taught-once-more', { count: help.once_more, of: members.length });

/** A range of results more than expected, by its direction. */
export function rangeOf({ more_low: low, more_high: high }: Range): {
  way: 'fewer' | 'mixed' | 'more';
  low: number;
  high: number;
} {
  if (low >= 0) return { way: 'more', low, high };
  // Without the sign of a zero.
  if (high <= 0) return { way: 'fewer', low: Math.abs(high), high: -low };
  return { way: 'mixed', low: -low, high };
}

type Range = Pick<HelpNumbers, 'more_low' | 'more_high'>;

/** The sentences with the numbers behind a verdict. */
export function numberWords(numbers: HelpNumbers): string[] {
  const { answers, right, foretold, expected, practised } = numbers;
  const more = right - expected;
  const way = more > 0 ? 'more' : more < 0 ? 'fewer' : 'same';
  return [
    say('taught-answers', { answers, right }),
    say('taught-foretold', { foretold: number(foretold), expected: number(expected) }),
    say('taught-difference', { way, count: Math.abs(more), expected: number(expected) }),
    say('taught-range', rangeOf(numbers)),
    say('taught-practised', { count: practised }),
  ];
}

/** The entry as it was noted, to note it again. */
export const notedAs = (entry: TaughtAgainEntry, replaces: number | null): NewTaughtAgain => ({
  replaces,
  date: entry.date,
  concept: entry.concept.id,
  came_from: entry.came_from,
  seats: entry.whole_class ? [] : entry.members.map(({ seat }) => seat),
  note: entry.note,
});

/** The entries of a concept or of a student; `choice` is empty for all. */
export function chosenEntries(entries: TaughtAgainEntry[], choice: string): TaughtAgainEntry[] {
  const [kind = '', value = ''] = choice.split(':');
  if (kind === 'concept') return entries.filter(({ concept }) => concept.id === value);
  if (kind === 'seat') {
    return entries.filter(({ members }) => members.some(({ seat }) => seat === Number(value)));
  }
  return entries;
}
