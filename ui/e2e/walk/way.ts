// A way goes through screens by test ids alone, so that it is the same in every language.
import { expect, type Page } from '@playwright/test';
import type { Language } from '../../src/lib/backend/contract';
import type { Bridge } from '../bridge';

export interface Way {
  page: Page;
  bridge: Bridge;
  language: Language;
}

export type At = (stop: string) => Promise<void>;

/** Opens the first screen in a language; guides do not open by themselves. */
export async function openIn({ page, bridge, language }: Way): Promise<void> {
  await bridge.changeDevice({ language, guides_read: ['all'] });
  await page.goto(bridge.url);
  await expect(page.locator(`html[lang=${language}]`)).toBeAttached();
}
