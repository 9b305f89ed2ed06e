import type { Page } from '@playwright/test';
import { finders } from '../finders';

/** Fills in any answer, right or not, for every kind of entry. */
export async function fillIn(page: Page): Promise<void> {
  const { hook, hooks } = finders(page);
  for (const [n, box] of (await hooks('answer-field-').all()).entries())
    await box.fill(n === 0 ? '7' : '3');
  const choice = hooks('answer-choice-').or(hooks('answer-half-')).first();
  if (await choice.isVisible()) await choice.click();
  for (const name of ['order-later-0', 'plot-more-1', 'answer-part-0', 'answer-square-0']) {
    if (await hook(name).first().isVisible()) await hook(name).first().click();
  }
  for (const name of ['answer-line', 'answer-angle', 'answer-grid']) {
    if (await hook(name).first().isVisible()) await hook(name).first().press('ArrowRight');
  }
  for (const name of ['answer-ray-open', 'answer-ray-left']) {
    if (await hook(name).isVisible()) await hook(name).click();
  }
}
