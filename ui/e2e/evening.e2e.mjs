// An evening that is left: what stands in an answer stands there again, whether the
// screen, the student or the program was left; an evening that ends by a number of
// exercises; and the words of exercises, which the program may fail to bring.
import { checks, openPage, scanned, SIZES, startBridge, startChromium } from './bridge.mjs';
import { joinClass, makeClass, rateAll, TODAY } from './own-class.mjs';
import { fillIn } from './walk/fill-in.mjs';

const check = checks();
const bridge = await startBridge({ today: TODAY });
const browser = await startChromium();

/** What stands in the answer, as it is seen: texts in boxes, and what is chosen or set. */
function standing(page) {
  return page.locator('.entry').evaluate((entry) => {
    const copy = entry.cloneNode(true);
    for (const one of copy.querySelectorAll('[role=status], [aria-live]')) one.remove();
    for (const one of copy.querySelectorAll('[tabindex]')) one.removeAttribute('tabindex');
    const values = [...entry.querySelectorAll('input')].map((one) => one.value);
    const chosen = [...copy.querySelectorAll('[aria-checked=true], [aria-pressed=true]')];
    return JSON.stringify([
      values,
      copy.textContent.replace(/\s+/g, ' '),
      chosen.map((one) => one.dataset.testid),
    ]);
  });
}

