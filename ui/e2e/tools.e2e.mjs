// The hands-on tools: beside an exercise and on their own, each worked by keys
// alone and told in words, in both languages and every size.
import { axe, checks, openPage, sideways, SIZES } from './bridge.mjs';
import { startBridge, startChromium, tooSmall } from './bridge.mjs';
import { joinClass, makeClass, rateAll, TODAY } from './own-class.mjs';
import { TOOLS } from './walk/student.mjs';

/** A stop of each tool, the key that works it, and what is then told. */
const WORKED = {
  line: ['tool-line-on-1', 'Enter', 'The point is at 1. Hops from 0 to 1.'],
  strips: [
    'tool-strip-0-less',
    'Enter',
    'Strip 1: 0 of 2 equal parts shaded. Strip 2: 0 of 4 equal parts shaded.',
  ],
  blocks: [
    'tool-blocks-rods-more',
    'Enter',
    'Base-ten blocks: 0 large cubes, 0 flats, 1 rod, 0 small cubes.',
  ],
  counters: ['tool-counters-filled-more', ' ', 'Ten-frame 1: 1 filled, 0 ringed, 9 empty.'],
  chart: ['tool-chart-on', 'Enter', 'Marked: 10.'],
  protractor: [
    'tool-protractor-side',
    'ArrowRight',
    'A protractor on an angle. One side is at 0 on the inner scale. The other side is at 61 on the inner scale and 119 on the outer scale.',
  ],
  ruler: [
    'tool-ruler-to-1',
    'Enter',
    'A ruler. Each cm is in 10 equal parts. A bar goes from 0 to 5 and 1 mark.',
  ],
  timer: ['tool-timer-5', 'ArrowRight', 'Set to 10 minutes. You do not have to use it.'],
  clock: [
    'tool-clock-5',
    'Enter',
    'A clock. The short hand is between 3 and 4. The long hand is 5 small marks past 12.',
  ],
  coins: ['tool-coins-25-more', 'Enter', 'On the table: 1 × 25¢.'],
  grid: ['tool-grid-0', ' ', '1 square marked'],
  notes: ['tool-notes-text', 'a', '0 pen strokes, 1 typed word.'],
};

const check = checks();
const bridge = await startBridge({ today: TODAY });
const browser = await startChromium();

try {
  const { page, trouble } = await openPage(browser, bridge.url, SIZES.landscape);
  const state = () => page.getByTestId('tool-state').textContent();
  const take = async (tool) => {
    await page.getByTestId(`tool-${tool}`).tap();
    await page.getByTestId('tool-state').waitFor();
  };
  /** Whether Tab alone leads to a stop. */
  async function tabTo(hook) {
    for (let n = 0; n < 80; n += 1) {
      const at = await page.evaluate(() => document.activeElement?.dataset?.testid ?? '');
      if (at === hook) return true;
      await page.keyboard.press('Tab');
    }
    return false;
  }

  const { codes, pack } = await makeClass(bridge);
  await joinClass(bridge, page, { code: codes[0], pack });
  await rateAll(page);
  await page.getByTestId('tab-practice').tap();
  await page.getByTestId('practice-stop').waitFor();

  // --- beside an exercise
  const exercise = await page.getByTestId('practice-stop').isVisible();
  check.that('an exercise stands there', exercise);
  await page.getByTestId('practice-tools').tap();
  await page.getByTestId('tools').waitFor();
  const beside = await page.evaluate(() => {
    const [a, b] = ['article', '[data-testid=tools]'].map((css) =>
      document.querySelector(css).getBoundingClientRect(),
    );
    return a.right <= b.left && a.top < b.bottom;
  });
  check.that('the tools stand beside the exercise', beside);
  for (const tool of TOOLS) {
    await take(tool);
    check.none(`${tool} beside: axe`, await axe(page));
    check.that(`${tool} beside: no sideways`, (await sideways(page)) <= 0);
    const [hook, key, told] = WORKED[tool];
    const before = await state();
    await page.getByTestId(`tool-${tool}`).first().focus();
    check.that(`${tool}: reached by Tab`, await tabTo(hook), hook);
    await page.keyboard.press(key);
    if (tool === 'notes') await page.keyboard.press('Tab');
    check.that(`${tool}: told`, (await state()) === told, await state());
    await page.getByTestId('tool-undo').focus();
    await page.keyboard.press('Enter');
    check.that(`${tool}: taken back`, (await state()) === before, await state());
  }
  // What is on a tool stays while the exercise goes on.
  await take('line');
  await page.getByTestId('tool-line-on-1').tap();
  await page.getByTestId('practice-tools').tap();
  await page.getByTestId('tools').waitFor({ state: 'detached' });
  await page.getByTestId('practice-tools').tap();
  check.that('a tool keeps its state', (await state()).includes('at 1'), await state());
  // The pen.
  await take('notes');
  const sheet = await page.getByTestId('tool-notes-sheet').boundingBox();
  await page.mouse.move(sheet.x + 40, sheet.y + 40);
  await page.mouse.down();
  await page.mouse.move(sheet.x + 90, sheet.y + 80, { steps: 6 });
  await page.mouse.up();
  check.that('the pen draws', (await state()).startsWith('1 pen stroke,'), await state());
  const ink = await page.locator('[data-testid=tool-notes-sheet] path').getAttribute('d');
  check.that('the stroke has its places', ink.split('L').length > 3, ink);

  // --- on their own, once the evening is over
  await page.getByTestId('practice-stop').tap();
  await page.getByTestId('tools-alone').tap();
  await page.getByTestId('tools').waitFor();
  for (const [size, viewport] of Object.entries(SIZES)) {
    await page.setViewportSize(viewport);
    for (const tool of TOOLS) {
      await take(tool);
      check.none(`${tool} ${size}: sizes`, await tooSmall(page));
      check.that(`${tool} ${size}: no sideways`, (await sideways(page)) <= 0);
    }
  }
  await page.setViewportSize(SIZES.tablet);
  for (const theme of ['light', 'dark', 'contrast', 'contrast_dark']) {
    await page.getByTestId('student-settings').tap();
    if (theme === 'dark') await page.getByTestId('language-es').tap();
    await page.getByTestId(`theme-${theme}`).tap();
    await page.locator(`html[data-theme=${theme}]`).waitFor();
    await page.getByTestId('tab-practice').tap();
    await page.getByTestId('tools-alone').or(page.getByTestId('practice-stop')).first().waitFor();
    if (await page.getByTestId('practice-stop').isVisible())
      await page.getByTestId('practice-stop').tap();
    await page.getByTestId('tools-alone').tap();
    for (const tool of TOOLS) {
      await take(tool);
      check.none(`${tool} ${theme}: axe`, await axe(page));
      check.that(`${tool} ${theme}: all words`, !(await page.content()).includes('⟨'));
    }
  }
  check.none('no errors, nothing from elsewhere', trouble);
} catch (error) {
  check.that('the run came to its end', false, String(error.stack));
} finally {
  await browser.close();
  await bridge.stop();
  check.finish();
}
