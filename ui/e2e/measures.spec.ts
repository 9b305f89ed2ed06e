// Checks the measures themselves, loads the other languages, and times taps.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { LANGUAGE_LINES, LANGUAGES, messageIn } from './languages';
import { measurable, settled, STUDENT } from './measure/look';
import { installTaps, type Kind } from './measure/taps';
import { join, makeClass, open } from './own-class';

interface Planted {
  tag?: string;
  words?: string;
  style: Record<string, string>;
}

/** Faults: the words that must report each, and how it is made. */
const FAULTS: [name: string, RegExp, ...Planted[]][] = [
  ['small', /of 20×20/, { tag: 'button', style: { width: '20px', height: '20px' } }],
  [
    'close',
    /of 22×22/,
    { tag: 'button', style: { width: '22px', height: '22px', marginLeft: '-21px' } },
  ],
  ['fine print', /of 14 px/, { style: { fontSize: '14px' } }],
  ['pale', /text 4\.48/, { style: { color: '#777', background: '#fff' } }],
  ['veiled', /text \d/, { style: { opacity: '0.5', color: '#000' } }],
  [
    'frame',
    /frame 1\./,
    { tag: 'button', style: { border: '1px solid #ddd', background: '#fff' } },
  ],
  ['field', /no frame/, { tag: 'input', style: { border: '0' } }],
  ['wide', /px too wide/, { style: { width: '3000px' } }],
  [
    'cut',
    /cut off/,
    { words: 'cut '.repeat(60), style: { height: '20px', width: '90px', overflow: 'hidden' } },
  ],
  [
    'overlapping',
    /" on /,
    { words: 'on top', style: { position: 'absolute', top: '8px', left: '8px' } },
    { words: 'what lies below', style: { position: 'absolute', top: '8px', left: '8px' } },
  ],
];

test('the measures find the planted faults and nothing else', async ({ page }) => {
  await page.goto('/');
  await measurable(page);
  const measured = async (...planted: Planted[]) => {
    await page.evaluate((all) => {
      const sound = document.createElement('p');
      sound.textContent = 'A sound line of words.';
      const made = all.map(({ tag = 'p', words = 'words', style }) => {
        const one = document.createElement(tag);
        one.textContent = words;
        Object.assign(one.style, style);
        return one;
      });
      document.body.replaceChildren(sound, ...made);
    }, planted);
    await settled(page);
    return page.evaluate(
      (asked) => [
        ...window.measure.targets(asked).found,
        ...window.measure.contrast(asked).found,
        ...window.measure.smallText(asked.size),
        ...window.measure.reflow(),
      ],
      STUDENT,
    );
  };
  expect(await measured(), 'a sound page').toEqual([]);
  for (const [name, told, ...planted] of FAULTS)
    expect((await measured(...planted)).join('\n'), name).toMatch(told);
});

const [FIRST, ...OTHERS] = LANGUAGE_LINES;

for (const { tag, name } of OTHERS) {
  test(`${tag} is loaded when it is first chosen, completely or not at all`, async ({
    page,
    hook,
  }) => {
    const loaded: (string | undefined)[] = [];
    const ofLanguage = new RegExp(`assets/(${LANGUAGES.join('|')})-`);
    page.on('request', (request) => {
      const asset = ofLanguage.exec(request.url());
      if (asset) loaded.push(asset[1]);
    });
    const file = new RegExp(`assets/${tag}-`);
    const shown = (language: string) => page.locator(`html[lang=${language}]`);
    const words = page.locator('body');
    await page.goto('/');
    await expect(hook(`language-${tag}`)).toBeVisible();
    expect(loaded, 'one language at first').toEqual([FIRST.tag]);

    await test.step('words that cannot be loaded are reported, and all others stay', async () => {
      await page.route(file, (route) => route.fulfill({ status: 422 }));
      await hook(`language-${tag}`).tap();
      const alert = page.getByRole('alert');
      await expect(alert).toContainText(name);
      await expect(alert).toContainText(messageIn(FIRST.tag, 'error-kept'));
      await expect(words).not.toContainText('⟨');
      await hook(`language-${FIRST.tag}`).tap();
      await expect(alert).toHaveCount(0);
      await page.unroute(file);
    });

    await test.step('until the words are there, the first language stays', async () => {
      let deliver = (): void => undefined;
      const held = new Promise<void>((resolve) => (deliver = resolve));
      await page.route(file, async (route) => {
        await held;
        await route.continue();
      });
      const asked = page.waitForRequest(file);
      await hook(`language-${tag}`).tap();
      await asked;
      await expect(shown(FIRST.tag)).toBeAttached();
      await expect(words).not.toContainText('⟨');
      deliver();
      await expect(shown(tag)).toBeAttached();
      await expect(words).not.toContainText('⟨');
    });
  });
}

