import type { HandInPreview } from '../lib/backend';

/** Days after which the reminder comes, and after which it is firm. */
const SOON_DAYS = 5;
const FIRM_DAYS = 15;

/** Days with check-ins, for a student who has made neither a hand-in nor a carry file. */
const FIRST_SOON_DAYS = 2;
const FIRST_FIRM_DAYS = 10;

export interface Reminder {
  firm: boolean;
  /** For how many days the work has been in this browser alone. */
  days: number;
}

/** Whether a student is asked for a hand-in. Dates are `YYYY-MM-DD`. */
export function reminderFor(
  preview: Pick<HandInPreview, 'last_made_on' | 'new_since' | 'days'>,
  carriedOn: string | null,
  today: string,
): Reminder | null {
  if (preview.new_since === 0) return null;
  // A date after today comes from a clock that was wrong; it must not end the reminders.
  const kept = [preview.last_made_on, carriedOn]
    .filter((date) => date !== null && date <= today)
    .sort() as string[];
  const last = kept.at(-1);
  if (last === undefined) {
    if (preview.days < FIRST_SOON_DAYS) return null;
    return { firm: preview.days >= FIRST_FIRM_DAYS, days: preview.days };
  }
  const days = Math.round((Date.parse(today) - Date.parse(last)) / 86_400_000);
  return days < SOON_DAYS ? null : { firm: days >= FIRM_DAYS, days };
}
