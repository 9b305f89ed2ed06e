// Evenings at home: a whole evening on every kind of screen, with a break; drafts that come
// back; an evening by a number of exercises; and words of exercises that fail to load.
import type { Page } from '@playwright/test';
import { boxOf, choose, finders } from './finders';
import { answered, expect, test } from './fixtures';
import { LANGUAGES } from './languages';
import { ALL, look, STUDENT } from './measure/look';
import { join, makeClass, markDay, open, setPin } from './own-class';
import { SIZES } from './sizes';
import { fillIn } from './walk/fill-in';

/** Seconds that an exercise seems to take, so that an evening ends after a few. */
const SEEMS_MS = 100_000;
const SCREENS = { ...SIZES, desktop: { width: 1440, height: 900 } };

const PLACES = ['tablet', 'landscape', 'phone', 'desktop'] as const;

/** Every language and every screen; with MEASURE_ALL=1 every language on every screen. */
const EVENINGS = LANGUAGES.flatMap((language, at) =>
  PLACES.filter((_, n) => ALL || n % LANGUAGES.length === at || n === at % PLACES.length).map(
    (place) => [language, place] as const,
  ),
);

/** Does one exercise: confidence, any answer, and the steps if it was wrong. */
async function practise(page: Page): Promise<void> {
  const { hook } = finders(page);
  await hook('practice-sure-1').tap();
  await expect(hook('answer-submit')).toBeVisible();
  await fillIn(page);
  await page.clock.fastForward(SEEMS_MS);
  await hook('answer-submit').tap();
  await expect(hook('practice-feedback').or(page.getByRole('alert')).first()).toBeVisible();
  if (!(await hook('practice-next').isVisible())) await hook('practice-show-steps').tap();
  await hook('practice-next').tap();
}

for (const [language, place] of EVENINGS) {
  test.describe(() => {
    test.use({ viewport: SCREENS[place] });
    test(`an evening to its end, ${language}, ${place}`, async ({ page, bridge, hook, hooks }) => {
      const student = await join(bridge, await makeClass(bridge), { language });
      await markDay(bridge, student);
      const now = await bridge.call('student_settings', { student });
      await bridge.call('save_student_settings', {
        ...{ student, language, evenings: now.evenings, appearance: now.appearance },
        ...{ minutes: now.minutes_least, exercises: null },
      });
      await bridge.changeDevice({ guides_read: ['all'] });
      await page.clock.install();
      const done = async () => (await bridge.call('practice_summary', { student })).finished;
      /** Goes from the first screen to practice, as after a restart. */
      const start = async () => {
        await open(page, student);
        await expect(page.locator(`html[lang=${language}]`)).toBeAttached();
        const step = page.waitForResponse('**/call/practice');
        await hook('tab-practice').tap();
        return (await (await step).json()) as { exercise?: string };
      };

      await start();
      await practise(page);
      await expect(hook('practice-sure-1')).toBeVisible();
      await hook('practice-stop').tap();
      await expect(hook('practice-summary')).toBeVisible();
      expect(await done(), 'stopped by its button: what was done counts').toBe(1);

      const opened = await start();
      await hook('practice-sure-2').tap();
      await expect(hook('answer-submit')).toBeVisible();
      const again = await start();
      expect(again, 'closed in an exercise: it comes back as it was left').toMatchObject({
        exercise: opened.exercise,
        confidence: 2,
      });
      await expect(hook('answer-submit')).toBeVisible();
      await fillIn(page);
      await hook('practice-show-steps').tap();
      await hook('practice-next').tap();

      const over = hook('practice-summary');
      let exercises = 2;
      for (; exercises < 12; exercises += 1) {
        await expect(hook('practice-sure-1').or(over).first()).toBeVisible();
        if (await over.isVisible()) break;
        await practise(page);
      }
      await expect(over, 'it comes to a visible end').toBeVisible();
      expect(await done(), 'nothing was lost on the way').toBe(exercises);
      expect(await page.evaluate(() => scrollY), 'the end is in sight').toBe(0);
      expect((await boxOf(over.locator('h2'))).top).toBeGreaterThanOrEqual(0);
      await look(page, 'the end', STUDENT);
      await hook('practice-finish').tap();
      await expect(hooks('rate-').first()).toBeVisible();
    });
  });
}

/** The visible draft: texts in boxes, and what is chosen or set. */
function filledIn(page: Page): Promise<string> {
  return page.locator('.entry').evaluate((entry) => {
    const copy = entry.cloneNode(true) as HTMLElement;
    for (const one of copy.querySelectorAll('[role=status], [aria-live]')) one.remove();
    for (const one of copy.querySelectorAll('[tabindex]')) one.removeAttribute('tabindex');
    const chosen = [
      ...copy.querySelectorAll<HTMLElement>('[aria-checked=true], [aria-pressed=true]'),
    ];
    return JSON.stringify([
      [...entry.querySelectorAll('input')].map((one) => one.value),
      copy.textContent.replace(/\s+/g, ' '),
      chosen.map((one) => one.dataset.testid),
    ]);
  });
}

