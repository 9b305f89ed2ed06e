import { expect, type Locator, type Page } from '@playwright/test';

/** Fills in any answer, right or not, for every kind of entry. */
export async function fillIn(page: Page): Promise<void> {
  const [first, second] = [page.getByTestId('answer-first'), page.getByTestId('answer-second')];
  if (!(await first.isVisible())) return fillEntry(page.locator('main'));
  await fillEntry(first);
  // The second part comes after the first.
  await expect(second.locator('[data-testid^="answer-"]').first()).toBeVisible();
  await fillEntry(second);
}

async function fillEntry(entry: Locator): Promise<void> {
  const hook = (id: string) => entry.getByTestId(id).first();
  for (const [n, box] of (await entry.locator('[data-testid^="answer-field-"]').all()).entries())
    await box.fill(n === 0 ? '7' : '3');
  const choice = entry
    .locator('[data-testid^="answer-choice-"], [data-testid^="answer-half-"]')
    .first();
  if (await choice.isVisible()) await choice.click();
  for (const name of ['order-later-0', 'plot-more-1', 'answer-part-0', 'answer-square-0']) {
    if (await hook(name).isVisible()) await hook(name).click();
  }
  for (const name of ['answer-line', 'answer-angle', 'answer-grid']) {
    if (await hook(name).isVisible()) await hook(name).press('ArrowRight');
  }
  for (const name of ['answer-ray-open', 'answer-ray-left']) {
    if (await hook(name).isVisible()) await hook(name).click();
  }
}
