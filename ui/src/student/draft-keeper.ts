import type { Draft } from '../lib/backend';

/** How long typing may pause before what stands there is kept. */
export const PAUSE_MS = 600;

interface Unkept {
  exercise: string;
  draft: Draft | null;
}

/**
 * Keeps what stands in an answer before it is checked: once typing pauses, and when the
 * screen is left. While an answer is on its way nothing is sent, since the exercise may
 * be over when it comes. What could not be kept is tried again with the next change.
 */
export class DraftKeeper {
  readonly #send: (exercise: string, draft: Draft | null) => Promise<unknown>;
  /** Told of every try that was nobody's to wait for: its error, or nothing when it went well. */
  readonly #told: (error: unknown) => void;
  #unkept: Unkept | null = null;
  /** The draft as it is stored. */
  #kept = 'null';
  #pause: ReturnType<typeof setTimeout> | undefined;
  #sending: Promise<void> = Promise.resolve();
  #held = false;

  constructor(
    send: (exercise: string, draft: Draft | null) => Promise<unknown>,
    told: (error: unknown) => void,
  ) {
    this.#send = send;
    this.#told = told;
  }

  /** An exercise is shown, with what is stored of its answer. */
  opened(draft: Draft | null): void {
    clearTimeout(this.#pause);
    this.#unkept = null;
    this.#kept = JSON.stringify(draft);
  }

  /** The answer changed. */
  change(exercise: string, draft: Draft | null): void {
    this.#unkept = { exercise, draft };
    if (!this.#held) this.#wait();
  }

  /** Keeps it now; fails as the program does. */
  async now(): Promise<void> {
    clearTimeout(this.#pause);
    await this.#sending.catch(() => undefined);
    const unkept = this.#unkept;
    if (!unkept || this.#held) return;
    this.#unkept = null;
    const text = JSON.stringify(unkept.draft);
    if (text === this.#kept) return;
    this.#sending = this.#send(unkept.exercise, unkept.draft).then(
      () => {
        this.#kept = text;
      },
      (error: unknown) => {
        this.#unkept ??= unkept;
        throw error;
      },
    );
    await this.#sending;
  }

  /** As `now`, for where nobody waits. */
  soon(): Promise<void> {
    return this.now().then(
      () => this.#told(null),
      (error: unknown) => this.#told(error),
    );
  }

  /** Holds back while an answer is on its way; `over` says whether it ended the exercise. */
  async during(answering: () => Promise<{ over: boolean }>): Promise<void> {
    clearTimeout(this.#pause);
    this.#held = true;
    let over = false;
    try {
      await this.#sending.catch(() => undefined);
      ({ over } = await answering());
    } finally {
      this.#held = false;
      if (over) this.#unkept = null;
      else if (this.#unkept) this.#wait();
    }
  }

  #wait(): void {
    clearTimeout(this.#pause);
    this.#pause = setTimeout(() => void this.soon(), PAUSE_MS);
  }
}
