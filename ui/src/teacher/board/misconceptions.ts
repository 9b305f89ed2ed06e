import { hasWords, say, sayPart } from '../../lib/words';

/** What the teacher reads for a mistake's code. */
export const misconceptionWords = (code: string): string =>
  hasWords(`mistake-${code}`)
    ? sayPart(`mistake-${code}`, 'name')
    : say('concept-mistake-unknown', { code });
