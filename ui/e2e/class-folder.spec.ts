// A class folder between two devices: a teacher's computer and a tablet, each with its own
// program and screens. Every click of some school days is counted: of one on which ratings
// travel, one with an assignment, and the one after it; with FULL=1 of a whole week.
import { mkdtempSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from '@playwright/test';
import { Bridge } from './bridge';
import { finders } from './finders';
import { expect, test, watch } from './fixtures';
import { DESK, look, STUDENT } from './measure/look';
import { createClass } from './own-class';
import { TOUCH } from './sizes';

const WEEK = ['2026-09-14', '2026-09-15', '2026-09-16', '2026-09-17', '2026-09-18'];
const DAYS = process.env.FULL === '1' ? WEEK : WEEK.slice(0, 3);
const AFTER = '2026-09-21';
/** What is clicked to carry a file from one device to another. */
const CARRYING =
  /^(hand-in-|import-start|take-pack|pack-save|class-folder-|folder-|join-pick|join-folder)/;

/** The hooks of all clicks on a page since the last call. */
async function clicks(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const all = JSON.parse(sessionStorage.getItem('clicks') ?? '[]') as string[];
    sessionStorage.removeItem('clicks');
    return all;
  });
}

/** A page of a program, which counts its clicks. */
async function screens(browser: Browser, bridge: Bridge, touch: boolean): Promise<Page> {
  const context = await browser.newContext({
    ...(touch ? TOUCH : { viewport: { width: 1280, height: 800 } }),
    baseURL: bridge.url,
    locale: 'en-US',
    reducedMotion: 'reduce',
  });
  const trouble = await watch(context, bridge.url);
  context.on('close', () => expect(trouble).toEqual([]));
  await context.addInitScript(() => {
    // The screens look at the folder every five seconds; here ten times as often.
    const every = window.setInterval.bind(window);
    window.setInterval = ((does: () => void, ms: number) =>
      every(does, ms / 10)) as typeof window.setInterval;
    addEventListener(
      'click',
      (event) => {
        if (!event.isTrusted || !(event.target instanceof Element)) return;
        const hook = event.target.closest('[data-testid]')?.getAttribute('data-testid') ?? '?';
        const all = JSON.parse(sessionStorage.getItem('clicks') ?? '[]') as string[];
        sessionStorage.setItem('clicks', JSON.stringify([...all, hook]));
      },
      true,
    );
  });
  return context.newPage();
}

