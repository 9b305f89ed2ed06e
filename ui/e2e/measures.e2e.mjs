// Measures of every screen, against the real calls: targets, contrast, reflow, spacing
// of text and axe at every stop of the ways in `walk`; the main work by keys alone;
// evenings at home on four screens; the time of a tap.
//
// MEASURE_ALL=1 takes what the short run leaves to other runs or to one language: axe
// in every theme and language, and contrast in both languages on all screens.
import { checks, enterSample, openPage, SIZES, startBridge, startChromium } from './bridge.mjs';
import { makeClass, TODAY } from './own-class.mjs';
import { measureEvenings } from './measure/evening.mjs';
import { studentByKeys, teacherByKeys } from './measure/keys.mjs';
import { DESK, look, STUDENT, tally } from './measure/look.mjs';
import { plantFaults } from './measure/planted.mjs';
import { measureTaps } from './measure/taps.mjs';
import { changeWords } from './measure/words.mjs';
import { walkStudent } from './walk/student.mjs';
import { walkOwnDesk, walkTeacher } from './walk/teacher.mjs';

const ALL = process.env.MEASURE_ALL === '1';
const LANGUAGES = ['en', 'es'];
/** A day in the middle of the sample class's year. */
const SAMPLE_DAY = '2026-11-24';
const DESK_PAGE = { isMobile: false, hasTouch: false };
const check = checks();
const browser = await startChromium();
const began = Date.now();
const seconds = () => `${((Date.now() - began) / 1000).toFixed(0)} s`;

/** Does one part; what stops it does not stop the others. */
async function part(name, doing) {
  try {
    await doing();
  } catch (error) {
    check.that(`${name} comes to its end`, false, String(error.stack));
  }
  console.log(`${name} done after ${seconds()}`);
}

/** Goes a way and measures at each of its stops. */
async function measure(name, { size, asked, language, walk, options, ...how }) {
  const { page, context, trouble } = await openPage(browser, how.bridge.url, size, {
    reducedMotion: 'reduce',
    ...options,
  });
  const sums = tally();
  const at = (stop) => look(page, `${name} ${stop}`, asked, { ...how, check, sums, size });
  await part(name, () => walk({ page, bridge: how.bridge, language }, at));
  check.none(`${name}: no errors, nothing from elsewhere`, trouble);
  const spared = Object.entries(sums.spared).filter(([, count]) => count > 0);
  const lowest = sums.colours > 0 ? `, least contrast of text ${sums.lowest.toFixed(2)}` : '';
  console.log(
    `${name}: ${sums.stops} stops, ${sums.targets} targets, ${sums.colours} colours${lowest}; let pass: ` +
      (spared.map(([why, count]) => `${count} ${why}`).join(', ') || 'nothing'),
  );
  await context.close();
}

/** The sample class takes a while to make, so it is begun first. */
async function sampleDesk() {
  const bridge = await startBridge({ today: SAMPLE_DAY });
  const { page, context } = await openPage(browser, bridge.url, SIZES.landscape);
  await enterSample(page);
  await context.close();
  return bridge;
}

const sample = sampleDesk();
const own = await startBridge({ today: TODAY });
try {
  const { codes, pack } = await makeClass(own, { seats: 16 });
  const seat = codes[Symbol.iterator]();
  const code = () => seat.next().value;
  await part('planted faults', () => plantFaults({ browser, bridge: own, check }));
  await part('words', () => changeWords({ browser, bridge: own, check }));
  await part('student by keys', () =>
    studentByKeys({ browser, bridge: own, check, code: code(), pack }),
  );
  for (const language of LANGUAGES) {
    // Colours are the same in both languages, and Spanish has the longer words.
    const first = language === 'en' || ALL;
    const how = { bridge: own, language };
    await measure(`student ${language}`, {
      ...how,
      size: SIZES.tablet,
      asked: STUDENT,
      colours: first,
      axeThemes: ALL ? ['light', 'dark', 'contrast', 'contrast_dark'] : [first ? 'light' : 'dark'],
      walk: (way, at) => walkStudent({ ...way, pack, code: code(), today: TODAY }, at),
    });
    await measure(`own desk ${language}`, {
      ...how,
      size: SIZES.landscape,
      asked: DESK,
      colours: first,
      axeThemes: ALL ? ['light', 'dark', 'contrast', 'contrast_dark'] : [first ? 'light' : 'dark'],
      options: DESK_PAGE,
      walk: walkOwnDesk,
    });
  }
  const evenings = Array.from({ length: 8 }, code);
  await part('evenings', () =>
    measureEvenings({ browser, bridge: own, check, codes: evenings, pack }),
  );
  const desk = await sample;
  await part('taps', () => measureTaps({ browser, bridge: own, check, code: code(), pack }));
  await part('teacher by keys', () => teacherByKeys({ browser, bridge: desk, check }));
  for (const language of ALL ? LANGUAGES : ['es']) {
    await measure(`teacher ${language}`, {
      bridge: desk,
      language,
      size: SIZES.landscape,
      asked: DESK,
      colours: true,
      // The teacher's own runs take axe of these screens.
      axeThemes: ALL ? ['light', 'dark', 'contrast', 'contrast_dark'] : [],
      options: DESK_PAGE,
      walk: walkTeacher,
    });
  }
} catch (error) {
  check.that('the run came to its end', false, String(error.stack));
} finally {
  await browser.close();
  await own.stop();
  await sample.then(
    (bridge) => bridge.stop(),
    () => undefined,
  );
  check.finish();
}
