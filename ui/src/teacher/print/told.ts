import type { PrintOptions, ReportInfo } from '../../lib/backend';
import { nameOf, say } from '../../lib/words';
import { asks, faults, mostOfEach, type Chosen } from './report';

/** Concepts on a sheet for one student, as in the program. */
const CONCEPTS_OF_ONE = 6;

/** Says what will be printed. */
export function told(report: ReportInfo, chosen: Chosen, options: PrintOptions): string {
  const language = nameOf(options.language);
  if (!asks(report, 'paper')) return say('print-will-table', { language });
  const paper = say(options.paper === 'a4' ? 'slips-a4' : 'slips-letter');
  const counted = mostOfEach(report) !== null;
  if (counted) {
    const each = faults(report, chosen).includes('count') ? 0 : chosen.count;
    if (asks(report, 'seat')) {
      const concepts = CONCEPTS_OF_ONE;
      return say('print-will-seat-sheet', { concepts, exercises: each, paper, language });
    }
    const concepts = chosen.concepts.length;
    return say('print-will-sheet', { concepts, exercises: concepts * each, paper, language });
  }
  return say(report.previewed ? 'print-will-report' : 'print-will-file', { paper, language });
}