test('what was filled in comes back, however it was left', async ({ page, bridge, hook }) => {
  const own = await makeClass(bridge);
  const student = await join(bridge, own);
  await markDay(bridge, student);
  await page.clock.install();
  const kept: { draft: { kind: string } | null }[] = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/call/keep_draft'))
      kept.push(request.postDataJSON() as { draft: { kind: string } });
  });
  page.on('response', (response) => {
    if (response.url().endsWith('/call/keep_draft')) expect.soft(response.ok()).toBe(true);
  });
  const again = async () => {
    await hook('tab-today').tap();
    await expect(hook('today-aloud')).toBeVisible();
    await hook('tab-practice').tap();
    await expect(hook('answer-submit')).toBeVisible();
  };
  await open(page, student);
  await hook('tab-practice').tap();

  // The exercises are random, so it goes on until both kinds came.
  const kinds = new Set<string | undefined>();
  for (let n = 0; n < 3 || (kinds.size < 2 && n < 25); n += 1) {
    await hook('practice-sure-1').tap();
    await expect(hook('answer-submit')).toBeVisible();
    const empty = await filledIn(page);
    const before = kept.length;
    await fillIn(page);
    const filled = await filledIn(page);
    expect(filled).not.toBe(empty);
    if (n === 0) {
      // The draft is kept when typing pauses, and not again without a change.
      await expect.poll(() => kept.length).toBeGreaterThan(before);
      await page.clock.fastForward(1000);
      await answered(page.context());
      const count = kept.length;
      await page.clock.fastForward(5000);
      await page.reload();
      expect(kept, 'not kept again without a change').toHaveLength(count);
      await hook(`student-${student}`).tap();
      await hook('tab-practice').tap();
      await expect(hook('answer-submit')).toBeVisible();
    } else {
      // Leaves before any pause.
      await again();
    }
    expect(await filledIn(page), 'it is there again').toBe(filled);
    kinds.add(kept.at(-1)?.draft?.kind);
    // A wrong first try stays; then the exercise ends, and the next one is empty.
    await hook('answer-submit').tap();
    await expect(hook('practice-feedback')).toBeVisible();
    if (!(await hook('practice-next').isVisible())) {
      await again();
      expect(await filledIn(page), 'also after a first try').toBe(filled);
      await hook('practice-show-steps').tap();
    }
    await hook('practice-next').tap();
    await expect(hook('practice-sure-1')).toBeVisible();
  }
  expect(kinds.size, 'typed and tapped answers were among them').toBeGreaterThanOrEqual(2);
  await hook('practice-sure-1').tap();
  await expect(hook('answer-submit')).toBeVisible();
  const [values, , chosen] = JSON.parse(await filledIn(page)) as [string[], string, string[]];
  expect(values.join('') + chosen.join(''), 'a new exercise is empty').toBe('');

  await test.step("also behind a PIN, left by the device's Back", async () => {
    await setPin(bridge, own, student, '4071');
    const enter = async () => {
      await hook(`student-${student}`).tap();
      await hook('pin').fill('4071');
      await hook('pin-go').tap();
      await hook('tab-practice').tap();
      await expect(hook('answer-submit')).toBeVisible();
    };
    await page.goto('/');
    await enter();
    await fillIn(page);
    const locked = await filledIn(page);
    // Back leads through Today to the first screen.
    await page.goBack();
    await expect(hook('today-aloud')).toBeVisible();
    await page.goBack();
    await expect(hook('start-student')).toBeVisible();
    await enter();
    expect(await filledIn(page)).toBe(locked);
  });
});

test('an evening by a number of exercises', async ({ page, bridge, hook }) => {
  const student = await join(bridge, await makeClass(bridge));
  await markDay(bridge, student);
  await open(page, student);
  await hook('student-settings').tap();
  await choose(page, 'ends-exercises');
  await choose(page, 'exercises-4');
  await hook('tab-practice').tap();
  await expect(page.getByText('0 of 4 done')).toBeVisible();
  await expect(page.getByRole('img', { name: 'Tonight: 0 of 4 exercises' })).toBeVisible();
  await look(page, 'practice by exercises', STUDENT, { sizes: true });
  const exercise = async () => {
    await hook('practice-sure-1').tap();
    await hook('practice-show-steps').tap();
    await hook('practice-next').tap();
  };
  for (let done = 0; done < 4; done += 1) await exercise();
  await expect(hook('practice-summary'), 'after four it is over').toContainText('4 exercises');
  await hook('practice-more').tap();
  await expect(page.getByText('4 of 4 done'), 'more can be asked for').toBeVisible();
  await exercise();
  await expect(page.getByText('5 done')).toBeVisible();
  await hook('student-settings').tap();
  await choose(page, 'ends-minutes');
  await expect(hook('minutes-8'), 'and back to minutes').toBeVisible();
});

test('words of exercises that fail to load are loaded again', async ({ page, bridge, hook }) => {
  const student = await join(bridge, await makeClass(bridge));
  await markDay(bridge, student);
  await page.route('**/call/exercise_words', (route) =>
    route.fulfill({ status: 422, json: { code: 'storage', detail: 'planted' } }),
  );
  await open(page, student);
  await hook('tab-practice').tap();
  await expect(page.getByRole('alert')).toBeVisible();
  await look(page, 'words that do not come', STUDENT, { sizes: true });
  await page.unroute('**/call/exercise_words');
  await page.getByRole('alert').getByRole('button').tap();
  await expect(hook('practice-sure-1')).toBeVisible();
  await expect(page.locator('main')).not.toContainText('⟨');
  await test.step('and follow the language', async () => {
    await hook('student-settings').tap();
    await choose(page, 'language-es');
    await hook('tab-practice').tap();
    await expect(hook('practice-sure-1')).toBeVisible();
    await expect(page.locator('main')).not.toContainText('⟨');
  });
});
