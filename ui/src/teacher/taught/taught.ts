import type { HelpNumbers, HelpView, NewTaughtAgain, TaughtAgainEntry } from '../../lib/backend';
import { date, kebab, number, say } from '../../lib/words';

/** What is said of an entry, and when to look again. */
export function helpWords(help: HelpView): string {
  const says = say(`taught-says-${kebab(help.says)}`);
  const waits = ['cannot_tell', 'too_soon', 'no_answers'].includes(help.says);
  const again = waits && (help.next_on !== null || help.says === 'cannot_tell');
  return again ? `${says} ${lookAgain(help.next_on)}` : says;
}

/** When to look again at what cannot be told yet; never, without a day. */
export const lookAgain = (on: string | null): string =>
  on === null ? say('taught-never') : say('taught-next', { date: date(on, 'weekday') });

/** How many answers more or fewer are right than expected, in whole answers. */
export function rangeOf(numbers: Pick<HelpNumbers, 'more_low' | 'more_high'>): {
  way: 'fewer' | 'mixed' | 'more';
  low: number;
  high: number;
} {
  // Without the sign of a zero.
  const low = Math.round(numbers.more_low) + 0;
  const high = Math.round(numbers.more_high) + 0;
  if (low >= 0) return { way: 'more', low, high };
  if (high <= 0) return { way: 'fewer', low: Math.abs(high), high: -low };
  return { way: 'mixed', low: -low, high };
}

/** The sentences with the numbers behind a verdict. */
export function numberWords(numbers: HelpNumbers): string[] {
  const { way, low, high } = rangeOf(numbers);
  return [
    say('taught-answers', { answers: numbers.answers, right: numbers.right }),
    say('taught-foretold', {
      foretold: number(Math.round(numbers.foretold)),
      expected: number(Math.round(numbers.expected)),
    }),
    say('taught-range', { way, low: number(low), high: number(high) }),
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
