// Measures every screen of the desk with the sample class: in every language but the first,
// which has the shortest words; with MEASURE_ALL=1 in that too, and with axe in every theme.
import { test } from './fixtures';
import { LANGUAGES } from './languages';
import { ALL, DESK as OF_DESK, look, THEMES } from './measure/look';
import { DESK } from './sizes';
import { walkTeacher } from './walk/teacher';

test.use(DESK);

for (const language of LANGUAGES.slice(ALL ? 0 : 1)) {
  test(`every screen of the desk, ${language}`, async ({ page, bridge }) => {
    test.setTimeout(1_200_000);
    const how = { sizes: true, themes: THEMES, axe: ALL ? THEMES : (['light'] as const) };
    await walkTeacher({ page, bridge, language }, (stop) => look(page, stop, OF_DESK, how));
  });
}
