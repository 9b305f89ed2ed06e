/** A short note at the foot of the screen. */
export interface Toast {
  id: number;
  words: string;
  /** Takes back what the note tells of. */
  undo: (() => void) | null;
}

/** Long enough to read and to reach; a note with a way back stays longer. */
const SHOWN_MS = 4000;
const SHOWN_WITH_UNDO_MS = 12000;

let nextId = 0;
export const toasts = $state<Toast[]>([]);

/** Shows a note, with a way back where there is one. Without one, it takes its like's place. */
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
