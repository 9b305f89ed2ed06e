// A way through every screen of a student, from the first one to the questions of the
// safe. `at` is called at each stop with its name; hooks alone lead on, so that the
// way is the same in every language.
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fillIn } from './fill-in.mjs';

export const TOOLS = [
  'line',
  'strips',
  'blocks',
  'counters',
  'chart',
  'protractor',
  'ruler',
  'clock',
  'timer',
  'coins',
  'grid',
  'notes',
];
/** Concepts of the built-in catalogue whose exercises are answered in other ways. */
const OTHER_ANSWERS = 4;

/** The device's language, and no guide by itself. */
export async function setDevice(bridge, change) {
  const { settings } = await bridge.post('/call/start', {});
  await bridge.post('/call/save_device_settings', { ...settings, ...change });
}

export async function walkStudent({ page, bridge, language, pack, code, today }, at) {
  const hook = (name) => page.getByTestId(name);
  const first = (start) => page.locator(`[data-testid^="${start}"]`).first();
  const close = async () => {
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => !document.querySelector('dialog[open]'));
  };

  const here = async () => (await bridge.post('/call/start', {})).students.map((one) => one.id);

  // --- joining
  await setDevice(bridge, { language, guides_read: ['all'] });
  await page.goto(bridge.url);
  await page.locator(`html[lang=${language}]`).waitFor();
  await hook('start-student').waitFor();
  await at('start');
  await hook('start-student').click();
  await hook('join-pick').waitFor();
  await at('join');
  await bridge.post('/test/pick', [pack]);
  await hook('join-pick').click();
  await hook('join-next').waitFor();
  await at('join-pack');
  await hook('join-next').click();
  await hook('join-code').fill(code.slice(0, -1) + (code.endsWith('7') ? '8' : '7'));
  await page.getByRole('alert').waitFor();
  await at('join-code-wrong');
  await hook('join-code').fill(code);
  await page.waitForFunction(() => !document.querySelector('[role=alert]'));
  await hook('join-next').click();
  await hook('join-nickname').fill('Wren');
  await hook('join-picture-heron').click();
  await at('join-you');
  await hook(`join-language-${language}`).click();
  const before = await here();
  await hook('join-finish').click();

  // --- today
  await first('rate-').waitFor();
  await at('today');
  await hook('guide-open').click();
  await hook('guide').waitFor();
  await at('today-guide');
  await hook('guide-open').click();
  for (const one of await page.locator('[data-testid^="rate-"][data-testid$="-0"]').all())
    await one.click();
  for (const one of await page.locator('[data-testid^="outcome-"][data-testid$="-right"]').all())
    await one.click();
  await hook('today-practice').waitFor();
  await at('today-marked');

  // --- practice
  await hook('tab-practice').click();
  await hook('practice-sure-1').waitFor();
  await at('practice-sure');
  await hook('practice-sure-1').click();
  await hook('answer-submit').waitFor();
  await at('practice-answer');
  await hook('practice-tools').click();
  await hook('tool-state').waitFor();
  await at('practice-tools');
  await hook('practice-tools').click();
  while (await hook('practice-hint').isVisible()) {
    const hints = await page.locator('.hints section').count();
    await hook('practice-hint').click();
    await page.waitForFunction(
      (n) => document.querySelectorAll('.hints section').length > n,
      hints,
    );
  }
  await at('practice-hints');
  await hook('print-practice').click();
  await hook('own-print-save').waitFor();
  await at('practice-print');
  await close();
  await fillIn(page);
  await hook('answer-submit').click();
  await hook('practice-feedback').waitFor();
  await at('practice-feedback');
  if (await hook('practice-show-steps').isVisible()) {
    await hook('practice-show-steps').click();
    await hook('practice-next').waitFor();
    await at('practice-steps');
  }

  // --- my path, and from it exercises that are answered in other ways
  await hook('tab-path').click();
  await first('focus-').waitFor();
  await at('path');
  for (const n of [0, 1, 2]) {
    await page.locator('[data-testid^="focus-"]').nth(n).click();
    await page.locator('[data-testid^="focus-"][aria-pressed=true]').nth(n).waitFor();
  }
  await at('path-focus');
  await hook('print-path').click();
  await hook('own-print-save').waitFor();
  await at('path-print');
  await close();
  const kinds = new Set();
  const concepts = await page
    .locator('[data-testid^="practise-"]')
    .evaluateAll((all) => all.map((one) => one.dataset.testid));
  for (const concept of concepts) {
    if (kinds.size === OTHER_ANSWERS) break;
    await hook('tab-path').click();
    const answer = page.waitForResponse((response) => response.url().endsWith('/call/practice'));
    await hook(concept).click();
    const { item } = await (await answer).json();
    const kind = item?.entry.kind;
    if (!kind || kinds.has(kind)) continue;
    kinds.add(kind);
    await hook('practice-sure-2').click();
    await hook('answer-submit').waitFor();
    await at(`practice-${kind}`);
  }
  await hook('practice-stop').click();
  await hook('practice-summary').waitFor();
  await at('practice-summary');
  await hook('tools-alone').click();
  for (const tool of TOOLS) {
    await hook(`tool-${tool}`).click();
    await page.locator(`[data-testid="tool-${tool}"][aria-checked=true]`).waitFor();
    await hook('tool-state').waitFor();
    await at(`tool-${tool}`);
  }

  // --- hand in
  await hook('tab-handin').click();
  await hook('hand-in-make').waitFor();
  await at('handin');
  await hook('hand-in-make').click();
  await hook('hand-in-made').waitFor();
  await at('handin-made');

  // --- settings and what is kept safe
  await hook('student-settings').click();
  await hook('leave-student').waitFor();
  await at('settings');
  await hook('ends-exercises').click();
  await page.locator('[data-testid="ends-exercises"][aria-checked=true]').waitFor();
  await at('settings-exercises');
  await hook('ends-minutes').click();
  await page.locator('[data-testid="ends-minutes"][aria-checked=true]').waitFor();
  await hook('student-safe').locator('summary').click();
  await hook('pin-new').waitFor();
  await at('settings-safe');
  await hook('back-up').click();
  await hook('passphrase-again').waitFor();
  await hook('passphrase').fill('short');
  await hook('passphrase-go').click();
  await page.getByRole('alert').waitFor();
  await at('safe-passphrase');
  await close();
  await hook('remove-student').click();
  await hook('sure-go').waitFor();
  await at('safe-remove');
  await close();
  await hook('pin-new').fill('4071');
  await hook('pin-set').click();
  await hook('pin-remove').waitFor();
  await hook('leave-student').click();
  const mine = (await here()).find((id) => !before.includes(id));
  await hook(`student-${mine}`).waitFor();
  await at('start-students');
  await hook(`student-${mine}`).click();
  await hook('pin').fill('0000');
  await hook('pin-go').click();
  await page.getByRole('alert').waitFor();
  await page.locator('dialog summary').click();
  await at('safe-pin');
  await hook('pin').fill('4071');
  await hook('pin-go').click();
  await hook('tab-today').waitFor();

  // --- a day without school, and a store that is damaged
  const saturday = new Date(`${today}T12:00:00Z`);
  saturday.setUTCDate(saturday.getUTCDate() + 6 - saturday.getUTCDay());
  await bridge.post('/test/today', saturday.toISOString().slice(0, 10));
  await hook('tab-path').click();
  await first('focus-').waitFor();
  await hook('tab-today').click();
  await page.locator('main h1').waitFor();
  await first('catch-up-').waitFor();
  await at('today-no-school');
  await first('catch-up-').click();
  await hook('today-back').waitFor();
  await at('today-earlier');
  await bridge.post('/test/today', today);
  const damaged = join(bridge.data, 'own/students/ffffffffffffffff.sqlite');
  writeFileSync(damaged, 'no store at all');
  await page.goto(bridge.url);
  await hook('damaged').waitFor();
  await at('start-damaged');
  rmSync(damaged);
}
