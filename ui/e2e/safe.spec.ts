// PIN, backup, removal, copies, and a damaged store.
import { readFileSync, writeFileSync } from 'node:fs';
import { join as path } from 'node:path';
import type { Page } from '@playwright/test';
import type { Bridge } from './bridge';
import { openDesk, said, scan } from './desk';
import { expect, test } from './fixtures';
import { join, makeClass, open, setPin, type OwnClass } from './own-class';
import { DESK } from './sizes';

const WORDS = 'seven quiet rivers';
/** A passphrase is slow to check on purpose. */
const SLOW = { timeout: 60_000 };

test.use(DESK);

async function openSafe(page: Page, bridge: Bridge, own?: OwnClass): Promise<string> {
  const student = await join(bridge, own ?? (await makeClass(bridge)), { nickname: 'Sky' });
  await open(page, student);
  await page.getByTestId('student-settings').click();
  await page.getByText('Keep it safe').click();
  return student;
}

test('a PIN is set with the slip and asked for', async ({ page, bridge, hook }) => {
  const own = await makeClass(bridge);
  const student = await openSafe(page, bridge, own);
  const [signs, others] = own.pin_signs;
  await hook('pin-new-code').fill(own.codes[1] ?? '');
  await hook('pin-new-signs').fill(signs ?? '');
  await hook('pin-new').fill('4071');
  await hook('pin-set').click();
  await said(page, 'This is from another slip.');
  await hook('pin-new-code').fill(own.codes[0] ?? '');
  await hook('pin-set').click();
  await said(page, 'A PIN is set.');
  await expect(hook('pin-new-code'), 'the device knows the slip now').toBeHidden();
  await hook('leave-student').click();
  await hook(`student-${student}`).click();
  await hook('pin').fill('0000');
  await hook('pin-go').click();
  await said(page, 'This is not the PIN.');
  await hook('pin').fill('4071');
  await hook('pin-go').click();
  await expect(hook('tab-today')).toBeVisible();

  // Forgotten: the slip opens, another's does not.
  await bridge.call('lock_students', {});
  await page.goto('/');
  await hook(`student-${student}`).click();
  await page.locator('dialog summary').click();
  await hook('pin-signs').fill(others ?? '');
  await hook('pin-reset').click();
  await expect(page.locator('dialog').getByRole('alert')).toBeVisible();
  await hook('pin-signs').fill((signs ?? '').toLowerCase());
  await hook('pin-reset').click();
  await expect(hook('tab-today')).toBeVisible();
});

test('a student is removed, and comes back from a backup', async ({ page, bridge, hook }) => {
  const student = await openSafe(page, bridge);
  const go = hook('passphrase-go');
  await test.step('a backup is made with a passphrase typed twice', async () => {
    await hook('back-up').click();
    await hook('passphrase').fill('short');
    await go.click();
    await said(page, 'Use at least 8 letters, numbers or spaces.');
    await hook('passphrase').fill(WORDS);
    await hook('passphrase-again').fill(`${WORDS}!`);
    await go.click();
    await said(page, 'The two are not the same.');
    await hook('passphrase-again').fill(WORDS);
    await go.click();
    await expect(page.getByText('The backup is saved')).toBeVisible(SLOW);
  });
  const name = (await bridge.saved()).find((file) => file.name.endsWith('.sfbackup'))?.name ?? '';
  const head = readFileSync(bridge.savedAt(name)).subarray(0, 40).toString('latin1');
  expect(head, 'it is an age file').toMatch(/^age-encryption\.org\/v1\n-> scrypt /);

  await test.step('removed', async () => {
    await hook('remove-student').click();
    await expect(page.getByRole('dialog')).toContainText('Remove everything of Sky');
    await hook('sure-go').click();
    await expect(hook('start-student')).toBeVisible();
    await expect(hook(`student-${student}`)).toHaveCount(0);
  });
  await test.step('and back', async () => {
    await bridge.pick(bridge.savedAt(name));
    await hook('open-backup').click();
    await hook('passphrase').fill('not the words');
    await go.click();
    await expect(page.getByText('The passphrase does not fit.')).toBeVisible(SLOW);
    await hook('passphrase').fill(WORDS);
    await go.click();
    await expect(hook(`student-${student}`)).toBeVisible(SLOW);
    await scan(page, 'a student restored');
  });
});

test('a damaged store is named, and the others are there', async ({ page, bridge, hook }) => {
  const student = await openSafe(page, bridge);
  writeFileSync(path(bridge.data, 'own/students/ffffffffffffffff.sqlite'), 'no store at all');
  await page.goto('/');
  await expect(hook('damaged')).toBeVisible();
  await expect(hook(`student-${student}`)).toBeVisible();
});

test('everything is removed, but not past a PIN', async ({ page, bridge, hook }) => {
  const own = await makeClass(bridge);
  const student = await join(bridge, own);
  await setPin(bridge, own, student, '4071');
  await bridge.call('lock_students', {});
  await openDesk(page);
  await page.getByRole('button', { name: 'Settings' }).click();
  await hook('desk-safe').click();
  await said(page, 'It is not a grade and not a diagnosis.');
  await hook('remove-all').click();
  await expect(hook('sure-go'), 'not by one tap').toBeDisabled();
  await hook('remove-all-typed').fill('Remove everything');
  await hook('sure-go').click();
  await said(page, 'Type the PIN first.');
  await scan(page, 'everything is removed, but not past a PIN');
  await bridge.call('unlock', { student, pin: '4071' });
  await hook('sure-go').click();
  await said(page, 'Everything was removed.');
  const { students, classes } = await bridge.call('start', {});
  expect([...students, ...classes]).toEqual([]);
});
