import type { OpenedFiles, PackOffer, Profile } from './backend';

export type StudentTab = 'today' | 'practice' | 'path' | 'handin' | 'settings' | 'tools';

/** What is on the screen. The desk keeps its own places inside `teacher`. */
export type Screen =
  | { name: 'start'; opened?: OpenedFiles }
  | { name: 'join'; offer?: PackOffer }
  | { name: 'student'; student: Profile; tab: StudentTab; concept?: string }
  | { name: 'teacher'; class?: string; tab?: string; concept?: string };

const FIRST: Screen = { name: 'start' };

/** Screens from the first to the one shown. */
const stack: Screen[] = [FIRST];
let depth = 0;
const shown = $state<{ screen: Screen }>({ screen: FIRST });

// A page that is loaded anew begins at its first screen, whatever lay there before.
history.replaceState({ depth }, '');

export function screen(): Screen {
  return shown.screen;
}

/** Goes to a screen; going back, also by the device's own button, leads here again. */
export function go(to: Screen): void {
  depth += 1;
  stack.length = depth;
  stack.push(to);
  history.pushState({ depth }, '');
  show(to);
}

/** Changes the screen without a step to go back to, as between tabs. */
export function turn(to: Screen): void {
  const place = shown.screen;
  stack[depth] = to;
  shown.screen = to;
  // The same place shown anew stays where it is scrolled to.
  if (!('tab' in place && 'tab' in to && place.tab === to.tab)) window.scrollTo(0, 0);
}

/** Goes to a screen from which nothing leads back. */
export function restart(to: Screen): void {
  depth += 1;
  stack.length = 0;
  stack[depth] = to;
  history.pushState({ depth }, '');
  show(to);
}

/** One step back; from the first screen there is none. */
export function back(): void {
  if (depth > 0) history.back();
}

function show(to: Screen): void {
  shown.screen = to;
  window.scrollTo(0, 0);
}

window.addEventListener('popstate', (event: PopStateEvent) => {
  const state: unknown = event.state;
  const asked =
    typeof state === 'object' &&
    state !== null &&
    'depth' in state &&
    typeof state.depth === 'number'
      ? state.depth
      : 0;
  const to = stack[asked];
  if (to) {
    depth = asked;
    show(to);
  } else {
    // What lay before a fresh start is over: stay.
    history.pushState({ depth }, '');
  }
});
