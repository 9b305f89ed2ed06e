// Draws an exercise of each concept and every kind of figure in every language. Prints how
// long that takes (the aim is 2 ms) and does not check it, because it depends on the
// machine. `exercises.pictures.ts` makes pictures of them.
import { exercises, show, withFigures } from './exercises';
import { LANGUAGES } from './languages';
import { expect, testOf } from './served';

const test = testOf('contact');

test('an exercise of each concept has text alternatives, and is timed', async ({ page }) => {
  const items = exercises('--level', '2', '--seed', '3');
  expect(items.length).toBeGreaterThanOrEqual(140);
  for (const language of LANGUAGES) {
    await show(page, items, language);
    const texts = await page.getByTestId('card').allTextContents();
    expect(texts).toHaveLength(items.length);
    expect(texts.filter((text) => text.trim().length < 20 || text.includes('⟨'))).toEqual([]);
  }

  const more = exercises('--seed', '0', '--count', '2');
  const figures = withFigures(more);
  expect(figures.kinds, 'kinds of figures').toBeGreaterThanOrEqual(20);
  for (const language of LANGUAGES) {
    await show(page, figures.items, language, true);
    const words = await page.getByTestId('card').locator('> p').allTextContents();
    expect(words.filter((text) => text.trim() === '' || text.includes('⟨'))).toEqual([]);
    expect(words.length).toBeGreaterThanOrEqual(figures.items.length);
  }

  const times = await page.evaluate(([some, runs]) => window.contact.time(some, runs), [
    more,
    2,
  ] as const);
  expect(times, 'each was drawn and timed').toHaveLength(more.length);
  times.sort((a, b) => b.milliseconds - a.milliseconds);
  const ms = (part: number) =>
    (times[Math.floor((times.length - 1) * part)]?.milliseconds ?? 0).toFixed(2);
  console.log(
    `prompt and figure, of ${times.length}: ${ms(0.5)} ms in the middle, ${ms(0.05)} for 95 in 100, ${ms(0)} at most`,
  );
});
