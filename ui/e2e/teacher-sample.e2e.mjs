// The teacher's screens with a full class: the sample class, in Chromium.
import { check, withDesk } from './desk-browser.mjs';

await withDesk('2026-11-24', async ({ page, url, step, scan }) => {
  const hook = (name) => page.getByTestId(name);
  const rows = page.locator('[data-testid^="board-row-"]');
  const post = (path, body) =>
    page.request.post(new URL(path, url).href, { data: JSON.stringify(body) });

  await step('the sample class opens', async () => {
    await hook('start-sample').click();
    await hook('bar-teacher').click({ timeout: 300_000 });
    await hook('tab-board').click();
    await rows.first().waitFor();
  });

  await step('the board ranks every concept and filters', async () => {
    await scan('board');
    const all = await rows.count();
    check('a full board', all > 30, all);
    const ranks = await page
      .locator('tbody tr')
      .evaluateAll((lines) =>
        lines.map((line) => (line.dataset.testid ? line.cells[0].innerText : 'heading')),
      );
    const heading = ranks.indexOf('heading');
    check(
      'a heading parts what has no rank',
      ranks.slice(0, heading).every((rank) => Number(rank) > 0) &&
        ranks.slice(heading + 1).every((rank) => rank === '–'),
      ranks,
    );
    await page.getByRole('button', { name: /^Only day/ }).click();
    const todays = await rows.count();
    check('fewer concepts on one day', todays > 0 && todays < all, todays);
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.getByLabel('Strand').selectOption({ index: 1 });
    check('fewer concepts of one strand', (await rows.count()) < all);
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.getByRole('button', { name: 'Concept', exact: true }).click();
    const titles = await page.locator('button[data-line]').allInnerTexts();
    check(
      'ordered by title',
      titles.join() === [...titles].sort((a, b) => a.localeCompare(b)).join(),
    );
    await page.getByRole('button', { name: 'Rank', exact: true }).click();
  });

  await step('the keys go from line to line, in, and back', async () => {
    await page.locator('button[data-line]').first().focus();
    await page.keyboard.press('ArrowDown');
    const second = await page.locator('button[data-line]').nth(1).innerText();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: second, exact: true }).waitFor();
    await page.locator('tbody tr').first().waitFor();
    await scan('concept');
    await page.keyboard.press('Escape');
    await rows.first().waitFor();
  });

  await step('N covers every name, and N shows them', async () => {
    await rows.first().click();
    const names = page.locator('tbody th');
    await names.first().waitFor();
    const before = await names.allInnerTexts();
    await page.keyboard.press('n');
    await page.getByRole('button', { name: /Show names/ }).waitFor();
    const covered = await names.allInnerTexts();
    check(
      'only seats are named',
      covered.every((name) => /^Seat \d+$/.test(name)),
      covered,
    );
    const text = await page.evaluate(() => document.body.innerText);
    check('no name is left', !before.some((name) => new RegExp(`\\b${name}\\b`).test(text)));
    await page.keyboard.press('n');
    await page.getByRole('button', { name: /Cover names/ }).waitFor();
    check('the same names are back', (await names.allInnerTexts()).join() === before.join());
  });

  await step('practice is assigned to those who need it, and taken back', async () => {
    const { classes } = await (await post('/call/start', {})).json();
    const board = await (await post('/call/board', { class: classes[0].id })).json();
    const weakest = board.rows.find(({ concept }) => concept.has_exercises);
    await hook('tab-board').click();
    await hook(`board-row-${weakest.concept.id}`).click();
    await hook('assign-chosen').click();
    await hook('assign-give').waitFor();
    await scan('assign-form');
    await hook('assign-give').click();
    await page.getByText('The assignment is made').waitFor();
    await page.getByText('Something changed since class pack').waitFor();
    await scan('assign');
    const before = await page.locator('article').count();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.waitForFunction(
      (n) => document.querySelectorAll('article').length === n - 1,
      before,
    );
    // It stays to be let stand again, whatever was said since.
    await hook('tab-board').click();
    await hook('tab-assign').click();
    await hook('assign-withdrawn').locator('summary').click();
    await scan('assign-withdrawn');
    await page.getByRole('button', { name: 'Let it stand again' }).first().click();
    await page.waitForFunction((n) => document.querySelectorAll('article').length === n, before);
  });

  await step('a folder is taken in with an account of every file', async () => {
    await hook('tab-files').click();
    await hook('import-start').click();
    await hook('import-account').waitFor({ timeout: 120_000 });
    await scan('files');
    check('a line for each file', (await hook('import-account').locator('tbody tr').count()) > 20);
  });

  await step(
    'a file that is none of ours is told with the remedy, and nothing is lost',
    async () => {
      await post('/test/pick', [new URL(import.meta.url).pathname]);
      await page.getByRole('button', { name: 'Choose single files' }).click();
      await page.getByText('This is not a Surefoot file.').first().waitFor();
      await scan('files-refused');
    },
  );

  await step('the last import is undone after a question', async () => {
    await page.getByRole('button', { name: 'Undo the last import' }).click();
    await page.getByRole('dialog').waitFor();
    await scan('files-undo');
    await page.getByRole('dialog').getByRole('button', { name: 'Undo the last import' }).click();
    await page.getByText('The import was undone').waitFor();
  });

  await step('a seat is named and the name taken back', async () => {
    await hook('tab-class').click();
    const first = page.getByLabel('Name of seat 1', { exact: true });
    const name = await first.inputValue();
    await first.fill('Zora');
    await first.press('Enter');
    await page.getByText('The name of seat 1 was changed').waitFor();
    await scan('seats');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.waitForFunction(
      (was) => document.querySelector('[aria-label="Name of seat 1"]').value === was,
      name,
    );
  });

  await step('a day without school moves the calendar, and back', async () => {
    await hook('class-calendar').click();
    // The screen's own words, not those of its guide.
    const words = 'main p:not([data-testid="guide"] p)';
    const lead = page.locator(words).first();
    await page.getByRole('button', { name: /No school on .*December 14/ }).click();
    await page.getByText('The calendar was changed').waitFor();
    const after = await lead.innerText();
    await scan('calendar');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.waitForFunction(
      ([where, was]) => document.querySelector(where).innerText !== was,
      [words, after],
    );
  });

  await step('a concept moves by key to the next day, and back', async () => {
    await hook('class-rotation').click();
    const concept = page.locator('button.concept').first();
    const id = await concept.getAttribute('id');
    await concept.focus();
    await page.keyboard.press('Alt+ArrowRight');
    await page.getByText('is on day 2 now').waitFor();
    await page.waitForFunction((name) => document.activeElement?.id === name, id);
    const section = page.locator('section', { has: page.locator(`#${id.replaceAll('.', '\\.')}`) });
    check('it stands on day 2', /^Day 2/.test(await section.innerText()));
    await scan('rotation');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.waitForFunction(
      (name) => document.getElementById(name)?.closest('section').innerText.startsWith('Day 1'),
      id,
    );
  });

  await step('a concept is dragged to another day', async () => {
    await page.getByText('Taken back.').waitFor();
    const concept = page.locator('button.concept').nth(1);
    const title = (await concept.innerText()).split('\n')[0];
    const days = page.locator('section[aria-label^="Day "]');
    await concept.locator('xpath=..').dragTo(days.nth(3));
    await page.getByText(`${title} is on day 4 now`).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
  });

  await step('a first lesson is moved', async () => {
    await hook('first-lessons').click();
    await page.locator('input[type=date]').first().waitFor();
    await scan('first-lessons');
    await page.locator('input[type=date]').first().fill('2026-11-23');
    await page.locator('input[type=date]').first().blur();
    await page.getByText(/The first lesson of .* was changed/).waitFor();
  });

  await step('the class pack is saved and counted', async () => {
    await hook('class-pack').click();
    await hook('pack-save').click();
    await page.getByText(/was saved\./).waitFor();
    await scan('pack');
  });

  await step('the slips print black on white, one a seat', async () => {
    await hook('slips-open').click();
    await hook('slips').locator('li').first().waitFor();
    check('a slip a seat', (await hook('slips').locator('li').count()) === 24);
    await scan('slips');
    await hook('slips-save').click();
    await page.getByText('join-slips.pdf was saved').waitFor();
    await page.emulateMedia({ media: 'print' });
    check('nothing but slips on paper', !(await page.getByTestId('tab-board').isVisible()));
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    check('on two or three pages', pages >= 2 && pages <= 3, pages);
    check('US Letter', /\/MediaBox\s*\[0 0 612 792\]/.test(pdf.toString('latin1')));
    await page.emulateMedia({ media: null });
    await page.getByLabel('Paper').selectOption('a4');
    const a4 = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    check('A4', /\/MediaBox\s*\[0 0 59[45][\d.]* 84[12][\d.]*\]/.test(a4));
  });

  const places = async (name) => {
    await hook('tab-board').click();
    await rows.first().waitFor();
    await scan(`${name}-board`);
    const over = await page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.querySelector('table').parentElement;
      return scrollWidth - clientWidth;
    });
    check(`${name}: the whole board fits beside each other`, over <= 0, over);
    await rows.first().click();
    await page.locator('tbody tr').first().waitFor();
    await scan(`${name}-concept`);
    for (const part of ['seats', 'calendar', 'rotation', 'pack']) {
      await hook('tab-class').click();
      await hook(`class-${part}`).click();
      await scan(`${name}-${part}`);
    }
    for (const tab of ['files', 'assign']) {
      await hook(`tab-${tab}`).click();
      await scan(`${name}-${tab}`);
    }
  };
  await step('everything in Spanish and dark', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByLabel('Colors').selectOption('dark');
    await page.getByLabel('Language').selectOption('es');
    await page.getByRole('dialog').getByRole('button', { name: 'Cerrar' }).click();
    await places('dark-es');
  });
  await step('everything in high contrast on a tablet', async () => {
    await page.getByRole('button', { name: 'Ajustes' }).click();
    await page.getByLabel('Colores').selectOption('contrast');
    await page.getByLabel('Idioma').selectOption('en');
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await page.setViewportSize({ width: 800, height: 1280 });
    await places('tablet');
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    check('nothing wider than the tablet', wide <= 800, wide);
  });
});
