// Measures every screen at each stop of the ways in `walk`. MEASURE_ALL=1 measures every
// theme in every language. Without it, contrast is measured in the first language only (the
// colours are the same), and axe runs in one theme for each language.
import { test } from './fixtures';
import { LANGUAGES } from './languages';
import { ALL, DESK as OF_DESK, look, type ShownTheme, STUDENT, THEMES } from './measure/look';
import { makeClass } from './own-class';
import { DESK } from './sizes';
import { walkStudent } from './walk/student';
import { walkOwnDesk } from './walk/teacher';

for (const [place, language] of LANGUAGES.entries()) {
  const axe: ShownTheme = place === 0 ? 'light' : 'dark';
  const colours = ALL || place === 0;
  const how = { sizes: true, themes: colours ? THEMES : [axe], axe: ALL ? THEMES : [axe] };

  test(`every screen of a student, ${language}`, async ({ page, bridge }) => {
    test.setTimeout(1_200_000);
    const { codes, pin_signs, pack } = await makeClass(bridge);
    await walkStudent(
      { page, bridge, language, pack, code: codes[0] ?? '', pin_signs: pin_signs[0] ?? '' },
      (stop) => look(page, stop, STUDENT, how),
    );
  });

  test.describe(() => {
    test.use(DESK);
    test(`the desk of a class without hand-ins, ${language}`, async ({ page, bridge }) => {
      await makeClass(bridge);
      await walkOwnDesk({ page, bridge, language }, (stop) => look(page, stop, OF_DESK, how));
    });
  });
}
