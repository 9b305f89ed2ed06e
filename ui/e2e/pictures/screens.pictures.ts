// Takes pictures of every screen in every language, on a large screen and a phone, light and
// dark (or in THEMES), into shots/, and makes sheets of them in shots/sheets. The stops are
// those of the ways in `walk`. ONLY limits them to names that contain it.
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { test } from '../fixtures';
import { LANGUAGES } from '../languages';
import { type ShownTheme, showTheme } from '../measure/look';
import { makeClass } from '../own-class';
import { SAMPLE_DAY, SHOTS } from '../places';
import { DESK, SIZES } from '../sizes';
import { walkStudent } from '../walk/student';
import { walkOwnDesk, walkTeacher } from '../walk/teacher';
import type { At } from '../walk/way';

const THEMES = (process.env.THEMES ?? 'light,dark').split(',') as ShownTheme[];
const { ONLY = '' } = process.env;

/** Takes pictures of each stop of a way in every size and theme, and makes sheets of them. */
async function take(
  page: Page,
  kind: string,
  sizes: (keyof typeof SIZES)[],
  walk: (at: At) => Promise<void>,
): Promise<void> {
  const made = new Map<string, string[]>();
  const first = page.viewportSize();
  await walk(async (stop) => {
    for (const size of sizes) {
      await page.setViewportSize(SIZES[size]);
      for (const theme of THEMES) {
        const sheet = `${kind}-${size}-${theme}`;
        const name = `${sheet}-${stop}`;
        if (!name.includes(ONLY)) continue;
        await showTheme(page, theme);
        await page.screenshot({ path: join(SHOTS, `${name}.png`), fullPage: true });
        made.set(sheet, [...(made.get(sheet) ?? []), name]);
      }
    }
    await showTheme(page, 'light');
    if (first) await page.setViewportSize(first);
  });
  await sheets(page, made);
}

async function sheets(page: Page, made: Map<string, string[]>): Promise<void> {
  mkdirSync(join(SHOTS, 'sheets'), { recursive: true });
  await page.setViewportSize({ width: 1720, height: 1200 });
  for (const [sheet, names] of made) {
    const [each, columns, height] = sheet.includes('landscape') ? [6, 3, 560] : [8, 4, 780];
    for (let at = 0; at < names.length; at += each) {
      const figures = names.slice(at, at + each).map((name) => {
        const data = readFileSync(join(SHOTS, `${name}.png`)).toString('base64');
        const label = name.slice(sheet.length + 1);
        return `<figure><figcaption>${label}</figcaption><img src="data:image/png;base64,${data}"></figure>`;
      });
      await page.goto('about:blank');
      await page.setContent(
        `<style>body{margin:8px;display:grid;grid-template-columns:repeat(${columns},1fr);gap:8px;background:#888}
        figure{margin:0}figcaption{font:14px sans-serif}img{width:100%;max-height:${height}px;object-fit:cover;object-position:top}</style>${figures.join('')}`,
      );
      const number = String(at / each + 1).padStart(2, '0');
      const path = join(SHOTS, 'sheets', `${sheet}-${number}.png`);
      await page.screenshot({ path, fullPage: true });
    }
  }
}

test.setTimeout(1_200_000);
for (const language of LANGUAGES) {
  test(`the screens of a student, ${language}`, async ({ page, bridge }) => {
    const { codes, pin_signs, pack } = await makeClass(bridge);
    const slip = { code: codes[0] ?? '', pin_signs: pin_signs[0] ?? '' };
    const way = { page, bridge, language, pack, ...slip };
    await take(page, `student-${language}`, ['tablet', 'phone'], (at) => walkStudent(way, at));
  });

  test.describe(() => {
    test.use(DESK);
    test(`the desk without hand-ins, ${language}`, async ({ page, bridge }) => {
      await makeClass(bridge);
      const way = { page, bridge, language };
      await take(page, `own-desk-${language}`, ['landscape', 'phone'], (at) =>
        walkOwnDesk(way, at),
      );
    });
  });

  test.describe(() => {
    test.use({ ...DESK, sample: true, today: SAMPLE_DAY });
    test(`the desk, ${language}`, async ({ page, bridge }) => {
      const way = { page, bridge, language };
      await take(page, `desk-${language}`, ['landscape', 'phone'], (at) => walkTeacher(way, at));
    });
  });
}
