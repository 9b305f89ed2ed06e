import { call, CallFailed } from '../lib/backend';
import type { CallName, Calls, ClassSummary, DeviceSettings, FileMade } from '../lib/backend';
import { changeSettings, refresh, start, take } from '../lib/session.svelte';
import { errorWords } from '../lib/ui';
import { loadExerciseWords, say } from '../lib/words';

/** The parts of the class screen. */
export type ClassPart = 'seats' | 'calendar' | 'rotation' | 'exercises' | 'concepts' | 'pack';

/** What an assignment would start from. */
export interface AssignmentOffer {
  concepts: string[];
  seats: number[];
}

/** What the teacher looks at. */
export type Place =
  | { at: 'board' }
  | { at: 'compare' }
  | { at: 'concept'; concept: string; pass?: number }
  | { at: 'student'; seat: number }
  | { at: 'talk' }
  | { at: 'groups' }
  | { at: 'enter' }
  | { at: 'files'; opened?: boolean }
  | { at: 'safe' }
  | { at: 'print' }
  | { at: 'class'; part: ClassPart }
  | { at: 'assign'; offer: AssignmentOffer | null }
  | { at: 'new-class' };

/** Something that was done, said once; `undo` takes it back. */
export interface Done {
  words: string;
  undo: (() => Promise<void>) | null;
}

/** Where the teacher's desk stands; its screens read and change it here. */
class Desk {
  place = $state.raw<Place>({ at: 'board' });
  done = $state.raw<Done | null>(null);
  trouble = $state('');
  private chosen = $state<string | null>(null);

  get classes(): ClassSummary[] {
    return start()?.classes ?? [];
  }

  /** The class on the desk: the chosen one while it is there, else the first. */
  get summary(): ClassSummary | null {
    return this.classes.find((c) => c.id === this.chosen) ?? this.classes[0] ?? null;
  }

  /** The guide of the screen that is shown. */
  get guide(): string {
    const { place } = this;
    if (place.at === 'safe') return 'safe';
    if (this.summary === null) return 'new-class';
    return place.at === 'class' ? `class-${place.part}` : place.at;
  }

  get today(): string {
    return start()?.today ?? '';
  }

  get covered(): boolean {
    return start()?.settings.names_covered ?? false;
  }

  choose(classId: string): void {
    this.chosen = classId;
  }

  /** Goes to a place; what was said at the last one goes. */
  go(place: Place): void {
    this.place = place;
    this.done = null;
    this.trouble = '';
    window.scrollTo(0, 0);
  }

  /** A student's name, or the seat where there is none or names are covered. */
  name(seat: number, name: string | null): string {
    return name === null || this.covered ? say('desk-seat', { seat }) : name;
  }

  say(words: string, undo: (() => Promise<void>) | null = null): void {
    this.done = { words, undo };
    this.trouble = '';
  }

  /** Says of a print where it went. */
  sayPrinted(made: FileMade): void {
    this.say(
      made.place === null
        ? say('print-not-saved')
        : say('print-saved', { file: made.file_name, place: made.place }),
    );
  }

  /** A call whose failure is said on the screen; nothing then. */
  async ask<N extends CallName>(
    name: N,
    args: Calls[N]['args'],
  ): Promise<Calls[N]['out'] | undefined> {
    return this.attempt(() => call(name, args));
  }

  /** Reads the classes anew, for after something changed. */
  async refresh(): Promise<void> {
    await this.attempt(refresh);
  }

  async saveSettings(change: Partial<DeviceSettings>): Promise<void> {
    await this.attempt(async () => {
      // The desk stays as its language changes, so that one's words are there before.
      if (change.language) await loadExerciseWords(change.language);
      await changeSettings(change);
    });
  }

  /** What was removed just now, by which it can be brought back. */
  async justRemoved(): Promise<number | undefined> {
    await this.refresh();
    return start()?.removed[0]?.number;
  }

  /** Brings back something that was removed; whether it came. */
  async restore(number: number | undefined): Promise<boolean> {
    if (number === undefined) return false;
    const removed = start()?.removed.find((one) => one.number === number);
    const after = await this.ask('restore', { number });
    if (!after) {
      await this.attemptQuietly(refresh);
      return false;
    }
    take(after);
    if (removed) this.choose(removed.class);
    return true;
  }

  /** Lets go of something that was removed: from then on nobody can bring it back. */
  async discard(number: number | undefined): Promise<void> {
    if (number === undefined) return;
    const after = await this.ask('discard', { number });
    if (after) take(after);
  }

  /** What goes wrong here is not said: something else is on the screen. */
  private async attemptQuietly(doing: () => Promise<unknown>): Promise<void> {
    const { trouble } = this;
    await this.attempt(doing);
    this.trouble = trouble;
  }

  private async attempt<T>(doing: () => Promise<T>): Promise<T | undefined> {
    try {
      const out = await doing();
      this.trouble = '';
      return out;
    } catch (error) {
      if (!(error instanceof CallFailed)) throw error;
      this.trouble = errorWords(error.why).join(' ');
      return undefined;
    }
  }
}

export const desk = new Desk();