try {
  const { page, trouble } = await openPage(browser, bridge.url, SIZES.tablet);
  const { codes, pack } = await makeClass(bridge);
  const kept = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/call/keep_draft')) kept.push(request.postDataJSON());
  });
  const refusedDrafts = [];
  page.on('response', (response) => {
    if (response.url().endsWith('/call/keep_draft') && !response.ok())
      refusedDrafts.push(response.status());
  });
  const keptSoon = async (count) => {
    for (let wait = 0; kept.length < count && wait < 40; wait += 1) await page.waitForTimeout(50);
    return kept.length;
  };
  const again = async () => {
    await page.getByTestId('tab-today').tap();
    await page.locator('main h1').waitFor();
    await page.getByTestId('tab-practice').tap();
    await page.getByTestId('answer-submit').waitFor();
  };

  // --- the words of exercises come with the first one; without them nothing is lost
  await joinClass(bridge, page, { code: codes[0], pack });
  await rateAll(page);
  let refused = true;
  await page.route('**/call/exercise_words', (route) =>
    refused
      ? route.fulfill({ status: 422, json: { code: 'storage', detail: 'planted' } })
      : route.continue(),
  );
  await page.getByTestId('tab-practice').tap();
  await page.getByRole('alert').waitFor();
  await scanned(check, page, 'words that do not come');
  refused = false;
  await page.getByRole('alert').getByRole('button').tap();
  await page.getByTestId('practice-sure-1').waitFor();
  check.that('tried again, the words are there', !(await page.textContent('main')).includes('⟨'));

  // --- what stands in an answer
  // Which exercises come is chance, so it goes on until both kinds were there.
  const seen = new Set();
  for (let n = 0; n < 3 || (seen.size < 2 && n < 25); n += 1) {
    await page.getByTestId('practice-sure-1').tap();
    await page.getByTestId('answer-submit').waitFor();
    const empty = await standing(page);
    const before = kept.length;
    await fillIn(page);
    const filled = await standing(page);
    check.that(`exercise ${n}: something stands there`, filled !== empty);
    if (n === 0) {
      // Kept by itself once typing pauses, and only once.
      check.that('kept when typing pauses', (await keptSoon(before + 1)) > before);
      const count = kept.length;
      await page.waitForTimeout(900);
      check.that('and not again without a change', kept.length === count, `${kept.length}`);
      await page.reload();
      await page.locator('[data-testid^="student-"]').first().tap();
      await page.getByTestId('tab-practice').tap();
      await page.getByTestId('answer-submit').waitFor();
    } else {
      // Left at once, before any pause.
      await again();
    }
    const after = await standing(page);
    check.that(`exercise ${n}: it stands there again`, after === filled, `${filled} / ${after}`);
    seen.add(JSON.stringify(kept.at(-1)?.draft?.kind));
    // A try that is wrong stays; the exercise then ends, and the next one is empty.
    await page.getByTestId('answer-submit').tap();
    await page.getByTestId('practice-feedback').waitFor();
    if (!(await page.getByTestId('practice-next').isVisible())) {
      await again();
      check.that(`exercise ${n}: also after a first try`, (await standing(page)) === filled);
      await page.getByTestId('practice-show-steps').tap();
    }
    await page.getByTestId('practice-next').tap();
    await page.getByTestId('practice-sure-1').waitFor();
  }
  check.that('typed and tapped answers were among them', seen.size === 2, [...seen].join());
  await page.getByTestId('practice-sure-1').tap();
  await page.getByTestId('answer-submit').waitFor();
  const next = await standing(page);
  const [values, , chosen] = JSON.parse(next);
  check.that(
    'a new exercise is empty',
    values.every((one) => one === '') && chosen.length === 0,
    next,
  );
  await page.getByTestId('practice-show-steps').tap();

  // --- an evening by a number of exercises, of another student
  await page.reload();
  await joinClass(bridge, page, { code: codes[1], pack, nickname: 'Lark' });
  await rateAll(page);
  await page.getByTestId('student-settings').tap();
  await page.getByTestId('ends-exercises').tap();
  await page.locator('[data-testid="ends-exercises"][aria-checked=true]').waitFor();
  await scanned(check, page, 'settings, by exercises');
  await page.getByTestId('exercises-4').tap();
  await page.locator('[data-testid="exercises-4"][aria-checked=true]').waitFor();
  await page.getByTestId('tab-practice').tap();
  await page.getByText('0 of 4 done').waitFor();
  check.that(
    'the head tells it in words',
    await page.getByRole('img', { name: 'Tonight: 0 of 4 exercises' }).isVisible(),
  );
  await scanned(check, page, 'practice by exercises');
  for (let done = 0; done < 4; done += 1) {
    await page.getByTestId('practice-sure-1').tap();
    await page.getByTestId('practice-show-steps').tap();
    await page.getByTestId('practice-next').tap();
  }
  await page.getByTestId('practice-summary').waitFor();
  check.that('after four it is over', await page.getByText(/4 exercises/).isVisible());
  await page.getByTestId('practice-more').tap();
  await page.getByTestId('practice-sure-1').waitFor();
  check.that('more can be asked for', await page.getByText('4 of 4 done').isVisible());
  await page.getByTestId('practice-sure-1').tap();
  await page.getByTestId('practice-show-steps').tap();
  await page.getByTestId('practice-next').tap();
  await page.getByText('5 done').waitFor();
  await page.getByTestId('student-settings').tap();
  await page.getByTestId('ends-minutes').tap();
  await page.locator('[data-testid="ends-minutes"][aria-checked=true]').waitFor();
  check.that('and back to minutes', await page.getByTestId('minutes-8').isVisible());

  // --- behind a PIN, and left by the device's own way back: kept before the lock
  await page.getByText('Keep it safe').click();
  await page.getByTestId('pin-new').fill('4071');
  await page.getByTestId('pin-set').tap();
  await page.getByText('A PIN is set.').waitFor();
  const enter = async () => {
    await page.getByRole('button', { name: /Lark/ }).tap();
    await page.getByTestId('pin').fill('4071');
    await page.getByTestId('pin-go').tap();
    await page.getByTestId('tab-practice').tap();
  };
  await page.goto(bridge.url);
  await enter();
  await page.getByTestId('practice-sure-1').tap();
  await page.getByTestId('answer-submit').waitFor();
  await fillIn(page);
  const locked = await standing(page);
  await page.goBack();
  await page.getByTestId('start-teacher').waitFor();
  await enter();
  await page.getByTestId('answer-submit').waitFor();
  check.that('behind a PIN it stands there again', (await standing(page)) === locked, locked);
  await page.getByTestId('student-settings').tap();

  // --- languages: the words of exercises follow the student
  await page.getByTestId('language-es').tap();
  await page.locator('html[lang=es]').waitFor();
  await page.getByTestId('tab-practice').tap();
  await page.locator('main h1').waitFor();
  await page.waitForTimeout(300);
  const words = await page.textContent('main');
  check.that('in Spanish no word is missing', !words.includes('⟨'), words.slice(0, 200));
  check.none('no draft was refused', refusedDrafts);
  check.none('no errors, nothing from elsewhere', trouble);
} catch (error) {
  check.that('the run came to its end', false, String(error.stack));
} finally {
  await browser.close();
  await bridge.stop();
  check.finish();
}
