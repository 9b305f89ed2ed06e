// Every test gets a school's web space, and a class made by the native program.
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { test as base, expect } from '@playwright/test';
import { Bridge } from '../e2e/bridge';
import { watch } from '../e2e/fixtures';
import { type Finders, finders } from '../e2e/finders';
import { makeClass, type OwnClass } from '../e2e/own-class';
import { TODAY } from '../e2e/places';
import { Site } from './site';

export { expect };

interface Fixtures extends Finders {
  /** The native program, for the teacher. */
  desk: Bridge;
  site: Site;
  room: OwnClass;
}

export const test = base.extend<Fixtures>({
  desk: async ({}, use) => {
    const desk = await Bridge.start(TODAY);
    await use(desk);
    await desk.stop();
  },
  room: async ({ desk }, use) => use(await makeClass(desk)),
  site: async ({}, use) => {
    const site = await Site.start(TODAY);
    await use(site);
    await site.stop().catch(() => undefined);
  },
  baseURL: async ({ site }, use) => use(site.url),
  context: async ({ context, site }, use) => {
    const trouble = await watch(context, site.url);
    await use(context);
    expect(trouble, 'errors, refused styles, missing words, requests to elsewhere').toEqual([]);
  },
  hook: async ({ page }, use) => use(finders(page).hook),
  hooks: async ({ page }, use) => use(finders(page).hooks),
});

/** A file as a page is given it. */
export function given(path: string): { name: string; bytes: number[] } {
  return { name: basename(path), bytes: [...readFileSync(path)] };
}
