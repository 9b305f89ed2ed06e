// What several tests do on the screens.
import { expect, type Page } from '@playwright/test';
import { finders } from '../e2e/finders';

/** Joins by the screens. */
export async function joinBy(
  page: Page,
  pack: string,
  code: string,
  nickname = 'Wren',
): Promise<void> {
  const { hook, hooks } = finders(page);
  await hook('start-student').tap();
  const chooser = page.waitForEvent('filechooser');
  await hook('join-pick').tap();
  await (await chooser).setFiles(pack);
  await hook('join-next').tap();
  await hook('join-code').fill(code);
  await hook('join-next').tap();
  await hook('join-nickname').fill(nickname);
  await hook('join-avatar-heron').tap();
  await hook('join-finish').tap();
  await expect(hooks('rate-').first()).toBeVisible();
}
