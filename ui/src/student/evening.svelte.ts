import {
  call,
  type CallError,
  type Confidence,
  type Draft,
  type Feedback,
  type OpenExercise,
  type PracticeStep,
  type Response,
  type Session,
} from '../lib/backend';
import { asError, drawn } from '../lib/ui';
import { loadExerciseWords } from '../lib/words';
import { DraftKeeper } from './draft-keeper';

/** An evening of practice: the exercise shown, and the feedback. */
export class Evening {
  step: PracticeStep | null = $state.raw(null);
  feedback: Feedback | null = $state.raw(null);
  error: CallError | null = $state.raw(null);
  busy = $state(false);
  /** The confidence that was just chosen; shown before it is stored. */
  choosing: Confidence | null = $state(null);

  readonly #student: string;
  /** The concept chosen on another screen; for the first exercise only. */
  #concept: string | null;
  #more = false;
  #since = 0;
  readonly #drafts: DraftKeeper;
  /** The error of a draft that could not be kept, until one can. */
  #unkept: CallError | null = null;

  constructor(student: string, concept: string | null) {
    this.#student = student;
    this.#concept = concept;
    this.#drafts = new DraftKeeper(
      (exercise, draft) => call('keep_draft', { student, exercise, draft }),
      (error) => {
        if (error !== null) this.error = this.#unkept = asError(error);
        else if (this.#unkept) {
          if (this.error === this.#unkept) this.error = null;
          this.#unkept = null;
        }
      },
    );
  }

  get session(): Session | null {
    return this.feedback?.session ?? (this.step?.kind === 'exercise' ? this.step.session : null);
  }

  next(): Promise<void> {
    return this.#do(async () => {
      const args = { student: this.#student, concept: this.#concept, more: this.#more };
      // Loads the exercise and its words at the same time.
      const [step] = await Promise.all([call('practice', args), loadExerciseWords()]);
      this.step = step;
      this.#drafts.opened(step.kind === 'exercise' ? step.draft : null);
      this.#unkept = null;
      this.#concept = null;
      this.feedback = null;
      this.#since = performance.now();
      window.scrollTo(0, 0);
    });
  }

  /** Goes on although the evening is over. */
  more(): Promise<void> {
    this.#more = true;
    return this.next();
  }

  stop(): Promise<void> {
    return this.#do(async () => {
      // A draft that cannot be kept is reported, but stopping goes on.
      await this.#drafts.soon();
      const summary = await call('practice_summary', { student: this.#student });
      this.step = { kind: 'done', ...summary };
      this.feedback = null;
    });
  }

  setConfidence(exercise: OpenExercise, confidence: Confidence): Promise<void> {
    if (!this.busy) this.choosing = confidence;
    return this.#do(async () => {
      this.#show(await call('say_confidence', { ...this.#names(exercise), confidence }));
    }).finally(() => (this.choosing = null));
  }

  hint(exercise: OpenExercise): Promise<void> {
    return this.#do(async () => this.#show(await call('hint', this.#names(exercise))));
  }

  answer(exercise: OpenExercise, response: Response): Promise<void> {
    return this.#do(async () => {
      const seconds = Math.round((performance.now() - this.#since) / 1000);
      const args = { ...this.#names(exercise), response, seconds };
      await this.#drafts.during(async () => {
        this.feedback = await call('answer', args);
        this.#since = performance.now();
        // After a wrong first try the exercise stays open.
        if (this.feedback.finished) this.#unkept = null;
        return { over: this.feedback.finished };
      });
    });
  }

  showSteps(exercise: OpenExercise): Promise<void> {
    return this.#do(async () => {
      await this.#drafts.during(async () => {
        this.feedback = await call('show_steps', this.#names(exercise));
        this.#unkept = null;
        return { over: true };
      });
    });
  }

  /** Keeps the draft when typing pauses. */
  keep(exercise: OpenExercise, draft: Draft | null): void {
    if (!this.feedback?.finished) this.#drafts.change(exercise.exercise, draft);
  }

  /** Keeps the draft now, because the screen is left. */
  keepNow(): void {
    void this.#drafts.soon();
  }

  #names(exercise: OpenExercise): { student: string; exercise: string } {
    return { student: this.#student, exercise: exercise.exercise };
  }

  #show(exercise: OpenExercise): void {
    this.step = { kind: 'exercise', ...exercise };
  }

  /** Runs one action at a time; further taps meanwhile do nothing. */
  async #do(doing: () => Promise<void>): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    try {
      await drawn();
      await doing();
      this.error = this.#unkept;
    } catch (thrown) {
      this.error = asError(thrown);
    } finally {
      this.busy = false;
    }
  }
}
