// Takes pictures of an exercise of each concept in every language, of every kind of figure
// with its text alternative, and of the gallery in each theme. LEVEL and SEED choose other
// exercises.
import { join } from 'node:path';
import { exercises, show, withFigures } from '../exercises';
import { LANGUAGES } from '../languages';
import { showTheme, THEMES } from '../measure/look';
import { SHOTS } from '../places';
import { testOf } from '../served';

const WIDE = { viewport: { width: 1720, height: 1200 }, hasTouch: false, isMobile: false };
const ON_A_PAGE = 12;
const contact = testOf('contact');
const gallery = testOf('gallery');

contact.describe(() => {
  contact.use(WIDE);
  contact('exercises and figures', async ({ page }) => {
    contact.setTimeout(600_000);
    const { LEVEL = '2', SEED = '3' } = process.env;
    const all = exercises('--level', LEVEL, '--seed', SEED);
    const figures = withFigures(exercises('--seed', '0', '--count', '2')).items;
    for (const language of LANGUAGES) {
      for (const [name, items] of [
        ['exercises', all],
        ['figures', figures],
      ] as const) {
        for (let at = 0; at < items.length; at += ON_A_PAGE) {
          await show(page, items.slice(at, at + ON_A_PAGE), language, name === 'figures');
          const number = String(at / ON_A_PAGE + 1).padStart(2, '0');
          const path = join(SHOTS, `${name}-${language}-${number}.png`);
          await page.screenshot({ path, fullPage: true });
        }
      }
    }
  });
});

gallery('gallery', async ({ page }) => {
  for (const theme of THEMES) {
    await showTheme(page, theme);
    await page.screenshot({ path: join(SHOTS, `gallery-${theme}.png`), fullPage: true });
  }
});
