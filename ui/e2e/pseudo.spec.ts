// Every screen of a student, the desk of a class without hand-ins, and sheets, chart and
// join slips in the pseudo-language. Fails for words that are not translated or do not fit.
import type { ReportInfo } from '../src/lib/backend/contract';
import { test } from './fixtures';
import { expectNone, printFaults, PSEUDO, pseudoAt } from './measure/pseudo';
import { makeClass } from './own-class';
import { valuesFor } from './report-values';
import { DESK } from './sizes';
import { walkStudent } from './walk/student';
import { walkOwnDesk } from './walk/teacher';

test.use({ pseudo: true });
test.setTimeout(1_200_000);

const TYPED = ['Room 3', 'Room 4', 'Wren'];

test('every screen of a student', async ({ page, bridge }) => {
  const { codes, pin_signs, pack } = await makeClass(bridge);
  const faults: string[] = [];
  const slip = { code: codes[0] ?? '', pin_signs: pin_signs[0] ?? '' };
  const way = { page, bridge, language: PSEUDO, pack, ...slip };
  await walkStudent(
    way,
    pseudoAt(page, 'student', ['tablet', 'phone'], faults, () => TYPED),
  );
  expectNone(faults);
});

test.describe(() => {
  test.use(DESK);
  test('the desk of a class without hand-ins', async ({ page, bridge }) => {
    await makeClass(bridge);
    const faults: string[] = [];
    await walkOwnDesk(
      { page, bridge, language: PSEUDO },
      pseudoAt(page, 'own-desk', ['landscape', 'tablet'], faults, () => TYPED),
    );
    expectNone(faults);
  });
});

test('sheets, chart and slips on paper', async ({ bridge }) => {
  const { id } = await makeClass(bridge, { names: ['Amina', 'Bao'] });
  const setup = await bridge.call('class_setup', { class: id });
  const concepts = setup.rotation.flat().filter(({ concept }) => concept.has_exercises);
  const reports = await bridge.call('reports', {});
  const faults: string[] = [];
  const look = async (report: ReportInfo, named: string[]): Promise<void> => {
    const given = {
      concepts: named,
      level: 2 as const,
      count: 4,
      with_key: true,
      with_names: true,
    };
    const { file_name } = await bridge.call('print', {
      class: id,
      report: report.name,
      values: valuesFor(report, { ...given, seed: 1 }),
      options: { language: PSEUDO, paper: 'letter', roomy: true },
    });
    const words = [...TYPED, 'Amina', 'Bao'];
    faults.push(...printFaults(named.join() || report.name, bridge.savedAt(file_name), words));
  };
  for (const report of reports) {
    if (report.name === 'sheet') {
      for (const { concept } of concepts) await look(report, [concept.id]);
    } else if (report.name === 'chart' || report.name === 'slips') {
      await look(report, []);
    }
  }
  expectNone(faults);
});
