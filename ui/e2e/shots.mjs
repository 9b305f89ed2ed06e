// Pictures of every screen in both languages, four sizes and three themes, into
// shots/: node e2e/shots.mjs [part of a name]. The pictures are looked at by people.
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { enterSample, openPage, SIZES, startBridge, startChromium } from './bridge.mjs';

const OUT = fileURLToPath(new URL('../../shots/', import.meta.url));
const LANGUAGES = ['en', 'es'];
const THEMES = ['light', 'dark', 'contrast'];
const only = process.argv[2] ?? '';

mkdirSync(OUT, { recursive: true });
const bridge = await startBridge();
const browser = await startChromium();

async function shot(page, name) {
  await page.evaluate(() => Promise.allSettled(document.getAnimations().map((a) => a.finished)));
  await page.screenshot({ path: `${OUT}${name}.png`, fullPage: true });
}

/** Each student screen, ending with a summary. */
async function student(page, name) {
  await page.getByTestId('bar-student').tap();
  await page.locator('[data-testid^="rate-"]').first().waitFor();
  await shot(page, `${name}-today`);
  await page.getByTestId('tab-practice').tap();
  await page.locator('[data-testid^="practice-"]').first().waitFor();
  const sure = page.getByTestId('practice-sure-1');
  if (await sure.isVisible()) {
    await shot(page, `${name}-practice-sure`);
    await sure.tap();
  }
  await page
    .locator(
      '[data-testid="practice-show-steps"], [data-testid="practice-next"], [data-testid="practice-finish"], [data-testid="practice-to-today"]',
    )
    .first()
    .waitFor();
  if (await page.getByTestId('practice-show-steps').isVisible()) {
    await shot(page, `${name}-practice-answer`);
    await page.getByTestId('practice-show-steps').tap();
    await page.getByTestId('practice-feedback').waitFor();
    await shot(page, `${name}-practice-steps`);
  }
  if (await page.getByTestId('practice-stop').isVisible()) {
    await page.getByTestId('practice-stop').tap();
    await page.getByTestId('practice-summary').waitFor();
    await shot(page, `${name}-practice-summary`);
  }
  await page.getByTestId('tab-path').tap();
  await page.locator('[data-testid^="focus-"]').first().waitFor();
  await shot(page, `${name}-path`);
  await page.getByTestId('tab-handin').tap();
  await page.getByTestId('hand-in-make').waitFor();
  await shot(page, `${name}-handin`);
  await page.getByTestId('student-settings').tap();
  await page.getByTestId('leave-student').waitFor();
  await shot(page, `${name}-settings`);
}

async function teacher(page, name) {
  await page.getByTestId('bar-teacher').tap();
  for (const tab of ['board', 'talk', 'groups', 'assign', 'enter', 'print', 'files', 'class']) {
    const button = page.getByTestId(`tab-${tab}`);
    await button.waitFor();
    await button.tap();
    await page.waitForTimeout(700);
    await shot(page, `${name}-desk-${tab}`);
  }
}

try {
  for (const [size, viewport] of Object.entries(SIZES)) {
    const { page, context } = await openPage(browser, bridge.url, viewport);
    for (const language of LANGUAGES) {
      for (const theme of THEMES) {
        const name = `${size}-${language}-${theme}`;
        if (!name.includes(only)) continue;
        await page.goto(bridge.url);
        await page.getByTestId('start-teacher').waitFor();
        if (await page.getByTestId('bar-leave').isVisible()) {
          await page.getByTestId('bar-leave').tap();
          await page.getByTestId('start-sample').waitFor();
        }
        await page.getByTestId(`language-${language}`).tap();
        await page.getByTestId(`theme-${theme}`).tap();
        await page.locator(`html[lang=${language}][data-theme=${theme}]`).waitFor();
        await shot(page, `${name}-start`);
        await page.getByTestId('start-student').first().tap();
        await page.getByTestId('join-pick').waitFor();
        await shot(page, `${name}-join`);
        await page.goto(bridge.url);
        await enterSample(page);
        await setStudentLanguage(page, language);
        await student(page, name);
        // The desk is made for a screen on a desk.
        if (viewport.width >= 800) await teacher(page, name);
        console.log(name);
      }
    }
    await context.close();
  }
} finally {
  await browser.close();
  await bridge.stop();
}

async function setStudentLanguage(page, language) {
  await page.getByTestId('bar-student').tap();
  await page.getByTestId('student-settings').tap();
  await page.getByTestId(`language-${language}`).tap();
  await page.locator(`html[lang=${language}]`).waitFor();
}
