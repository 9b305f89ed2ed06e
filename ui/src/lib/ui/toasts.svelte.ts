export interface Toast {
  id: number;
  words: string;
  /** Undoes what the note reports. */
  undo: (() => void) | null;
}

/** A note with undo stays longer, so that the button can be reached. */
const SHOWN_MS = 4000;
const SHOWN_WITH_UNDO_MS = 12000;

let nextId = 0;
export const toasts = $state<Toast[]>([]);

/** Shows a note, with undo if given. A note without undo replaces one with the same words. */
export function toast(words: string, undo: (() => void) | null = null): void {
  const like = undo ? undefined : toasts.find((shown) => !shown.undo && shown.words === words);
  if (like) dismiss(like.id);
  const id = nextId++;
  toasts.push({ id, words, undo });
  setTimeout(() => dismiss(id), undo ? SHOWN_WITH_UNDO_MS : SHOWN_MS);
}

export function dismiss(id: number): void {
  const at = toasts.findIndex((shown) => shown.id === id);
  if (at >= 0) toasts.splice(at, 1);
}
