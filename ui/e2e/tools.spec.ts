// The tools beside an exercise: each is used by keys alone and describes its state in
// words. The ways through every screen measure how they look.
import { boxOf } from './finders';
import { expect, test } from './fixtures';
import { measurable } from './measure/look';
import { join, makeClass, markDay, open } from './own-class';
import { SIZES } from './sizes';
import { TOOLS } from './walk/student';

/** A control of each tool, a key, and what the tool then says. */
const WORKED: Record<string, [hook: string, key: string, told: string]> = {
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
    'A ruler. Each centimeter is in 10 equal parts. A bar goes from 0 to 5 and 1 mark.',
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

test.use({ viewport: SIZES.landscape });

test('each tool is worked beside an exercise', async ({ page, bridge, hook }) => {
  const student = await join(bridge, await makeClass(bridge));
  await markDay(bridge, student);
  await open(page, student);
  await hook('tab-practice').tap();
  await expect(hook('practice-stop')).toBeVisible();
  await hook('practice-tools').tap();
  const [exercise, tools] = [await boxOf(page.locator('article')), await boxOf(hook('tools'))];
  expect(exercise.right).toBeLessThanOrEqual(tools.left);
  expect(exercise.top).toBeLessThan(tools.bottom);

  const state = hook('tool-state');
  const take = async (tool: string) => {
    await hook(`tool-${tool}`).tap();
    await expect(hook(`tool-${tool}`)).toHaveAttribute('aria-checked', 'true');
    await expect(state).toBeVisible();
  };
  for (const tool of TOOLS) {
    await test.step(tool, async () => {
      const [stop, key, told] = WORKED[tool] ?? ['', '', 'no such tool'];
      await take(tool);
      await measurable(page);
      expect.soft(await page.evaluate(() => window.measure.reflow()), tool).toEqual([]);
      const before = await state.innerText();
      await hook(`tool-${tool}`).focus();
      for (let n = 0; n < 80; n += 1) {
        if (await hook(stop).evaluate((one) => one === document.activeElement)) break;
        await page.keyboard.press('Tab');
      }
      await expect(hook(stop), 'Tab leads there').toBeFocused();
      await page.keyboard.press(key);
      if (tool === 'notes') await page.keyboard.press('Tab');
      await expect(state).toHaveText(told);
      await hook('tool-undo').press('Enter');
      await expect(state).toHaveText(before);
    });
  }

  await test.step('a tool keeps its state while the exercise goes on', async () => {
    await take('line');
    await hook('tool-line-on-1').tap();
    await hook('practice-tools').tap();
    await expect(hook('tools')).toHaveCount(0);
    await hook('practice-tools').tap();
    await expect(state).toContainText('at 1');
  });

  await test.step('the pen draws', async () => {
    await take('notes');
    await hook('tool-notes-sheet').scrollIntoViewIfNeeded();
    const { left, top } = await boxOf(hook('tool-notes-sheet'));
    await page.mouse.move(left + 40, top + 40);
    await page.mouse.down();
    await page.mouse.move(left + 90, top + 80, { steps: 6 });
    await page.mouse.up();
    await expect(state).toHaveText(/^1 pen stroke,/);
    await expect(hook('tool-notes-sheet').locator('path')).toHaveAttribute('d', /(L[^L]+){3}/);
  });
});
