// A student's own settings (text size, colours, decimal sign, motion), goals, and reading
// aloud.
import type { Page } from '@playwright/test';
import type { Language } from '../src/lib/backend/contract';
import type { Bridge } from './bridge';
import { boxOf, choose, finders, leaveDialog } from './finders';
import { expect, test } from './fixtures';
import { LANGUAGES, messageIn } from './languages';
import { ALL, look, STUDENT, THEMES } from './measure/look';
import { join, makeClass, markDay, open } from './own-class';
import { SIZES } from './sizes';

async function to(page: Page, tab: string): Promise<void> {
  const { hook } = finders(page);
  const settings = hook('leave-student');
  if (tab === 'settings' && (await settings.isVisible())) return;
  await hook(tab === 'settings' ? 'student-settings' : `tab-${tab}`).click();
  if (tab === 'settings') await expect(settings).toBeVisible();
  else await expect(hook(`tab-${tab}`)).toHaveAttribute('aria-current', 'page');
  await expect(page.locator('main h1').first()).toBeVisible();
}

async function set(page: Page, ...ids: string[]): Promise<void> {
  await to(page, 'settings');
  for (const id of ids) await choose(page, id);
}

/** A student with a day marked, on Today. */
async function begin(page: Page, bridge: Bridge, language: Language = 'en'): Promise<string> {
  const student = await join(bridge, await makeClass(bridge), { language });
  await markDay(bridge, student);
  await open(page, student);
  return student;
}

/** Opens an exercise of a concept, at the question about confidence. */
async function practise(page: Page, concept: string): Promise<void> {
  await to(page, 'path');
  await page.getByTestId(`practise-${concept}`).click();
  await expect(page.getByTestId('practice-sure-1')).toBeVisible();
}

async function answer(page: Page): Promise<void> {
  await page.getByTestId('practice-sure-1').click();
  await expect(page.getByTestId('answer-submit')).toBeVisible();
}

async function openHint(page: Page): Promise<boolean> {
  const hint = page.getByTestId('practice-hint');
  if (!(await hint.isVisible())) return false;
  await hint.click();
  await expect(page.getByTestId('hint-aloud-0')).toBeVisible();
  return true;
}

async function showSteps(page: Page): Promise<void> {
  await page.getByTestId('practice-show-steps').click();
  await expect(page.getByTestId('practice-next')).toBeVisible();
}

test.describe('with motion', () => {
  test.use({ contextOptions: { reducedMotion: 'no-preference' } });
  test("a student's appearance is nobody else's", async ({ page, bridge, hook, hooks }) => {
    const made = await makeClass(bridge);
    const wren = await join(bridge, made);
    const finch = await join(bridge, made, { seat: 1, nickname: 'Finch' });
    const style = () =>
      page.evaluate(() => {
        const moving = document.createElement('i');
        moving.style.transitionDuration = '140ms';
        document.body.append(moving);
        const moves = getComputedStyle(moving).transitionDuration !== '0s';
        moving.remove();
        const { theme, motion = '' } = document.documentElement.dataset;
        return { text: getComputedStyle(document.documentElement).fontSize, theme, motion, moves };
      });
    const device = { text: '16px', theme: 'light', motion: '', moves: true };
    await open(page, wren);
    for (const percent of [125, 150, 175, 200]) {
      await set(page, `text-${percent}`);
      await expect.poll(style).toMatchObject({ text: `${(16 * percent) / 100}px` });
      await look(page, `settings at ${percent} %`, STUDENT, { axe: [] });
    }
    await set(page, 'theme-contrast');
    await expect.poll(style).toMatchObject({ theme: 'contrast', moves: true });
    await set(page, 'motion-less', 'decimal-comma');
    const own = { text: '32px', theme: 'contrast', motion: 'less', moves: false };
    await expect.poll(style).toEqual(own);
    const { settings } = await bridge.call('start', {});
    expect(settings.theme, 'the colours of the device').toBe('system');
    await hook('leave-student').click();
    await expect(hook('start-teacher')).toBeVisible();
    await expect.poll(style, 'left, all is as the device has it').toEqual(device);
    await hook('start-teacher').click();
    await expect(hook('tab-board')).toBeVisible();
    await expect.poll(style, "a teacher's screens").toEqual(device);
    await open(page, finch);
    await expect(hooks('rate-').first()).toBeVisible();
    await expect.poll(style, "another student's screens").toEqual(device);
    await open(page, wren);
    await expect.poll(style, 'after a new start').toEqual(own);
  });
});

