// Fills in an answer of whatever kind stands there: any answer, right or not.

/** Whether something could be filled in. */
export async function fillIn(page) {
  const hook = (name) => page.getByTestId(name);
  const boxes = page.locator('[data-testid^="answer-field-"]');
  const choice = page
    .locator('[data-testid^="answer-choice-"], [data-testid^="answer-half-"]')
    .first();
  const count = await boxes.count();
  for (let n = 0; n < count; n += 1) await boxes.nth(n).fill(n === 0 ? '7' : '3');
  if (await choice.isVisible()) await choice.click();
  for (const name of ['order-later-0', 'plot-more-1', 'answer-part-0', 'answer-square-0-0']) {
    if (await hook(name).first().isVisible()) await hook(name).first().click();
  }
  for (const name of ['answer-line', 'answer-angle', 'answer-grid']) {
    const picture = hook(name).first();
    if (!(await picture.isVisible())) continue;
    await picture.focus();
    await page.keyboard.press('ArrowRight');
  }
  for (const name of ['answer-ray-open', 'answer-ray-left']) {
    if (await hook(name).isVisible()) await hook(name).click();
  }
}
