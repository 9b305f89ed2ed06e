// Pictures of the hands-on tools, in both languages, two sizes and two themes, into
// shots/: node e2e/tool-shots.mjs. The pictures are looked at by people.
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openPage, SIZES, startBridge, startChromium } from './bridge.mjs';
import { joinClass, makeClass, rateAll, TODAY } from './own-class.mjs';

const OUT = fileURLToPath(new URL('../../shots/', import.meta.url));
mkdirSync(OUT, { recursive: true });
const bridge = await startBridge({ today: TODAY });
const browser = await startChromium();
try {
  const { page } = await openPage(browser, bridge.url, SIZES.tablet);
  const { codes, pack } = await makeClass(bridge);
  await joinClass(bridge, page, { code: codes[0], pack });
  await rateAll(page);
  await page.getByTestId('tab-practice').tap();
  for (const [size, theme, language] of [
    ['tablet', 'light', 'en'],
    ['phone', 'dark', 'es'],
    ['landscape', 'dark', 'en'],
    ['phone', 'light', 'en'],
  ]) {
    await page.setViewportSize(SIZES[size]);
    await page.getByTestId('student-settings').tap();
    await page.getByTestId(`language-${language}`).tap();
    await page.getByTestId(`theme-${theme}`).tap();
    await page.locator(`html[lang=${language}][data-theme=${theme}]`).waitFor();
    await page.getByTestId('tab-practice').tap();
    await page.getByTestId('practice-tools').tap();
    await page.getByTestId('tools').waitFor();
    for (const option of await page
      .locator('[data-testid=tools] > [role=radiogroup]:first-child [role=radio]')
      .all()) {
      const tool = await option.getAttribute('data-testid');
      await option.tap();
      await page.getByTestId('tool-state').waitFor();
      await page.screenshot({
        path: `${OUT}${tool}-${size}-${theme}-${language}.png`,
        fullPage: true,
      });
    }
    await page.getByTestId('practice-tools').tap();
  }
} finally {
  await browser.close();
  await bridge.stop();
}
