// Measures every screen of the desk with the sample class: in Spanish, which has the longer
// words; with MEASURE_ALL=1 in both languages, and with axe in every theme.
import type { Language } from '../src/lib/backend/contract';
import { test } from './fixtures';
import { ALL, DESK as OF_DESK, look, THEMES } from './measure/look';
import { DESK } from './sizes';
import { walkTeacher } from './walk/teacher';

test.use(DESK);

const LANGUAGES: Language[] = ALL ? ['en', 'es'] : ['es'];

for (const language of LANGUAGES) {
  test(`every screen of the desk, ${language}`, async ({ page, bridge }) => {
    test.setTimeout(1_200_000);
    const how = { sizes: true, themes: THEMES, axe: ALL ? THEMES : (['light'] as const) };
    await walkTeacher({ page, bridge, language }, (stop) => look(page, stop, OF_DESK, how));
  });
}
