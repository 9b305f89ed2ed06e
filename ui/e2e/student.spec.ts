// A student's first day: class pack and code, a check-in on one screen, practice with pad
// and hints, the path on paper, and a hand-in.
import { boxOf, choose } from './finders';
import { expect, test } from './fixtures';
import { LANGUAGES } from './languages';
import { look, STUDENT, THEMES } from './measure/look';
import { join, makeClass, markDay, open } from './own-class';
import { SIZES } from './sizes';

test('joining with a class pack and a code', async ({ page, bridge, hook, hooks }) => {
  const { codes, pack } = await makeClass(bridge);
  const code = codes[0] ?? '';
  await page.goto('/');
  await hook('start-student').tap();

  await test.step('cancelling the file dialog is no error', async () => {
    await bridge.pick();
    const picked = page.waitForResponse('**/call/pick_class_pack');
    await hook('join-pick').tap();
    await picked;
    await expect(hook('join-pick')).toBeEnabled();
    await expect(page.getByRole('alert')).toHaveCount(0);
  });
  await bridge.pick(pack);
  await hook('join-pick').tap();
  await expect(page.getByText('Room 3')).toBeVisible();
  await hook('join-next').tap();
  await test.step('a wrong code leads no further', async () => {
    await hook('join-code').fill(code.slice(0, -1) + (code.endsWith('7') ? '8' : '7'));
    await expect(page.getByRole('alert')).toBeVisible();
    await hook('join-next').tap();
    await expect(hook('join-code')).toBeVisible();
  });
  await hook('join-code').fill(code.toLowerCase());
  await expect(page.getByText('The code fits.')).toBeVisible();
  await hook('join-next').tap();
  await hook('join-nickname').fill('Wren');
  await hook('join-avatar-heron').tap();
  await hook('join-finish').tap();
  await expect(hooks('rate-').first()).toBeVisible();
});

test('seven check-ins on one screen, a tap each', async ({ page, bridge, hook, hooks }) => {
  const student = await join(bridge, await makeClass(bridge));
  await open(page, student);
  const rates = await hooks('rate-', '-1').all();
  const outcomes = await hooks('outcome-', '-right').all();
  expect(rates).toHaveLength(7);
  const last = page.locator('main li').last();
  const room = async () => (await boxOf(page.locator('footer'))).top - (await boxOf(last)).bottom;
  expect(await room(), 'all on one screen').toBeGreaterThanOrEqual(0);

  const sent: unknown[] = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/call/check_in')) sent.push(request.postDataJSON());
  });
  for (const button of [...rates, ...outcomes]) await button.tap();
  await expect(page.getByText('All rated.')).toBeVisible();
  await expect.poll(() => sent.length, 'each tap is sent once').toBe(14);
  expect(await page.evaluate(() => scrollY), 'without scrolling').toBe(0);

  await test.step('everything is there after a restart, and a key changes a rating', async () => {
    await open(page, student);
    await expect(page.getByText('All rated.')).toBeVisible();
    const chosen = page.locator('[role=radio][aria-checked=true]');
    await expect(chosen).toHaveCount(7);
    await hooks('rate-', '-1').first().press('3');
    await expect(hooks('rate-', '-3').first()).toHaveAttribute('aria-checked', 'true');
    await expect(chosen).toHaveCount(7);
  });

  await test.step('also in every other language in every theme, and in landscape', async () => {
    for (const language of LANGUAGES.slice(1)) {
      await hook('student-settings').tap();
      await choose(page, `language-${language}`);
      await hook('tab-today').tap();
      for (const theme of THEMES) {
        await hook('student-settings').tap();
        await choose(page, `theme-${theme}`);
        await expect(page.locator(`html[data-theme=${theme}]`)).toBeAttached();
        await hook('tab-today').tap();
        await expect(last).toBeVisible();
        expect(await room(), `${language}, ${theme}`).toBeGreaterThanOrEqual(0);
      }
    }
    await page.setViewportSize(SIZES.landscape);
    await expect.poll(room, 'lying').toBeGreaterThanOrEqual(0);
  });
});

