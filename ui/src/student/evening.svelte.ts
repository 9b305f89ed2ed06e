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

/** How long typing may pause before what stands there is kept. */
const PAUSE_MS = 600;

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
  /** What stands in the answer and has not been kept yet. */
  #unkept: { exercise: OpenExercise; draft: Draft | null } | null = null;
  /** The draft as it is kept. */
  #kept = 'null';
  #pause: ReturnType<typeof setTimeout> | undefined;
  #keeping: Promise<void> = Promise.resolve();

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
      // Both at once: the exercise, and the words to say it in.
      const [step] = await Promise.all([call('practice', args), loadExerciseWords()]);
      this.step = step;
      this.#kept = JSON.stringify(step.kind === 'exercise' ? step.draft : null);
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
      await this.keepNow();
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
      await this.#settle();
      this.feedback = await call('answer', args);
      this.#since = performance.now();
      // After a first try it stays open, with what was tried.
      if (this.feedback.finished) this.#unkept = null;
      else await this.keepNow();
    });
  }

  showSteps(exercise: OpenExercise): Promise<void> {
    return this.#do(async () => {
      await this.#settle();
      this.feedback = await call('show_steps', this.#names(exercise));
      this.#unkept = null;
    });
  }

  /** Keeps what stands in the answer, once typing pauses: stopping loses nothing of it. */
  keep(exercise: OpenExercise, draft: Draft | null): void {
    if (this.feedback?.finished) return;
    this.#unkept = { exercise, draft };
    clearTimeout(this.#pause);
    this.#pause = setTimeout(() => void this.keepNow(), PAUSE_MS);
  }

  /** Keeps it now, as when the screen is left. */
  keepNow(): Promise<void> {
    clearTimeout(this.#pause);
    const unkept = this.#unkept;
    this.#unkept = null;
    if (!unkept || JSON.stringify(unkept.draft) === this.#kept) return this.#keeping;
    this.#kept = JSON.stringify(unkept.draft);
    this.#keeping = this.#keeping.then(async () => {
      try {
        await call('keep_draft', { ...this.#names(unkept.exercise), draft: unkept.draft });
      } catch (thrown) {
        this.#kept = 'unknown';
        this.error = asError(thrown);
      }
    });
    return this.#keeping;
  }

  /** Lets what is being kept arrive, and starts nothing new. */
  #settle(): Promise<void> {
    clearTimeout(this.#pause);
    return this.#keeping;
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
