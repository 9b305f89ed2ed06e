import { fireEvent, render, screen } from '@testing-library/svelte';
import { expect, test, vi } from 'vitest';
import type { LineReading, Roster } from '../../lib/backend';
import RosterTable from './RosterTable.svelte';

const line = (at: number, first: string, last: string, reading: LineReading = 'name') => ({
  line: at,
  first,
  last,
  reading,
});
const roster: Roster = {
  title: '',
  lines: [
    line(1, 'Period 2', '', 'heading'),
    line(2, 'Anika', 'Patel'),
    line(3, 'Bao', 'Tran'),
    line(4, 'Bao', 'Tran'),
  ],
};

test('both columns are shown, twins are asked, and each change is reported', async () => {
  const onchoice = vi.fn();
  render(RosterTable, { roster, onchoice });
  expect(onchoice).toHaveBeenLastCalledWith({ names: ['Anika', 'Bao T.', 'Bao T.'], open: 1 });
  for (const words of ['Anika', 'Patel', 'Period 2']) expect(screen.getByText(words)).toBeTruthy();

  await fireEvent.click(screen.getByTestId('roster-one-0'));
  expect(onchoice).toHaveBeenLastCalledWith({ names: ['Anika', 'Bao'], open: 0 });
  await fireEvent.input(screen.getByTestId('roster-name-2'), { target: { value: '' } });
  expect(onchoice).toHaveBeenLastCalledWith({ names: ['', 'Bao'], open: 1 });
  await fireEvent.input(screen.getByTestId('roster-name-2'), { target: { value: 'Ani' } });
  await fireEvent.click(screen.getByTestId('roster-swap'));
  expect(onchoice).toHaveBeenLastCalledWith({ names: ['Ani', 'Tran'], open: 0 });
  const [heading] = screen.getAllByRole('checkbox');
  if (heading) await fireEvent.click(heading);
  expect(onchoice).toHaveBeenLastCalledWith({ names: ['Period 2', 'Ani', 'Tran'], open: 0 });
});
