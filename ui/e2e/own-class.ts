// A class that a test makes, and students who join it.
import { expect, type Page } from '@playwright/test';
import type { Language, NewClass } from '../src/lib/backend/contract';
import type { Bridge } from './bridge';

export interface OwnClass {
  id: string;
  /** The code of each seat. */
  codes: string[];
  /** The PIN signs of each seat. */
  pin_signs: string[];
  /** The place of its class pack. */
  pack: string;
}

/** Makes a class, Room 3 unless changed, with a full school year. Returns its id. */
export async function createClass(bridge: Bridge, change: Partial<NewClass> = {}): Promise<string> {
  const { id } = await bridge.call('create_class', {
    class: {
      title: 'Room 3',
      names: ['', ''],
      year: {
        first_day: '2026-08-17',
        last_day: '2027-05-28',
        weekdays: [1, 2, 3, 4, 5],
        closures: [],
      },
      grades: [4, 5],
      rotation_days: 10,
      concepts_a_day: 7,
      ...change,
    },
  });
  return id;
}

/** What the slips of a class say, and its present pack. */
export async function packOf(bridge: Bridge, id: string): Promise<OwnClass> {
  const slips = await bridge.call('join_slips', { class: id });
  const { file_name } = await bridge.call('save_class_pack', { class: id });
  return {
    id,
    codes: slips.map(({ code }) => code),
    pin_signs: slips.map((slip) => slip.pin_signs),
    pack: bridge.savedAt(file_name),
  };
}

export async function makeClass(bridge: Bridge, change: Partial<NewClass> = {}): Promise<OwnClass> {
  return packOf(bridge, await createClass(bridge, change));
}

interface Joining {
  /** Which seat, from 0. */
  seat: number;
  nickname: string;
  language: Language;
}

/** Joins a class without the screens. Returns the student's id. */
export async function join(
  bridge: Bridge,
  { codes, pack }: OwnClass,
  { seat = 0, nickname = 'Wren', language = 'en' }: Partial<Joining> = {},
): Promise<string> {
  await bridge.pick(pack);
  const offer = await bridge.call('pick_class_pack', {});
  const { id } = await bridge.call('join', {
    pack: offer?.pack ?? 0,
    seat_code: codes[seat] ?? '',
    nickname,
    avatar: 'heron',
    language,
    beside: false,
  });
  return id;
}

/** Sets the first PIN of a student on seat 0 without the screens. */
export async function setPin(
  bridge: Bridge,
  { codes, pin_signs }: OwnClass,
  student: string,
  pin: string,
): Promise<void> {
  const slip = { pin_signs: pin_signs[0] ?? '', seat_code: codes[0] ?? null };
  await bridge.call('set_pin', { student, pin, ...slip });
}

/** Rates all concepts of the day Not yet, so that there is practice. */
export async function markDay(bridge: Bridge, student: string): Promise<void> {
  const { date, concepts } = await bridge.call('today', { student, date: null });
  for (const { concept } of concepts) {
    const one = { student, date, concept: concept.id };
    await bridge.call('check_in', { ...one, confidence: 0, outcome: 'wrong' });
  }
}

/** Goes from the first screen to a student's Today. */
export async function open(page: Page, student: string): Promise<void> {
  await page.goto('/');
  await page.getByTestId(`student-${student}`).click();
  await expect(page.getByTestId('today-aloud')).toBeVisible();
}
