import type { Draft } from '../lib/backend';
import { inOrder } from '../lib/requests';

export const PAUSE_MS = 600;

interface Unkept {
  exercise: string;
  draft: Draft | null;
}

/**
 * Keeps drafts: when typing pauses, and when the screen is left.
 * Drafts and answers are sent in order, because an answer may end the exercise. A draft
 * that could not be kept is sent again with the next change.
 */
export class DraftKeeper {
  readonly #send: (exercise: string, draft: Draft | null) => Promise<unknown>;
  /** Called with the error or null after each attempt that nobody awaits. */
  readonly #told: (error: unknown) => void;
  readonly #inOrder = inOrder();
  #unkept: Unkept | null = null;
  /** The stored draft, as JSON. */
  #kept = 'null';
  #pause: ReturnType<typeof setTimeout> | undefined;

  constructor(
    send: (exercise: string, draft: Draft | null) => Promise<unknown>,
    told: (error: unknown) => void,
  ) {
    this.#send = send;
    this.#told = told;
  }

  /** Starts with the exercise that is shown, and with the draft stored for it. */
  opened(draft: Draft | null): void {
    clearTimeout(this.#pause);
    this.#unkept = null;
    this.#kept = JSON.stringify(draft);
  }

  /** Keeps the draft after a pause. */
  change(exercise: string, draft: Draft | null): void {
    this.#unkept = { exercise, draft };
    this.#wait();
  }

  /** Keeps the draft now. Fails with the error of the call. */
  now(): Promise<void> {
    clearTimeout(this.#pause);
    return this.#inOrder(async () => {
      const unkept = this.#unkept;
      if (!unkept) return;
      this.#unkept = null;
      const text = JSON.stringify(unkept.draft);
      if (text === this.#kept) return;
      try {
        await this.#send(unkept.exercise, unkept.draft);
        this.#kept = text;
      } catch (error) {
        this.#unkept ??= unkept;
        throw error;
      }
    });
  }

  /** Like `now`, for callers that do not await it. */
  soon(): Promise<void> {
    return this.now().then(
      () => this.#told(null),
      (error: unknown) => this.#told(error),
    );
  }

  /** Sends an answer after the drafts before it; `over` says whether it ended the exercise. */
  during(answering: () => Promise<{ over: boolean }>): Promise<void> {
    clearTimeout(this.#pause);
    return this.#inOrder(async () => {
      let over = false;
      try {
        ({ over } = await answering());
      } finally {
        if (over) this.#unkept = null;
        else if (this.#unkept) this.#wait();
      }
    });
  }

  #wait(): void {
    clearTimeout(this.#pause);
    this.#pause = setTimeout(() => void this.soon(), PAUSE_MS);
  }
}
