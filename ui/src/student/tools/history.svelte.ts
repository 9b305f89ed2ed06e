/** What a tool shows, with the way back through what was done with it. */
export class History<S> {
  now: S = $state.raw() as S;
  #past: S[] = $state.raw([]);
  readonly #start: S;

  constructor(start: S) {
    this.#start = start;
    this.now = start;
  }

  /** Goes on to a state; the same one again is no step. */
  to(next: S): void {
    if (next === this.now) return;
    this.#past = [...this.#past, this.now];
    this.now = next;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  undo(): void {
    const last = this.#past.at(-1);
    if (last === undefined) return;
    this.#past = this.#past.slice(0, -1);
    this.now = last;
  }

  /** As it was at first; can be undone like any step. */
  clear(): void {
    this.to(this.#start);
  }
}
