// Pictures of every screen in both languages, on a large screen and a phone, light
// and dark (or those in THEMES), into shots/, and sheets of them into shots/sheets:
//
//   node e2e/shots.mjs [part of a name]
//
// The stops are those of the ways in `walk`. The pictures are looked at by people.
import { mkdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { enterSample, openPage, SIZES, startBridge, startChromium } from './bridge.mjs';
import { settled, showTheme } from './measure/look.mjs';
import { makeClass, TODAY } from './own-class.mjs';
import { walkStudent } from './walk/student.mjs';
import { walkOwnDesk, walkTeacher } from './walk/teacher.mjs';

const OUT = fileURLToPath(new URL('../../shots/', import.meta.url));
const LANGUAGES = ['en', 'es'];
const THEMES = (process.env.THEMES ?? 'light,dark').split(',');
const SAMPLE_DAY = '2026-11-24';
const A_SHEET = 8;
const only = process.argv[2] ?? '';
const made = new Map();

mkdirSync(`${OUT}sheets`, { recursive: true });
const browser = await startChromium();

/** Goes a way and takes each stop in every size and theme. */
async function take(bridge, kind, language, sizes, walk) {
  const options = { reducedMotion: 'reduce' };
  const { page, context } = await openPage(browser, bridge.url, SIZES[sizes[0]], options);
  await walk({ page, bridge, language }, async (stop) => {
    for (const size of sizes) {
      await page.setViewportSize(SIZES[size]);
      for (const theme of THEMES) {
        const sheet = `${kind}-${language}-${size}-${theme}`;
        const name = `${sheet}-${stop}`;
        if (!name.includes(only)) continue;
        await showTheme(page, theme);
        await settled(page);
        await page.screenshot({ path: `${OUT}${name}.png`, fullPage: true });
        made.set(sheet, [...(made.get(sheet) ?? []), name]);
      }
    }
    await showTheme(page, 'light');
    await page.setViewportSize(SIZES[sizes[0]]);
  });
  await context.close();
  console.log(`${kind} ${language}`);
}

/** The pictures of one kind side by side, so that they can be looked over. */
async function sheets() {
  const page = await browser.newPage({ viewport: { width: 1720, height: 1200 } });
  for (const [sheet, names] of made) {
    const wide = sheet.includes('landscape');
    const each = wide ? 6 : A_SHEET;
    for (let at = 0; at < names.length; at += each) {
      const pictures = names.slice(at, at + each).map((name) => {
        const data = readFileSync(`${OUT}${name}.png`).toString('base64');
        const label = name.slice(sheet.length + 1);
        return `<figure><figcaption>${label}</figcaption><img src="data:image/png;base64,${data}"></figure>`;
      });
      await page.setContent(
        `<style>body{margin:8px;display:grid;grid-template-columns:repeat(${wide ? 3 : 4},1fr);gap:8px;background:#888}
        figure{margin:0}figcaption{font:14px sans-serif}img{width:100%;max-height:${wide ? 560 : 780}px;object-fit:cover;object-position:top}</style>${pictures.join('')}`,
      );
      const path = `${OUT}sheets/${sheet}-${String(at / each + 1).padStart(2, '0')}.png`;
      await page.screenshot({ path, fullPage: true });
    }
  }
  await page.close();
}

const own = await startBridge({ today: TODAY });
const desk = await startBridge({ today: SAMPLE_DAY });
try {
  const { page, context } = await openPage(browser, desk.url, SIZES.landscape);
  const sample = enterSample(page);
  const { codes, pack } = await makeClass(own);
  for (const [at, language] of LANGUAGES.entries()) {
    const way = { pack, code: codes[at], today: TODAY };
    await take(own, 'student', language, ['tablet', 'phone'], (here, stop) =>
      walkStudent({ ...here, ...way }, stop),
    );
    await take(own, 'own-desk', language, ['landscape', 'phone'], walkOwnDesk);
  }
  await sample;
  await context.close();
  for (const language of LANGUAGES)
    await take(desk, 'desk', language, ['landscape', 'phone'], walkTeacher);
  await sheets();
} finally {
  await browser.close();
  await own.stop();
  await desk.stop();
}
