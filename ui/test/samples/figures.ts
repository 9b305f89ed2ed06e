import type { Drawing, Expr, Point, Rational, Say } from '../../src/lib/backend';

export const n = (text: string | number): Expr => ({ kind: 'number', text: String(text) });
export const r = (top: number, bottom = 1): Rational => ({ top, bottom });
export const p = (x: number, y: number): Point => ({ x: r(x), y: r(y) });
export const over = (top: number, bottom: number): Expr => ({
  kind: 'fraction',
  top: n(top),
  bottom: n(bottom),
});
export const word = (id: string): Say => ({ id, args: {} });
const cm = (amount: number): Expr => ({ kind: 'measure', amount: n(amount), unit: 'unit-cm' });
const deg = (amount: number): Expr => ({ kind: 'degrees', inner: n(amount) });
const x: Expr = { kind: 'variable', name: 'x' };
const blank: Expr = { kind: 'blank' };
/** Words as long as names on real charts. */
const named = (text: string): Say => ({
  id: 'answer-typed',
  args: { text: { kind: 'text', text } },
});

type Kind = Drawing['kind'];

export const line = {
  from: r(0),
  to: r(2),
  step: r(1, 4),
  labels: [
    { at: r(0), label: n(0) },
    { at: r(1, 2), label: over(1, 2) },
    { at: r(1), label: n(1) },
    { at: r(2), label: n(2) },
  ],
  points: [{ at: r(3, 4), label: { kind: 'variable', name: 'A' } as Expr }],
  jumps: [{ from: r(1), to: r(3, 2), label: over(1, 2) }],
  rays: [],
  vertical: false,
};

export const frame = {
  x_from: -4,
  x_to: 4,
  y_from: -3,
  y_to: 3,
  x_step: 1,
  y_step: 1,
  x_title: named('hours'),
  y_title: named('miles'),
};

