// The lock of the desk: set, asked for, waits, idle time, and the ways back.
import type { Page } from '@playwright/test';
import { openDesk, said, scan } from './desk';
import { expect, test } from './fixtures';
import { LANGUAGES } from './languages';
import { createClass } from './own-class';
import { DESK } from './sizes';

const WORDS = 'seven quiet rivers';
const OTHER = 'nine loud mountains';
const NAME = 'Ottilie';
/** A passphrase is slow to check on purpose. */
const SLOW = { timeout: 60_000 };

test.use(DESK);

test.beforeEach(async ({ bridge }) => {
  await createClass(bridge, { names: [NAME, 'Bo'] });
  await bridge.changeDevice({ guides_read: ['all'] });
});

async function openSafe(page: Page): Promise<void> {
  await openDesk(page);
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByTestId('desk-safe').click();
}

async function unlock(page: Page, words = WORDS): Promise<void> {
  await page.getByTestId('desk-passphrase').fill(words);
  await page.keyboard.press('Enter');
}

test('a lock is set, changed and removed', async ({ page, bridge, hook }) => {
  await openSafe(page);
  await expect(hook('lock-now'), 'there is no lock yet').toHaveCount(0);
  await hook('lock-set').click();
  await said(page, 'This overwrites the copies on this computer');
  await hook('passphrase').fill('short');
  await hook('passphrase-go').click();
  await said(page, 'Use at least 8 letters, numbers or spaces.');
  await hook('passphrase').fill(WORDS);
  await hook('passphrase-again').fill(WORDS);
  await scan(page, 'a lock is set');
  await hook('passphrase-go').click();
  await expect(page.getByText('The desk has a lock now.')).toBeVisible(SLOW);
  await expect(hook('lock-idle')).toHaveValue('10');
  await hook('lock-idle').selectOption('5');
  await expect.poll(async () => (await bridge.call('desk_lock', {})).idle_minutes).toBe(5);
  await scan(page, 'the desk has a lock');

  await hook('lock-change').click();
  await hook('passphrase-before').fill('not the words');
  await hook('passphrase').fill(OTHER);
  await hook('passphrase-again').fill(OTHER);
  await hook('passphrase-go').click();
  await expect(page.getByText('This is not the passphrase of the desk.')).toBeVisible(SLOW);
  await hook('passphrase-before').fill(WORDS);
  await hook('passphrase-go').click();
  await expect(page.getByText('The passphrase is changed.')).toBeVisible(SLOW);
  await expect(hook('lock-idle')).toHaveValue('5');

  await hook('lock-remove').click();
  await hook('passphrase').fill(OTHER);
  await hook('passphrase-go').click();
  await expect(page.getByText('The lock is removed.')).toBeVisible(SLOW);
  await expect(hook('lock-set')).toBeVisible();
  expect((await bridge.call('start', {})).classes).toHaveLength(1);
});

test('a locked desk shows nothing and opens where it was left', async ({ page, bridge, hook }) => {
  await bridge.call('set_desk_lock', { current: null, passphrase: WORDS });
  await bridge.call('lock_desk', {});
  await openDesk(page);
  const locked = hook('desk-locked');
  await test.step('asked for on opening', async () => {
    await expect(locked).toBeVisible();
    await expect(page.getByText('Room 3')).toHaveCount(0);
    await expect(hook('desk-passphrase')).toBeFocused();
    await hook('lock-forgot').click();
    await scan(page, 'the desk is locked');
    await unlock(page, 'not the words');
    await expect(page.getByText('This is not the passphrase of the desk.')).toBeVisible(SLOW);
    await unlock(page);
    await expect(hook('tab-class')).toBeVisible(SLOW);
  });
  await test.step('by a key, and back with what was typed', async () => {
    await hook('tab-class').click();
    const name = page.getByRole('textbox', { name: 'Name of seat 1' });
    await expect(name).toHaveValue(NAME);
    await page.getByRole('button', { name: 'Settings' }).focus();
    await page.keyboard.press('l');
    await expect(locked).toBeVisible();
    await expect(page.getByRole('textbox', { name: 'Name of seat 1' })).toHaveCount(0);
    await expect(hook('tab-class'), 'nothing behind it can be reached').toBeHidden();
    await page.keyboard.press('Escape');
    await page.goBack();
    await expect(locked, 'neither Escape nor Back leads past it').toBeVisible();
    await unlock(page);
    await expect(hook('tab-class')).toHaveAttribute('aria-current', 'page', SLOW);
  });
  await test.step('after the time without use', async () => {
    await bridge.pass(9);
    await page.mouse.move(300, 300);
    await page.mouse.move(310, 300);
    await expect.poll(async () => (await bridge.call('desk_lock', {})).locked).toBe(false);
    await bridge.pass(11);
    await expect(locked, 'the screens ask by themselves').toBeVisible();
    await unlock(page);
    await expect(hook('tab-class')).toBeVisible(SLOW);
    // A call that comes first is refused, and the lock covers the screen. The screens may
    // have asked by themselves meanwhile, so that no pointer reaches the button.
    await bridge.pass(11);
    await hook('tab-talk').dispatchEvent('click');
    await expect(locked).toBeVisible();
    await unlock(page);
    await expect(hook('tab-talk')).toHaveAttribute('aria-current', 'page', SLOW);
  });
  await test.step('the projector is covered', async () => {
    await page.locator('[data-testid^="talk-show-"]').first().click();
    await expect(hook('projector')).toBeVisible();
    await bridge.pass(11);
    await expect(locked).toBeVisible();
    await expect(hook('projector')).toBeHidden();
    await unlock(page);
    await expect(hook('projector')).toBeVisible(SLOW);
    await hook('projector-close').click();
  });
  await test.step('whoever leaves the desk locks it', async () => {
    await hook('lock-now').click();
    await hook('lock-leave').click();
    await expect(hook('start-teacher')).toBeVisible();
    await hook('start-teacher').click();
    await unlock(page);
    await page.getByRole('button', { name: 'Leave the desk' }).click(SLOW);
    await hook('start-teacher').click();
    await expect(locked).toBeVisible();
  });
});