/** The time in which a slow tablet should answer a tap. */
const TARGET_MS = 50;
const SLOWER = 6;

/**
 * Times taps as real touches, with a slow processor. The times are printed; no check
 * depends on them, because they depend on the machine.
 */
async function timing(page: Page): Promise<(kind: Kind, hook: string) => Promise<void>> {
  await page.evaluate(installTaps);
  const slow = await page.context().newCDPSession(page);
  await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  let taps = 0;
  return async (kind, hook) => {
    await page.getByTestId(hook).scrollIntoViewIfNeeded();
    const { x, y } = await page.evaluate(([a, b]) => window.taps.next(a, b), [kind, hook] as const);
    await page.touchscreen.tap(x, y);
    taps += 1;
    await page.waitForFunction((n) => window.taps.found.length === n, taps);
  };
}

function report(name: string, times: number[]): string {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (part: number) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? 0).toFixed(0);
  const over = times.filter((ms) => ms > TARGET_MS).length;
  return `${name}: ${at(0.5)} / ${at(0.95)} / ${at(1)} ms of ${times.length}, ${over} over ${TARGET_MS} ms`;
}

test('how long a tap takes on a slow processor', async ({ page, bridge, hook, hooks }) => {
  const lines: string[] = [];
  await test.step('a bare button, for the share of browser and machine', async () => {
    await page.goto('/');
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
    const tap = await timing(page);
    for (let n = 0; n < 10; n += 1) await tap('bare', 'bare');
    lines.push(report('bare', await page.evaluate(() => window.taps.found.map(({ ms }) => ms))));
  });

  await open(page, await join(bridge, await makeClass(bridge)));
  const tap = await timing(page);
  const ids = (start: string, end = '') =>
    hooks(start, end).evaluateAll((all) => all.map((one) => one.dataset.testid ?? ''));
  let taps = 0;
  const tapAll = async (kind: Kind, all: string[]) => {
    for (const one of all) await tap(kind, one);
    taps += all.length;
  };
  for (const value of ['-2', '-1']) await tapAll('stone', await ids('rate-', value));
  for (const value of ['-right', '-wrong']) await tapAll('outcome', await ids('outcome-', value));
  await hook('tab-practice').tap();
  // The exercises are random, and some have nothing to type or to choose.
  for (let n = 0; n < 4 || (taps <= 40 && n < 12); n += 1) {
    await expect(hook('practice-sure-1')).toBeVisible();
    await tapAll('sure', ['practice-sure-1']);
    const choices = await ids('answer-choice-');
    const boxes = await ids('answer-field-');
    await tapAll('choice', choices.slice(0, 4));
    for (const box of (await hook('pad-1').isVisible()) ? boxes : []) {
      await hook(box).focus();
      await tapAll('key', ['pad-1', 'pad-4', 'pad-erase', 'pad-2']);
    }
    // One of two parts is no answer yet.
    const whole = !(await hook('answer-first').isVisible());
    if (whole && choices.length + boxes.length > 0) await tapAll('check', ['answer-submit']);
    const steps = hook('practice-show-steps');
    if (await steps.isVisible()) await steps.tap();
    await hook('practice-next').tap();
  }
  const all = await page.evaluate(() => window.taps.found);
  for (const kind of new Set(all.map((one) => one.kind))) {
    const of = all.filter((one) => one.kind === kind);
    lines.push(
      report(
        kind,
        of.map(({ ms }) => ms),
      ),
    );
    const brought = of.flatMap(({ broughtMs }) => broughtMs ?? []);
    if (brought.length > 0) lines.push(report(`${kind}, with what the program brings`, brought));
  }
  console.log(['a tap until it is drawn (middle / 95 in 100 / most):', ...lines].join('\n  '));
  expect(all, 'every tap was timed').toHaveLength(taps);
  expect(taps).toBeGreaterThan(40);
});
