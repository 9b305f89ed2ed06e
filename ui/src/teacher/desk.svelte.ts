import { untrack } from 'svelte';
import { call, CallFailed } from '../lib/backend';
import type { CallName, Calls, ClassSummary, DeviceSettings, FileMade } from '../lib/backend';
import {
  cameFrom,
  go,
  replace,
  route,
  up,
  visit,
  type DeskRoute,
  type Route,
} from '../lib/router.svelte';
import type { GuideId } from '../lib/guide';
import { changeSettings, deskLocked, refresh, start, unlocked } from '../lib/session.svelte';
import { errorWords } from '../lib/ui';
import { loadExerciseWords, say } from '../lib/words';

/** Something that was done, for the line below the screen. */
export interface Done {
  words: string;
  undo: (() => Promise<void>) | null;
}

/** What the desk says below a screen, until the visit ends. */
interface Said {
  visit: number;
  done: Done | null;
  trouble: string;
}

/**
 * Calls whose answers only show what was reported. They are made again after the class folder brought
 * something, so that an open screen follows. Not those from which somebody types.
 */
const FOLLOWING: ReadonlySet<CallName> = new Set([
  'board',
  'group_board',
  'class_day',
  'class_now',
  'comparison',
  'concept_reports',
  'student_page',
  'talk',
  'who_has_not',
]);

/** What the screens of the desk share: class, route and messages. */
class Desk {
  private said = $state.raw<Said>({ visit: -1, done: null, trouble: '' });
  /** How often the class folder brought or took something. */
  private news = $state(0);
  /** The last route of the desk; it also remembers the class. */
  private last: Extract<Route, { name: 'desk' }> = { name: 'desk', desk: { at: 'now' } };

  /** What was done, until another screen is shown. */
  get done(): Done | null {
    return this.said.visit === visit() ? this.said.done : null;
  }

  set done(done: Done | null) {
    this.change({ done });
  }

  /** What went wrong, until another screen is shown. */
  get trouble(): string {
    return this.said.visit === visit() ? this.said.trouble : '';
  }

  set trouble(trouble: string) {
    this.change({ trouble });
  }

  /** Untracked, so that an effect that says something does not run again. */
  private change(part: Partial<Said>): void {
    untrack(() => {
      this.said = { visit: visit(), done: this.done, trouble: this.trouble, ...part };
    });
  }

  /** While another part of the program loads, the desk shows its last route. */
  private get shown(): Extract<Route, { name: 'desk' }> {
    const now = route();
    if (now.name === 'desk') this.last = { ...now, class: now.class ?? this.last.class };
    return this.last;
  }

  get route(): DeskRoute {
    const { desk, class: id } = this.shown;
    const ofClass = desk.at !== 'safe' && desk.at !== 'new-class';
    // Back can lead to a class that was deleted meanwhile.
    if (ofClass && id !== undefined && this.classes.every((one) => one.id !== id)) {
      return { at: 'now' };
    }
    return desk;
  }

  get classes(): ClassSummary[] {
    return start()?.classes ?? [];
  }

  /** The chosen class while it exists, else the first one. */
  get summary(): ClassSummary | null {
    const id = this.shown.class;
    return this.classes.find((c) => c.id === id) ?? this.classes[0] ?? null;
  }

  get guide(): GuideId {
    const { route } = this;
    if (route.at === 'safe') return 'safe';
    if (this.summary === null) return 'new-class';
    return route.at === 'class' ? `class-${route.part}` : route.at;
  }

  get today(): string {
    return start()?.today ?? '';
  }

  get covered(): boolean {
    return start()?.settings.names_covered ?? false;
  }

  go(to: DeskRoute, classId = this.summary?.id): void {
    go(this.whole(to, classId));
  }

  /** Changes the screen without a step that Back could undo. */
  replace(to: DeskRoute, classId = this.summary?.id): void {
    replace(this.whole(to, classId));
  }

  /** Goes to the screen that this one belongs to. */
  up(to: DeskRoute): void {
    up(this.whole(to, this.summary?.id));
  }

  /** The screen of the desk that Back leads to; undefined if it is another one. */
  get before(): DeskRoute | undefined {
    const before = cameFrom();
    return before?.name === 'desk' ? before.desk : undefined;
  }

  private whole(to: DeskRoute, classId: string | undefined): Route {
    return { name: 'desk', class: classId, desk: to };
  }

  /** A student's name, or the seat if there is no name or names are covered. */
  name(seat: number, name: string | null): string {
    return name === null || this.covered ? say('desk-seat', { seat }) : name;
  }

  say(words: string, undo: (() => Promise<void>) | null = null): void {
    this.change({ done: { words, undo }, trouble: '' });
  }

  /** Says where a print was saved. */
  sayPrinted(made: FileMade): void {
    this.say(
      made.place === null
        ? say('print-not-saved')
        : say('print-saved', { file: made.file_name, place: made.place }),
    );
  }

  /** Makes a call. If it fails, shows why below the screen and returns undefined. */
  async ask<N extends CallName>(
    name: N,
    args: Calls[N]['args'],
  ): Promise<Calls[N]['out'] | undefined> {
    return this.attempt(() => call(name, args));
  }

  /** Read in an effect: the effect runs again after `follow`, if the call shows what was reported. */
  private newsFor(name: CallName): number {
    return FOLLOWING.has(name) ? this.news : 0;
  }

  /**
   * Makes a call for an effect. Uses the answer unless the effect has run again or ended
   * meanwhile. If the desk is locked, makes it again once it is open. The effect runs again after
   * `follow`, if the call only shows what was reported. Returns the effect's teardown.
   */
  load<N extends CallName>(
    name: N,
    args: Calls[N]['args'],
    use: (found: Calls[N]['out'] | undefined) => void,
  ): () => void {
    void this.newsFor(name);
    let over = false;
    const load = async (): Promise<void> => {
      const found = await this.ask(name, args);
      if (over) return;
      if (found !== undefined || !untrack(deskLocked)) {
        use(found);
        return;
      }
      await unlocked();
      if (!over) await load();
    };
    void load();
    return () => (over = true);
  }

  /** Shows on the open screen what the class folder brought. */
  async follow(): Promise<void> {
    this.news += 1;
    await this.refresh();
  }

  /** Loads the classes again after a change. */
  async refresh(): Promise<void> {
    await this.attempt(refresh);
  }

  async saveSettings(change: Partial<DeviceSettings>): Promise<void> {
    await this.attempt(async () => {
      // The desk stays open, so the exercise words of the new language are loaded first.
      if (change.language) await loadExerciseWords(change.language);
      await changeSettings(change);
    });
  }

  /** The number by which the newest removal can be restored. */
  async justRemoved(): Promise<number | undefined> {
    await this.refresh();
    return start()?.removed[0]?.number;
  }

  /** Restores something that was removed. Returns whether that worked. */
  async restore(number: number | undefined): Promise<boolean> {
    if (number === undefined) return false;
    const removed = start()?.removed.find((one) => one.number === number);
    if (!(await this.ask('restore_removed', { number }))) {
      await this.attemptQuietly(refresh);
      return false;
    }
    await this.refresh();
    if (removed) this.replace(this.route, removed.class);
    return true;
  }

  async discard(number: number | undefined): Promise<void> {
    if (number === undefined) return;
    if (await this.ask('discard_removed', { number })) await this.refresh();
  }

  /** Like `attempt`, but keeps the message that is shown. */
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
      // The lock covers the screen and says so.
      if (error.why.code !== 'desk_locked') this.trouble = errorWords(error.why).join(' ');
      return undefined;
    }
  }
}

export const desk = new Desk();