test('what was typed stays behind the lock', async ({ page, bridge, hook }) => {
  await bridge.call('set_desk_lock', { current: null, passphrase: WORDS });
  await openDesk(page);
  await unlock(page);
  await page.getByRole('combobox', { name: 'Class' }).selectOption('', SLOW);
  const title = page.getByRole('textbox').first();
  await title.fill('Room 9, half typed');
  await bridge.pass(11);
  await expect(hook('desk-locked')).toBeVisible();
  await unlock(page);
  await expect(title).toHaveValue('Room 9, half typed', SLOW);
});

test('a forgotten passphrase: a backup, or an empty desk', async ({ page, bridge, hook }) => {
  await bridge.call('set_desk_lock', { current: null, passphrase: WORDS });
  const made = await bridge.call('back_up', { store: { kind: 'desk' }, passphrase: OTHER });
  await bridge.call('lock_desk', {});
  await openDesk(page);
  await hook('lock-forgot').click();
  await hook('lock-new').click();
  await scan(page, 'an empty desk is asked for');
  await page.getByRole('button', { name: 'Cancel' }).click();
  await bridge.pick(bridge.savedAt(made.file_name));
  await hook('open-backup').click();
  await hook('passphrase').fill(OTHER);
  await hook('passphrase-go').click();
  await expect(hook('start-teacher')).toBeVisible(SLOW);
  await hook('start-teacher').click();
  await expect(hook('tab-class'), 'it has no lock').toBeVisible();
  expect((await bridge.call('desk_lock', {})).has_lock).toBe(false);

  await bridge.call('set_desk_lock', { current: null, passphrase: OTHER });
  await bridge.call('lock_desk', {});
  await openDesk(page);
  await hook('lock-forgot').click();
  await hook('lock-new').click();
  await hook('sure-go').click();
  await expect(page.getByText('The desk is empty now.')).toBeVisible();
  const { classes, desk_lock } = await bridge.call('start', {});
  expect([classes.length, desk_lock.has_lock]).toEqual([0, false]);
  const { copies } = await bridge.call('copies', { kind: 'desk' });
  expect(copies.filter((one) => one.kind === 'replaced')).toHaveLength(2);
});

test('wrong passphrases make the next one wait', async ({ page, bridge, hook }) => {
  await bridge.call('set_desk_lock', { current: null, passphrase: WORDS });
  await bridge.call('lock_desk', {});
  await openDesk(page);
  for (const words of ['one', 'two', 'three']) {
    await unlock(page, words);
    await expect(hook('desk-passphrase')).toHaveValue('', SLOW);
    await expect(page.getByText('This is not the passphrase of the desk.')).toBeVisible(SLOW);
  }
  await said(page, /Wait \d seconds?\. Then try again\./);
  await bridge.pass(1);
  await unlock(page);
  await expect(hook('tab-class')).toBeVisible(SLOW);
});

test('a locked desk shows the exercises of the day and no name', async ({ page, bridge, hook }) => {
  await bridge.call('set_desk_lock', { current: null, passphrase: WORDS });
  await bridge.call('lock_desk', {});
  await openDesk(page);
  await expect(hook('desk-locked')).toBeVisible();
  await scan(page, 'a locked desk with a way to the projector');
  await hook('lock-projector').click();
  await expect(hook('projector')).toBeVisible();
  await scan(page, 'the projector of a locked desk');
  await page.keyboard.press('ArrowRight');
  await expect(hook('projector-answer').or(hook('projector-misconception')).first()).toBeVisible();
  await expect(page.getByText(NAME)).toHaveCount(0);
  await hook('projector-close').click();
  await expect(hook('desk-passphrase')).toBeVisible();
});

test('the head of a desk with a lock is one row', async ({ page, bridge, hook }) => {
  await createClass(bridge);
  await bridge.call('set_desk_lock', { current: null, passphrase: WORDS });
  await page.setViewportSize({ width: 1280, height: 800 });
  for (const language of LANGUAGES) {
    await bridge.changeDevice({ language, guides_read: ['all'] });
    await openDesk(page);
    await expect(hook('desk-passphrase').or(hook('lock-now'))).toBeVisible();
    if (await hook('desk-passphrase').isVisible()) {
      await hook('desk-passphrase').fill(WORDS);
      await page.keyboard.press('Enter');
    }
    await expect(hook('lock-now')).toBeVisible(SLOW);
    const head = await page.locator('header').first().boundingBox();
    expect(head?.height, `one row, ${language}`).toBeLessThan(80);
  }
});
