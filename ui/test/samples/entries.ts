import type { Block, Choice, Entry } from '../../src/lib/backend';
import { FIGURES, frame, line, n, over, word } from './figures';

const choice = (shows: Block): Choice => ({ shows });
const math = (top: number, bottom: number) => choice({ kind: 'math', expr: over(top, bottom) });
const say = (id: string) => choice({ kind: 'say', say: word(id) });
const bare = { ...line, points: [], jumps: [] };
const [strip] = FIGURES.fraction_strips;

type Kind = Entry['kind'];

/** An entry of each kind, some kinds with a second shape. */
export const ENTRIES: { [K in Kind]: Extract<Entry, { kind: K }>[] } = {
  whole_number: [
    { kind: 'whole_number', signed: false, unit: null },
    { kind: 'whole_number', signed: true, unit: word('unit-cm') },
  ],
  decimal: [{ kind: 'decimal', signed: true, unit: word('unit-kg') }],
  fraction: [{ kind: 'fraction', signed: false, unit: null }],
  mixed: [{ kind: 'mixed', signed: false, unit: word('unit-mi') }],
  money: [{ kind: 'money' }],
  time: [
    { kind: 'time', half_day: false },
    { kind: 'time', half_day: true },
  ],
  duration: [
    { kind: 'duration', hours: true },
    { kind: 'duration', hours: false },
  ],
  comparison: [{ kind: 'comparison' }],
  one_choice: [
    {
      kind: 'one_choice',
      choices: [
        math(1, 2),
        math(3, 4),
        say('common-yes'),
        ...(strip
          ? [choice({ kind: 'figure', figure: { alt: word('common-work-out'), drawing: strip } })]
          : []),
      ],
    },
  ],
  several_choices: [{ kind: 'several_choices', choices: [math(1, 2), math(2, 4), math(2, 3)] }],
  ordering: [
    {
      kind: 'ordering',
      things: [math(1, 2), math(1, 3), math(3, 4)],
      first: word('common-least'),
      last: word('common-greatest'),
    },
  ],
  expression: [{ kind: 'expression', letters: ['x', 'y'] }],
  equation: [{ kind: 'equation', letters: ['c', 't'], signs: ['equal', 'less', 'at_most'] }],
  coordinates: [
    { kind: 'coordinates', frame: null },
    { kind: 'coordinates', frame },
  ],
  number_line_point: [{ kind: 'number_line_point', line: bare }],
  number_line_ray: [{ kind: 'number_line_ray', line: bare }],
  angle: [
    { kind: 'angle', turned: false },
    { kind: 'angle', turned: true },
  ],
  shaded_fraction: [
    { kind: 'shaded_fraction', shape: 'bar', wholes: 2, parts: 4 },
    { kind: 'shaded_fraction', shape: 'circle', wholes: 1, parts: 6 },
  ],
  plot: [
    {
      kind: 'plot',
      style: 'bars',
      columns: [say('unit-days'), say('unit-weeks')],
      step: 5,
      top: 30,
    },
    {
      kind: 'plot',
      style: 'dots',
      columns: [math(1, 2), { shows: { kind: 'math', expr: n(1) } }],
      step: 1,
      top: 6,
    },
  ],
  grid_area: [{ kind: 'grid_area', rows: 4, columns: 6 }],
  quotient_remainder: [{ kind: 'quotient_remainder' }],
  several_numbers: [
    {
      kind: 'several_numbers',
      fields: [word('place-tens'), word('place-ones')],
      decimals: true,
      signed: false,
    },
  ],
  boxes: [
    { kind: 'boxes', boxes: 2, numbers: { kind: 'range', least: 1, greatest: 12 } },
    { kind: 'boxes', boxes: 3, numbers: { kind: 'cards', cards: ['0.5', '-2', '3', '4'] } },
  ],
  two_parts: [
    {
      kind: 'two_parts',
      first: { kind: 'comparison' },
      ask: word('reason-ask'),
      second: {
        kind: 'one_choice',
        choices: [say('reason-same-parts'), say('reason-same-count')],
      },
    },
    {
      kind: 'two_parts',
      first: { kind: 'one_choice', choices: [math(1, 2), math(3, 4)] },
      ask: word('lines-mend'),
      second: { kind: 'whole_number', signed: false, unit: null },
    },
  ],
};
