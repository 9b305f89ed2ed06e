import { fireEvent, render, screen } from '@testing-library/svelte';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { cellAfter } from '../../lib/ui';
import { LANGUAGES, setLanguage } from '../../lib/words';
import * as blocks from './blocks';
import * as chart from './chart';
import * as coins from './coins';
import * as counters from './counters';
import * as grid from './grid';
import { History } from './history.svelte';
import * as line from './line';
import * as notes from './notes';
import * as ruler from './ruler';
import * as strips from './strips';
import * as timer from './timer';
import { TOOL_IDS, TOOLS } from './tools';

beforeEach(() => setLanguage('en'));

test('undo goes through every step, and clearing is a step', () => {
  const history = new History(0);
  history.to(1);
  history.to(2);
  history.to(2);
  history.clear();
  const seen = [history.now];
  while (history.canUndo) {
    history.undo();
    seen.push(history.now);
  }
  expect(seen).toEqual([0, 2, 1, 0]);
  history.undo();
  expect(history.now).toBe(0);
});

describe('number line', () => {
  test('hops are kept, and no hop leaves the line', () => {
    let now = line.hop(line.START, 3);
    now = line.hop(now, -1);
    expect(now).toMatchObject({
      at: 2,
      hops: [
        { from: 0, to: 3 },
        { from: 3, to: 2 },
      ],
    });
    expect(line.hop(now, -3)).toBe(now);
    expect(line.hop(now, 9)).toBe(now);
  });
  test('parts make ticks of fractions', () => {
    const now = line.put(line.withParts(line.withRange(line.START, 0, 2), 4), 6);
    expect(line.at(now, now.at)).toEqual({ top: 3, bottom: 2 });
    expect(line.size(now, 1)).toEqual({ top: 1, bottom: 4 });
  });
  test('a line through zero begins at zero, where a hop is as long as elsewhere', () => {
    const now = line.withRange(line.START, -10, 10);
    expect(line.at(now, now.at)).toEqual({ top: 0, bottom: 1 });
    expect(line.at(now, line.hop(now, -3).at)).toEqual({ top: -3, bottom: 1 });
    expect(line.size(now, 3)).toEqual({ top: 3, bottom: 1 });
  });
  test('a long line is not cut into parts that cannot be told apart', () => {
    expect(line.partsFor(0, 100)).toEqual([1]);
    expect(line.withRange(line.withParts(line.START, 12), 0, 100).parts).toBe(1);
    expect(line.partsFor(0, 1)).toEqual(line.PARTS);
  });
});

test('fraction strips: shading stays on the strip, equal lengths are found', () => {
  let now = strips.shade(strips.START, 1, 2);
  expect(strips.same(now)).toEqual([[0, 1]]);
  expect(strips.shade(now, 1, 5)).toBe(now);
  expect(strips.shade(now, 1, -1)).toBe(now);
  expect(strips.same(strips.shade(now, 1, 1))).toEqual([]);
  for (let n = 0; n < 9; n += 1) now = strips.add(now, 3);
  expect(now).toHaveLength(strips.MOST_STRIPS);
  expect(strips.remove(now, 0)[0]).toEqual({ parts: 4, shaded: 2 });
});

test('base-ten blocks: a trade and its undoing keep the number', () => {
  const worth = (of: blocks.Blocks) => of.reduce((sum, n, place) => sum + n * 10 ** place, 0);
  let now: blocks.Blocks = blocks.START;
  for (let n = 0; n < 12; n += 1) now = blocks.add(now, 0, 1);
  const traded = blocks.trade(now, 0);
  expect(traded).toEqual([2, 1, 0, 0]);
  expect(worth(traded)).toBe(worth(now));
  expect(blocks.split(traded, 1)).toEqual(now);
  expect(blocks.trade(traded, 0)).toBe(traded);
  expect(blocks.split(traded, 0)).toBe(traded);
  expect(blocks.add(blocks.START, 2, -1)).toBe(blocks.START);
});