test('days with a class folder: nobody carries a file', async ({ browser, bridge: desk }) => {
  // Files travel in their own time.
  test.setTimeout(900_000);
  const folder = mkdtempSync(join(tmpdir(), 'surefoot-class-folder-'));
  const tablet = await Bridge.start(WEEK[0], undefined);
  try {
    for (const bridge of [desk, tablet]) {
      await bridge.setToday(WEEK[0] ?? '');
      await bridge.changeDevice({ guides_read: ['all'] });
    }
    const id = await createClass(desk);
    const codes = (await desk.call('join_slips', { class: id })).map(({ code }) => code);
    const teacher = await screens(browser, desk, false);
    const student = await screens(browser, tablet, true);
    const [t, s] = [finders(teacher), finders(student)];
    const line = t.hook('class-folder-line');
    const inFolder = (end: string) => readdirSync(folder).filter((name) => name.endsWith(end));

    await test.step('the folder is named once, and shown once', async () => {
      await teacher.goto('/');
      for (const hook of ['start-teacher', 'tab-files']) await t.hook(hook).click();
      await expect(t.hook('class-folder-name')).toBeVisible();
      await look(teacher, 'no class folder', DESK);
      await desk.pick(folder);
      await t.hook('class-folder-name').click();
      await expect(line).toContainText('up to date', { timeout: 60_000 });
      await look(teacher, 'a class folder', DESK);
      await student.goto('/');
      await s.hook('start-student').tap();
      await tablet.pick(folder);
      await s.hook('join-folder').tap();
      await expect(student.getByText('Room 3')).toBeVisible();
      await s.hook('join-next').tap();
      await s.hook('join-code').fill(codes[0] ?? '');
      await s.hook('join-next').tap();
      await s.hook('join-nickname').fill('Wren');
      await s.hook('join-avatar-heron').tap();
      await s.hook('join-finish').tap();
      await expect(s.hooks('rate-').first()).toBeVisible();
      const setUp = [...(await clicks(teacher)), ...(await clicks(student))];
      expect(setUp.filter((hook) => CARRYING.test(hook))).toEqual([
        'class-folder-name',
        'join-folder',
      ]);
    });

    const counted: string[] = [];
    let rated = 0;
    for (const [day, today] of DAYS.entries()) {
      await test.step(today, async () => {
        for (const bridge of [desk, tablet]) await bridge.setToday(today);
        await student.goto('/');
        await student.locator('[data-testid^="student-"]').first().tap();
        await expect(s.hooks('rate-').first()).toBeVisible();
        for (const button of await s.hooks('rate-', '-1').all()) {
          await button.tap();
          rated += 1;
        }
        await expect
          .poll(async () => (await desk.call('board', { class: id })).rows.length)
          .toBe(70);
        await teacher.goto('/');
        await t.hook('start-teacher').click();
        // The desk is on its board; what comes is imported behind it.
        await expect
          .poll(async () => (await desk.call('seat_holdings', { class: id, seat: 1 })).reports, {
            timeout: 60_000,
          })
          .toBe(rated);
        if (day === 1) {
          await t.hook('tab-board').click();
          await t.hooks('board-row-').first().click();
          await teacher.locator('tbody input').first().check();
          await t.hook('assign-chosen').click();
          await t.hook('assign-give').click();
          await expect(teacher.locator('article')).toHaveCount(1);
        }
        counted.push(...(await clicks(teacher)), ...(await clicks(student)));
      });
    }
    const [profile] = (await tablet.call('start', {})).students;
    const asked = { student: profile?.id ?? '', concept: null, more: false };
    const step = await tablet.call('practice', asked);
    expect(JSON.stringify(step), 'the assignment is on the tablet').toContain('"assigned"');
    expect(counted.filter((hook) => CARRYING.test(hook))).toEqual([]);
    console.log(
      `${DAYS.length} days: ${counted.length} clicks of teacher and student, ${rated} of them ratings, 0 for carrying`,
    );
    await expect.poll(() => inFolder('.sfhandin')).toHaveLength(1);
    await expect.poll(() => inFolder('.sfclass')).toHaveLength(1);

    await test.step('the open board follows, and asks nobody to carry', async () => {
      await teacher.goto('/');
      await t.hook('start-teacher').click();
      await expect(t.hook('day-close')).toBeVisible();
      await t.hook('day-close').click();
      await expect(t.hook('day-unaware')).toContainText('class folder');
      await expect(t.hook('day-pack-save')).toHaveCount(0);
      await look(teacher, 'a device does not know', DESK);
      // The tablet takes the pack and tells the desk, on the screen that is open.
      await expect(t.hook('day-unaware')).toHaveCount(0, { timeout: 60_000 });
      await expect(student.getByText('No school today')).toBeVisible({ timeout: 60_000 });
      await t.hook('day-open').click();
      await expect(t.hook('day-unaware')).toBeVisible();
      await expect(t.hook('day-unaware')).toHaveCount(0, { timeout: 60_000 });
      await t.hook('tab-class').click();
      await t.hook('class-pack').click();
      await expect(teacher.getByText('It is in the class folder')).toBeVisible();
      await look(teacher, 'pack and slips with a class folder', DESK);
    });

    await test.step('who stops using it is asked, and can go back', async () => {
      await t.hook('tab-files').click();
      await t.hook('class-folder-stop').click();
      await expect(teacher.getByRole('dialog')).toContainText('Room 3');
      await look(teacher, 'stop using it?', DESK);
      await t.hook('class-folder-stop-sure').click();
      await expect(t.hook('class-folder-name')).toBeVisible();
      await teacher.getByRole('button', { name: 'Undo', exact: true }).click();
      await expect(line).toContainText('up to date', { timeout: 60_000 });
      await s.hook('tab-handin').tap();
      await expect(student.getByText('You need not make one.')).toBeVisible();
      await s.hook('folder-stop').tap();
      await look(student, 'stop using the class folder?', STUDENT);
      await s.hook('folder-stop-sure').tap();
      await expect(s.hook('folder-none')).toBeVisible();
      await look(student, 'class folder not used', STUDENT);
      await s.hook('folder-again').tap();
      await expect(s.hook('folder-line')).toBeVisible();
    });

    await test.step('the folder goes away: both say so calmly, and both come back', async () => {
      const away = `${folder}-away`;
      renameSync(folder, away);
      for (const bridge of [desk, tablet]) await bridge.setToday(AFTER);
      await student.goto('/');
      await student.locator('[data-testid^="student-"]').first().tap();
      await s.hooks('rate-', '-2').first().tap();
      rated += 1;
      await s.hook('tab-handin').tap();
      await expect(s.hook('folder-line')).toContainText('is not there just now', {
        timeout: 60_000,
      });
      await look(student, 'class folder away', STUDENT);
      await teacher.goto('/');
      for (const hook of ['start-teacher', 'tab-files']) await t.hook(hook).click();
      await expect(line).toContainText('is not there just now', { timeout: 60_000 });
      await look(teacher, 'class folder away, desk', DESK);
      await tablet.setToday('2026-09-25');
      await s.hook('tab-today').tap();
      await expect(s.hook('folder-late')).toBeVisible({ timeout: 60_000 });
      await look(student, 'late', STUDENT);
      renameSync(away, folder);
      await expect(s.hook('folder-late')).toBeHidden({ timeout: 60_000 });
      await expect(line).toContainText('up to date', { timeout: 60_000 });
      await expect
        .poll(async () => (await desk.call('seat_holdings', { class: id, seat: 1 })).reports, {
          timeout: 60_000,
        })
        .toBe(rated);
    });
    await teacher.context().close();
    await student.context().close();
  } finally {
    await tablet.stop();
    rmSync(folder, { recursive: true, force: true });
    rmSync(`${folder}-away`, { recursive: true, force: true });
  }
});
