import type { Lacking } from '../../lib/backend';
import { never } from '../../lib/exhaustive';
import { date, list, say } from '../../lib/words';
import { desk } from '../desk.svelte';

/** School days without a hand-in that can be chosen. */
export const SCHOOL_DAYS = [1, 3, 5, 10, 20];
export const USUAL_SCHOOL_DAYS = 5;

/** What is missing, in a sentence. */
export function lackingWords({ seat, what }: Lacking): string {
  switch (what.kind) {
    case 'quarantined':
      return say('who-quarantined', {
        signs: what.fingerprint,
        date: date(what.first_seen_on, 'day'),
        handins: what.hand_ins,
      });
    case 'damaged':
      return say(seat === null ? 'who-damaged' : 'who-damaged-known', {
        file: what.file_name,
        date: date(what.read_on, 'day'),
      });
    case 'no_hand_in':
      return say('who-no-hand-in');
    case 'late':
      return say('who-late', { date: date(what.last_on, 'day'), days: what.school_days });
    case 'old_pack':
      // A device that came with a student from another class has 0.
      if (what.version === 0) {
        return say('who-old-pack-none', {
          newest: what.newest,
          date: date(what.handed_in_on, 'day'),
        });
      }
      return say(what.other_days ? 'who-old-pack-days' : 'who-old-pack', {
        version: what.version,
        newest: what.newest,
        date: date(what.handed_in_on, 'day'),
      });
    default:
      return never(what);
  }
}

/** A line to read out: who should hand in, each once. Empty if nobody should. */
export function reminder(lacking: Lacking[]): string {
  const kinds = ['no_hand_in', 'late', 'damaged'];
  const asked = lacking.filter(({ what }) => kinds.includes(what.kind));
  const names = asked.flatMap(({ seat, name }) => (seat === null ? [] : [desk.name(seat, name)]));
  if (names.length > 0) return say('who-please', { names: list([...new Set(names)]) });
  const file = asked.find(({ what }) => what.kind === 'damaged')?.what;
  return file?.kind === 'damaged' ? say('who-please-file', { file: file.file_name }) : '';
}