test('counters: fill a frame, then the next; a tap goes round', () => {
  let now = counters.START;
  for (let n = 0; n < 11; n += 1) now = counters.add(now, n < 9 ? 1 : 2);
  expect([now.length, counters.count(now, 1), counters.count(now, 2)]).toEqual([20, 9, 2]);
  expect(counters.count(counters.take(now, 2), 2)).toBe(1);
  expect(counters.frames(now, 1)).toHaveLength(10);
  expect(counters.frames(counters.START, 3)).toHaveLength(30);
  let one = counters.START;
  const seen = Array.from({ length: 3 }, () => (one = counters.turn(one, 4))[4]);
  expect(seen).toEqual([1, 2, 0]);
  now = counters.START;
  for (let n = 0; n < 50; n += 1) now = counters.add(now, 1);
  expect(counters.count(now, 1)).toBe(40);
});

test('hundred chart: counting on by seven, and no further than a hundred', () => {
  let now: chart.Chart = { ...chart.START, step: 7 };
  for (let n = 0; n < 20; n += 1) now = chart.countOn(now);
  expect(now.marked.slice(0, 3)).toEqual([7, 14, 21]);
  expect(now.marked.at(-1)).toBe(98);
  expect(chart.turn(now, 14).marked).not.toContain(14);
});

test('protractor: between closed and straight', async () => {
  const history = new History({ degrees: 170, fromRight: true });
  render(TOOLS.protractor.screen, { history: history as unknown as History<never> });
  const press = (key: string) => fireEvent.keyDown(screen.getByRole('slider'), { key });
  await press('PageUp');
  await press('PageUp');
  expect(history.now).toEqual({ degrees: 180, fromRight: true });
  for (let n = 0; n < 19; n += 1) await press('PageDown');
  expect(history.now.degrees).toBe(0);
});

test('ruler: the ends keep their order and stay on the ruler', () => {
  const { START } = ruler;
  expect(ruler.move(START, 'to', 3).to).toBe(53);
  expect(ruler.move(START, 'from', 50)).toBe(START);
  expect(ruler.move(START, 'from', -1)).toBe(START);
  expect(ruler.move(START, 'to', 101)).toBe(START);
  expect(ruler.withUnit(START, 'unit-in')).toEqual({ unit: 'unit-in', from: 0, to: 48 });
});

test('clock: the hour goes with the minutes, both ways round twelve', async () => {
  const history = new History(0);
  render(TOOLS.clock.screen, { history: history as unknown as History<never> });
  const turn = (by: number) => fireEvent.click(screen.getByTestId(`tool-clock-${by}`));
  const state = () => screen.getByTestId('tool-state').textContent;
  await turn(-1);
  expect(state()).toContain('between 11 and 12. The long hand is 59');
  await turn(1);
  expect(state()).toContain('The short hand is at 12.');
  await turn(60);
  await turn(5);
  expect(state()).toContain('between 1 and 2. The long hand is 5');
});

test('coins: never fewer than none, nor more than the most', () => {
  expect(coins.add(coins.START, 3, -1)).toBe(coins.START);
  let now = coins.START;
  for (let n = 0; n < 12; n += 1) now = coins.add(now, 3, 1);
  expect(now[3]).toBe(coins.MOST);
});

test('grid: squares turn, points come and go', () => {
  expect(grid.turn(grid.turn(grid.START, 7), 7).squares).toEqual([]);
  const one = grid.put(grid.START, 2, 3);
  expect(one.points).toEqual([{ x: 2, y: 3 }]);
  expect(grid.put(one, 2, 3).points).toEqual([]);
});

test('notepad: strokes', () => {
  const now = notes.draw(notes.START, [
    { x: 1, y: 2 },
    { x: 3, y: 4 },
  ]);
  expect(now.strokes.map(notes.outline)).toEqual(['M1 2L3 4']);
  expect(notes.outline([{ x: 5, y: 5 }])).toBe('M5 5h0.01');
  expect(notes.draw(now, [])).toBe(now);
});

