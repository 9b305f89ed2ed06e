import { call } from '../backend';
import { Newest } from '../requests';
import { language } from '../words';
import { speakable } from './speakable';

/** The component that is reading; one at a time. */
const state = $state<{ reader: string | null }>({ reader: null });
const newest = new Newest();
/** The last call that stops a reading; the next reading waits for it. */
let stopped: Promise<unknown> = Promise.resolve();

export function reading(reader: string): boolean {
  return state.reader === reader;
}

/** Reads a text in the language of the screens. Resolves when it ends or is stopped. */
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

/** Stops the reading of one component, or of any. */
export function hush(reader?: string): void {
  if (state.reader === null || (reader !== undefined && state.reader !== reader)) return;
  newest.drop();
  state.reader = null;
  stopped = call('stop_speaking', {}).catch(() => undefined);
}

// Escape stops the reading, and so does hiding the window.
window.addEventListener('keydown', (event) => {
  if (event.key === 'Escape') hush();
});
document.addEventListener('visibilitychange', () => {
  if (document.hidden) hush();
});
