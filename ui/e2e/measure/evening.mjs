// Evenings at home: a whole session to its visible end, stopped in the middle and
// gone on with, in both languages and on every kind of screen, by touch.
import { openPage, SIZES } from '../bridge.mjs';
import { setDevice } from '../walk/student.mjs';
import { fillIn } from '../walk/fill-in.mjs';

const SCREENS = { ...SIZES, desktop: { width: 1440, height: 900 } };
const PLACES = ['tablet', 'landscape', 'phone', 'desktop'];
/** An exercise is to seem to take so long, so that an evening is over after a few. */
const SEEMS_MS = 100_000;

/** A student with a day marked, and the shortest evening there is. */
async function student(bridge, { code, pack, language, nickname }) {
  const call = (name, args) => bridge.post(`/call/${name}`, args);
  await bridge.post('/test/pick', [pack]);
  const offer = await call('pick_class_pack', {});
  const { id } = await call('join', {
    pack: offer.pack,
    seat_code: code,
    nickname,
    picture: 'heron',
    language,
  });
  const { date, concepts } = await call('today', { student: id, date: null });
  for (const { concept } of concepts) {
    const marked = { student: id, date, concept: concept.id, confidence: 0, outcome: 'wrong' };
    await call('check_in', marked);
  }
  const now = await call('student_settings', { student: id });
  await call('save_student_settings', {
    student: id,
    language,
    minutes: now.minutes_least,
    evenings: now.evenings,
    look: now.look,
  });
  return id;
}

/** One exercise: how sure, an answer of any kind, the steps if it was not right. */
async function practise(page) {
  const hook = (name) => page.getByTestId(name);
  await hook('practice-sure-1').tap();
  await hook('answer-submit').waitFor();
  await fillIn(page);
  await page.evaluate((ms) => window.later(ms), SEEMS_MS);
  await hook('answer-submit').tap();
  await hook('practice-feedback').or(page.getByRole('alert')).first().waitFor();
  if (!(await hook('practice-next').isVisible())) await hook('practice-show-steps').tap();
  await hook('practice-next').waitFor();
}

async function evening({ browser, bridge, check, language, place, id }) {
  const name = `evening, ${language}, ${place}`;
  const { page, context, trouble } = await openPage(browser, bridge.url, SCREENS[place], {
    reducedMotion: 'reduce',
  });
  const hook = (of) => page.getByTestId(of);
  await page.addInitScript(() => {
    const now = performance.now.bind(performance);
    let ahead = 0;
    performance.now = () => now() + ahead;
    window.later = (ms) => (ahead += ms);
  });
  const summary = () => bridge.post('/call/practice_summary', { student: id });
  /** From the first screen to practice, as after the program was closed. */
  async function open() {
    const asked = page.waitForResponse((response) => response.url().endsWith('/call/practice'));
    await page.goto(bridge.url);
    await hook(`student-${id}`).tap();
    await page.locator(`html[lang=${language}]`).waitFor();
    await hook('tab-practice').tap();
    return (await asked).json();
  }

  await open();
  await practise(page);
  await hook('practice-next').tap();
  await hook('practice-sure-1').waitFor();
  // Stopped by its button: the account stands there, and a new start goes on.
  await hook('practice-stop').tap();
  await hook('practice-summary').waitFor();
  const stopped = await summary();
  check.that(`${name}: what was done stands in the account`, stopped.finished === 1, stopped);
  const again = await open();
  // Closed in the middle of an exercise: the same one stands there again, as far as it was.
  await hook('practice-sure-2').tap();
  await hook('answer-submit').waitFor();
  const back = await open();
  check.that(
    `${name}: the exercise that was open comes back`,
    back.exercise === again.exercise && back.sure === 2,
    [again.exercise, back.exercise, back.sure],
  );
  // It waits for its words as well, which come with the first exercise after a start.
  const goesOn = await hook('answer-submit')
    .waitFor({ timeout: 5000 })
    .then(
      () => true,
      () => false,
    );
  check.that(`${name}: and the screen goes on from there`, goesOn);
  await fillIn(page);
  await hook('practice-show-steps').tap();
  await hook('practice-next').waitFor();
  await hook('practice-next').tap();
  let done = 2;
  const over = hook('practice-summary');
  for (; done < 12; done += 1) {
    await hook('practice-sure-1').or(over).first().waitFor();
    if (await over.isVisible()) break;
    await practise(page);
    await hook('practice-next').tap();
  }
  const shown = await over.isVisible();
  const whole = await summary();
  check.that(`${name}: it comes to a visible end`, shown, `after ${done} exercises`);
  check.that(`${name}: nothing was lost on the way`, whole.finished === done, [whole, done]);
  check.that(
    `${name}: the end is in sight without scrolling`,
    (await page.evaluate(() => scrollY)) === 0 && (await over.locator('h2').boundingBox()).y >= 0,
  );
  check.that(
    `${name}: nothing wider than the screen`,
    await page.evaluate(
      () => document.documentElement.scrollWidth <= document.documentElement.clientWidth,
    ),
  );
  await hook('practice-finish').tap();
  await page.locator('[data-testid^="rate-"]').first().waitFor();
  check.none(`${name}: no errors`, trouble);
  await context.close();
  return done;
}

export async function measureEvenings({ browser, bridge, check, codes, pack }) {
  await setDevice(bridge, { guides_read: ['all'] });
  const done = [];
  for (const [at, [language, place]] of ['en', 'es']
    .flatMap((language) => PLACES.map((place) => [language, place]))
    .entries()) {
    const id = await student(bridge, { code: codes[at], pack, language, nickname: `W${at}` });
    done.push(await evening({ browser, bridge, check, language, place, id }));
  }
  console.log(`evenings of ${done.join(', ')} exercises, each stopped twice and gone on with`);
}
