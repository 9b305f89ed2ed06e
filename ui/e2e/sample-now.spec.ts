// The first screen of the desk: sentences that agree with the screens behind them, the four
// questions of a teacher in at most two clicks, and no name before it is asked for.
import type { Page } from '@playwright/test';
import type { ClassNow, Sentence } from '../src/lib/backend/contract';
import { scan } from './desk';
import { expect, test } from './fixtures';
import { LANGUAGES, messageIn } from './languages';
import { DESK as OF_DESK, look, type ShownTheme } from './measure/look';
import { DESK, SIZES } from './sizes';

test.use(DESK);

/** Opens the sample class's desk, and counts the clicks from then on. */
async function openDesk(page: Page): Promise<() => Promise<number>> {
  await page.goto('/');
  await page.getByTestId('bar-teacher').click();
  await expect(page.getByTestId('now-sentences')).toBeVisible();
  await page.evaluate(() => {
    const counter = window as unknown as { clicks: number };
    counter.clicks = 0;
    window.addEventListener('click', () => (counter.clicks += 1), true);
  });
  return () => page.evaluate(() => (window as unknown as { clicks: number }).clicks);
}

const ofKind = (now: ClassNow, kind: Sentence['says']['kind']) =>
  now.sentences.find(({ says }) => says.kind === kind);

test('the questions of a teacher are answered in two clicks at most', async ({
  page,
  bridge,
  hook,
  hooks,
}) => {
  const id = (await bridge.call('start', {})).classes[0]?.id ?? '';
  const now = await bridge.call('class_now', { class: id });
  expect(now.knowledge).toBe('level');
  const answers: string[] = [];
  const sentence = async (kind: string) =>
    (await hook(`now-${kind}`).first().locator('p').allInnerTexts()).join(' ');

  await test.step('what do I do today, and tomorrow', async () => {
    const clicks = await openDesk(page);
    answers.push(`today: ${await clicks()} clicks: ${await sentence('talk')}`);
    const talk = ofKind(now, 'talk')?.concept?.id ?? '';
    await hook(`now-show-${talk}`).click();
    await expect(hook('projector')).toBeVisible();
    expect(await clicks()).toBe(1);
    await page.keyboard.press('Escape');
    const [, next] = now.days;
    await expect(hook('day-plan-1').locator('li')).toHaveCount(next?.concepts.length ?? 0);
    answers.push(`tomorrow: 0 clicks: ${await hook('day-plan-1').innerText()}`);
    await hook('day-plan-talk-1').click();
    await expect(hook('talk-day-1')).toHaveAttribute('aria-pressed', 'true');
    expect(await clicks()).toBe(2);
  });

  await test.step('who sits together', async () => {
    const clicks = await openDesk(page);
    const together = ofKind(now, 'together');
    answers.push(`together: 0 clicks: ${await sentence('together')}`);
    const concept = together?.concept?.id ?? '';
    await hook(`now-who-${concept}`).first().click();
    const students = together?.says.kind === 'together' ? together.says.students : [];
    await expect(hook('now-names').locator('li')).toHaveCount(students.length);
    await hook(`now-group-${concept}`).click();
    await expect(hook('groups-sum')).toBeVisible();
    expect(await clicks()).toBe(2);
    // The groups on the board are on the sentence's concept, first of all, and have its students.
    const title = together?.concept?.title ?? '';
    await expect(hook('groups-first')).toContainText(title);
    await expect(hook('group-0').locator('select').first()).toHaveValue(concept);
    const onIt = page.locator('article', {
      has: page.locator(`select option:checked[value="${concept}"]`),
    });
    const members = await onIt.locator('.name').allInnerTexts();
    for (const { name } of students) expect(members).toContain(name);
    await expect(hook('group-0'), 'no share beside a name').not.toContainText('%');
    await hook('groups-shares').click();
    await expect(hook('group-0').locator('.chance').first()).toHaveText(/%/);
    await page.keyboard.press('n');
    await expect(hook('group-0').locator('.chance')).toHaveCount(0);
    await page.keyboard.press('n');
    await hook('groups-shares').click();
    await hook('groups-first-drop').click();
    await expect(hook('groups-first')).toHaveCount(0);
  });

  await test.step('a warm-up for tomorrow', async () => {
    const clicks = await openDesk(page);
    await hook('day-plan-warm-up-1').click();
    await hook('warm-up-all').click();
    await expect(hook('projector').locator('section').first()).toBeVisible();
    expect(await clicks()).toBe(2);
    await hook('wall-answers').click();
    const fits = () => hook('projector').evaluate((wall) => wall.scrollHeight <= wall.clientHeight);
    await expect.poll(fits, 'all exercises and answers are on the wall').toBe(true);
    await page.keyboard.press('Escape');
  });

  await test.step('did it help', async () => {
    const clicks = await openDesk(page);
    const helped = ofKind(now, 'taught_again');
    answers.push(`helped: 0 clicks: ${await sentence('taught-again')}`);
    const { entries } = await bridge.call('taught_again', { class: id });
    const entry = entries.find(({ concept }) => concept.id === helped?.concept?.id);
    expect(helped?.says).toMatchObject({ help: entry?.help.says, since: entry?.date });
    await hook('now-taught-again').getByTestId(`now-numbers-${entry?.concept.id}`).click();
    await expect(hook(`taught-entry-${entry?.id}`)).toContainText(
      messageIn(
        'en',
        entry?.help.says === 'rose_more' ? 'taught-says-rose-more' : 'taught-says-likely-rose-more',
      ),
    );
    expect(await clicks()).toBe(1);
    await hook(`taught-entry-${entry?.id}`).locator('summary').click();
    expect(await clicks()).toBe(2);
  });

  await test.step('who says sure and gets it wrong', async () => {
    const clicks = await openDesk(page);
    const wrong = ofKind(now, 'sure_but_wrong');
    answers.push(`contradicted: 0 clicks: ${await sentence('sure-but-wrong')}`);
    const concept = wrong?.concept?.id ?? '';
    const contradicted = hook('now-sure-but-wrong');
    await contradicted.getByTestId(`now-numbers-${concept}`).click();
    await expect(hook(`compare-concept-${concept}`)).toBeVisible();
    expect(await clicks()).toBe(1);
    await hook(`compare-concept-${concept}`).locator('summary').first().click();
    const students = wrong?.says.kind === 'sure_but_wrong' ? wrong.says.students.length : 0;
    const listed = hook(`compare-concept-${concept}`).locator('details[open] li');
    await expect(listed).toHaveCount(students);
    expect(await clicks()).toBe(2);
    await hook('compare-by-student').click();
    await expect(hooks('student-page-').first()).toBeVisible();
  });
  for (const answer of answers) console.log(answer.replaceAll('\n', ' · '));
});