describe('timer', () => {
  const AT = 1_000_000;
  test('a pause keeps the time that ran, and the timer ends at zero', () => {
    let now = timer.go(timer.withMinutes(2), AT);
    expect(timer.face(timer.left(now, AT + 30_000))).toBe('1:30');
    now = timer.wait(now, AT + 30_000);
    expect(timer.left(now, AT + 900_000)).toBe(90_000);
    now = timer.go(now, AT + 900_000);
    expect(timer.left(now, AT + 989_001)).toBe(999);
    expect(timer.face(999)).toBe('0:01');
    expect(timer.left(now, AT + 5_000_000)).toBe(0);
  });
  test('after its end it begins again; a clock that is set back adds no time', () => {
    const over = timer.go(timer.withMinutes(1), AT);
    expect(timer.left(timer.go(over, AT + 60_000), AT + 60_000)).toBe(60_000);
    expect(timer.left(over, AT - 60_000)).toBe(60_000);
  });
  test('runs on the screen, says each minute, and lets the student go on after its end', async () => {
    vi.useFakeTimers({ now: AT });
    try {
      render(TOOLS.timer.screen, { history: TOOLS.timer.history() });
      const state = () => screen.getByTestId('tool-state').textContent;
      const face = () => screen.getByTestId('tool-timer-face').textContent.trim();
      expect(state()).toContain('You do not have to use it');
      await fireEvent.click(screen.getByTestId('tool-timer-2'));
      await fireEvent.click(screen.getByTestId('tool-timer-turn'));
      expect([face(), state()]).toEqual(['2:00', '2 minutes are left.']);
      await vi.advanceTimersByTimeAsync(45_000);
      expect([face(), state()]).toEqual(['1:15', '2 minutes are left.']);
      await vi.advanceTimersByTimeAsync(15_000);
      expect([face(), state()]).toEqual(['1:00', '1 minute is left.']);
      await fireEvent.click(screen.getByTestId('tool-timer-turn'));
      await vi.advanceTimersByTimeAsync(30_000);
      expect([face(), state()]).toEqual(['1:00', '1 minute is left. It is paused.']);
      await fireEvent.click(screen.getByTestId('tool-timer-turn'));
      await vi.advanceTimersByTimeAsync(61_000);
      expect([face(), state()]).toEqual(['0:00', 'The time is over. Go on as long as you like.']);
      expect(vi.getTimerCount()).toBe(0);
    } finally {
      vi.useRealTimers();
    }
  });
});

test('arrows stay in the field', () => {
  expect(cellAfter('ArrowRight', 9, 10, 10)).toBeNull();
  expect(cellAfter('ArrowLeft', 10, 10, 10)).toBeNull();
  expect(cellAfter('ArrowDown', 5, 10, 10)).toBe(15);
  expect(cellAfter('ArrowUp', 5, 10, 10)).toBeNull();
  expect(cellAfter('End', 11, 10, 10)).toBe(19);
});

describe.each(TOOL_IDS)('%s', (id) => {
  test.each(LANGUAGES.map(({ tag }) => tag))(
    'tells its state, and takes steps back, in %s',
    async (to) => {
      setLanguage(to);
      const Tool = TOOLS[id].screen;
      const history = TOOLS[id].history();
      const { container } = render(Tool, { history });
      const state = () => screen.getByTestId('tool-state').textContent;
      const first = state();
      expect(first).toBeTruthy();
      // Tries the controls until one changes the state.
      for (const button of container.querySelectorAll('button, textarea')) {
        if (button instanceof HTMLTextAreaElement) {
          await fireEvent.change(button, { target: { value: 'two words' } });
        } else await fireEvent.click(button);
        if (state() !== first) break;
      }
      expect(state()).not.toBe(first);
      expect(container.innerHTML).not.toMatch(/NaN|undefined|Infinity|⟨/);
      while (history.canUndo) await fireEvent.click(screen.getByTestId('tool-undo'));
      expect(state()).toBe(first);
    },
  );
});
