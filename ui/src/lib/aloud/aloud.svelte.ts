import { call } from '../backend';
import { Newest } from '../requests';
import { language } from '../words';
import { speakable } from './speakable';

/** Who is being read for, if anyone; one voice speaks at a time. */
const state = $state<{ reader: string | null }>({ reader: null });
const newest = new Newest();
/** Ends of what was stopped; the next one starts behind them. */
let stopped: Promise<unknown> = Promise.resolve();

export function reading(reader: string): boolean {
  return state.reader === reader;
}

/** Reads a text in the language of the screens; resolves when it is over or stopped. */
export async function readAloud(reader: string, text: string): Promise<void> {
  const isNewest = newest.start();
  state.reader = reader;
  try {
    await stopped;
    if (isNewest()) await call('speak', { text: speakable(text), language: language() });
  } finally {
    if (isNewest()) state.reader = null;
  }
}

/** Ends what is being read for a reader, or for anyone. */
export function hush(reader?: string): void {
  if (state.reader === null || (reader !== undefined && state.reader !== reader)) return;
  newest.drop();
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
