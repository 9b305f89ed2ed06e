/** The state of a tool, with undo. */
export class History<S> {
  now: S = $state.raw() as S;
  #past: S[] = $state.raw([]);
  readonly #start: S;

  constructor(start: S) {
    this.#start = start;
    this.now = start;
  }

  /** Changes the state. An equal one is not a step. */
  to(next: S): void {
    if (JSON.stringify(next) === JSON.stringify(this.now)) return;
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

  /** Goes back to the first state; this can be undone too. */
  clear(): void {
    this.to(this.#start);
  }
}
