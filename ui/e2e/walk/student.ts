// Every screen of a student, from the first one to the questions before a removal.
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { choose, finders, leaveDialog } from '../finders';
import { TODAY } from '../places';
import { fillIn } from './fill-in';
import { type At, openIn, type Way } from './way';

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
/** How many kinds of entries are visited beside the first exercise. */
const OTHER_ANSWERS = 4;
/** The Saturday after TODAY. */
const SATURDAY = '2026-09-19';

export interface StudentWay extends Way {
  pack: string;
  /** What the slip says. */
  code: string;
  pin_signs: string;
}

export async function walkStudent(way: StudentWay, at: At): Promise<void> {
  const { page, bridge, language, pack, code, pin_signs } = way;
  const { hook, hooks } = finders(page);
  const alert = page.getByRole('alert');
  const ids = async () => (await bridge.call('start', {})).students.map((one) => one.id);

  // --- joining
  await openIn(way);
  await expect(hook('start-student')).toBeVisible();
  await at('start');
  await hook('start-student').click();
  await expect(hook('join-pick')).toBeVisible();
  await at('join');
  await bridge.pick(pack);
  await hook('join-pick').click();
  await expect(hook('join-next')).toBeVisible();
  await at('join-pack');
  await hook('join-next').click();
  await hook('join-code').fill(code.slice(0, -1) + (code.endsWith('7') ? '8' : '7'));
  await expect(alert).toBeVisible();
  await at('join-code-wrong');
  await hook('join-code').fill(code);
  await expect(alert).toHaveCount(0);
  await hook('join-next').click();
  await hook('join-nickname').fill('Wren');
  await hook('join-avatar-heron').click();
  await at('join-you');
  await hook(`join-language-${language}`).click();
  const before = await ids();
  await hook('join-finish').click();

  // --- today
  await expect(hooks('rate-').first()).toBeVisible();
  await at('today');
  await hook('say-day').click();
  await expect(hook('say-day-1')).toBeVisible();
  await at('today-which-day');
  await leaveDialog(page);
  await hook('guide-open').click();
  await expect(hook('guide')).toBeVisible();
  await at('today-guide');
  await hook('guide-open').click();
  for (const one of await hooks('rate-', '-0').all()) await one.click();
  for (const one of await hooks('outcome-', '-right').all()) await one.click();
  await expect(hook('today-practice')).toBeVisible();
  await at('today-marked');

  // --- practice
  await hook('tab-practice').click();
  await expect(hook('practice-sure-1')).toBeVisible();
  await at('practice-sure');
  await hook('practice-sure-1').click();
  await expect(hook('answer-submit')).toBeVisible();
  await at('practice-answer');
  await hook('practice-tools').click();
  await expect(hook('tool-state')).toBeVisible();
  await at('practice-tools');
  await hook('practice-tools').click();
  const hints = page.locator('.hints section');
  while (await hook('practice-hint').isVisible()) {
    const shown = await hints.count();
    await hook('practice-hint').click();
    await expect(hints).toHaveCount(shown + 1);
  }
  await at('practice-hints');
  await hook('print-practice').click();
  await expect(hook('own-print-save')).toBeVisible();
  await at('practice-print');
  await leaveDialog(page);
  await fillIn(page);
  await hook('answer-submit').click();
  await expect(hook('practice-feedback')).toBeVisible();
  await at('practice-feedback');
  if (await hook('practice-show-steps').isVisible()) {
    await hook('practice-show-steps').click();
    await expect(hook('practice-next')).toBeVisible();
    await at('practice-steps');
  }

  // --- my path, and from it exercises with other kinds of entries
  await hook('tab-path').click();
  await expect(hooks('focus-').first()).toBeVisible();
  await at('path');
  for (const n of [0, 1, 2]) {
    await hooks('focus-').nth(n).click();
    await expect(hooks('focus-').nth(n)).toHaveAttribute('aria-pressed', 'true');
  }
  await at('path-focus');
  await hook('print-path').click();
  await expect(hook('own-print-save')).toBeVisible();
  await at('path-print');
  await leaveDialog(page);
  const kinds = new Set<string>();
  const concepts = await hooks('practise-').evaluateAll((all) =>
    all.map((one) => one.dataset.testid ?? ''),
  );
  for (const concept of concepts) {
    if (kinds.size === OTHER_ANSWERS) break;
    await hook('tab-path').click();
    const answer = page.waitForResponse('**/call/practice');
    await hook(concept).click();
    const { item } = (await (await answer).json()) as { item?: { entry: { kind: string } } };
    const kind = item?.entry.kind;
    if (!kind || kinds.has(kind)) continue;
    kinds.add(kind);
    await hook('practice-sure-2').click();
    await expect(hook('answer-submit')).toBeVisible();
    await at(`practice-${kind}`);
  }
  expect(kinds.size, 'other kinds of answers').toBe(OTHER_ANSWERS);
  await hook('practice-stop').click();
  await expect(hook('practice-summary')).toBeVisible();
  await at('practice-summary');
  await hook('tools-alone').click();
  for (const tool of TOOLS) {
    await choose(page, `tool-${tool}`);
    await expect(hook('tool-state')).toBeVisible();
    await at(`tool-${tool}`);
  }

  // --- hand in
  await hook('tab-handin').click();
  await expect(hook('hand-in-make')).toBeVisible();
  await at('handin');
  await hook('hand-in-make').click();
  await expect(hook('hand-in-made')).toBeVisible();
  await at('handin-made');

  // --- settings, and what keeps everything safe
  await hook('student-settings').click();
  await expect(hook('leave-student')).toBeVisible();
  await at('settings');
  await choose(page, 'ends-exercises');
  await at('settings-exercises');
  await choose(page, 'ends-minutes');
  await hook('student-safe').locator('summary').click();
  await expect(hook('pin-new')).toBeVisible();
  await at('settings-safe');
  await bridge.pick(pack);
  await hook('slip-pick').click();
  await expect(hook('join-code')).toBeVisible();
  await at('settings-slip');
  await hook('back-up').click();
  await expect(hook('passphrase-again')).toBeVisible();
  await hook('passphrase').fill('short');
  await hook('passphrase-go').click();
  await expect(alert).toBeVisible();
  await at('safe-passphrase');
  await leaveDialog(page);
  await hook('remove-student').click();
  await expect(hook('sure-go')).toBeVisible();
  await at('safe-remove');
  await leaveDialog(page);
  await hook('pin-new-code').fill(code);
  await hook('pin-new-signs').fill(pin_signs);
  await hook('pin-new').fill('4071');
  await hook('pin-set').click();
  await expect(hook('pin-remove')).toBeVisible();
  await hook('leave-student').click();
  const mine = (await ids()).find((id) => !before.includes(id)) ?? '';
  await expect(hook(`student-${mine}`)).toBeVisible();
  await at('start-students');
  await hook(`student-${mine}`).click();
  await hook('pin').fill('0000');
  await hook('pin-go').click();
  await expect(alert).toBeVisible();
  await page.locator('dialog summary').click();
  await at('safe-pin');
  await hook('pin').fill('4071');
  await hook('pin-go').click();
  await expect(hook('tab-today')).toBeVisible();

  // --- a code that joins twice
  await page.goto(bridge.url);
  await hook('start-student').click();
  await bridge.pick(pack);
  await hook('join-pick').click();
  await hook('join-next').click();
  await hook('join-code').fill(code);
  await hook('join-next').click();
  await expect(hook('join-again-mine')).toBeVisible();
  await at('join-again');
  await hook('join-again-mine').click();
  await hook(`student-${mine}`).click();
  await hook('pin').fill('4071');
  await hook('pin-go').click();
  await expect(hook('tab-today')).toBeVisible();

  // --- a day without school, and a store that is damaged
  await bridge.setToday(SATURDAY);
  await hook('tab-path').click();
  await expect(hooks('focus-').first()).toBeVisible();
  await hook('tab-today').click();
  await expect(hooks('catch-up-').first()).toBeVisible();
  await at('today-no-school');
  await hooks('catch-up-').first().click();
  await expect(hook('today-back')).toBeVisible();
  await at('today-earlier');
  await bridge.setToday(TODAY);
  const damaged = join(bridge.data, 'own/students/ffffffffffffffff.sqlite');
  writeFileSync(damaged, 'no store at all');
  await page.goto(bridge.url);
  await expect(hook('damaged')).toBeVisible();
  await at('start-damaged');
  rmSync(damaged);
}
