// A tap is to be answered within 50 ms on a slow tablet: the processor is slowed six
// times, taps are real touches, and the times are printed. No check hangs on them,
// since they are the machine's as much as ours; that taps were timed is one.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openPage, SIZES } from '../bridge.mjs';
import { joinClass } from '../own-class.mjs';
import { settled } from './look.mjs';

const SLOWER = 6;
const TARGET_MS = 50;
const PAGE = readFileSync(fileURLToPath(new URL('page/taps.js', import.meta.url)), 'utf8');

function told(times) {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (part) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))];
  return [at(0.5), at(0.95), sorted.at(-1)].map((ms) => ms.toFixed(0)).join(' / ');
}

/** What a bare page with one button takes here: the share of browser and machine. */
async function bareButton(browser, url) {
  const { page, context } = await openPage(browser, url, SIZES.tablet);
  await page.evaluate(() => {
    const button = document.createElement('button');
    button.dataset.testid = 'bare';
    Object.assign(button.style, { width: '300px', height: '300px' });
    button.addEventListener('click', () => {
      const pressed = button.ariaPressed !== 'true';
      button.ariaPressed = String(pressed);
      button.style.background = pressed ? 'teal' : 'white';
    });
    document.body.replaceChildren(button);
  });
  await page.evaluate(PAGE);
  const slow = await context.newCDPSession(page);
  await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  for (let n = 1; n <= 10; n += 1) {
    const { x, y } = await page.evaluate(() => window.taps.next('bare', 'bare'));
    await page.touchscreen.tap(x, y);
    await page.waitForFunction((of) => window.taps.found.length === of, n);
  }
  const times = await page.evaluate(() => window.taps.all().map((one) => one.ms));
  await context.close();
  return times;
}

export async function measureTaps({ browser, bridge, check, code, pack }) {
  const bare = await bareButton(browser, bridge.url);
  const { page, context } = await openPage(browser, bridge.url, SIZES.tablet);
  await joinClass(bridge, page, { code, pack, nickname: 'Teal' });
  await page.evaluate(PAGE);
  const slow = await context.newCDPSession(page);
  await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });

  let taps = 0;
  async function tap(kind, hook) {
    const { x, y } = await page.evaluate((args) => window.taps.next(...args), [kind, hook]);
    await page.touchscreen.tap(x, y);
    taps += 1;
    await page.waitForFunction((n) => window.taps.found.length === n, taps);
  }
  const hooks = (start) =>
    page
      .locator(`[data-testid^="${start}"]`)
      .evaluateAll((all) => all.map((one) => one.dataset.testid));

  // --- a day on one screen, at most two taps a concept
  await page.evaluate(() => scrollTo(0, 0));
  await settled(page);
  const rows = await page.locator('main li').count();
  const room = await page.evaluate(() => {
    const last = [...document.querySelectorAll('main li')].at(-1).getBoundingClientRect();
    return document.querySelector('footer').getBoundingClientRect().top - last.bottom;
  });
  check.that(
    'seven concepts stand on one screen of 800 by 1280',
    rows === 7 && room >= 0,
    `${room}`,
  );
  const stones = await hooks('rate-');
  const outcomes = await hooks('outcome-');
  const day = [
    ...stones.filter((one) => one.endsWith('-2')).map((one) => ['stone', one]),
    ...outcomes.filter((one) => one.endsWith('-right')).map((one) => ['outcome', one]),
  ];
  for (const [kind, hook] of day) await tap(kind, hook);
  const scrolled = await page.evaluate(() => scrollY);
  const marked = await page.getByTestId('today-practice').isVisible();
  check.that('a day takes 14 taps and no scrolling', marked && taps === 14 && scrolled === 0, taps);
  console.log(`a day of ${rows} concepts: ${taps} taps, ${Math.round(room)} px of the screen left`);

  // --- more of the same, and other signs
  for (const one of stones.filter((hook) => hook.endsWith('-0'))) await tap('stone', one);
  for (const one of stones.filter((hook) => hook.endsWith('-1'))) await tap('stone', one);
  for (const one of outcomes.filter((hook) => hook.endsWith('-wrong'))) await tap('outcome', one);

  // --- exercises: the pad, choices, and the button that checks
  await page.getByTestId('tab-practice').tap();
  for (let n = 0; n < 6; n += 1) {
    await page.getByTestId('practice-sure-1').waitFor();
    await tap('sure', 'practice-sure-1');
    const keys = await hooks('pad-');
    const choices = await hooks('answer-choice-');
    const boxes = await hooks('answer-field-');
    for (const choice of choices.slice(0, 4)) {
      await page.getByTestId(choice).scrollIntoViewIfNeeded();
      await tap('choice', choice);
    }
    for (const box of keys.includes('pad-1') ? boxes : []) {
      await page.getByTestId(box).focus();
      for (const key of ['pad-1', 'pad-4', 'pad-erase', 'pad-2']) {
        await page.getByTestId(key).scrollIntoViewIfNeeded();
        await tap('key', key);
      }
    }
    if (choices.length + boxes.length > 0) {
      await page.getByTestId('answer-submit').scrollIntoViewIfNeeded();
      await tap('check', 'answer-submit');
    }
    const steps = page.getByTestId('practice-show-steps');
    if (await steps.isVisible()) await steps.tap();
    await page.getByTestId('practice-next').tap();
  }
  await page.waitForTimeout(300);

  const all = await page.evaluate(() => window.taps.all());
  check.that('every tap was timed', all.length === taps && taps > 60, `${all.length} of ${taps}`);
  console.log(
    `a tap until it is drawn, processor ${SLOWER} times slower, ms (middle / 95 in 100 / most; ` +
      'to the end of the frame, to its presentation in steps of 8):',
  );
  console.log(`  a bare button on an empty page: ${told(bare)}; ${bare.length} taps`);
  for (const kind of new Set(all.map((one) => one.kind))) {
    const of = all.filter((one) => one.kind === kind);
    const times = of.map((one) => one.ms);
    const over = times.filter((ms) => ms > TARGET_MS).length;
    console.log(
      `  ${kind}: ${told(times)}; ${told(of.map((one) => one.presented))}; ${of.length} taps` +
        (over > 0 ? `, over target: ${over} took longer than ${TARGET_MS} ms` : ''),
    );
    const brought = of.flatMap((one) => one.broughtMs ?? []);
    if (brought.length > 0) console.log(`    and what the program brings: ${told(brought)}`);
  }
  await context.close();
}
