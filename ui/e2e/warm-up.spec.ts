// The warm-up of a day: chosen at the desk, shown on the projector, and printed, in every language.
import { writeFileSync } from 'node:fs';
import { join as path } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import type { Bridge } from './bridge';
import { openDesk, said, scan, undo, YEAR } from './desk';
import { leaveDialog } from './finders';
import { expect, test } from './fixtures';
import { LANGUAGES, messageIn } from './languages';
import { createClass } from './own-class';
import { SAMPLE_DAY } from './places';
import { DESK } from './sizes';

test.use({ ...DESK, today: SAMPLE_DAY });

/** The names that people in exercises usually have. */
const NAMES =
  'Amara Bruno Chidi Dana Elif Farid Goran Hana Ivo Jaya Kofi Lucía Mei Nadia Omar Priya Quinn Rosa Sami Tala Uma Viktor Yara Zoe'.split(
    ' ',
  );
const A_NAME = new RegExp(`\\b(${NAMES.join('|')})\\b|Seat \\d|Asiento \\d|\\d\\s?%|Room 4`);

/** A class with an own exercise for the first concept of the day. */
async function makeRoom(bridge: Bridge): Promise<{ id: string; concepts: string[] }> {
  const id = await createClass(bridge, {
    title: 'Room 4',
    names: NAMES,
    year: YEAR,
    grades: [4],
    concepts_a_day: 6,
  });
  const { concepts } = await bridge.call('warm_up', { class: id, date: null });
  const ids = concepts.map(({ concept }) => concept.id);
  const table = path(bridge.data, 'own.csv');
  const line = `${ids[0] ?? ''},whole number,What is 317 + 4?,¿Cuánto es 317 + 4?,321`;
  writeFileSync(table, `concept,kind,question,question_es,answer\n${line}\n`);
  await bridge.pick(table);
  await bridge.call('import_own_exercises', { class: id, concept: null });
  return { id, concepts: ids };
}

/** Every text node of an element that a person can read. */
const texts = (of: Locator): Promise<string[]> =>
  of.evaluate((top) => {
    const walk = document.createTreeWalker(top, NodeFilter.SHOW_TEXT);
    const found: string[] = [];
    for (let at = walk.nextNode(); at; at = walk.nextNode()) {
      const text = at.textContent?.trim() ?? '';
      if (text !== '') found.push(text);
    }
    return found;
  });

/** Nothing on the wall names a student or a seat, and nothing says how the class does. */
async function harmless(wall: Locator): Promise<string[]> {
  const all = await texts(wall);
  expect(all.length).toBeGreaterThan(3);
  for (const text of all) {
    expect(text).not.toMatch(A_NAME);
    expect(text).not.toMatch(/\b(red|blue|green|yellow|rojo|azul|verde|amarillo)\b/i);
  }
  // An exercise may contain a letter as a variable, but no exercise is named by a letter.
  for (const title of await wall.locator('h1, h2').allInnerTexts())
    expect(title).not.toMatch(/^[A-F][.)]?$/);
  return all;
}

/** What an exercise asks, without its answer. */
const asked = (of: Locator): Promise<string> =>
  of.evaluate((one) =>
    [...one.querySelectorAll('.block')]
      .filter((block) => !block.closest('.answer, .right, .entry'))
      .map((block) => block.textContent)
      .join(' ')
      .replace(/\s+/g, ' ')
      .trim(),
  );

/** The exercises of the desk, concept by concept. */
const onDesk = (page: Page, concepts: string[]) =>
  Promise.all(concepts.map((id) => asked(page.getByTestId(`warm-up-${id}`))));