for (const [place, language] of LANGUAGES.entries()) {
  for (const [name, sign] of [
    ['comma', ','],
    ['point', '.'],
  ] as const) {
    test(`decimals with a ${name}, ${language}`, async ({ page, bridge, hook, hooks }) => {
      const student = await begin(page, bridge, language);
      const concepts = (await bridge.call('my_path', { student })).concepts
        .filter(({ concept }) => concept.has_exercises && concept.id.includes('decimal'))
        .map(({ concept }) => concept.id);
      expect(concepts.length).toBeGreaterThanOrEqual(3);
      await set(page, `decimal-${name}`);
      let shown = '';
      /** Adds the visible text and the accessible names of the screen. */
      const read = async () => {
        const names = await page
          .locator('main [aria-label]')
          .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')));
        shown += [await page.locator('main').innerText(), ...names, ''].join('\n');
      };
      let typed = false;
      const turns = name === 'comma' ? 8 : 4;
      for (let n = 0; n < turns || (!typed && n < 48); n += 1) {
        await practise(page, concepts[n % concepts.length] ?? '');
        await read();
        await answer(page);
        await openHint(page);
        await read();
        const boxes = await hooks('answer-field-').count();
        const whole = !(await hook('answer-first').isVisible());
        if (!typed && whole && boxes === 1 && (await hook(`pad-${sign}`).isVisible())) {
          typed = true;
          await hook('answer-field-0').focus();
          for (const key of ['0', sign, '7']) await hook(`pad-${key}`).click();
          await expect(hook('answer-field-0')).toHaveValue(`0${sign}7`);
          await hook('answer-submit').click();
          await expect(hook('practice-feedback')).toBeVisible();
          await expect(page.getByRole('alert'), 'it is read as a number').toHaveCount(0);
        }
        if (await hook('practice-show-steps').isVisible()) await showSteps(page);
        await read();
      }
      expect(typed, 'an answer was typed with the sign').toBe(true);
      await hook('practice-stop').click();
      await expect(hook('practice-summary')).toBeVisible();
      await read();
      const [own, other] = [/\d,\d/, /.{0,40}\d\.\d.{0,20}/];
      expect(shown).toMatch(name === 'comma' ? own : other);
      if (name === 'comma') expect(other.exec(shown)).toBeNull();
    });
  }

  test(`goals in own words, ${language}`, async ({ page, bridge, hook }) => {
    const student = await begin(page, bridge, language);
    await to(page, 'path');
    expect(await hook('goals').locator('p').count(), 'the empty state teaches').toBeGreaterThan(1);
    const how = place === 0 ? {} : { axe: [] };
    const seen = (name: string) => look(page, name, STUDENT, how);
    await seen('no goals');
    await hook('goal-add').click();
    await expect(hook('goal-new'), 'nothing written is no goal').toBeFocused();
    await expect(hook('goal-reached-0')).toHaveCount(0);
    const goals = ['Know my sevens', 'Draw each story', 'Ask when I am stuck'];
    for (const [n, goal] of goals.entries()) {
      await hook('goal-new').fill(goal);
      await hook('goal-new').press('Enter');
      await expect(hook(`goal-reached-${n}`)).toBeVisible();
    }
    await expect(hook('goal-new'), 'three are all').toHaveCount(0);
    await seen('three goals');
    await hook('goal-change-1').click();
    await hook('goal-words-1').fill('Draw every story');
    await seen('changing a goal');
    await hook('goal-keep-1').click();
    await expect(page.getByText('Draw every story')).toBeVisible();
    await expect(hook('goal-change-1')).toBeFocused();
    await choose(page, 'goal-reached-0');
    await hook('goal-remove-2').click();
    await expect(hook('goal-reached-2')).toHaveCount(0);
    await page.locator('.toast button').last().click();
    await expect(hook('goal-reached-2')).toBeVisible();

    await open(page, student);
    await to(page, 'path');
    await expect(hook('goal-reached-2'), 'goals are there after a new start').toBeVisible();
    const kept = (await bridge.call('my_path', { student })).goals;
    expect(kept.map(({ words, reached }) => [words, reached])).toEqual([
      ['Know my sevens', true],
      ['Draw every story', false],
      ['Ask when I am stuck', false],
    ]);
    const sizes: number[] = [];
    for (const withGoals of [false, true]) {
      await hook('print-path').click();
      if (withGoals) await hook('own-print-goals').click();
      await seen(`printing ${withGoals ? 'with' : 'without'} goals`);
      await hook('own-print-save').click();
      const said = page.locator('dialog[open] [role=status]', { hasText: 'my-path.pdf' });
      await expect(said).toBeVisible();
      const file = (await bridge.saved()).find(({ name }) => name === 'my-path.pdf');
      sizes.push(file?.bytes ?? 0);
      await leaveDialog(page);
    }
    const [without = 0, withThem = 0] = sizes;
    expect(withThem, 'on paper only when ticked').toBeGreaterThan(without);
    for (const left of [2, 1, 0]) {
      await hook('goal-remove-0').click();
      await expect(hook(`goal-reached-${left}`)).toHaveCount(0);
    }
    await expect(hook('goal-new')).toBeVisible();
    await seen('the last goal taken out');
  });

  test(`reading aloud, ${language}`, async ({ page, bridge, hook }) => {
    const student = await begin(page, bridge, language);
    const words = {
      idle: messageIn(language, 'aloud-read'),
      hint: messageIn(language, 'practice-hint-label', { number: 1 }),
      steps: messageIn(language, 'practice-steps'),
    };
    const lastSaid = async () => (await bridge.said()).said.at(-1) ?? { language: '', text: '' };
    const button = hook('today-aloud');
    const idle = () => expect(button).toHaveText(words.idle);

    await test.step('Today reads each line', async () => {
      await bridge.setVoice('quick');
      await button.click();
      await expect.poll(async () => (await lastSaid()).language).toBe(language);
      const { text } = await lastSaid();
      for (const { concept } of (await bridge.call('today', { student, date: null })).concepts)
        expect(text).toContain(concept.i_can.split(/[\d.]/)[0]?.trim());
    });

    await test.step('it stops by the button, by Escape, and when the screen is left', async () => {
      await bridge.setVoice('long');
      for (const stop of [
        () => button.click(),
        () => page.keyboard.press('Escape'),
        () => to(page, 'path'),
      ]) {
        await idle();
        const { stops, said } = await bridge.said();
        await button.click();
        await expect(button).not.toHaveText(words.idle);
        await expect.poll(async () => (await bridge.said()).said.length).toBe(said.length + 1);
        await stop();
        await expect
          .poll(async () => (await bridge.said()).stops)
          .toBeGreaterThanOrEqual(stops + 2);
      }
    });

    await test.step('without a voice, what is missing is named', async () => {
      await bridge.setVoice('missing');
      await to(page, 'today');
      await button.click();
      await expect(page.locator('dialog[open]')).toContainText('speech-dispatcher');
      await look(page, 'no voice', STUDENT);
      await leaveDialog(page);
      await bridge.setVoice('quick');
    });

    const { concepts } = await bridge.call('my_path', { student });
    const concept = concepts.find((row) => row.concept.id.includes('decimal'))?.concept.id ?? '';
    const before = (await bridge.said()).said.length;
    await test.step('nothing is read by itself unless set; then an exercise is read when it opens', async () => {
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      await practise(page, concept);
      await expect(hook('practice-aloud')).toBeVisible();
      await set(page, 'reads-aloud-on');
      expect(asked.filter((url) => url.endsWith('/call/speak'))).toEqual([]);
      await practise(page, concept);
      await expect.poll(async () => (await bridge.said()).said.length).toBe(before + 1);
    });
    const prompt = await lastSaid();
    const start = (await page.locator('.prompt p').first().innerText()).split(/[\d.,?]/)[0]?.trim();
    expect(prompt.text).toContain(start);
    expect(prompt.text, 'with words for the mathematics').not.toMatch(
      /[\u{E000}\u{E001}⟨□]|\d[.,]\d/u,
    );

    await test.step('the head of an exercise keeps together', async () => {
      for (const size of ['phone', 'tablet'] as const) {
        await page.setViewportSize(SIZES[size]);
        const [title, me] = [
          await boxOf(page.locator('main h1')),
          await boxOf(hook('student-settings')),
        ];
        expect(me.top).toBeLessThan(title.bottom);
        expect(me.right).toBeGreaterThan(title.right);
        const [tools, stop] = [
          await boxOf(hook('practice-tools')),
          await boxOf(hook('practice-stop')),
        ];
        expect(tools.top).toBe(stop.top);
      }
    });

    await test.step('hints, feedback with steps, and the whole exercise', async () => {
      const said = () => expect.poll(async () => (await lastSaid()).text);
      await answer(page);
      if (await openHint(page)) {
        await hook('hint-aloud-0').click();
        await said().toMatch(new RegExp(`^${words.hint}`));
      }
      await showSteps(page);
      await hook('feedback-aloud').click();
      await said().toContain(words.steps);
      await hook('practice-aloud').click();
      await said().toContain(start);
      await said().toContain(words.steps);
    });
  });

  // Without MEASURE_ALL=1 the languages share the themes, and each has at least one.
  const shares = Math.min(LANGUAGES.length, THEMES.length);
  const themes = ALL ? THEMES : THEMES.filter((_, at) => at % shares === place % shares);
  test(`text of 200 % on 320 px loses nothing, ${language}`, async ({ page, bridge, hook }) => {
    const student = await begin(page, bridge, language);
    const { concepts } = await bridge.call('my_path', { student });
    const decimals = concepts.find(({ concept: { id } }) => id.includes('decimal'));
    await page.setViewportSize(SIZES.narrow);
    await set(page, 'text-200');
    for (const theme of themes) {
      const how = ALL || theme === themes[0] ? {} : { axe: [] };
      const seen = (name: string) => look(page, `${name}, ${theme}`, STUDENT, how);
      await set(page, `theme-${theme}`);
      await seen('settings');
      for (const tab of ['today', 'handin', 'path']) {
        await to(page, tab);
        await seen(tab);
      }
      await practise(page, decimals?.concept.id ?? '');
      await seen('how sure');
      await answer(page);
      await seen('answering');
      await openHint(page);
      await showSteps(page);
      await seen('steps');
      await hook('practice-stop').click();
      await expect(hook('practice-summary')).toBeVisible();
      await seen('summary');
    }
  });
}

