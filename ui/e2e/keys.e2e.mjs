// A student's day without touch or mouse: first screen, check-in, practice and
// hand-in by keys alone, each stop seen by its ring.
import { checks, openPage, SIZES, startBridge, startChromium } from './bridge.mjs';
import { makeClass, TODAY } from './own-class.mjs';

const check = checks();
const bridge = await startBridge({ today: TODAY });
const browser = await startChromium();

try {
  const { codes, pack } = await makeClass(bridge, { seats: 1, grades: [4], conceptsADay: 3 });
  await bridge.post('/test/pick', [pack]);

  const { page, trouble } = await openPage(browser, bridge.url, SIZES.landscape, {
    hasTouch: false,
    isMobile: false,
  });
  const key = (name) => page.keyboard.press(name);
  const hook = () => page.evaluate(() => document.activeElement?.dataset?.testid ?? '');

  /** Goes on by Tab until the stop whose hook begins so; each stop must show its ring. */
  async function tabTo(start) {
    for (let n = 0; n < 120; n += 1) {
      await key('Tab');
      const ring = await page.evaluate(() => {
        const style = getComputedStyle(document.activeElement);
        return document.activeElement === document.body || style.outlineStyle !== 'none';
      });
      if (!ring) check.that(`the ring at ${await hook()}`, false);
      if ((await hook()).startsWith(start)) return;
    }
    throw new Error(`no way to ${start} by Tab`);
  }
  /** Chooses a stop by Tab and Enter. */
  async function press(start) {
    await tabTo(start);
    await key('Enter');
  }

  await page.getByTestId('start-student').waitFor();
  await press('start-student');
  await page.getByTestId('join-pick').waitFor();
  await press('join-pick');
  await page.getByText('Room 3').waitFor();
  await press('join-next');
  await page.getByTestId('join-code').waitFor();
  await tabTo('join-code');
  await page.keyboard.type(codes[0]);
  await key('Enter');
  await page.getByTestId('join-nickname').waitFor();
  await tabTo('join-nickname');
  await page.keyboard.type('Wren');
  await tabTo('join-picture-');
  await key('ArrowRight');
  check.that('an arrow chooses a picture', (await hook()) === 'join-picture-heron', await hook());
  await press('join-finish');
  await page.locator('[data-testid^="rate-"]').first().waitFor();

  for (const digit of ['0', '2', '3']) {
    await tabTo('rate-');
    await key(digit);
    await tabTo('outcome-');
    await key('Enter');
  }
  await page.getByText('All marked.').waitFor();
  const chosen = page.locator('[role=radio][aria-checked=true]');
  const rated = await chosen.evaluateAll((all) => all.map((e) => e.dataset.testid.slice(-1)));
  check.that('digits rate', rated.join('') === '023', rated.join(''));

  await press('tab-practice');
  await page.getByTestId('practice-sure-0').waitFor();
  await tabTo('practice-sure-');
  await key('ArrowRight');
  check.that('an arrow only moves where a choice leads on', (await hook()) === 'practice-sure-1');
  check.that('and leaves the question', !(await page.getByTestId('answer-submit').isVisible()));
  await key('Enter');
  await page.getByTestId('answer-submit').waitFor();
  await press('practice-show-steps');
  await page.getByTestId('practice-next').waitFor();
  await press('practice-next');
  await page.getByTestId('practice-sure-0').waitFor();
  await press('practice-stop');
  await page.getByTestId('practice-summary').waitFor();

  await press('tab-path');
  await page.locator('[data-testid^="focus-"]').first().waitFor();
  await press('focus-');
  await page.locator('[data-testid^="focus-"][aria-pressed=true]').waitFor();

  await press('tab-handin');
  await page.getByTestId('hand-in-make').waitFor();
  await press('hand-in-make');
  await page.getByText('Your file is made').waitFor();
  check.that('the whole day by keys', true);

  // Back, as by a device's own button.
  await press('student-settings');
  await press('leave-student');
  await page.locator('[data-testid^="student-"]').first().waitFor();
  await press('student-');
  await page.getByTestId('tab-today').waitFor();
  await page.goBack();
  await page.getByTestId('tab-today').waitFor({ state: 'detached' });
  check.that(
    'back leads to the first screen',
    await page.locator('[data-testid^="student-"]').first().isVisible(),
  );
  check.none('no errors, nothing from elsewhere', trouble);
} catch (error) {
  check.that('the run came to its end', false, String(error.stack));
} finally {
  await browser.close();
  await bridge.stop();
  check.finish();
}
