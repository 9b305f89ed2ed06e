// Every test gets its own program behind the screens, and a page that fails the test on
// errors, refused styles, warnings, messages without words and requests to other hosts.
import { test as base, type BrowserContext, expect, type Request } from '@playwright/test';
import { InBrowser } from '../e2e-web/in-browser';
import { Bridge } from './bridge';
import { type Finders, finders } from './finders';
import { SAMPLE, TODAY } from './places';

export { expect };

export interface Options {
  /** The program's date. */
  today: string | undefined;
  /** Whether the program starts with the sample class. */
  sample: boolean;
  /** Whether program and screens have the pseudo-language. */
  pseudo: boolean;
  /** Whether the student's program runs in a browser: `./test web`. */
  inBrowser: boolean;
}

interface Fixtures extends Finders {
  bridge: Bridge;
  /** The student's program in a browser, where it runs there. */
  program: InBrowser | null;
}

export const test = base.extend<Options & Fixtures>({
  today: [TODAY, { option: true }],
  sample: [false, { option: true }],
  pseudo: [false, { option: true }],
  inBrowser: [false, { option: true }],
  program: async ({ inBrowser, bridge, browser, today }, use) => {
    const program = inBrowser ? await InBrowser.start(bridge, browser, today) : null;
    await use(program);
    await program?.stop();
  },
  bridge: async ({ today, sample, pseudo }, use) => {
    const bridge = await Bridge.start(today, sample ? SAMPLE : undefined, pseudo);
    if (sample) await bridge.call('enter_sample', {});
    await use(bridge);
    await bridge.stop();
  },
  baseURL: async ({ bridge }, use) => use(bridge.url),
  context: async ({ context, bridge, program }, use) => {
    const trouble = await watch(context, bridge.url);
    await program?.answer(context);
    await use(context);
    expect(trouble, 'errors, refused styles, missing words, requests to elsewhere').toEqual([]);
  },
  hook: async ({ page }, use) => use(finders(page).hook),
  hooks: async ({ page }, use) => use(finders(page).hooks),
});

const pending = new WeakMap<BrowserContext, Set<Request>>();

export async function answered(context: BrowserContext): Promise<void> {
  await expect.poll(() => pending.get(context)?.size ?? 0).toBe(0);
}

/** Collects what no page may do. */
export async function watch(context: BrowserContext, url: string): Promise<string[]> {
  const trouble: string[] = [];
  const { host } = new URL(url);
  context.on('weberror', (error) => trouble.push(String(error.error())));
  context.on('console', (message) => {
    // The browser logs the status 422 of a refused call.
    if (['error', 'warning'].includes(message.type()) && !message.text().includes('422')) {
      trouble.push(message.text());
    }
  });
  const waiting = new Set<Request>();
  pending.set(context, waiting);
  for (const over of ['requestfinished', 'requestfailed'] as const)
    context.on(over as 'requestfinished', (request) => waiting.delete(request));
  context.on('request', (request) => {
    waiting.add(request);
    const asked = new URL(request.url());
    if (asked.protocol.startsWith('http') && asked.host !== host) trouble.push(request.url());
  });
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) =>
      console.error(`policy: ${event.effectiveDirective} ${event.sample}`),
    );
    // The screens show this sign around the id of a message without words, also in names for
    // screen readers, in what is folded up, and for a moment.
    const missing = (text: string | null | undefined) => {
      for (const found of text?.match(/⟨[^⟩]*⟩?/g) ?? []) console.error(`no words for ${found}`);
    };
    const look = (changes: MutationRecord[]) => {
      for (const { type, target, attributeName, addedNodes } of changes) {
        if (type === 'characterData') missing(target.textContent);
        if (type === 'attributes') missing((target as Element).getAttribute(attributeName ?? ''));
        for (const node of addedNodes)
          missing(node instanceof Element ? node.outerHTML : node.textContent);
      }
    };
    new MutationObserver(look).observe(document, {
      subtree: true,
      childList: true,
      characterData: true,
      attributeFilter: ['aria-label', 'title', 'placeholder', 'alt'],
    });
  });
  return trouble;
}