test('the sheet of a day, an assignment and the whole board are one press away', async ({
  page,
  bridge,
  hook,
  hooks,
}) => {
  const id = (await bridge.call('start', {})).classes[0]?.id ?? '';
  const now = await bridge.call('class_now', { class: id });
  await openDesk(page);
  await hook('day-plan-sheet-1').click();
  const chosen = page.locator('main .choice li');
  const printable = now.days[1]?.concepts.filter(({ concept }) => concept.has_exercises) ?? [];
  await expect(chosen).toHaveCount(printable.length);
  await page.keyboard.press('Alt+ArrowLeft');
  const weak = ofKind(now, 'weak')?.concept?.id ?? '';
  await hook(`now-assign-${weak}`).first().click();
  await expect(hook('assign-give')).toBeVisible();
  await page.keyboard.press('Alt+ArrowLeft');
  await hook('now-board').click();
  await expect(hooks('board-row-').first()).toBeVisible();
});

test('no name stands there before it is asked for', async ({ page, bridge, hooks }) => {
  const id = (await bridge.call('start', {})).classes[0]?.id ?? '';
  const { seats } = await bridge.call('class_setup', { class: id });
  const names = seats.flatMap(({ name }) => (name === null ? [] : [name]));
  expect(names.length).toBe(24);
  const anyName = new RegExp(`\\b(${names.join('|')})\\b`);
  await openDesk(page);
  const list = page.getByTestId('now-sentences');
  await expect(list).not.toHaveText(anyName, { useInnerText: true });
  await expect(list, 'nor a percentage').not.toContainText('%');
  await hooks('now-who-').first().click();
  await expect(list).toHaveText(anyName, { useInnerText: true });
  await page.keyboard.press('n');
  await expect(list).not.toHaveText(anyName, { useInnerText: true });
  await page.keyboard.press('n');
});

test('columns are chosen, and none stands there that has nothing to say', async ({
  page,
  bridge,
  hook,
  hooks,
}) => {
  const id = (await bridge.call('start', {})).classes[0]?.id ?? '';
  const { rows } = await bridge.call('board', { class: id });
  await openDesk(page);
  await hook('now-board').click();
  await expect(hooks('board-row-').first()).toBeVisible();
  await hook('board-columns').click();
  const turning = rows.some(({ trend }) => trend !== 'too_soon');
  await expect(hook('board-column-trend')).toHaveCount(turning ? 1 : 0);
  const heads = page.locator('thead th');
  const before = await heads.count();
  await hook('board-column-ratings').check();
  await expect(heads).toHaveCount(before + 5);
  await scan(page, 'the board with ratings');
  await hook('board-column-ratings').uncheck();
  await expect(heads).toHaveCount(before);
  await expect(hook('board-mistakes').locator('li').first()).toBeVisible();
});

const THEMES: readonly ShownTheme[] = ['light', 'dark'];
for (const language of LANGUAGES) {
  test(`the first screen on every size, ${language}`, async ({ page, bridge, hook }) => {
    await bridge.changeDevice({ language, guides_read: ['all'] });
    await openDesk(page);
    await expect(page.locator('main h1')).toHaveText(messageIn(language, 'now-title'));
    const how = { sizes: true, themes: THEMES, axe: THEMES };
    await look(page, `now, ${language}`, OF_DESK, how);
    await page.setViewportSize(SIZES.phone);
    await expect(hook('now-sentences')).toBeVisible();
    await look(page, `now on a phone, ${language}`, OF_DESK, how);
  });
}
