// Printing: a sheet and a chart saved as PDF, what is missing said, by keys alone.
import { check, withDesk } from './desk-browser.mjs';

await withDesk('2026-11-24', async ({ page, url, step, scan }) => {
  const hook = (name) => page.getByTestId(name);
  const ask = (path, body) =>
    page.request.post(new URL(path, url).href, { data: JSON.stringify(body) });
  const saved = async () => (await page.request.get(new URL('/test/saved', url).href)).json();
  const said = (words) => page.getByText(words).first().waitFor();
  /** By keys: tab until the hook holds the focus. */
  const tabTo = async (name) => {
    for (let n = 0; n < 60; n += 1) {
      if (await page.evaluate((id) => document.activeElement?.dataset.testid === id, name)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`no way to ${name} by Tab`);
  };

  await step('a class stands, and Print opens on a practice sheet', async () => {
    await ask('/call/create_class', {
      class: {
        title: 'Room 4',
        names: ['Amina', 'Bao'],
        year: {
          first_day: '2026-08-31',
          last_day: '2027-05-07',
          weekdays: [1, 2, 3, 4, 5],
          closures: [],
        },
        grades: [4],
        rotation_days: 10,
        concepts_a_day: 6,
      },
    }).then(async (answer) => check('class made', answer.ok(), await answer.text()));
    await page.reload();
    await hook('start-teacher').click();
    await hook('tab-print').click();
    await hook('print-save').waitFor();
    await scan('print');
  });

  await step('without a concept nothing is made, and that is said', async () => {
    await hook('print-save').click();
    await said('Choose at least one concept.');
    await scan('print-faults');
    check('nothing saved', (await saved()).length === 0);
  });

  await step('a sheet is saved, by keys alone', async () => {
    await page.getByLabel('Concepts', { exact: true }).selectOption({ index: 1 });
    await said('1 concept, 10 exercises with fresh numbers. US Letter, English.');
    await hook('print-count').fill('6');
    await hook('print-language').selectOption('es');
    await hook('print-paper').selectOption('a4');
    await said('1 concept, 6 exercises with fresh numbers. A4, Español.');
    await tabTo('print-save');
    await page.keyboard.press('Enter');
    await said(/practice-\d+\.pdf was saved/);
    const [file] = await saved();
    check('a sheet', /^practice-\d+\.pdf$/.test(file.name) && file.bytes > 5000, file);
    await scan('print-saved');
  });

  await step('a number out of bounds is said beside the box', async () => {
    await hook('print-count').fill('0');
    await hook('print-save').click();
    await said('Choose 1 to 20 exercises.');
    await hook('print-count').fill('5');
  });

  await step('a chart of the rotation is saved', async () => {
    await hook('print-what-chart').click();
    await said('One table for each day of the rotation.');
    await scan('print-chart');
    await hook('print-save').click();
    await said(/self-ratings\.pdf was saved/);
    check('two files', (await saved()).length === 2);
  });

  await step('a save that is declined or cannot be is said in words', async () => {
    await ask('/test/save', 'decline');
    await hook('print-save').click();
    await said('Nothing was saved.');
    await ask('/test/save', 'unwritable');
    await hook('print-save').click();
    await page.locator('[role="alert"]').first().waitFor();
    await scan('print-unwritable');
  });

  await step('join slips are one step away', async () => {
    await hook('print-what-slips').click();
    await scan('print-slips');
    await page.getByRole('button', { name: 'Go to the class pack' }).click();
    await page.getByRole('button', { name: 'Show the slips' }).waitFor();
  });

  await step('in Spanish, dark', async () => {
    await hook('tab-print').click();
    const { settings } = await (await ask('/call/start', {})).json();
    await ask('/call/save_device_settings', { ...settings, language: 'es', theme: 'dark' });
    await page.reload();
    await hook('start-teacher').click();
    await hook('tab-print').click();
    await said('Hoja de práctica');
    await scan('print-es-dark');
  });
});
