import type { Certainty, NamedSeat, Sentence, SentenceKind } from '../../lib/backend';
import { never } from '../../lib/exhaustive';
import { date, kebab, say } from '../../lib/words';
import { lookAgain } from '../taught/taught';

/** Students of a small group at most, as Groups begins with. */
const USUAL_MOST = 5;

export interface SentenceWords {
  /** What the sentence says. */
  main: string;
  /** Why, and how certain. */
  rest: string[];
}

/** A sentence in words. All its numbers come from the program. */
export function sentenceWords({ says, concept, certainty }: Sentence): SentenceWords {
  const [main, ...why] = parts(says, concept?.title ?? '', certainty);
  // "Is weak" and "is likely weak" say it already, and so does every verdict.
  const told =
    says.kind === 'taught_again' ||
    (says.kind === 'weak' &&
      says.heads !== null &&
      (certainty === 'clear' || certainty === 'likely'));
  const how = told ? [] : [say(`now-certain-${kebab(certainty)}`)];
  return { main: main ?? '', rest: [...why, ...how] };
}

function parts(says: SentenceKind, concept: string, certainty: Certainty): string[] {
  switch (says.kind) {
    case 'talk': {
      const { is_today, minutes, way, wrong } = says;
      return [
        is_today
          ? say('now-talk-today', { concept })
          : say('now-talk-day', { concept, date: date(says.date) }),
        wrong === null ? say('now-talk-order') : say('now-talk-wrong', { count: wrong }),
        say(`now-way-${kebab(way)}`, { minutes }),
      ];
    }
    case 'sure_and_wrong': {
      const { sure, rated } = says;
      return [
        say('now-sure-and-wrong', { concept }),
        say('now-sure-and-wrong-why', { sure, rated }),
      ];
    }
    case 'weak': {
      const { heads, low, rated } = says;
      return heads === null
        ? [say('now-weak-order', { concept }), say('now-weak-low', { low, rated })]
        : [say('now-weak', { concept, certainty }), say('now-weak-heads', { ...heads })];
    }
    case 'nothing_weak':
      return [
        say('now-nothing-weak', { certainty }),
        say('now-nothing-weak-why', { count: says.concepts }),
      ];
    case 'together': {
      const count = says.students.length;
      return [
        say('now-together', { concept, count, groups: Math.ceil(count / USUAL_MOST) }),
        say(says.estimated ? 'now-together-why' : 'now-together-why-order'),
      ];
    }
    case 'taught_again': {
      const { help, since, taught, next_on } = says;
      const why = say('now-taught-again-why', { count: taught, date: date(since) });
      const told = help === 'cannot_tell' && next_on === null ? 'never' : help;
      const again = next_on === null ? [] : [lookAgain(next_on)];
      return [say('now-taught-again', { concept, help: told }), why, ...again];
    }
    case 'sure_but_wrong':
      return [
        say('now-sure-but-wrong', { concept, count: says.students.length }),
        say('now-sure-but-wrong-why'),
      ];
    case 'unsure_but_right':
      return [
        say('now-unsure-but-right', { concept, count: says.students.length }),
        say('now-unsure-but-right-why'),
      ];
    default:
      return never(says);
  }
}

/** The students of a sentence; empty if it is about the class. */
export const studentsOf = ({ says }: Sentence): NamedSeat[] =>
  'students' in says ? says.students : [];
