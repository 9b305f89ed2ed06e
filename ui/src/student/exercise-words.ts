import type { Feedback, OpenExercise } from '../lib/backend';
import { blockWords, entryWords, inTurn } from '../lib/aloud';
import { say } from '../lib/words';

export function feedbackTitle(feedback: Feedback, answered: boolean): string {
  if (feedback.right) return say('practice-right');
  if (!feedback.finished) return say('practice-wrong-more');
  return say(answered ? 'practice-wrong' : 'practice-shown');
}

/** The worked example: exercise, steps and answer. */
function workedWords(exercise: OpenExercise): string[] {
  const example = exercise.worked_first;
  // Once the student went on it is closed and can be opened again.
  if (!example || exercise.confidence !== null) return [];
  return [
    say('practice-worked'),
    ...blockWords(example.prompt),
    ...blockWords(example.choices),
    say('practice-steps'),
    ...example.steps.flatMap(blockWords),
    say('practice-answer'),
    ...blockWords(example.answer),
    say('practice-now-you'),
  ];
}

/** A hint, counted from 0. */
export function hintWords(exercise: OpenExercise, place: number): string {
  const label = say('practice-hint-label', { number: place + 1 });
  return inTurn([label, ...blockWords(exercise.hints_taken[place] ?? [])]);
}

/** The feedback, the answer and the steps. */
export function feedbackWords(feedback: Feedback, answered: boolean): string {
  const answer =
    feedback.answer && !feedback.right
      ? [say('practice-answer'), ...blockWords(feedback.answer)]
      : [];
  const steps =
    feedback.steps.length > 0 ? [say('practice-steps'), ...feedback.steps.flatMap(blockWords)] : [];
  return inTurn([
    feedbackTitle(feedback, answered),
    ...blockWords(feedback.says),
    ...answer,
    ...steps,
  ]);
}

/** All visible text of the exercise. */
export function exerciseWords(
  exercise: OpenExercise,
  feedback: Feedback | null,
  answered: boolean,
): string {
  const asking = exercise.confidence === null && !(feedback?.finished ?? false);
  return inTurn([
    ...workedWords(exercise),
    ...blockWords(exercise.item.prompt),
    ...entryWords(exercise.item.entry),
    ...exercise.hints_taken.map((_, place) => hintWords(exercise, place)),
    ...(asking ? [say('practice-sure')] : []),
    ...(feedback ? [feedbackWords(feedback, answered)] : []),
  ]);
}
