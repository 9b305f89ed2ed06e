import type { ProjectorConcept, TalkConcept } from '../../lib/backend';
import { list, number, say } from '../../lib/words';
import { misconceptionWords } from '../board/board';

export const MINUTES = [2, 3, 4, 5, 6, 8, 10];
export const USUAL_MINUTES = 4;

/** The least expected number of sure but wrong students that is mentioned. */
const SURE_WORTH_SAYING = 0.5;

/** Why a concept deserves the minutes, or why not: sentences, strongest first. */
export function reasons(concept: TalkConcept): string[] {
  if (concept.way === null) {
    return [say(concept.phase === 'preview' ? 'talk-why-preview' : 'talk-why-no-report')];
  }
  const { expected_wrong: wrong, sure_wrong: sure } = concept;
  const found =
    wrong === null
      ? [say('talk-why-order')]
      : [say('talk-why-wrong', { count: number(Math.round(wrong)) })];
  if (sure !== null && sure >= SURE_WORTH_SAYING) {
    found.push(say('talk-why-sure', { count: number(Math.max(1, Math.round(sure))) }));
  }
  if (concept.trend === 'falling') found.push(say('talk-why-falling'));
  if (concept.dependants_soon.length > 0) {
    found.push(
      say('talk-why-dependants', {
        count: concept.dependants_soon.length,
        concepts: list(concept.dependants_soon.map((one) => one.title)),
      }),
    );
  }
  const [commonest] = concept.misconceptions;
  if (commonest) {
    const misconception = misconceptionWords(commonest.code);
    found.push(say('talk-why-misconception', { misconception }));
  }
  if (concept.talked_lately) found.push(say('talk-why-lately'));
  return found;
}

/** What the projector shows after the exercise, in this order. */
export type ProjectorStep = 'misconception' | 'answer' | 'steps';

export function projectorSteps(concept: ProjectorConcept): ProjectorStep[] {
  if (!concept.exercise) return [];
  const steps: ProjectorStep[] = [];
  if (concept.exercise.misconception) steps.push('misconception');
  steps.push('answer');
  if (concept.exercise.steps.length > 0) steps.push('steps');
  return steps;
}
