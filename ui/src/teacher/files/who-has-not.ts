import type { Lacking, NamedSeat } from '../../lib/backend';
import { never } from '../../lib/exhaustive';
import { date, list, say } from '../../lib/words';
import { desk } from '../desk.svelte';
import { packWay } from './class-folder.svelte';

/** School days without a hand-in that can be chosen. */
export const SCHOOL_DAYS = [1, 3, 5, 10, 20];
export const USUAL_SCHOOL_DAYS = 5;

/** Signs of a file name that are shown at most. */
const SHOWN_SIGNS = 40;

/** A file name that somebody else chose, short enough not to fill a line. */
export function shortName(file: string): string {
  const signs = Array.from(file);
  return signs.length > SHOWN_SIGNS ? `${signs.slice(0, SHOWN_SIGNS).join('')}…` : file;
}

/** What is missing, in a sentence. */
export function lackingWords({ what }: Lacking): string {
  switch (what.kind) {
    case 'quarantined':
      return say('who-quarantined', {
        signs: what.fingerprint,
        date: date(what.first_seen_on, 'day'),
        handins: what.hand_ins,
      });
    case 'damaged':
      return say('who-damaged-known', {
        file: shortName(what.file_name),
        date: date(what.read_on, 'day'),
      });
    case 'damaged_of_nobody':
      return say('who-damaged', {
        files: what.files,
        file: shortName(what.file_name),
        date: date(what.read_on, 'day'),
      });
    case 'late':
      return say('who-late', { date: date(what.last_on, 'day'), days: what.school_days });
    case 'old_pack': {
      const days = what.other_days ? 'who-old-pack-days' : 'who-old-pack';
      // A device that came with a student from another class has 0.
      const found = say(what.version === 0 ? 'who-old-pack-none' : days, {
        version: what.version,
        newest: what.newest,
        date: date(what.handed_in_on, 'day'),
      });
      return `${found} ${say(`who-give-${packWay()}`)}`;
    }
    case 'pack_with_nobody': {
      const way = packWay();
      const how = say(way === 'file' ? 'who-give-out' : `who-give-${way}`);
      return `${say('who-pack-with-nobody', { newest: what.newest })} ${how}`;
    }
    default:
      return never(what);
  }
}

/**
 * A line to read out: who should hand in, each once. Empty if nobody should. It never has the name
 * of a file: anybody may have chosen that.
 */
export function reminder(lacking: Lacking[]): string {
  const asked = lacking.filter(({ what }) => what.kind === 'late' || what.kind === 'damaged');
  const names = asked.flatMap(({ seat, name }) => (seat === null ? [] : [desk.name(seat, name)]));
  return names.length > 0 ? say('who-please', { names: list([...new Set(names)]) }) : '';
}

/** The seats that never handed in, in one sentence. */
export const notJoinedWords = (seats: NamedSeat[]): string =>
  say('who-not-joined', {
    count: seats.length,
    names: list(seats.map(({ seat, name }) => desk.name(seat, name))),
  });
