// The pictures of the README, into docs/pictures: node e2e/pictures.mjs, with the
// bridge and its screens built. They are looked at by people.
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { enterSample, openPage, SIZES, startBridge, startChromium } from './bridge.mjs';

const OUT = fileURLToPath(new URL('../../docs/pictures/', import.meta.url));

mkdirSync(OUT, { recursive: true });
const bridge = await startBridge();
const browser = await startChromium();

async function picture(page, name) {
  await page.evaluate(() => Promise.allSettled(document.getAnimations().map((a) => a.finished)));
  await page.screenshot({ path: `${OUT}${name}.png` });
}

async function open(size) {
  const { page } = await openPage(browser, bridge.url, size);
  await page.goto(bridge.url);
  return page;
}

try {
  const tablet = await open({ ...SIZES.tablet, height: 1100 });
  await enterSample(tablet);
  await tablet.getByTestId('bar-student').tap();
  await tablet.locator('[data-testid^="rate-"]').first().waitFor();
  const ratings = await tablet
    .locator('[data-testid^="rate-"]')
    .evaluateAll((found) => [
      ...new Set(found.map((one) => one.dataset.testid.slice('rate-'.length, -'-0'.length))),
    ]);
  for (const [at, concept] of ratings.slice(0, 4).entries()) {
    await tablet.getByTestId(`rate-${concept}-${[2, 1, 0, 2][at]}`).tap();
    if (at < 3)
      await tablet.getByTestId(`outcome-${concept}-${at === 1 ? 'wrong' : 'right'}`).tap();
  }
  await picture(tablet, 'today');

  const wide = await open(SIZES.landscape);
  await wide.getByTestId('bar-student').tap();
  await wide.getByTestId('tab-practice').tap();
  await wide.getByTestId('guide-hide').tap();
  await wide.getByTestId('practice-sure-1').tap();
  await wide.getByTestId('practice-show-steps').waitFor();
  await picture(wide, 'practice');

  await wide.getByTestId('bar-teacher').tap();
  await wide.getByTestId('tab-board').tap();
  await wide.locator('[data-testid^="board-row-"]').first().waitFor();
  await picture(wide, 'board');
} finally {
  await browser.close();
  await bridge.stop();
}
