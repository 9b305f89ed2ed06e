// The second language comes when it is first spoken: no screen shows it half, and a
// language that cannot be loaded is told in the one that is there.
import { openPage, SIZES } from '../bridge.mjs';
import { setDevice } from '../walk/student.mjs';

export async function changeWords({ browser, bridge, check }) {
  await setDevice(bridge, { language: 'en' });
  const { page, context } = await openPage(browser, bridge.url, SIZES.tablet, { locale: 'en-US' });
  const loaded = [];
  page.on('request', (request) => {
    const language = /assets\/(en|es)-/.exec(request.url())?.[1];
    if (language) loaded.push(language);
  });
  let hold = null;
  const held = new Promise((resolve) => (hold = resolve));
  let broken = true;
  await page.route(/assets\/es-/, async (route) => {
    if (broken) return route.abort();
    await held;
    return route.continue();
  });
  await page.reload();
  await page.getByTestId('language-es').waitFor();
  check.that('one language is loaded at first', loaded.join() === 'en', loaded);

  await page.getByTestId('language-es').tap();
  await page.getByRole('alert').waitFor();
  const told = await page.getByRole('alert').innerText();
  check.that(
    'words that cannot be loaded are told',
    /Español/.test(told) && /Nothing that you did before is lost/.test(told),
    told,
  );
  const words = () => page.evaluate(() => document.body.innerText);
  check.that('every word is still there', !(await words()).includes('⟨'));

  // Loaded slowly: until the words are there, all stays in the first language.
  broken = false;
  await page.getByTestId('language-en').tap();
  await page.getByRole('alert').waitFor({ state: 'detached' });
  await page.getByTestId('language-es').tap();
  await page.waitForTimeout(300);
  const meanwhile = await words();
  const spoken = await page.evaluate(() => document.documentElement.lang);
  check.that('meanwhile the first language stays', spoken === 'en', spoken);
  check.that('and no word is missing', !meanwhile.includes('⟨'));
  hold();
  await page.locator('html[lang=es]').waitFor();
  check.that('then every word is Spanish', !(await words()).includes('⟨'));
  await setDevice(bridge, { language: 'en' });
  await context.close();
}
