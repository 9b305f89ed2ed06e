// A student's work by keys alone, from the first screen and back to it.
import { expect, test } from './fixtures';
import { byKeys } from './measure/by-keys';
import { makeClass } from './own-class';
import { DESK } from './sizes';

test.use(DESK);

test('a student does everything by keys alone', async ({ page, bridge, hook, hooks }) => {
  const keys = byKeys(page);
  const { act, done, key, leave, to, type } = keys;
  const focused = () => page.evaluate(() => window.measure.hookOf(document.activeElement));
  const { codes, pack } = await makeClass(bridge, { names: [''], grades: [4], concepts_a_day: 3 });
  await page.goto('/');

  await test.step('joining', async () => {
    await expect(hook('start-student')).toBeVisible();
    await act('start-student', 'join-pick');
    await bridge.pick(pack);
    await act('join-pick', 'join-next');
    await act('join-next', 'join-code');
    await to('join-code');
    await type(codes[0] ?? '');
    await key('Enter');
    await done('the code', 'join-nickname');
    await to('join-nickname');
    await type('Wren');
    await to('join-avatar-');
    await key('ArrowRight');
    await done('an arrow');
    expect(await focused(), 'an arrow chooses a picture').toBe('join-avatar-heron');
    await act('join-finish', hooks('rate-'));
  });

  await test.step('rating a day by digits and arrows', async () => {
    for (const [n, press] of ['0', '2', 'ArrowRight'].entries()) {
      await to('rate-');
      await key(press);
      await done('a rating');
      await act('outcome-', undefined, { by: n % 2 === 0 ? 'Enter' : 'Space' });
    }
    await expect(hook('today-practice')).toBeVisible();
    const rated = await page
      .locator('[role=radio][aria-checked=true]')
      .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.testid?.slice(-1)));
    expect(rated.slice(0, 2), 'digits rate').toEqual(['0', '2']);
    expect(rated, 'every concept is rated').toHaveLength(3);
  });

  await test.step('practice', async () => {
    await act('tab-practice', 'practice-sure-0');
    await to('practice-sure-');
    await key('ArrowRight');
    await done('an arrow');
    expect(await focused(), 'an arrow only moves where a choice leads on').toBe('practice-sure-1');
    await expect(hook('answer-submit')).toBeHidden();
    await key('Enter');
    await done('how sure', 'answer-submit');
    for (let n = 0; n < 2; n += 1) {
      if (n > 0) {
        await to('practice-sure-');
        await key('2');
        await done('how sure', 'answer-submit');
      }
      // The first entry has the focus already.
      if ((await page.evaluate(() => document.activeElement?.tagName)) === 'INPUT') {
        const boxes = await hooks('answer-field-').count();
        for (let box = 0; box < boxes; box += 1) {
          if (box > 0) await to('answer-field-');
          await type('7');
        }
        await key('Enter');
        await done('Enter', hook('practice-feedback').or(page.getByRole('alert')));
      } else await key('ArrowRight');
      if (await hook('practice-hint').isVisible()) await act('practice-hint', 'hint-aloud-0');
      if (await hook('practice-show-steps').isVisible())
        await act('practice-show-steps', 'practice-next');
      await act('practice-next', 'practice-sure-0', { back: true });
    }
    await act('practice-tools', 'tool-state');
    await to('tool-');
    await key('ArrowRight');
    await done('another tool', 'tool-state');
    await act('practice-tools', undefined, { back: true });
    await act('print-practice', 'own-print-save');
    await leave();
    await act('practice-stop', 'practice-summary');
    await act('tools-alone', 'tool-state');
  });

  await test.step('the path and the hand-in', async () => {
    await act('tab-path', hooks('focus-'));
    await act('focus-', page.locator('[data-testid^="focus-"][aria-pressed=true]'));
    await act('tab-handin', 'hand-in-make');
    await act('hand-in-make', 'hand-in-made');
  });

  await test.step('settings', async () => {
    await act('student-settings', 'leave-student');
    await to('language-');
    await key('ArrowRight');
    await expect(page.locator('html[lang=es]')).toBeAttached();
    await done('the language');
    await key('ArrowLeft');
    await expect(page.locator('html[lang=en]')).toBeAttached();
    await done('the language');
    await to('theme-');
    await key('ArrowRight');
    await done('the theme');
    await act('safe-open', 'back-up');
    await act('back-up', 'passphrase');
    await leave();
    await act('remove-student', 'sure-go');
    await leave();
  });

  await test.step("leaving by the button and by the device's Back", async () => {
    await act('leave-student', hooks('student-'));
    await act('student-', 'tab-today');
    await page.goBack();
    await expect(hook('tab-today')).toHaveCount(0);
    await expect(hooks('student-').first()).toBeVisible();
  });
});
