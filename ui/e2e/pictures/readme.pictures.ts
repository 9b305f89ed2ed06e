// Takes the pictures of the README into docs/pictures, from the sample class.
import { join } from 'node:path';
import { expect, test } from '../fixtures';
import { settled } from '../measure/look';
import { TOP } from '../places';
import { SIZES } from '../sizes';

test.use({ today: undefined, viewport: { ...SIZES.tablet, height: 1100 } });

test('the pictures of the README', async ({ page, hook, hooks }) => {
  test.setTimeout(600_000);
  const picture = async (name: string) => {
    await settled(page);
    await page.screenshot({ path: join(TOP, `docs/pictures/${name}.png`) });
  };
  await page.goto('/');
  await hook('start-sample').tap();
  await hook('bar-student').tap({ timeout: 580_000 });
  await expect(hooks('rate-').first()).toBeVisible();
  const ids = await hooks('rate-', '-0').evaluateAll((all) =>
    all.map((one) => one.dataset.testid?.slice('rate-'.length, -'-0'.length) ?? ''),
  );
  for (const [at, id] of ids.slice(0, 4).entries()) {
    await hook(`rate-${id}-${[2, 1, 0, 2][at] ?? 0}`).tap();
    if (at < 3) await hook(`outcome-${id}-${at === 1 ? 'wrong' : 'right'}`).tap();
  }
  await picture('today');

  await page.setViewportSize(SIZES.landscape);
  await page.goto('/');
  await hook('bar-student').tap();
  await hook('tab-practice').tap();
  await hook('guide-hide').tap();
  await hook('practice-sure-1').tap();
  await expect(hook('practice-show-steps')).toBeVisible();
  await picture('practice');

  await hook('bar-teacher').tap();
  await expect(hook('now-sentences')).toBeVisible();
  await picture('now');
  await hook('tab-board').tap();
  await expect(hooks('board-row-').first()).toBeVisible();
  await picture('board');
});
