import { hasWords, say, sayPart } from '../../lib/words';

/** What the teacher reads for a mistake's code. */
export const mistakeWords = (code: string): string =>
  hasWords(`misconception-${code}`)
    ? sayPart(`misconception-${code}`, 'name')
    : say('concept-mistake-unknown', { code });
