import type { EntryCell, Outcome } from '../../lib/backend';
import { confidenceWords } from '../../lib/ui';
import { kebab, say } from '../../lib/words';
import type { EntryMode } from './enter';

/** A cell in words, for screen readers. */
export function cellWords(cell: EntryCell, mode: EntryMode): string {
  const result = (outcome: Outcome) => say(`outcome-${kebab(outcome)}`);
  if (mode === 'outcome') {
    if (cell.outcome !== null) return result(cell.outcome);
    return cell.device_outcome === null
      ? say('enter-cell-empty')
      : say('enter-cell-device', { what: result(cell.device_outcome) });
  }
  const own =
    cell.rating !== null
      ? confidenceWords(cell.rating)
      : cell.device_rating === null
        ? ''
        : say('enter-cell-device', { what: confidenceWords(cell.device_rating) });
  if (mode === 'rating') return own === '' ? say('enter-cell-empty') : own;
  const seen =
    cell.seen !== null
      ? confidenceWords(cell.seen)
      : cell.group_result === null
        ? say('enter-cell-empty')
        : say(cell.group_result ? 'groups-has-it' : 'groups-needs-more');
  return own === '' ? seen : say('enter-cell-both', { seen, own });
}
