import { fireEvent, render, screen } from '@testing-library/svelte';
import { expect, test, vi } from 'vitest';
import type { ClassSetup, SeatDevice } from '../../lib/backend';
import SeatDevices from './SeatDevices.svelte';

const { asked, loaded } = vi.hoisted(() => ({
  asked: vi.fn(),
  loaded: { setup: {} },
}));
vi.mock('../desk.svelte', () => ({
  desk: {
    load: (_call: string, _args: unknown, take: (found: unknown) => void) => take(loaded.setup),
    ask: asked,
    name: (seat: number) => `Seat ${seat}`,
    say: vi.fn(),
    refresh: vi.fn(),
  },
}));

/** Forged files can make devices alike in everything but their number. */
const device = (id: number, state: SeatDevice['state'] = 'quarantined'): SeatDevice => ({
  id,
  fingerprint: 'ABC-DEF-GHJ-KMN',
  state,
  first_seen_on: '2026-09-14',
  hand_ins: 1,
  entries: 2,
});
const setup = (...devices: SeatDevice[][]) =>
  ({ seats: devices.map((of, at) => ({ number: at + 1, name: null, devices: of })) }) as ClassSetup;

/** Presses the button with these words that is at a place among them. */
async function press(words: string, at: number) {
  const button = screen.getAllByText(words).at(at);
  if (button) await fireEvent.click(button);
}

test('devices that look alike are a line each, and a decision names one of them', async () => {
  loaded.setup = setup([device(1, 'accepted'), device(2), device(3)], [device(4)]);
  asked.mockResolvedValue(loaded.setup);
  render(SeatDevices, { classId: 'c' });
  expect(screen.getAllByTestId('seat-device')).toHaveLength(3);
  await press('Accept', 1);
  await press('Accept', -1);
  expect(asked).toHaveBeenCalledWith('decide_device', {
    class: 'c',
    seat: 1,
    device: 3,
    accept: true,
  });
  await fireEvent.click(screen.getByText('Show the devices of all seats'));
  expect(screen.getAllByTestId('seat-device')).toHaveLength(4);
});

test('a device that waits can be discarded, one that counts only rejected', async () => {
  loaded.setup = setup([device(1, 'accepted'), device(2)]);
  asked.mockResolvedValue(loaded.setup);
  render(SeatDevices, { classId: 'c' });
  await fireEvent.click(screen.getByText('Show the devices of all seats'));
  expect(screen.getAllByText('Discard')).toHaveLength(1);
  expect(screen.getAllByText('Reject')).toHaveLength(2);
  await fireEvent.click(screen.getByText('Discard'));
  await press('Discard', -1);
  expect(asked).toHaveBeenLastCalledWith('discard_device', { class: 'c', seat: 1, device: 2 });
});
