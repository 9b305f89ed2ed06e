import { fireEvent, render, screen } from '@testing-library/svelte';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import Blocks from './figures/Blocks.svelte';
import Figure from './figures/Figure.svelte';
import { ConfidencePicker, Stones, placeAfter } from './ui';
import { setLanguage } from './words';
import { FIGURES, over, word } from '../../test/samples/figures';

beforeEach(() => setLanguage('en'));

test('stones: as many filled as the rating, and its words', () => {
  const { container } = render(Stones, { value: 2, words: true });
  expect(container.querySelectorAll('ellipse')).toHaveLength(4);
  expect(container.querySelectorAll('ellipse.filled')).toHaveLength(3);
  expect(container.textContent).toContain('On my own');
});

test('stones: nothing yet is four empty ones', () => {
  const { container } = render(Stones, { value: null });
  expect(container.querySelectorAll('ellipse.filled')).toHaveLength(0);
  expect(container.textContent).toContain('Not rated');
});

describe('the confidence picker', () => {
  const show = (value: 0 | 1 | 2 | 3 | null) => {
    const onpick = vi.fn();
    render(ConfidencePicker, { label: 'How sure?', value, onpick, testid: 'x' });
    return onpick;
  };
  test('is one choice of four, with one tap', async () => {
    const onpick = show(null);
    expect(screen.getByRole('radiogroup', { name: 'How sure?' })).toBeTruthy();
    expect(screen.getAllByRole('radio')).toHaveLength(4);
    await fireEvent.click(screen.getByTestId('x-3'));
    expect(onpick.mock.calls).toEqual([[3]]);
  });
  test.each([
    ['2', 2],
    ['ArrowRight', 2],
    ['ArrowLeft', 0],
    ['End', 3],
  ])('takes the key %s', async (key, picked) => {
    const onpick = show(1);
    await fireEvent.keyDown(screen.getByTestId('x-1'), { key });
    expect(onpick.mock.calls).toEqual([[picked]]);
  });
  test.each(['7', 'a', 'Tab'])('leaves the key %s alone', async (key) => {
    const onpick = show(1);
    await fireEvent.keyDown(screen.getByTestId('x-1'), { key });
    expect(onpick).not.toHaveBeenCalled();
  });
  test('has one Tab stop, on the chosen option', () => {
    show(2);
    const stops = screen.getAllByRole('radio').map((radio) => radio.getAttribute('tabindex'));
    expect(stops).toEqual(['-1', '-1', '0', '-1']);
  });
});

test('arrows go round', () => {
  expect(placeAfter('ArrowRight', 3, 4)).toBe(0);
  expect(placeAfter('ArrowLeft', 0, 4)).toBe(3);
  expect(placeAfter('9', 0, 4)).toBeNull();
});

test.each(Object.entries(FIGURES))('a %s is drawn and has its words', (_, drawings) => {
  for (const drawing of drawings) {
    const { container, unmount } = render(Figure, {
      figure: { alt: word('common-work-out'), drawing },
    });
    const seen = container.querySelector('svg[role=img], table');
    expect(seen?.getAttribute('aria-label')).toBe('Work it out.');
    expect(container.innerHTML).not.toMatch(/NaN|undefined|Infinity|⟨/);
    unmount();
  }
});

test('mathematics is MathML with spoken words', () => {
  const { container } = render(Blocks, { blocks: [{ kind: 'math', expr: over(3, 4) }] });
  const math = container.querySelector('math');
  expect(math?.getAttribute('aria-label')).toBe('3 over 4');
  expect(math?.querySelector('mfrac')?.textContent.replace(/\s/g, '')).toBe('34');
});
