// Steps at the desk that several tests share.
import { expect, type Page } from '@playwright/test';
import type { NewClass } from '../src/lib/backend/contract';
import { look, DESK } from './measure/look';

/** 180 school days in 18 passes of 10 days; SAMPLE_DAY is one of them. */
export const YEAR: NewClass['year'] = {
  first_day: '2026-08-31',
  last_day: '2027-05-07',
  weekdays: [1, 2, 3, 4, 5],
  closures: [],
};

/**
 * Seconds that a key takes: of the keystroke-level model for an average typist (Card, Moran
 * and Newell 1980; from memory).
 */
export const KEY_SECONDS = 0.28;

/** Goes from the first screen to a part of the desk. */
export async function openDesk(page: Page, ...ids: string[]): Promise<void> {
  await page.goto('/');
  for (const id of ['start-teacher', ...ids]) await page.getByTestId(id).click();
}

/** Undoes the last act, and waits until the screen says so. */
export async function undo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByText('Undone.').last()).toBeVisible();
}

export const said = (page: Page, words: string | RegExp) =>
  expect(page.getByText(words).first()).toBeVisible();

/** Measures a state of the desk that the way through its screens does not reach. */
export const scan = (page: Page, name: string) => look(page, name, DESK);
