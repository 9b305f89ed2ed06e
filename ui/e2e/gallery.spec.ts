// Every figure and every entry on one page: fills in each entry by taps and by keys, and
// measures the page.
import type { Locator } from '@playwright/test';
import type { Response } from '../src/lib/backend/contract';
import { look, STUDENT, THEMES } from './measure/look';
import { expect, testOf } from './served';

const test = testOf('gallery');
test.describe.configure({ mode: 'default' });

test('each entry gives the response that is filled in', async ({ page }) => {
  const entry = (name: string) => page.getByTestId(`entry-${name}`);
  const part = (name: string, id: string) => entry(name).getByTestId(id);
  /** The response that is expected. */
  const gives = (name: string, expected: Response | null) =>
    expect
      .poll(
        async () =>
          JSON.parse((await page.getByTestId(`given-${name}`).textContent()) ?? '') as unknown,
        name,
      )
      .toEqual(expected);
  /** Types a text into each box by keys. */
  const type = async (name: string, ...texts: string[]) => {
    for (const [n, text] of texts.entries())
      await part(name, `answer-field-${n}`).pressSequentially(text);
  };
  /** Types by the pad; ▸ goes to the next box. */
  const pad = async (name: string, keys: string | string[]) => {
    await part(name, 'answer-field-0').tap();
    for (const key of keys) await part(name, key === '▸' ? 'pad-next' : `pad-${key}`).tap();
  };

  await test.step('by the pad and typed', async () => {
    await gives('whole_number-0', null);
    await pad('whole_number-0', '409');
    await gives('whole_number-0', { kind: 'whole_number', text: '409' });
    await pad('whole_number-1', '−7');
    await gives('whole_number-1', { kind: 'whole_number', text: '−7' });
    await pad('decimal-0', '12.05');
    await gives('decimal-0', { kind: 'decimal', text: '12.05' });
    await pad('fraction-0', '3▸4');
    await gives('fraction-0', { kind: 'fraction', top: '3', bottom: '4' });
    await pad('mixed-0', '2▸1▸8');
    await gives('mixed-0', { kind: 'mixed', whole: '2', top: '1', bottom: '8' });
    await type('money-0', '3.50');
    await gives('money-0', { kind: 'money', text: '3.50' });
    await type('time-0', '10', '42');
    await gives('time-0', { kind: 'time', hour: '10', minute: '42', half_day: null });
    await type('time-1', '7', '05');
    await gives('time-1', null);
    await part('time-1', 'answer-half-pm').tap();
    await gives('time-1', { kind: 'time', hour: '7', minute: '05', half_day: 'pm' });
    await type('duration-0', '1', '25');
    await gives('duration-0', { kind: 'duration', hours: '1', minutes: '25' });
    await type('duration-1', '45');
    await gives('duration-1', { kind: 'duration', hours: '', minutes: '45' });
    await pad('expression-0', ['3', '(', 'x', '+', '2', ')']);
    await gives('expression-0', { kind: 'expression', text: '3(x+2)' });
    await pad('equation-0', ['c', '=', '9', 't']);
    await gives('equation-0', { kind: 'equation', text: 'c=9t' });
    await type('coordinates-0', '3', '-2');
    await gives('coordinates-0', { kind: 'coordinates', x: '3', y: '-2' });
    await type('angle-0', '75');
    await gives('angle-0', { kind: 'angle', text: '75' });
    await pad('quotient_remainder-0', '12▸3');
    await gives('quotient_remainder-0', {
      kind: 'quotient_remainder',
      quotient: '12',
      remainder: '3',
    });
    await type('several_numbers-0', '4', '2.5');
    await gives('several_numbers-0', { kind: 'several_numbers', texts: ['4', '2.5'] });
    await pad('boxes-0', '3▸12');
    await gives('boxes-0', { kind: 'boxes', texts: ['3', '12'] });
    await pad('boxes-1', ['−', '2', '▸', '0', '.', '5', '▸', '3']);
    await gives('boxes-1', { kind: 'boxes', texts: ['−2', '0.5', '3'] });
  });

  await test.step('by choosing and ordering', async () => {
    await part('comparison-0', 'answer-choice-0').press('>');
    await gives('comparison-0', { kind: 'comparison', sign: 'greater' });
    await part('one_choice-0', 'answer-choice-3').tap();
    await gives('one_choice-0', { kind: 'one_choice', index: 3 });
    await page.keyboard.press('ArrowUp');
    await gives('one_choice-0', { kind: 'one_choice', index: 2 });
    for (const n of [0, 1, 2, 2]) await part('several_choices-0', `answer-choice-${n}`).tap();
    await gives('several_choices-0', { kind: 'several_choices', indexes: [0, 1] });
    await part('ordering-0', 'order-earlier-1').tap();
    await gives('ordering-0', { kind: 'ordering', order: [1, 0, 2] });
    await part('ordering-0', 'order-later-0').press('Enter');
    await gives('ordering-0', { kind: 'ordering', order: [0, 1, 2] });
  });

  await test.step('the second of two parts comes after the first', async () => {
    const one = entry('two_parts-0');
    const second = one.getByTestId('answer-second');
    await expect(second.getByTestId('answer-choice-0')).toHaveCount(0);
    await gives('two_parts-0', null);
    await one.getByTestId('answer-first').getByTestId('answer-choice-0').press('<');
    await gives('two_parts-0', null);
    await second.getByTestId('answer-choice-0').press('ArrowDown');
    await gives('two_parts-0', {
      kind: 'two_parts',
      first: { kind: 'comparison', sign: 'less' },
      second: { kind: 'one_choice', index: 1 },
    });
    const other = entry('two_parts-1');
    await other.getByTestId('answer-first').getByTestId('answer-choice-1').tap();
    await other.getByTestId('answer-second').getByTestId('answer-field-0').pressSequentially('84');
    await gives('two_parts-1', {
      kind: 'two_parts',
      first: { kind: 'one_choice', index: 1 },
      second: { kind: 'whole_number', text: '84' },
    });
  });

  await test.step('by tapping and dragging in figures', async () => {
    /** Taps a point of a figure, in its own units. */
    const tapAt = async (figure: Locator, x: number, y: number) => {
      const svg = figure.locator('svg');
      const position = await svg.evaluate(
        (one: SVGSVGElement, [px, py]) => {
          const { width, height } = one.viewBox.baseVal;
          const box = one.getBoundingClientRect();
          return { x: (px / width) * box.width, y: (py / height) * box.height };
        },
        [x, y] as const,
      );
      await svg.tap({ position });
    };
    // A step is 340 / 8 px; the grid starts 52 px from the left and 22 px from the top. This is
    // (2, -1).
    await tapAt(part('coordinates-1', 'answer-grid'), 52 + 6 * 42.5 + 5, 22 + 4 * 42.5 - 5);
    await gives('coordinates-1', { kind: 'coordinates', x: '2', y: '-1' });
    const line = part('number_line_point-0', 'answer-line');
    await tapAt(line, 36 + (488 * 3) / 8 + 6, 34);
    await gives('number_line_point-0', { kind: 'number_line_point', at: { top: 3, bottom: 4 } });
    await line.press('ArrowRight');
    await gives('number_line_point-0', { kind: 'number_line_point', at: { top: 1, bottom: 1 } });
    await part('number_line_ray-0', 'answer-line').press('End');
    await part('number_line_ray-0', 'answer-ray-open').tap();
    await part('number_line_ray-0', 'answer-ray-left').tap();
    await gives('number_line_ray-0', {
      kind: 'number_line_ray',
      from: { top: 2, bottom: 1 },
      open: true,
      rightward: false,
    });
    const turn = part('angle-1', 'answer-angle');
    await tapAt(turn, 240, 60);
    await gives('angle-1', { kind: 'angle', text: '90' });
    await turn.press('ArrowRight');
    await gives('angle-1', { kind: 'angle', text: '91' });
    for (const n of [0, 5, 3, 3]) await part('shaded_fraction-0', `answer-part-${n}`).tap();
    await gives('shaded_fraction-0', { kind: 'shaded_fraction', parts: [0, 5] });
    for (const n of [1, 4]) await part('shaded_fraction-1', `answer-part-${n}`).press('Enter');
    await gives('shaded_fraction-1', { kind: 'shaded_fraction', parts: [1, 4] });
    for (let n = 0; n < 3; n += 1) await part('plot-0', 'plot-more-1').tap();
    await part('plot-0', 'plot-less-1').tap();
    await gives('plot-0', { kind: 'plot', heights: [0, 10] });
    await part('grid_area-0', 'answer-square-0').press('Enter');
    for (const key of ['ArrowDown', 'ArrowRight', ' ']) await page.keyboard.press(key);
    await gives('grid_area-0', {
      kind: 'grid_area',
      cells: [
        [0, 0],
        [1, 1],
      ],
    });
  });
});

test('every figure and every entry can be seen and tapped', async ({ page }) => {
  await expect(page.getByRole('heading', { name: 'Gallery' })).toBeVisible();
  await look(page, 'gallery', STUDENT, { sizes: true, themes: THEMES, axe: ['light', 'dark'] });
  const { looked } = await page.evaluate((asked) => window.measure.targets(asked), STUDENT);
  expect(looked, 'targets were looked at').toBeGreaterThan(100);
});
