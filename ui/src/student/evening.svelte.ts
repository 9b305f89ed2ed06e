import {
  call,
  type CallError,
  type Confidence,
  type Feedback,
  type OpenExercise,
  type PracticeStep,
  type Response,
  type Session,
} from '../lib/backend';
import { asError, drawn } from '../lib/ui';

/** An evening of practice: the exercise shown and what was said about the answer. */
export class Evening {
  step: PracticeStep | null = $state.raw(null);
  feedback: Feedback | null = $state.raw(null);
  error: CallError | null = $state(null);
  busy = $state(false);
  /** How sure the student just said to be: shown at once, before it is stored. */
  saying: Confidence | null = $state(null);

  readonly #student: string;
  /** Asked for on another screen; for the first exercise only. */
  #concept: string | null;
  #more = false;
  /** When the exercise was shown or last answered. */
  #since = 0;

  constructor(student: string, concept: string | null) {
    this.#student = student;
    this.#concept = concept;
  }

  get session(): Session | null {
    return this.feedback?.session ?? (this.step?.kind === 'exercise' ? this.step.session : null);
  }

  next(): Promise<void> {
    return this.#do(async () => {
      const args = { student: this.#student, concept: this.#concept, more: this.#more };
      this.step = await call('practice', args);
      this.#concept = null;
      this.feedback = null;
      this.#since = performance.now();
      window.scrollTo(0, 0);
    });
  }

  /** Goes on though the evening's minutes are done. */
  more(): Promise<void> {
    this.#more = true;
    return this.next();
  }

  stop(): Promise<void> {
    return this.#do(async () => {
      const summary = await call('practice_summary', { student: this.#student });
      this.step = { kind: 'done', ...summary };
      this.feedback = null;
    });
  }

  sure(exercise: OpenExercise, sure: Confidence): Promise<void> {
    if (!this.busy) this.saying = sure;
    return this.#do(async () => {
      this.#show(await call('sure', { ...this.#names(exercise), sure }));
    }).finally(() => (this.saying = null));
  }

  hint(exercise: OpenExercise): Promise<void> {
    return this.#do(async () => this.#show(await call('hint', this.#names(exercise))));
  }

  answer(exercise: OpenExercise, response: Response): Promise<void> {
    return this.#do(async () => {
      const seconds = Math.round((performance.now() - this.#since) / 1000);
      const args = { ...this.#names(exercise), response, seconds };
      this.feedback = await call('answer', args);
      this.#since = performance.now();
    });
  }

  showSteps(exercise: OpenExercise): Promise<void> {
    return this.#do(async () => {
      this.feedback = await call('show_steps', this.#names(exercise));
    });
  }

  #names(exercise: OpenExercise): { student: string; exercise: string } {
    return { student: this.#student, exercise: exercise.exercise };
  }

  #show(exercise: OpenExercise): void {
    this.step = { kind: 'exercise', ...exercise };
  }

  /** One thing at a time; a second tap meanwhile does nothing. */
  async #do(doing: () => Promise<void>): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    try {
      await drawn();
      await doing();
      this.error = null;
    } catch (thrown) {
      this.error = asError(thrown);
    } finally {
      this.busy = false;
    }
  }
}
