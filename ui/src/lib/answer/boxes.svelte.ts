import type { Draft } from '../backend/contract';

/** The texts of an answer's boxes, and the box that the pad writes into. */
export class Boxes {
  texts: string[] = $state([]);
  active = $state(0);
  inputs: (HTMLInputElement | null)[] = $state([]);

  constructor(count: number, draft: Draft | null = null) {
    const before = draft?.kind === 'boxes' ? draft.texts : [];
    this.texts = Array.from({ length: count }, (_, at) => before[at] ?? '');
  }

  /** Inserts a sign at the caret. */
  type(sign: string): void {
    this.#replace(sign, false);
  }

  /** Deletes the sign before the caret. */
  erase(): void {
    this.#replace('', true);
  }

  next(): void {
    this.active = (this.active + 1) % this.texts.length;
    this.inputs[this.active]?.focus();
  }

  #replace(sign: string, before: boolean): void {
    const text = this.texts[this.active] ?? '';
    const input = this.inputs[this.active];
    const end = input?.selectionEnd ?? text.length;
    let from = input?.selectionStart ?? text.length;
    if (before && from === end) from = Math.max(0, from - 1);
    if (!input) {
      this.texts[this.active] = text.slice(0, from) + sign + text.slice(end);
      return;
    }
    if (document.activeElement !== input) input.focus();
    // Text and caret in one step, so that the browser lays the box out once.
    input.setRangeText(sign, from, end, 'end');
    this.texts[this.active] = input.value;
  }
}
