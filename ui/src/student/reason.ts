import type { Ahead, Reason } from '../lib/backend';
import { kebab, say } from '../lib/words';

/** Why a concept is in practice; `ahead` may have the title of a dependant. */
export function reasonWords(reason: Reason, ahead: Ahead[] = []): string {
  switch (reason.code) {
    case 'assigned':
      return say('reason-assigned', { done: reason.done, of: reason.of });
    case 'time_to_see_again':
      return say('reason-time-to-see-again', { days: reason.days });
    case 'before': {
      const found = ahead.find((one) => one.concept.id === reason.concept);
      return found
        ? say('reason-before', { title: found.concept.title })
        : say('reason-before-plain');
    }
    case 'marked_not_yet':
    case 'marked_with_help':
    case 'wrong_last_time':
    case 'focus':
    case 'chosen':
    case 'first_practice':
      return say(`reason-${kebab(reason.code)}`);
  }
}
