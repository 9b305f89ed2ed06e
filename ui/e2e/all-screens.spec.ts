// Measures every screen at each stop of the ways in `walk`. MEASURE_ALL=1 measures every
// theme in both languages. Without it, contrast is measured in English only (the colours
// are the same), and axe runs in one theme for each language.
import type { Language } from '../src/lib/backend/contract';
import { test } from './fixtures';
import { ALL, DESK as OF_DESK, look, STUDENT, THEMES } from './measure/look';
import { makeClass } from './own-class';
import { DESK } from './sizes';
import { walkStudent } from './walk/student';
import { walkOwnDesk } from './walk/teacher';

const ROUNDS: { language: Language; colours: boolean; axe: 'light' | 'dark' }[] = [
  { language: 'en', colours: true, axe: 'light' },
  { language: 'es', colours: ALL, axe: 'dark' },
];

for (const { language, colours, axe } of ROUNDS) {
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
