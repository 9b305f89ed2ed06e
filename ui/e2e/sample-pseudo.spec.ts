// Every screen of the desk and every report of the sample class in the pseudo-language.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from './fixtures';
import { expectNone, printFaults, PSEUDO, pseudoAt } from './measure/pseudo';
import { SAMPLES } from './places';
import { valuesFor } from './report-values';
import { DESK } from './sizes';
import { walkTeacher } from './walk/teacher';
import type { Bridge } from './bridge';

test.use({ ...DESK, pseudo: true });
test.setTimeout(1_200_000);

/** The words that people typed: names of the class, and texts of own exercises and concepts. */
async function typed(bridge: Bridge): Promise<{ names: string[]; own: string[] }> {
  const { classes } = await bridge.call('start', {});
  const names = ['nothing of ours', ...classes.map(({ title }) => title)];
  for (const { id } of classes) {
    const { seats } = await bridge.call('class_setup', { class: id });
    names.push(...seats.flatMap(({ name }) => (name ? [name] : [])));
  }
  const files = [
    'bank/qti/bridge-planks.xml',
    'bank/qti/rope-length.xml',
    'bank/qti/picture.xml',
    'catalogue/water-studies.case.json',
  ];
  const own = files.flatMap(
    (file) => readFileSync(join(SAMPLES, file), 'utf8').match(/\p{L}+/gu) ?? [],
  );
  // Long words first, so that no part of a name is left over.
  return { names, own: [...new Set(own)].sort((a, b) => b.length - a.length) };
}

test('every screen of the desk', async ({ page, bridge }) => {
  const { names, own } = await typed(bridge);
  const faults: string[] = [];
  await walkTeacher(
    { page, bridge, language: PSEUDO },
    pseudoAt(page, 'desk', ['landscape', 'tablet'], faults, (stop) =>
      stop.startsWith('own-') ? [...names, ...own] : names,
    ),
  );
  expectNone(faults);
});

test('every report on paper', async ({ bridge }) => {
  const { names } = await typed(bridge);
  const { classes } = await bridge.call('start', {});
  const id = classes[0]?.id ?? '';
  const { rows } = await bridge.call('board', { class: id });
  const offered = { seat: 1, concept: rows[0]?.concept.id ?? '', seats: [1, 2, 3], minutes: 10 };
  const faults: string[] = [];
  for (const report of await bridge.call('reports', {})) {
    if (report.section !== 'report') continue;
    const { file_name } = await bridge.call('print', {
      class: id,
      report: report.name,
      values: valuesFor(report, offered),
      options: { language: PSEUDO, paper: 'letter', roomy: true },
    });
    faults.push(...printFaults(report.name, bridge.savedAt(file_name), names));
  }
  expectNone(faults);
});
