import { call } from '../backend';
import { language } from '../words';
import { speakable } from './speakable';

/** Who is being read for, if anyone; one voice speaks at a time. */
const state = $state<{ reader: string | null }>({ reader: null });
let turn = 0;
/** Ends of what was stopped; the next one starts behind them. */
let stopped: Promise<unknown> = Promise.resolve();

export function reading(reader: string): boolean {
  return state.reader === reader;
}

/** Reads a text in the language of the screens; resolves when it is over or stopped. */
export async function readAloud(reader: string, text: string): Promise<void> {
  const mine = ++turn;
  state.reader = reader;
  try {
    await stopped;
    if (mine === turn) await call('speak', { text: speakable(text), language: language() });
  } finally {
    if (mine === turn) state.reader = null;
  }
}

/** Ends what is being read for a reader, or for anyone. */
export function hush(reader?: string): void {
  if (state.reader === null || (reader !== undefined && state.reader !== reader)) return;
  turn += 1;
  state.reader = null;
  stopped = call('stop_speaking', {}).catch(() => undefined);
}

// Escape ends it wherever the focus is, and so does going away from the window.
window.addEventListener('keydown', (event) => {
  if (event.key === 'Escape') hush();
});
document.addEventListener('visibilitychange', () => {
  if (document.hidden) hush();
});