test('practice by the pad, hints and steps, and on paper', async ({ page, bridge, hook }) => {
  const student = await join(bridge, await makeClass(bridge));
  await markDay(bridge, student);
  await open(page, student);
  await hook('tab-practice').tap();
  const box = hook('answer-field-0');
  let typed = false;
  // The exercises are random, so it goes on until one is typed.
  for (let n = 0; n < 4 || (!typed && n < 20); n += 1) {
    await hook('practice-sure-1').tap();
    await expect(hook('answer-submit')).toBeVisible();
    if (!typed && (await box.isVisible()) && (await hook('pad-4').isVisible())) {
      typed = true;
      await hook('answer-submit').tap();
      await expect(page.getByText('Fill in your answer first.')).toBeVisible();
      await box.focus();
      await hook('pad-4').tap();
      await hook('pad-2').tap();
      await expect(box, 'the pad types').toHaveValue('42');
      await hook('pad-erase').tap();
      await expect(box, 'the pad erases').toHaveValue('4');
    }
    if (await hook('practice-hint').isVisible()) {
      await hook('practice-hint').tap();
      await expect(page.getByRole('region', { name: 'Hint 1' })).toBeVisible();
    }
    await hook('practice-show-steps').tap();
    await hook('practice-next').tap();
  }
  expect(typed, 'an exercise was answered by the pad').toBe(true);
  await hook('print-practice').tap();
  await hook('own-print-paper-a4').tap();
  await hook('own-print-save').tap();
  await expect(page.getByText(/practice-\d+\.pdf was saved/)).toBeVisible();
  const [file] = await bridge.saved().then((all) => all.filter(({ name }) => /\.pdf$/.test(name)));
  expect(file?.bytes).toBeGreaterThan(5000);
  await page.getByRole('button', { name: 'Close' }).tap();
  await hook('practice-stop').tap();
  await expect(hook('practice-summary')).toBeVisible();
});

test('my path: three in focus at most, and on paper', async ({ page, bridge, hook, hooks }) => {
  await open(page, await join(bridge, await makeClass(bridge)));
  await hook('tab-path').tap();
  for (const n of [0, 1, 2]) {
    await hooks('focus-').nth(n).tap();
    await expect(hooks('focus-').nth(n)).toHaveAttribute('aria-pressed', 'true');
  }
  await hooks('focus-').nth(3).tap();
  await expect(page.getByText('You have three. Take one out first.')).toBeVisible();
  await expect(page.locator('[data-testid^="focus-"][aria-pressed=true]')).toHaveCount(3);
  await hook('print-path').tap();
  await bridge.save('decline');
  await hook('own-print-save').tap();
  await expect(page.getByText('Nothing was saved.')).toBeVisible();
  await hook('own-print-save').tap();
  await expect(page.getByText('my-path.pdf was saved.')).toBeVisible();
  const file = (await bridge.saved()).find(({ name }) => name === 'my-path.pdf');
  expect(file?.bytes).toBeGreaterThan(5000);
});

test('a hand-in is a file, or is shared', async ({ page, bridge, hook }) => {
  let looks = 0;
  const began = Date.now();
  page.on('request', (request) => {
    if (request.url().endsWith('/call/shown_folder')) looks += 1;
  });
  const student = await join(bridge, await makeClass(bridge));
  await markDay(bridge, student);
  await open(page, student);
  await hook('tab-handin').tap();
  await bridge.save('decline');
  await hook('hand-in-make').tap();
  await expect(page.getByText('No file was made.')).toBeVisible();
  await bridge.save('unwritable');
  await hook('hand-in-make').tap();
  await expect(page.getByRole('alert')).toBeVisible();
  await hook('hand-in-make').tap();
  await expect(page.getByText('Your file is made')).toBeVisible();
  const most = 8 + (Date.now() - began) / 5000;
  expect(looks, 'the class folder is asked for every five seconds').toBeLessThan(most);
  const made = (await bridge.saved()).filter(({ name }) => name.endsWith('.sfhandin'));
  expect(made).toHaveLength(1);
  expect(made[0]?.bytes).toBeGreaterThan(200);
  await expect(hook('hand-in-share'), 'no share sheet, no such button').toHaveCount(0);

  await test.step('if the system has a share sheet, sharing comes first', async () => {
    await bridge.setShares(true);
    await open(page, student);
    await hook('tab-handin').tap();
    await hook('hand-in-share').tap();
    await expect(page.getByText('It went to the app you chose.')).toBeVisible();
    await look(page, 'hand-in, shared', STUDENT, { sizes: true });
    const shared = await bridge.shared();
    expect(shared).toHaveLength(1);
    expect(shared[0]?.bytes).toBeGreaterThan(200);
  });
});
