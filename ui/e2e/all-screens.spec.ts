// Measures every screen at each stop of the ways in `walk`. MEASURE_ALL=1 measures every
// theme in every language. Without it, contrast and axe are for the first language (colours and
// structure are the same in the others); of the others, whether their words fit.
import { test } from './fixtures';
import { LANGUAGES } from './languages';
import { ALL, DESK as OF_DESK, type How, look, STUDENT, THEMES } from './measure/look';
import { makeClass } from './own-class';
import { DESK } from './sizes';
import { walkStudent } from './walk/student';
import { walkOwnDesk } from './walk/teacher';

const FIRST: How = { sizes: true, themes: THEMES, axe: ALL ? THEMES : ['light'] };
const OTHER: How = ALL ? FIRST : { sizes: 'tightest', themes: [], axe: [] };

for (const [place, language] of LANGUAGES.entries()) {
  const how = place === 0 ? FIRST : OTHER;
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