test('forced colours of the system', async ({ page, bridge, hook, hooks }) => {
  await begin(page, bridge);
  await page.emulateMedia({ forcedColors: 'active' });
  const colours = (id: string) =>
    hook(id).evaluate((button) => {
      const { backgroundColor, color } = getComputedStyle(button);
      const stone = button.querySelector('ellipse.filled');
      return { backgroundColor, color, stone: stone && getComputedStyle(stone).fill };
    });
  const isTold = async (chosen: string, other: string) => {
    const [on, off] = [await colours(chosen), await colours(other)];
    expect(on.backgroundColor, `${chosen} differs from the rest`).not.toBe(off.backgroundColor);
    expect(on.backgroundColor).not.toBe(on.color);
    await look(page, chosen, STUDENT);
  };
  await set(page, 'text-100');
  await isTold('text-100', 'text-125');
  await to(page, 'today');
  await isTold('tab-today', 'tab-practice');
  const rating = (await hooks('rate-', '-2').first().getAttribute('data-testid')) ?? '';
  await choose(page, rating);
  const [on, off] = [await colours(rating), await colours(rating.replace(/2$/, '1'))];
  expect(on.backgroundColor).not.toBe(off.backgroundColor);
  expect(on.stone).not.toBe(on.backgroundColor);
  expect(off.stone).not.toBe(off.backgroundColor);
});

test('nothing lies under the bars of the system', async ({ page, bridge, hook }) => {
  await page.setViewportSize(SIZES.phone);
  const system = await page.context().newCDPSession(page);
  const insets = { top: 48, bottom: 60 };
  await system.send('Emulation.setSafeAreaInsetsOverride', { insets });
  await begin(page, bridge);
  const end = async () => SIZES.phone.height - (await boxOf(hook('tab-today'))).bottom;
  expect((await boxOf(page.locator('main h1'))).top).toBeGreaterThanOrEqual(insets.top);
  await expect.poll(end).toBeGreaterThanOrEqual(insets.bottom);
  const foot = SIZES.phone.height - (await boxOf(page.locator('footer'))).bottom;
  expect(foot).toBeLessThanOrEqual(1);
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  await expect.poll(end, 'nor at the end of the page').toBeGreaterThanOrEqual(insets.bottom);
});
