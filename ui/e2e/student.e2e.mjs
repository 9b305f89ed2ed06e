// A student's year begins: the class pack, the code, a day of check-ins on one
// screen, practice by the pad and by keys, my path, and a hand-in that is a file.
import {
  checks,
  openPage,
  scanned,
  sideways,
  SIZES,
  startBridge,
  startChromium,
  tooSmall,
} from './bridge.mjs';
import { makeClass, TODAY } from './own-class.mjs';

const check = checks();
const bridge = await startBridge({ today: TODAY });
const browser = await startChromium();

const looks = (page, name) => scanned(check, page, name);

try {
  const { page, trouble } = await openPage(browser, bridge.url, SIZES.tablet);
  await page.getByTestId('start-student').waitFor();
  await looks(page, 'first screen');

  // --- joining
  const { codes, pack } = await makeClass(bridge);
  const [code] = codes;
  await page.getByTestId('start-student').tap();
  await bridge.post('/test/pick', []);
  await page.getByTestId('join-pick').tap();
  await page.getByTestId('join-pick').waitFor();
  check.that(
    'going back from the picker is no error',
    (await page.getByRole('alert').count()) === 0,
  );
  await bridge.post('/test/pick', [pack]);
  await page.getByTestId('join-pick').tap();
  await page.getByText('Room 3').waitFor();
  await looks(page, 'class pack');
  await page.getByTestId('join-next').tap();
  const wrong = code.slice(0, -1) + (code.endsWith('7') ? '8' : '7');
  await page.getByTestId('join-code').fill(wrong);
  await page.getByRole('alert').waitFor();
  await looks(page, 'a wrong code');
  await page.getByTestId('join-next').tap();
  check.that('a wrong code goes no further', await page.getByTestId('join-code').isVisible());
  await page.getByTestId('join-code').fill(code.toLowerCase());
  await page.getByText('The code fits.').waitFor();
  await page.getByTestId('join-next').tap();
  await page.getByTestId('join-nickname').fill('Wren');
  await page.getByTestId('join-picture-heron').tap();
  await looks(page, 'nickname and picture');
  await page.getByTestId('join-finish').tap();

  // --- today: one screen, one tap each
  await page.locator('[data-testid^="rate-"]').first().waitFor();
  const rates = await page.locator('[data-testid^="rate-"][data-testid$="-1"]').all();
  check.that('seven concepts', rates.length === 7, String(rates.length));
  const room = () =>
    page.evaluate(() => {
      const rows = [...document.querySelectorAll('main li')];
      const last = rows.at(-1).getBoundingClientRect();
      return document.querySelector('footer').getBoundingClientRect().top - last.bottom;
    });
  check.that('seven concepts on one screen', (await room()) >= 0, `${await room()} px`);
  await looks(page, 'today');
  const bodies = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/call/check_in')) bodies.push(request.postDataJSON());
  });
  const outcomes = await page.locator('[data-testid^="outcome-"][data-testid$="-right"]').all();
  let taps = 0;
  for (const button of [...rates, ...outcomes]) {
    await button.tap();
    taps += 1;
  }
  await page.getByText('All marked.').waitFor();
  check.that('fourteen taps', taps === 14, String(taps));
  // The last one is sent once it is drawn.
  for (let wait = 0; bodies.length < 14 && wait < 20; wait += 1) await page.waitForTimeout(10);
  check.that('each tap is sent', bodies.length === 14, String(bodies.length));
  await looks(page, 'today, all marked');
  await page.reload();
  await page.locator('[data-testid^="student-"]').first().tap();
  await page.getByText('All marked.').waitFor();
  const chosen = page.locator('[role=radio][aria-checked=true]');
  check.that('all ratings are there after a new start', (await chosen.count()) === 7);
  await rates[0].focus();
  await page.keyboard.press('3');
  await page.locator('[data-testid$="-3"][aria-checked=true]').waitFor();
  check.that('a key changes a rating', (await chosen.count()) === 7);

  // --- practice
  await page.getByTestId('tab-practice').tap();
  for (let n = 0; n < 4; n += 1) {
    await page.getByTestId('practice-sure-1').waitFor();
    if (n === 0) await looks(page, 'how sure');
    await page.getByTestId('practice-sure-1').tap();
    const submit = page.getByTestId('answer-submit');
    await submit.waitFor();
    await looks(page, `answering ${n}`);
    if (n === 0 && (await page.getByTestId('answer-field-0').isVisible())) {
      await submit.tap();
      await page.getByText('Fill in your answer first.').waitFor();
      await page.getByTestId('answer-field-0').focus();
      await page.getByTestId('pad-4').tap();
      await page.getByTestId('pad-2').tap();
      check.that('the pad types', (await page.getByTestId('answer-field-0').inputValue()) === '42');
      await page.getByTestId('pad-erase').tap();
      check.that('the pad erases', (await page.getByTestId('answer-field-0').inputValue()) === '4');
    }
    const hint = page.getByTestId('practice-hint');
    if (await hint.isVisible()) {
      await hint.tap();
      await page.getByRole('region', { name: 'Hint 1' }).waitFor();
      await looks(page, `hint ${n}`);
    }
    await page.getByTestId('practice-show-steps').tap();
    await page.getByTestId('practice-next').waitFor();
    await looks(page, `steps ${n}`);
    await page.getByTestId('practice-next').tap();
  }
  await page.getByTestId('print-practice').tap();
  await page.getByTestId('own-print-paper-a4').tap();
  await looks(page, 'practice on paper');
  await page.getByTestId('own-print-save').tap();
  await page.getByText(/practice-\d+\.pdf was saved/).waitFor();
  await page.getByRole('button', { name: 'Close' }).tap();
  await page.getByTestId('practice-stop').tap();
  await page.getByTestId('practice-summary').waitFor();
  await looks(page, 'summary');

  // --- my path
  await page.getByTestId('tab-path').tap();
  const flags = page.locator('[data-testid^="focus-"]');
  await flags.first().waitFor();
  for (let n = 0; n < 4; n += 1) {
    await flags.nth(n).tap();
    await page.waitForTimeout(150);
  }
  check.that(
    'three in focus at most',
    (await page.locator('[data-testid^="focus-"][aria-pressed=true]').count()) === 3,
  );
  await looks(page, 'my path');
  await page.getByTestId('print-path').tap();
  await looks(page, 'my path on paper');
  await bridge.post('/test/save', 'decline');
  await page.getByTestId('own-print-save').tap();
  await page.getByText('Nothing was saved.').waitFor();
  await page.getByTestId('own-print-save').tap();
  await page.getByText('my-path.pdf was saved.').waitFor();
  {
    const saved = await (await fetch(new URL('/test/saved', bridge.url))).json();
    const prints = saved.filter((one) => one.name.endsWith('.pdf') && one.bytes > 5000);
    check.that('two prints are files', prints.length === 2, saved);
  }
  await page.getByRole('button', { name: 'Close' }).tap();

  // --- hand in
  await page.getByTestId('tab-handin').tap();
  await bridge.post('/test/save', 'decline');
  await page.getByTestId('hand-in-make').tap();
  await page.getByText('No file was made.').waitFor();
  await bridge.post('/test/save', 'unwritable');
  await page.getByTestId('hand-in-make').tap();
  await page.getByRole('alert').waitFor();
  await page.getByTestId('hand-in-make').tap();
  await page.getByText('Your file is made').waitFor();
  await looks(page, 'hand in');
  const saved = await (await fetch(new URL('/test/saved', bridge.url))).json();
  const handIn = saved.find((file) => file.name.endsWith('.sfhandin'));
  check.that('the hand-in is a file', handIn?.bytes > 200, JSON.stringify(saved));

  // Where the system has a share sheet, that is the first way.
  const anew = async () => {
    await page.reload();
    await page.locator('[data-testid^="student-"]').first().tap();
    await page.getByTestId('tab-handin').tap();
    await page.getByTestId('hand-in-make').waitFor();
  };
  check.none('no share sheet, no such button', await page.getByTestId('hand-in-share').all());
  await bridge.post('/test/shares', true);
  await anew();
  await page.getByTestId('hand-in-share').tap();
  await page.getByText('It went to the app you chose.').waitFor();
  await looks(page, 'hand in, shared');
  const shared = await (await fetch(new URL('/test/shared', bridge.url))).json();
  check.that('the hand-in is handed on', shared.length === 1 && shared[0].bytes > 200, shared);
  await bridge.post('/test/shares', false);
  await anew();

  // --- settings, in Spanish and in each theme
  await page.getByTestId('student-settings').tap();
  await page.getByTestId('language-es').tap();
  await page.locator('html[lang=es]').waitFor();
  for (const theme of ['dark', 'contrast', 'contrast_dark', 'light']) {
    await page.getByTestId('tab-handin').tap();
    await page.getByTestId('student-settings').tap();
    await page.getByTestId(`theme-${theme}`).tap();
    await page.locator(`html[data-theme=${theme}]`).waitFor();
    await looks(page, `settings, ${theme}`);
    for (const tab of ['today', 'practice', 'path', 'handin']) {
      await page.getByTestId(`tab-${tab}`).tap();
      await page.locator('main h1').waitFor();
      await page.waitForTimeout(300);
      await looks(page, `${tab}, Spanish, ${theme}`);
      if (tab === 'today')
        check.that(
          `seven on one screen, Spanish, ${theme}`,
          (await room()) >= 0,
          `${await room()} px`,
        );
    }
  }

  // --- other sizes
  for (const [size, viewport] of Object.entries(SIZES)) {
    await page.setViewportSize(viewport);
    for (const tab of ['today', 'practice', 'path', 'handin']) {
      await page.getByTestId(`tab-${tab}`).tap();
      await page.locator('main h1').waitFor();
      await page.waitForTimeout(300);
      check.none(`${tab} ${size}: sizes`, await tooSmall(page));
      check.that(
        `${tab} ${size}: no sideways`,
        (await sideways(page)) <= 0,
        `${await sideways(page)} px`,
      );
      if (tab === 'today' && size === 'landscape')
        check.that('seven on one screen lying', (await room()) >= 0, `${await room()} px`);
    }
  }
  check.none('nothing refused, no errors, nothing from elsewhere', trouble);
} catch (error) {
  check.that('the run came to its end', false, String(error.stack));
} finally {
  await browser.close();
  await bridge.stop();
  check.finish();
}
