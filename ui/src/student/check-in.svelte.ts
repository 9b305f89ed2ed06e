import {
  call,
  type CallError,
  type Confidence,
  type Outcome,
  type Today,
  type TodayConcept,
} from '../lib/backend';
import { inOrder } from '../lib/requests';
import { asError, drawn } from '../lib/ui';

/**
 * A day's check-in. A tap shows at once. The taps are sent in order, so that the last
 * one counts.
 */
export class CheckIn {
  /** The day; the state of its concepts is in `rows`. */
  readonly day: Today;
  /** Separate from the day, so that a tap redraws nothing else. */
  rows: TodayConcept[] = $state.raw([]);
  /** Days that were missed. */
  catchUp: string[] = $state.raw([]);
  error: CallError | null = $state(null);

  readonly #student: string;
  readonly #inOrder = inOrder();
  /** The concepts with a tap that was not stored. */
  // Not shown, so it need not be reactive.
  // eslint-disable-next-line svelte/prefer-svelte-reactivity
  readonly #open = new Set<string>();

  constructor(student: string, today: Today) {
    this.#student = student;
    this.day = today;
    this.rows = today.concepts;
    this.catchUp = today.catch_up;
  }

  rate(concept: string, confidence: Confidence): void {
    this.#change(concept, { confidence });
  }

  mark(concept: string, outcome: Outcome | null): void {
    this.#change(concept, { outcome });
  }

  /** Sends again what could not be stored. */
  again(): void {
    this.error = null;
    for (const concept of this.#open) this.#send(concept);
  }

  /** Resolves when all taps so far were sent. */
  async sent(): Promise<void> {
    await this.#inOrder(() => Promise.resolve());
  }

  #change(concept: string, change: { confidence: Confidence } | { outcome: Outcome | null }): void {
    this.rows = this.rows.map((row) => (row.concept.id === concept ? { ...row, ...change } : row));
    this.#open.add(concept);
    this.#send(concept);
  }

  #send(concept: string): void {
    void this.#inOrder(async () => {
      await drawn();
      const row = this.rows.find((one) => one.concept.id === concept);
      if (!row || !this.#open.delete(concept)) return;
      try {
        const catchUp = await call('check_in', {
          student: this.#student,
          date: this.day.date,
          concept,
          confidence: row.confidence,
          outcome: row.outcome,
        });
        this.error = null;
        // The rows keep later taps that are not answered yet.
        if (catchUp.join() !== this.catchUp.join()) this.catchUp = catchUp;
      } catch (thrown) {
        this.#open.add(concept);
        this.error = asError(thrown);
      }
    });
  }
}
