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
  /** The day. The state of its concepts is in `rows`. */
  readonly day: Today;
  /** Apart from the day, so that a tap draws nothing else anew. */
  rows: TodayConcept[] = $state.raw([]);
  /** Days that were missed. */
  catchUp: string[] = $state.raw([]);
  error: CallError | null = $state(null);

  readonly #student: string;
  readonly #inOrder = inOrder();
  /** Concepts with a tap that has not been stored. */
  // Not shown, so nothing needs to follow its changes.
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

  /** Sends anew what could not be stored. */
  again(): void {
    this.error = null;
    for (const concept of this.#open) this.#send(concept);
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
        // The rows keep the later taps that are still on their way.
        if (catchUp.join() !== this.catchUp.join()) this.catchUp = catchUp;
      } catch (thrown) {
        this.#open.add(concept);
        this.error = asError(thrown);
      }
    });
  }
}
