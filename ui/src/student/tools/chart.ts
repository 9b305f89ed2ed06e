/** The marked numbers of the hundred chart, and the step of counting on. */
export interface Chart {
  marked: readonly number[];
  step: number;
}

export const STEPS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
export const START: Chart = { marked: [], step: 10 };

/** Marks a number, or unmarks it. */
export function turn(chart: Chart, number: number): Chart {
  const marked = chart.marked.includes(number)
    ? chart.marked.filter((one) => one !== number)
    : [...chart.marked, number];
  return { ...chart, marked };
}

/** Marks the number one step after the last marked one, or after 0. */
export function countOn(chart: Chart): Chart {
  const next = (chart.marked.at(-1) ?? 0) + chart.step;
  if (next > 100) return chart;
  return { ...chart, marked: [...chart.marked.filter((one) => one !== next), next] };
}