for (const tag of LANGUAGES) {
  test(`a warm-up is changed, shown and printed, ${tag}`, async ({ page, bridge, hook }) => {
    const { id, concepts } = await makeRoom(bridge);
    const [first = '', second = '', third = ''] = concepts;
    const { settings } = await bridge.call('start', {});
    await bridge.call('save_device_settings', { ...settings, language: tag });
    await openDesk(page, 'tab-talk', 'warm-up-open');
    await expect(hook(`warm-up-${first}`)).toBeVisible();
    await scan(page, 'the warm-up at the desk');
    const usual = await onDesk(page, concepts);
    expect(new Set(usual).size).toBe(concepts.length);

    await test.step('an exercise is swapped, and undone', async () => {
      await hook(`warm-up-swap-${second}`).click();
      await expect.poll(() => onDesk(page, concepts)).not.toEqual(usual);
      const name = messageIn(tag, 'action-undo');
      await page.getByRole('button', { name, exact: true }).click();
      await expect.poll(() => onDesk(page, concepts)).toEqual(usual);
      await hook(`warm-up-swap-${second}`).click();
      await expect.poll(() => onDesk(page, concepts)).not.toEqual(usual);
    });
    await test.step('one is left out, and an own one is put in', async () => {
      await hook(`warm-up-out-${third}`).click();
      await expect(hook(`warm-up-${third}`).locator('.block')).toHaveCount(0);
      await hook(`warm-up-own-${first}`).selectOption({ index: 1 });
      await expect(hook(`warm-up-${first}`).locator('.what')).toContainText('317 + 4');
    });
    const left = concepts.filter((one) => one !== third);
    const shown = await onDesk(page, left);

    const wall = hook('projector');
    await test.step('all at once, with answers when asked', async () => {
      await hook('warm-up-all').click();
      await expect(wall.locator('section')).toHaveCount(left.length);
      await expect(wall.locator('.right')).toHaveCount(0);
      const words = (await harmless(wall)).join(' ').replace(/\s+/g, ' ');
      expect(words).not.toContain('321');
      await scan(page, 'all exercises on the projector');
      await hook('wall-answers').click();
      await expect(wall.locator('.right')).toHaveCount(left.length);
      await expect(hook(`wall-answer-${first}`)).toContainText('321');
      await harmless(wall);
      await scan(page, 'all answers on the projector');
      const there = await Promise.all(left.map((one) => asked(hook(`wall-${one}`))));
      expect(there).toEqual(shown);
      await leaveDialog(page);
    });
    await test.step('one at a time', async () => {
      await hook('warm-up-one').click();
      for (const [at, text] of shown.entries()) {
        await expect.poll(() => asked(wall.locator('.prompt'))).toBe(text);
        await expect(hook('projector-answer')).toHaveCount(0);
        await harmless(wall);
        await hook('projector-next').click();
        await expect(hook('projector-answer')).toBeVisible();
        await expect(hook('projector-misconception')).toHaveCount(0);
        await harmless(wall);
        if (at === shown.length - 1) break;
        for (let step = 0; step < 2; step += 1) {
          const still = await hook('projector-answer').isVisible();
          if (still) await hook('projector-next').click();
        }
      }
      await leaveDialog(page);
    });
    await test.step('the same after a restart, on the screen and for paper', async () => {
      await openDesk(page, 'tab-talk', 'warm-up-open');
      await expect(hook(`warm-up-${first}`)).toBeVisible();
      expect(await onDesk(page, left)).toEqual(shown);
      await hook('warm-up-print').click();
      const exercises = hook('report-page').locator('.exercise');
      await expect(exercises).toHaveCount(left.length);
      const prompts = await Promise.all(left.map((_, at) => asked(exercises.nth(at))));
      expect(prompts).toEqual(shown);
      await scan(page, 'the warm-up before it is printed');
      await hook('print-save').click();
      await said(page, /warm-up-2026-11-24\.pdf/);
      expect((await bridge.saved())[0]?.bytes).toBeGreaterThan(5000);
    });
    await test.step('the next school day has other concepts', async () => {
      await openDesk(page, 'tab-talk', 'warm-up-open');
      await hook('warm-up-day-2026-11-25').click();
      await expect(hook(`warm-up-${first}`)).toHaveCount(0);
      const next = await bridge.call('warm_up', { class: id, date: '2026-11-25' });
      await expect(hook(`warm-up-${next.concepts[0]?.concept.id ?? ''}`)).toBeVisible();
    });
  });
}

test('a warm-up without concepts, with all left out, and after the year', async ({
  page,
  bridge,
  hook,
}) => {
  const { concepts } = await makeRoom(bridge);
  await openDesk(page, 'tab-talk', 'warm-up-open');
  for (const one of concepts) await hook(`warm-up-out-${one}`).click();
  await said(page, 'Every concept is left out.');
  await expect(hook('warm-up-one')).toBeDisabled();
  await scan(page, 'a warm-up with all left out');
  await hook(`warm-up-out-${concepts[0] ?? ''}`).click();
  await expect(hook('warm-up-one')).toBeEnabled();
  await undo(page);
  await expect(hook('warm-up-one')).toBeDisabled();
});

test('a class chart of one day, in the order of the entry grid', async ({ page, bridge, hook }) => {
  const { id } = await makeRoom(bridge);
  await openDesk(page, 'tab-print', 'print-what-chart');
  await hook('print-report').selectOption('day_chart');
  const paper = hook('report-page');
  const day = await bridge.call('entry_day', { class: id, date: SAMPLE_DAY });
  await expect(paper.locator('tbody tr')).toHaveCount(day.rows.length);
  const rows = await paper.locator('tbody th').allInnerTexts();
  expect(rows).toEqual(day.rows.map(({ name }) => name));
  const heads = await paper.locator('thead th').allInnerTexts();
  expect(heads.slice(1)).toEqual(day.concepts.map(({ title }) => title));
  await scan(page, 'a class chart');
  await hook('print-save').click();
  await said(page, /class-chart-2026-11-24\.pdf/);
});
