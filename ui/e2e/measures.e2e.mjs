// Measures of every screen: targets, contrast, reflow, axe.
import { checks, enterSample, openPage, SIZES, startBridge, startChromium } from './bridge.mjs';
import { makeClass, TODAY } from './own-class.mjs';
import { DESK, look, STUDENT, tally } from './measure/look.mjs';
import { walkStudent } from './walk/student.mjs';
import { walkOwnDesk, walkTeacher } from './walk/teacher.mjs';

const check = checks();
const browser = await startChromium();
const began = Date.now();
const say = (words) => console.log(`${((Date.now() - began) / 1000).toFixed(0)} s: ${words}`);
const only = (process.argv[2] ?? 'en,es').split(',');
const parts = (process.argv[3] ?? 'student,teacher').split(',');

/** Goes a way in both languages and measures at each of its stops. */
async function measure(bridge, size, asked, walk, options = {}) {
  for (const [at, language] of ['en', 'es'].entries()) {
    if (!only.includes(language)) continue;
    const { page, context, trouble } = await openPage(browser, bridge.url, size, {
      reducedMotion: 'reduce',
      ...options,
    });
    const sums = tally();
    try {
      await walk({ page, bridge, language, at }, (name) =>
        look(page, `${language} ${name}`, asked, {
          check,
          sums,
          size,
          full: process.env.MEASURE_ALL === '1',
          axeTheme: language === 'en' ? 'light' : 'dark',
        }),
      );
    } catch (error) {
      await page.screenshot({ path: '/tmp/measure-stopped.png' });
      check.that(`${language}: the way to its end`, false, String(error.stack));
    }
    check.none(`${language}: no errors, nothing from elsewhere`, trouble);
    say(`${language}: ${JSON.stringify(sums)}`);
    await context.close();
  }
}
async function ofStudent() {
  const bridge = await startBridge({ today: TODAY });
  const { codes, pack } = await makeClass(bridge);
  await measure(bridge, SIZES.tablet, STUDENT, ({ at, ...way }, stop) =>
    walkStudent({ ...way, pack, code: codes[at], today: TODAY }, stop),
  );
  const desk = { isMobile: false, hasTouch: false };
  await measure(bridge, SIZES.landscape, DESK, walkOwnDesk, desk);
  await bridge.stop();
}
async function ofTeacher() {
  const bridge = await startBridge({ today: '2026-11-24' });
  const { page, context } = await openPage(browser, bridge.url, SIZES.landscape);
  if (!(await page.getByTestId('bar-teacher').isVisible())) await enterSample(page);
  await context.close();
  say('sample');
  await measure(bridge, SIZES.landscape, DESK, walkTeacher, { isMobile: false, hasTouch: false });
  await bridge.stop();
}
try {
  if (parts.includes('student')) await ofStudent();
  if (parts.includes('teacher')) await ofTeacher();
} finally {
  await browser.close();
  check.finish();
}
