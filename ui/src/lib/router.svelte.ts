import type { OpenedFiles, PackOffer } from './backend';

export type StudentTab = 'today' | 'practice' | 'path' | 'handin' | 'settings' | 'tools';

/** The parts of the class screen. */
export type ClassPart = 'seats' | 'calendar' | 'rotation' | 'exercises' | 'concepts' | 'pack';

/** What an assignment starts from. */
export interface AssignmentOffer {
  concepts: string[];
  seats: number[];
}

/** The groups that a suggestion begins with. */
export interface GroupsOffer {
  concept: string;
  seats: number[];
}

/** A screen of the teacher's desk, with its parameters. */
export type DeskRoute =
  | { at: 'now' }
  | { at: 'board' }
  | { at: 'compare' }
  | { at: 'concept'; concept: string; pass?: number }
  | { at: 'student'; seat: number }
  | { at: 'talk'; day?: 'second'; warmUp?: boolean; on?: string }
  | { at: 'groups'; suggest?: GroupsOffer }
  | { at: 'taught'; concept?: string }
  | { at: 'enter' }
  | { at: 'files'; opened?: boolean }
  | { at: 'safe' }
  | { at: 'print'; sheet?: string[]; report?: string; on?: string }
  | { at: 'class'; part: ClassPart }
  | { at: 'assign'; offer: AssignmentOffer | null }
  | { at: 'new-class' };

/** A screen, with its parameters. Students and classes are named by id, because they change. */
export type Route =
  | { name: 'start'; opened?: OpenedFiles }
  | { name: 'join'; offer?: PackOffer }
  | { name: 'student'; student: string; tab: StudentTab; concept?: string }
  | { name: 'desk'; class?: string | undefined; desk: DeskRoute };

const FIRST: Route = { name: 'start' };

/**
 * The routes by their position in the browser's history. Positions before the last
 * `restart` are empty.
 */
const entries: Route[] = [FIRST];
let position = 0;
let shown = $state.raw<{ route: Route; visit: number }>({ route: FIRST, visit: 0 });

/** Marks the history entries of this page load. */
const load = performance.timeOrigin;
const entryState = () => ({ load, position });
history.replaceState(entryState(), '');

export function route(): Route {
  return shown.route;
}

/** A number that changes with every step from one screen to another. */
export function visit(): number {
  return shown.visit;
}

/** Goes to a screen. Back leads from there to the screen shown now. */
export function go(to: Route): void {
  if (same(shown.route, to)) entries[position] = to;
  else push(to, position + 1);
  show(to);
}

/** Changes the screen or its parameters without a step that Back could undo. */
export function replace(to: Route): void {
  const from = shown.route;
  entries[position] = to;
  shown = { route: to, visit: shown.visit };
  if (!sameScreen(from, to)) window.scrollTo(0, 0);
}

/** Goes to a screen from which nothing leads back. */
export function restart(to: Route): void {
  push(to, 0);
  show(to);
}

/** Goes back one step, unless this is the first screen. */
export function back(): void {
  if (position > 0) history.back();
}

/** Goes to the screen that this one belongs to: one step back if it is there. */
export function up(to: Route): void {
  const before = entries[position - 1];
  if (before && same(before, to)) back();
  else go(to);
}

/** The screen that Back leads to; undefined if there is none. */
export const cameFrom = (): Route | undefined => entries[position - 1];

/** Called before Back leaves a screen. Returns true if it did something else instead. */
type Hold = () => boolean;
const holds: Hold[] = [];
let unheld = false;

/**
 * Lets an open dialog, a step of a form, or unsaved work act on Back before the screen
 * changes. The hold added last is called first. Returns a function that removes the hold.
 */
export function holdBack(hold: Hold): () => void {
  holds.push(hold);
  return () => {
    holds.splice(holds.indexOf(hold), 1);
  };
}

/** Goes back one step without asking the holds. */
export function backAnyway(): void {
  if (position === 0) return;
  unheld = true;
  history.back();
}

function push(to: Route, keep: number): void {
  position += 1;
  entries.length = keep;
  entries[position] = to;
  history.pushState(entryState(), '');
}

function show(to: Route): void {
  shown = { route: to, visit: shown.visit + 1 };
  window.scrollTo(0, 0);
}

function same(a: Route, b: Route): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** Whether at most parameters differ. */
function sameScreen(a: Route, b: Route): boolean {
  if (a.name === 'desk' && b.name === 'desk') return a.desk.at === b.desk.at;
  if (a.name === 'student' && b.name === 'student') return a.tab === b.tab;
  return a.name === b.name;
}

/** The position that a history entry has; null if another load made it. */
function positionOf(state: unknown): number | null {
  const known =
    typeof state === 'object' &&
    state !== null &&
    'load' in state &&
    state.load === load &&
    'position' in state &&
    typeof state.position === 'number';
  return known ? (state.position as number) : null;
}

function held(): boolean {
  if (unheld) {
    unheld = false;
    return false;
  }
  return holds.toReversed().some((hold) => hold());
}

window.addEventListener('popstate', (event: PopStateEvent) => {
  const asked = positionOf(event.state);
  if (asked === position) return;
  if (asked === null) {
    history.pushState(entryState(), '');
    return;
  }
  const to = entries[asked];
  if (!to || held()) {
    history.go(position - asked);
    return;
  }
  position = asked;
  // The list of students locks their data, so nothing leads forward past it.
  if (to.name === 'start') entries.length = position + 1;
  show(to);
});

const EDITABLE = 'input, textarea, select, [contenteditable]';

// Browsers bind these keys and buttons to Back and Forward; some windows of the program do not.
window.addEventListener('keydown', (event) => {
  const other = event.ctrlKey || event.metaKey || event.shiftKey || !event.altKey;
  if (other || event.defaultPrevented) return;
  if (event.target instanceof Element && event.target.matches(EDITABLE)) return;
  if (event.key === 'ArrowLeft') back();
  else if (event.key === 'ArrowRight') history.forward();
  else return;
  event.preventDefault();
});

const MOUSE_BACK = 3;
const MOUSE_FORWARD = 4;

window.addEventListener('mouseup', (event) => {
  if (event.button === MOUSE_BACK) back();
  else if (event.button === MOUSE_FORWARD) history.forward();
  else return;
  event.preventDefault();
});