/** A figure of each kind, some kinds with a second shape. */
export const FIGURES: { [K in Kind]: Extract<Drawing, { kind: K }>[] } = {
  number_line: [
    { kind: 'number_line', ...line },
    { kind: 'number_line', ...line, points: [], jumps: [], vertical: true },
    {
      kind: 'number_line',
      ...line,
      points: [],
      jumps: [],
      rays: [{ from: r(1), open: true, rightward: true }],
    },
  ],
  fraction_strips: [
    {
      kind: 'fraction_strips',
      shape: 'bar',
      strips: [
        { wholes: 1, parts: 4, shaded: 3, label: over(3, 4) },
        { wholes: 1, parts: 8, shaded: 6, label: over(6, 8) },
      ],
    },
    {
      kind: 'fraction_strips',
      shape: 'circle',
      strips: [{ wholes: 2, parts: 6, shaded: 7, label: null }],
    },
  ],
  area_model: [
    {
      kind: 'area_model',
      rows: [n(20), n(4)],
      columns: [n(30), n(6)],
      cells: [
        [n(600), n(120)],
        [null, blank],
      ],
    },
  ],
  fraction_grid: [
    { kind: 'fraction_grid', rows: 3, columns: 4, shaded_rows: 2, shaded_columns: 3 },
  ],
  base_ten_blocks: [
    { kind: 'base_ten_blocks', large_cubes: 1, flats: 2, rods: 3, cubes: 7, one: 'cube' },
  ],
  array: [
    { kind: 'array', rows: 4, columns: 7, split_row: null, split_column: 5, squares: false },
    { kind: 'array', rows: 4, columns: 6, split_row: 2, split_column: null, squares: true },
  ],
  equal_groups: [{ kind: 'equal_groups', groups: 4, each: 6, left_over: 3 }],
  clock: [{ kind: 'clock', hour: 10, minute: 42 }],
  coins: [
    {
      kind: 'coins',
      pieces: [
        { value_hundredths: 500, count: 1, note: true },
        { value_hundredths: 100, count: 2, note: true },
        { value_hundredths: 25, count: 3, note: false },
        { value_hundredths: 10, count: 2, note: false },
        { value_hundredths: 5, count: 1, note: false },
        { value_hundredths: 1, count: 4, note: false },
      ],
    },
  ],
  ruler: [
    {
      kind: 'ruler',
      unit: 'unit-in',
      length: 5,
      parts: 8,
      thing_from: r(0),
      thing_to: r(27, 8),
    },
    {
      kind: 'ruler',
      unit: 'unit-cm',
      length: 12,
      parts: 10,
      thing_from: r(2),
      thing_to: r(95, 10),
    },
  ],
  protractor: [
    { kind: 'protractor', degrees: 65, from_right: true },
    { kind: 'protractor', degrees: 130, from_right: false },
  ],
  angle: [
    {
      kind: 'angle',
      parts: [
        { degrees: 40, label: deg(40) },
        { degrees: 65, label: blank },
      ],
      turn_degrees: 10,
      whole_label: deg(105),
    },
    { kind: 'angle', parts: [{ degrees: 90, label: null }], turn_degrees: 0, whole_label: null },
  ],
  polygon: [
    {
      kind: 'polygon',
      corners: [p(0, 0), p(8, 0), p(6, 4), p(2, 4)],
      side_labels: [cm(8), null, cm(4), null],
      right_angles: [],
      inner_lines: [{ from: p(3, 0), to: p(3, 4), label: cm(4), dashed: true }],
      on_grid: false,
    },
    {
      kind: 'polygon',
      corners: [p(0, 0), p(6, 0), p(6, 3), p(0, 3)],
      side_labels: [n(6), n(3), null, null],
      right_angles: [0, 1, 2, 3],
      inner_lines: [],
      on_grid: true,
    },
  ],
  lines: [
    {
      kind: 'lines',
      strokes: [
        { stroke: 'line', from: p(0, 0), to: p(6, 0) },
        { stroke: 'ray', from: p(3, 0), to: p(3, 4) },
        { stroke: 'segment', from: p(0, 2), to: p(2, 4) },
      ],
      points: [{ at: p(3, 0), name: 'B' }],
      right_angles: [p(3, 0)],
    },
  ],
  unit_cubes: [
    {
      kind: 'unit_cubes',
      boxes: [{ x: 0, y: 0, z: 0, width: 4, depth: 3, height: 2 }],
      show_cubes: true,
      labels: [[null, null, null]],
    },
    {
      kind: 'unit_cubes',
      boxes: [
        { x: 0, y: 0, z: 0, width: 6, depth: 3, height: 2 },
        { x: 0, y: 0, z: 2, width: 2, depth: 3, height: 3 },
      ],
      show_cubes: false,
      labels: [
        [cm(6), cm(3), cm(2)],
        [null, null, cm(3)],
      ],
    },
  ],
  net: [
    {
      kind: 'net',
      faces: [
        { corners: [p(2, 0), p(5, 0), p(5, 2), p(2, 2)], side_labels: [n(3), null, null, n(2)] },
        { corners: [p(2, 2), p(5, 2), p(5, 6), p(2, 6)], side_labels: [null, n(4), null, null] },
        { corners: [p(0, 2), p(2, 2), p(2, 6), p(0, 6)], side_labels: [null, null, null, null] },
        { corners: [p(5, 2), p(7, 2), p(7, 6), p(5, 6)], side_labels: [null, null, null, null] },
        { corners: [p(2, 6), p(5, 6), p(5, 8), p(2, 8)], side_labels: [null, null, null, null] },
        { corners: [p(2, 8), p(5, 8), p(5, 12), p(2, 12)], side_labels: [null, null, null, null] },
      ],
    },
  ],
  coordinate_grid: [
    {
      kind: 'coordinate_grid',
      frame,
      points: [{ at: p(-2, 1), name: 'A' }],
      paths: [{ points: [p(0, 0), p(2, 2), p(3, 0)], closed: true }],
    },
  ],
  bar_chart: [
    {
      kind: 'bar_chart',
      title: named('Birds seen at the feeder'),
      bars: [
        { label: named('sparrows'), value: 15 },
        { label: named('finches'), value: 8 },
        { label: named('jays'), value: 20 },
      ],
      scale_step: 5,
      scale_to: 25,
      axis: named('number of birds'),
    },
  ],
  picture_graph: [
    {
      kind: 'picture_graph',
      title: named('Books read'),
      rows: [
        { label: named('Monday'), half_symbols: 7 },
        { label: named('Wednesday'), half_symbols: 4 },
      ],
      each: 4,
      key: { id: 'figure-picture-key', args: { each: { kind: 'count', value: 4 } } },
    },
  ],
  dot_plot: [
    {
      kind: 'dot_plot',
      title: named('Lengths of leaves'),
      from: r(1),
      to: r(3),
      step: r(1, 4),
      labels: [
        { at: r(1), label: n(1) },
        { at: r(3, 2), label: { kind: 'mixed', whole: n(1), top: n(1), bottom: n(2) } },
        { at: r(3), label: n(3) },
      ],
      columns: [
        { at: r(5, 4), count: 2 },
        { at: r(3, 2), count: 4 },
      ],
      axis: named('inches'),
    },
  ],
  histogram: [
    {
      kind: 'histogram',
      title: named('Minutes of reading'),
      bins: [
        { from: 0, to: 9, count: 2 },
        { from: 10, to: 19, count: 5 },
        { from: 20, to: 29, count: 3 },
      ],
      scale_step: 1,
      axis: named('minutes'),
    },
  ],
  box_plot: [
    {
      kind: 'box_plot',
      title: named('Heights of plants'),
      least: r(12),
      lower_quartile: r(16),
      median: r(20),
      upper_quartile: r(25),
      greatest: r(34),
      from: r(10),
      to: r(40),
      step: r(5),
      axis: named('cm'),
    },
  ],
  balance: [
    {
      kind: 'balance',
      left: [
        { label: x, count: 2 },
        { label: n(3), count: 1 },
      ],
      right: [{ label: n(1), count: 11 }],
    },
  ],
  ratio_table: [
    {
      kind: 'ratio_table',
      rows: [
        { label: named('cups of flour'), cells: [n(2), n(4), n(6)] },
        { label: named('eggs'), cells: [n(3), n(6), blank] },
      ],
    },
  ],
  double_number_line: [
    {
      kind: 'double_number_line',
      upper: { label: named('hours'), cells: [n(0), n(1), n(2), n(3)] },
      lower: { label: named('miles'), cells: [n(0), n(40), n(80), blank] },
    },
  ],
  tape_diagram: [
    {
      kind: 'tape_diagram',
      bars: [
        {
          label: named('Ana'),
          parts: [{ length: 3, label: n(24), shaded: true }],
          whole_label: null,
        },
        {
          label: named('Bo'),
          parts: [
            { length: 3, label: n(24), shaded: false },
            { length: 1, label: blank, shaded: false },
          ],
          whole_label: n(32),
        },
      ],
    },
  ],
  data_table: [
    {
      kind: 'data_table',
      header: [named('Day'), named('Miles')],
      rows: [
        [
          { kind: 'say', say: named('Monday') },
          { kind: 'math', expr: { kind: 'mixed', whole: n(2), top: n(1), bottom: n(4) } },
        ],
      ],
    },
  ],
  column_work: [
    {
      kind: 'column_work',
      sign: 'plus',
      numbers: ['458.6', '37.25'],
      carries: ['', '1', '1', '', ''],
      result: '495.85',
    },
    { kind: 'column_work', sign: 'times', numbers: ['346', '7'], carries: [], result: null },
  ],
  scale: [
    {
      kind: 'scale',
      shape: 'jug',
      to: 500,
      step: 50,
      label_step: 100,
      value: 350,
      unit: 'unit-ml',
    },
    {
      kind: 'scale',
      shape: 'dial',
      to: 1000,
      step: 50,
      label_step: 100,
      value: 650,
      unit: 'unit-g',
    },
  ],
};
