// What a student sets and writes for themself, in both languages: text size, colours,
// decimal sign and motion that are nobody else's; goals in own words; reading aloud.
// At 200 % text on 320 px nothing is lost, in every theme.
import { checks, openPage, scanned, SIZES, startBridge, startChromium } from './bridge.mjs';
import { joinClass, makeClass, rateAll, TODAY } from './own-class.mjs';

const check = checks();
const bridge = await startBridge({ today: TODAY });
const browser = await startChromium();
const DECIMAL_POINT = /\d\.\d/;
const DECIMAL_COMMA = /\d,\d/;
const MOST_TURNS = 12;

const said = async () => (await fetch(new URL('/test/said', bridge.url))).json();
const lastSaid = async () => (await said()).said.at(-1) ?? { language: '', text: '' };
const call = (name, args) => bridge.post(`/call/${name}`, args);

/** Waits until something holds; what it gave last otherwise. */
async function until(holds, tries = 50) {
  let found;
  for (let n = 0; n < tries; n += 1) {
    found = await holds();
    if (found) return found;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return found;
}

const looks = (page, name) => scanned(check, page, name);

/** Text and names of the screen, as eyes and screen readers get them. */
function words(page) {
  return page.evaluate(() => {
    const named = [...document.querySelectorAll('main [aria-label]')];
    return [
      document.querySelector('main').innerText,
      ...named.map((e) => e.getAttribute('aria-label')),
    ].join('\n');
  });
}

const rootStyle = (page) =>
  page.evaluate(() => {
    // Something that would move, wherever the screen has something that does.
    const moving = document.createElement('i');
    moving.style.transitionDuration = '140ms';
    document.body.append(moving);
    const moves = getComputedStyle(moving).transitionDuration;
    moving.remove();
    return {
      text: getComputedStyle(document.documentElement).fontSize,
      theme: document.documentElement.dataset.theme,
      lang: document.documentElement.lang,
      motion: document.documentElement.dataset.motion ?? '',
      moves,
    };
  });

async function set(page, testid) {
  await page.getByTestId(testid).click();
  await page.locator(`[data-testid="${testid}"][aria-checked=true]`).waitFor();
}

async function to(page, tab) {
  // The settings have no button to themselves.
  if (tab === 'settings' && (await page.getByTestId('leave-student').isVisible())) return;
  await page.getByTestId(tab === 'settings' ? 'student-settings' : `tab-${tab}`).click();
  await page.locator('main h1').first().waitFor();
  await page.waitForTimeout(250);
}

/** Practises a concept until an exercise shows decimals; gives what its screens said. */
async function decimals(page, concepts) {
  let all = '';
  for (let n = 0; n < MOST_TURNS; n += 1) {
    await to(page, 'path');
    await page.getByTestId(`practise-${concepts[n % concepts.length]}`).click();
    await page.getByTestId('practice-sure-1').waitFor();
    all += await words(page);
    await page.getByTestId('practice-sure-1').click();
    await page.getByTestId('answer-submit').waitFor();
    const hint = page.getByTestId('practice-hint');
    if (await hint.isVisible()) {
      await hint.click();
      await page.getByTestId('hint-aloud-0').waitFor();
    }
    all += await words(page);
    await page.getByTestId('practice-show-steps').click();
    await page.getByTestId('practice-next').waitFor();
    all += await words(page);
  }
  return all;
}

/** A decimal is typed into the next box for one; tells whether there was a box and what came. */
async function typed(page, concepts, sign, text) {
  for (let n = 0; n < 3 * MOST_TURNS; n += 1) {
    await to(page, 'path');
    await page.getByTestId(`practise-${concepts[n % concepts.length]}`).click();
    await page.getByTestId('practice-sure-1').waitFor();
    await page.getByTestId('practice-sure-1').click();
    await page.getByTestId('answer-submit').waitFor();
    const fields = await page.locator('[data-testid^="answer-field-"]').count();
    if (fields === 1 && (await page.getByTestId(`pad-${sign}`).isVisible())) {
      await page.getByTestId('answer-field-0').focus();
      await page.getByTestId('pad-0').click();
      await page.getByTestId(`pad-${sign}`).click();
      await page.getByTestId('pad-7').click();
      check.that(
        `the pad writes ${text}`,
        (await page.getByTestId('answer-field-0').inputValue()) === text,
      );
      await page.getByTestId('answer-submit').click();
      await page.getByTestId('practice-feedback').waitFor();
      return (await page.getByRole('alert').count()) === 0;
    }
    await page.getByTestId('practice-show-steps').click();
    await page.getByTestId('practice-next').waitFor();
  }
  return false;
}

try {
  const { page, trouble } = await openPage(browser, bridge.url, SIZES.tablet);
  await page.getByTestId('start-student').waitFor();
  const { codes, pack } = await makeClass(bridge);
  await joinClass(bridge, page, { code: codes[0], pack, nickname: 'Wren' });
  await rateAll(page);
  const [wren] = (await call('start', {})).students;
  const path = await call('my_path', { student: wren.id });
  const concepts = path.concepts
    .filter((row) => row.concept.has_exercises && row.concept.id.includes('decimal'))
    .map((row) => row.concept.id);
  check.that('there are concepts with decimals', concepts.length >= 3, concepts);

  // --- a look of one's own
  await to(page, 'settings');
  await looks(page, 'settings');
  for (const percent of [125, 150, 175, 200]) {
    await set(page, `text-${percent}`);
    const text = `${(16 * percent) / 100}px`;
    const shown = await until(async () => (await rootStyle(page)).text === text);
    check.that(`text at ${percent} %`, shown === true, await rootStyle(page));
    await looks(page, `settings at ${percent} %`);
  }
  await set(page, 'theme-contrast');
  await page.locator('html[data-theme=contrast]').waitFor();
  check.that('things move', (await rootStyle(page)).moves !== '0s', await rootStyle(page));
  await set(page, 'motion-less');
  await page.locator('html[data-motion=less]').waitFor();
  check.that('nothing moves', (await rootStyle(page)).moves === '0s', await rootStyle(page));
  await set(page, 'decimal-comma');
  check.that(
    'the colours of the device are left alone',
    (await call('start', {})).settings.theme === 'system',
  );
  await page.getByTestId('leave-student').click();
  await page.getByTestId('start-teacher').waitFor();
  const left = await rootStyle(page);
  check.that(
    'left, the screens look as the device says',
    left.text === '16px' && left.theme === 'light' && left.motion === '',
    left,
  );
  await page.getByTestId('start-teacher').click();
  await page.waitForTimeout(500);
  check.that("a teacher's screens are unaffected", (await rootStyle(page)).text === '16px');
  await page.goto(bridge.url);
  await joinClass(bridge, page, { code: codes[1], pack, nickname: 'Finch' });
  const other = await rootStyle(page);
  check.that(
    "another student's screens are unaffected",
    other.text === '16px' && other.theme === 'light' && other.motion === '',
    other,
  );
  await page.goto(bridge.url);
  await page.getByTestId(`student-${wren.id}`).click();
  await page.getByTestId('today-aloud').waitFor();
  const back = await rootStyle(page);
  check.that(
    'opened again after a new start, all is as it was set',
    back.text === '32px' && back.theme === 'contrast' && back.motion === 'less',
    back,
  );

  for (const language of ['en', 'es']) {
    const of = (name) => `${name}, ${language}`;
    await to(page, 'settings');
    await set(page, `language-${language}`);
    await page.locator(`html[lang=${language}]`).waitFor();
    await set(page, 'text-100');

    // --- decimals
    await set(page, 'decimal-comma');
    const comma = await decimals(page, concepts);
    check.that(of('decimals have a comma'), DECIMAL_COMMA.test(comma));
    check.that(
      of('no decimal has a point'),
      !DECIMAL_POINT.test(comma),
      [...comma.matchAll(/.{0,40}\d\.\d.{0,20}/g)].join('|'),
    );
    check.that(of('a comma is read'), await typed(page, concepts, ',', '0,7'));
    await to(page, 'practice');
    if (await page.getByTestId('practice-stop').isVisible())
      await page.getByTestId('practice-stop').click();
    await page.getByTestId('practice-summary').waitFor();
    check.that(of('the summary has no point'), !DECIMAL_POINT.test(await words(page)));
    await to(page, 'settings');
    await set(page, 'decimal-point');
    const point = await decimals(page, concepts);
    check.that(of('decimals have a point'), DECIMAL_POINT.test(point));
    check.that(of('a point is read'), await typed(page, concepts, '.', '0.7'));
    await to(page, 'settings');
    await set(page, 'decimal-comma');

    // --- goals
    await to(page, 'path');
    const goals = page.getByTestId('goals');
    check.that(of('the empty state teaches'), (await goals.locator('p').count()) >= 2);
    await looks(page, of('no goals'));
    await page.getByTestId('goal-add').click();
    check.that(
      of('nothing written is no goal'),
      (await page.getByTestId('goal-reached-0').count()) === 0,
    );
    for (const [n, goal] of [
      'Know my sevens',
      'Draw each story',
      'Ask when I am stuck',
    ].entries()) {
      await page.getByTestId('goal-new').fill(goal);
      await page.getByTestId('goal-new').press('Enter');
      await page.getByTestId(`goal-reached-${n}`).waitFor();
    }
    check.that(of('three are all'), (await page.getByTestId('goal-new').count()) === 0);
    await looks(page, of('three goals'));
    await page.getByTestId('goal-change-1').click();
    await page.getByTestId('goal-words-1').fill('Draw every story');
    await looks(page, of('changing a goal'));
    await page.getByTestId('goal-keep-1').click();
    await page.getByText('Draw every story').waitFor();
    check.that(
      of('the focus is back on the button'),
      await page.getByTestId('goal-change-1').evaluate((e) => e === document.activeElement),
    );
    await page.getByTestId('goal-reached-0').click();
    await page.locator('[data-testid=goal-reached-0][aria-checked=true]').waitFor();
    await page.getByTestId('goal-remove-2').click();
    await page.locator('[data-testid=goal-reached-2]').waitFor({ state: 'detached' });
    await looks(page, of('a goal taken out'));
    await page.locator('.toast button').last().click();
    await page.getByTestId('goal-reached-2').waitFor();
    await page.reload();
    await page.getByTestId(`student-${wren.id}`).click();
    await to(page, 'path');
    await page.getByTestId('goal-reached-2').waitFor();
    const kept = (await call('my_path', { student: wren.id })).goals;
    check.that(
      of('goals stand after a new start'),
      kept.map((goal) => goal.words).join() ===
        'Know my sevens,Draw every story,Ask when I am stuck' && kept[0].reached,
      kept,
    );
    const sizes = [];
    for (const withGoals of [false, true]) {
      await page.getByTestId('print-path').click();
      if (withGoals) await page.getByTestId('own-print-goals').click();
      await looks(page, of(`printing ${withGoals ? 'with' : 'without'} goals`));
      await page.getByTestId('own-print-save').click();
      await page.locator('dialog[open] [role=status]', { hasText: 'my-path.pdf' }).waitFor();
      const files = await (await fetch(new URL('/test/saved', bridge.url))).json();
      sizes.push(files.find((file) => file.name === 'my-path.pdf').bytes);
      await page.keyboard.press('Escape');
    }
    check.that(of('goals are on paper only when ticked'), sizes[1] > sizes[0], sizes);
    for (let n = 0; n < 3; n += 1) {
      await page.getByTestId('goal-remove-0').click();
      await page.waitForTimeout(200);
    }
    await page.getByTestId('goal-new').waitFor();

    // --- reading aloud
    await bridge.post('/test/voice', 'quick');
    await to(page, 'today');
    await page.getByTestId('today-aloud').click();
    const today = await call('today', { student: wren.id, date: null });
    const read = await until(async () => {
      const last = await lastSaid();
      return last.language === language && last;
    });
    check.that(
      of('Today reads each line'),
      today.concepts.every((row) => {
        const [start] = row.concept.i_can.split(/[\d.]/);
        return read && read.text.includes(start.trim());
      }),
      read,
    );
    await bridge.post('/test/voice', 'long');
    const button = page.getByTestId('today-aloud');
    const idle = language === 'en' ? 'Read aloud' : 'Leer en voz alta';
    await button.filter({ hasText: idle }).waitFor();
    const stopsBy = async (name, way) => {
      const before = (await said()).stops;
      await button.click();
      await page.waitForTimeout(300);
      const busy = (await button.textContent()).trim();
      check.that(of(`${name}: the button stops`), busy !== idle, busy);
      await way();
      const stopped = await until(async () => (await said()).stops >= before + 2);
      check.that(of(`${name}: it stops`), stopped === true);
    };
    await stopsBy('the button', () => button.click());
    await button.filter({ hasText: idle }).waitFor();
    await stopsBy('Escape', () => page.keyboard.press('Escape'));
    await button.filter({ hasText: idle }).waitFor();
    await stopsBy('leaving the screen', () => to(page, 'path'));
    await bridge.post('/test/voice', 'missing');
    await to(page, 'today');
    await page.getByTestId('today-aloud').click();
    await page.locator('dialog[open]').waitFor();
    await looks(page, of('no voice'));
    const none = await page.locator('dialog[open]').innerText();
    check.that(of('what is missing is named'), none.includes('speech-dispatcher'), none);
    await page.keyboard.press('Escape');
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
    await bridge.post('/test/voice', 'quick');

    await to(page, 'path');
    const before = (await said()).said.length;
    await page.getByTestId(`practise-${concepts[0]}`).click();
    await page.getByTestId('practice-aloud').waitFor();
    await page.waitForTimeout(500);
    check.that(of('nothing is read unasked'), (await said()).said.length === before);
    await to(page, 'settings');
    await set(page, 'reads-aloud-on');
    await to(page, 'path');
    await page.getByTestId(`practise-${concepts[0]}`).click();
    await page.getByTestId('practice-aloud').waitFor();
    const opened = await until(async () => (await said()).said.length === before + 1);
    check.that(of('an exercise is read as it opens'), opened === true, await said());
    const asked = await lastSaid();
    const start = await page.evaluate(() =>
      document
        .querySelector('.prompt p')
        .innerText.split(/[\d.,?]/)[0]
        .trim(),
    );
    check.that(of('the prompt is read'), asked.text.includes(start), `${start} / ${asked.text}`);
    check.that(
      of('with words for the mathematics'),
      !/[\u{E000}\u{E001}⟨□]/u.test(asked.text) && !/\d[.,]\d/.test(asked.text),
      asked.text,
    );
    // The head: the student beside the title, the two buttons beside each other.
    for (const size of ['phone', 'tablet']) {
      await page.setViewportSize(SIZES[size]);
      const head = await page.evaluate(() => {
        const box = (css) => document.querySelector(css).getBoundingClientRect();
        const [title, me] = [box('main h1'), box('[data-testid=student-settings]')];
        return {
          beside: me.top < title.bottom && me.right > title.right,
          tools: box('[data-testid=practice-tools]').top,
          stop: box('[data-testid=practice-stop]').top,
        };
      });
      check.that(
        of(`the head of practice keeps together, ${size}`),
        head.beside && head.tools === head.stop,
        head,
      );
    }
    await page.getByTestId('practice-sure-1').click();
    await page.getByTestId('answer-submit').waitFor();
    if (await page.getByTestId('practice-hint').isVisible()) {
      await page.getByTestId('practice-hint').click();
      await page.getByTestId('hint-aloud-0').click();
      const name = language === 'en' ? 'Hint 1' : 'Pista 1';
      const hint = await until(async () => {
        const last = await lastSaid();
        return last.text.startsWith(name) && last;
      });
      check.that(of('a hint is read'), Boolean(hint), await lastSaid());
    }
    await page.getByTestId('practice-show-steps').click();
    await page.getByTestId('feedback-aloud').click();
    const steps = await until(async () => {
      const last = await lastSaid();
      return last.text.includes(language === 'en' ? 'Steps' : 'Pasos') && last;
    });
    check.that(of('feedback and steps are read'), Boolean(steps), await lastSaid());
    await page.getByTestId('practice-aloud').click();
    const whole = await until(async () => {
      const last = await lastSaid();
      return last.text.includes(start) && last.text.length > asked.text.length && last;
    });
    check.that(of('the exercise is read with all that stands there'), Boolean(whole));
    await to(page, 'settings');
    await set(page, 'reads-aloud-off');

    // --- 200 % on 320 px, in every theme
    await set(page, 'text-200');
    await page.setViewportSize(SIZES.narrow);
    for (const theme of ['light', 'dark', 'contrast', 'contrast_dark']) {
      const at = (name) => of(`${name} at 200 %, 320 px, ${theme}`);
      await to(page, 'settings');
      await set(page, `theme-${theme}`);
      await looks(page, at('settings'));
      for (const tab of ['today', 'handin', 'path']) {
        await to(page, tab);
        await looks(page, at(tab));
      }
      for (const concept of concepts.slice(0, 2)) {
        await to(page, 'path');
        await page.getByTestId(`practise-${concept}`).click();
        await page.getByTestId('practice-sure-1').waitFor();
        await looks(page, at('how sure'));
        await page.getByTestId('practice-sure-1').click();
        await page.getByTestId('answer-submit').waitFor();
        await looks(page, at('answering'));
        if (await page.getByTestId('practice-hint').isVisible()) {
          await page.getByTestId('practice-hint').click();
          // A second tap while the first is at work does nothing.
          await page.getByTestId('hint-aloud-0').waitFor();
        }
        await page.getByTestId('practice-show-steps').click();
        await page.getByTestId('practice-next').waitFor();
        await looks(page, at('steps'));
      }
      await page.getByTestId('practice-stop').click();
      await page.getByTestId('practice-summary').waitFor();
      await looks(page, at('summary'));
    }
    await page.setViewportSize(SIZES.tablet);
  }

  // --- the system's own colours over the page: what is chosen is still told from the rest
  await to(page, 'settings');
  await set(page, 'text-100');
  await page.emulateMedia({ forcedColors: 'active' });
  const colours = (testid) =>
    page.getByTestId(testid).evaluate((button) => {
      const { backgroundColor, color } = getComputedStyle(button);
      const stone = button.querySelector('ellipse.filled');
      return { backgroundColor, color, stone: stone && getComputedStyle(stone).fill };
    });
  for (const [name, chosen, other] of [
    ['a setting', 'text-100', 'text-125'],
    ['the screen one is on', 'tab-today', 'tab-practice'],
  ]) {
    if (chosen.startsWith('tab')) await to(page, 'today');
    const [on, off] = [await colours(chosen), await colours(other)];
    check.that(
      `forced colours: ${name} is told from the rest`,
      on.backgroundColor !== off.backgroundColor && on.backgroundColor !== on.color,
      { on, off },
    );
    await looks(page, `forced colours: ${name}`);
  }
  const rating = (await call('today', { student: wren.id, date: null })).concepts[0].concept.id;
  await page.getByTestId(`rate-${rating}-2`).click();
  await page.locator(`[data-testid="rate-${rating}-2"][aria-checked=true]`).waitFor();
  const [picked, others] = [await colours(`rate-${rating}-2`), await colours(`rate-${rating}-1`)];
  check.that(
    'forced colours: the rating is told from the others, and its stones are seen',
    picked.backgroundColor !== others.backgroundColor &&
      picked.stone !== picked.backgroundColor &&
      others.stone !== others.backgroundColor,
    { picked, others },
  );
  await page.emulateMedia({ forcedColors: 'none' });

  // --- a tablet whose page goes under the bars of the system
  const system = await page.context().newCDPSession(page);
  const insets = { top: 48, bottom: 60 };
  await system.send('Emulation.setSafeAreaInsetsOverride', { insets });
  await page.setViewportSize(SIZES.phone);
  await page.waitForTimeout(300);
  const clear = await page.evaluate(() => {
    const box = (css) => document.querySelector(css).getBoundingClientRect();
    return {
      head: box('main h1').top + scrollY,
      tabs: innerHeight - box('[data-testid=tab-today]').bottom,
      foot: innerHeight - box('footer').bottom,
      sideways: document.documentElement.scrollWidth - innerWidth,
    };
  });
  check.that(
    "nothing to read or to tap lies under the system's bars",
    clear.head >= insets.top && clear.tabs >= insets.bottom && clear.foot <= 1,
    clear,
  );
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  await page.waitForTimeout(200);
  const end = await page.evaluate(
    () =>
      innerHeight -
      document.querySelector('[data-testid=tab-today]').getBoundingClientRect().bottom,
  );
  check.that('nor at the end of the page', end >= insets.bottom, end);
  await system.send('Emulation.setSafeAreaInsetsOverride', { insets: {} });
  await page.setViewportSize(SIZES.tablet);
  check.none('nothing refused, no errors, nothing from elsewhere', trouble);
} catch (error) {
  check.that('the run came to its end', false, String(error.stack));
} finally {
  await browser.close();
  await bridge.stop();
  check.finish();
}
