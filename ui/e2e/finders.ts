import { expect, type Locator, type Page } from '@playwright/test';

export interface Finders {
  /** The element with a test id. */
  hook: (id: string) => Locator;
  hooks: (start: string, end?: string) => Locator;
}

export function finders(page: Page): Finders {
  return {
    hook: (id) => page.getByTestId(id),
    hooks: (start, end = '') =>
      page.locator(`[data-testid^="${start}"]${end && `[data-testid$="${end}"]`}`),
  };
}

/** Chooses an option, and waits until it is shown as chosen. */
export async function choose(page: Page, id: string): Promise<void> {
  const choice = page.getByTestId(id);
  await choice.click();
  await expect(choice).toHaveAttribute('aria-checked', 'true');
}

/** Leaves a dialog by Escape. */
export async function leaveDialog(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await expect(page.locator('dialog[open]')).toHaveCount(0);
}

export async function boxOf(element: Locator): Promise<{
  left: number;
  right: number;
  top: number;
  bottom: number;
}> {
  return element.evaluate((one) => {
    const { left, right, top, bottom } = one.getBoundingClientRect();
    return { left, right, top, bottom };
  });
}
