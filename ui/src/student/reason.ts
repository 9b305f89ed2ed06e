import type { Ahead, Reason } from '../lib/backend';
import { say } from '../lib/words';

/** Why a concept is in practice; `ahead` may know the title of the concept named. */
export function reasonWords(reason: Reason, ahead: Ahead[] = []): string {
  const id = `reason-${reason.code.replaceAll('_', '-')}`;
  switch (reason.code) {
    case 'assigned':
      return say(id, { done: reason.done, of: reason.of });
    case 'time_to_see_again':
      return say(id, { days: reason.days });
    case 'before': {
      const found = ahead.find((one) => one.concept.id === reason.concept);
      return found ? say(id, { title: found.concept.title }) : say('reason-before-plain');
    }
    case 'marked_not_yet':
    case 'marked_with_help':
    case 'wrong_last_time':
    case 'focus':
    case 'chosen':
    case 'first_practice':
      return say(id);
  }
}
