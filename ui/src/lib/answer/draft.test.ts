import { fireEvent, render } from '@testing-library/svelte';
import { beforeEach, describe, expect, test } from 'vitest';
import AnswerEntry from './AnswerEntry.svelte';
import type { Draft, Entry, Response } from '../backend';
import { setLanguage } from '../words';
import { ENTRIES } from '../../../test/samples/entries';

beforeEach(() => setLanguage('en'));

interface Shown {
  container: HTMLElement;
  response: () => Response | null;
  draft: () => Draft | null;
  unmount: () => void;
}

function show(entry: Entry, draft: Draft | null): Shown {
  let last: [Response | null, Draft | null] = [null, null];
  const { container, unmount } = render(AnswerEntry, {
    entry,
    disabled: false,
    draft,
    onchange: (...now: [Response | null, Draft | null]) => (last = now),
  });
  return { container, unmount, response: () => last[0], draft: () => last[1] };
}

/** What is visible: markup and typed values, without status messages. */
function standing({ container }: Shown): string {
  const copy = container.cloneNode(true) as HTMLElement;
  for (const one of copy.querySelectorAll('[aria-live], [role=status]')) one.textContent = '';
  // The focus is not kept, and Svelte's markers vary.
  for (const one of copy.querySelectorAll('[tabindex]')) one.removeAttribute('tabindex');
  for (const one of copy.querySelectorAll('input')) one.classList.remove('active');
  // Attributes come in the order in which they were set.
  for (const one of copy.querySelectorAll('*')) {
    const all = [...one.attributes].map(({ name, value }): [string, string] => [name, value]);
    for (const [name] of all) one.removeAttribute(name);
    for (const [name, value] of all.sort()) one.setAttribute(name, value);
  }
  const typed = [...container.querySelectorAll('input')].map((one) => one.value);
  return JSON.stringify(typed) + copy.innerHTML.replaceAll(/<!--.*?-->/g, '');
}

/** Fills in something, whatever the entry; of several boxes only the first. */
async function fill({ container }: Shown): Promise<void> {
  const at = (hook: string) =>
    container.querySelector<HTMLElement>(`[data-testid^="${hook}"]`) ?? null;
  const field = at('answer-field-');
  if (field) await fireEvent.input(field, { target: { value: '7' } });
  // Of two parts, the first opens the second.
  const opening = at('answer-first')?.querySelector('[data-testid="answer-choice-1"]');
  if (opening) await fireEvent.click(opening);
  const later = at('answer-second')?.querySelector('input, [data-testid="answer-choice-1"]');
  if (later instanceof HTMLInputElement) await fireEvent.input(later, { target: { value: '7' } });
  else if (later) await fireEvent.click(later);
  for (const hook of [
    'answer-half-pm',
    'answer-choice-1',
    'order-later-0',
    'plot-more-1',
    'answer-part-1',
    'answer-square-1',
  ]) {
    const found = at(hook);
    if (found) await fireEvent.click(found);
  }
  for (const hook of ['answer-line', 'answer-angle']) {
    const found = at(hook);
    if (!found) continue;
    await fireEvent.keyDown(found, { key: 'ArrowRight' });
    await fireEvent.keyDown(found, { key: 'ArrowRight' });
  }
  for (const hook of ['answer-ray-open', 'answer-ray-left']) {
    const found = at(hook);
    if (found) await fireEvent.click(found);
  }
}

const ALL: [string, Entry][] = Object.entries(ENTRIES).flatMap(([kind, entries]) =>
  entries.map((entry, place): [string, Entry] => [`${kind} ${place}`, entry]),
);

describe.each(ALL)('%s', (_, entry) => {
  test('a draft is shown again, with the same response', async () => {
    const empty = show(entry, null);
    const before = standing(empty);
    await fill(empty);
    const [draft, left, response] = [empty.draft(), standing(empty), empty.response()];
    expect(left).not.toBe(before);
    expect(draft).not.toBeNull();
    empty.unmount();

    // As the store returns it.
    const again = show(entry, JSON.parse(JSON.stringify(draft)) as Draft);
    expect(standing(again)).toBe(left);
    expect(again.response()).toEqual(response);
    expect(again.draft()).toEqual(draft);
  });

  test('a draft that does not fit is ignored', () => {
    const strange: Draft[] = [
      { kind: 'boxes', texts: [], half_day: null },
      { kind: 'tapped', response: { kind: 'one_choice', index: 9 } },
      { kind: 'tapped', response: { kind: 'several_choices', indexes: [7, 8] } },
      { kind: 'tapped', response: { kind: 'shaded_fraction', parts: [40] } },
      { kind: 'tapped', response: { kind: 'grid_area', cells: [[9, 0]] } },
      { kind: 'tapped', response: { kind: 'ordering', order: [0] } },
      { kind: 'tapped', response: { kind: 'ordering', order: [2, 2, 1] } },
      { kind: 'tapped', response: { kind: 'plot', heights: [] } },
      { kind: 'tapped', response: { kind: 'number_line_point', at: { top: 999, bottom: 7 } } },
    ];
    const empty = show(entry, null);
    const [before, response] = [standing(empty), empty.response()];
    empty.unmount();
    for (const draft of strange) {
      const shown = show(entry, draft);
      expect(standing(shown)).toBe(before);
      expect(shown.response()).toEqual(response);
      shown.unmount();
    }
  });
});
