// Makes calls in a browser without the screens, through the same worker.
import type { Page } from '@playwright/test';
import type { OwnClass } from '../e2e/own-class';
import type { Calls } from '../src/lib/backend/contract';
import { given } from './fixtures';

interface Reply {
  id: number;
  answer?: string;
  files?: { name: string; bytes: Uint8Array }[];
  failed?: string;
  crashed?: string;
}

interface Driver {
  /** `unlocked`: students who, the page says, typed their PIN. */
  open(unlocked?: string[]): Promise<number>;
  ask(asked: object): Promise<Reply>;
  kill(): void;
}

declare global {
  interface Window {
    driver: Driver;
  }
}

/** Runs in the page. */
function install(): void {
  let worker: Worker | null = null;
  let last = 0;
  const waiting = new Map<number, (reply: Reply) => void>();
  window.driver = {
    async open(unlocked = []) {
      const began = performance.now();
      for (;;) {
        worker = new Worker(new URL('worker.js', location.href), { type: 'module' });
        worker.onmessage = ({ data }: MessageEvent<Reply>) => {
          waiting.get(data.id)?.(data);
          waiting.delete(data.id);
        };
        const reply = await this.ask({
          ...{ do: 'open', name: 'program', shares: false, student: null },
          // What a page must not be able to say.
          ...{ unlocked },
        });
        if (!reply.failed && !reply.crashed) return performance.now() - began;
        worker.terminate();
        // The storage of the program before is free a moment later.
        if (reply.failed?.includes('other_tab') && performance.now() - began < 10_000) continue;
        throw new Error(reply.failed ?? reply.crashed);
      }
    },
    ask(asked) {
      last += 1;
      const id = last;
      return new Promise((done) => {
        waiting.set(id, done);
        worker?.postMessage({ id, ...asked });
      });
    },
    kill() {
      worker?.terminate();
      worker = null;
      waiting.clear();
    },
  };
}

/** Opens the program on a page without screens. Returns the milliseconds that it took. */
export async function drive(page: Page, url: string): Promise<number> {
  await page.goto(`${url}blank.html`);
  await page.evaluate(install);
  return page.evaluate(() => window.driver.open());
}

export interface Outcome {
  done?: unknown;
  failed?: { code: string };
  pick?: string[];
  share?: string;
  files: { name: string; bytes: number[] }[];
}

/** Makes a call; `given` is the file that it asks for. */
export async function callOn(
  page: Page,
  name: string,
  args: unknown,
  given?: { name: string; bytes: number[] } | null,
): Promise<Outcome> {
  return page.evaluate(
    async ({ name, args, given }) => {
      const file = given ? { name: given.name, bytes: new Uint8Array(given.bytes).buffer } : given;
      const reply = await window.driver.ask({
        do: 'call',
        ...{ name, args: JSON.stringify(args), place: 'downloads' },
        ...(given === undefined ? {} : { given: file }),
      });
      if (reply.crashed) throw new Error(reply.crashed);
      const files = (reply.files ?? []).map(({ name, bytes }) => ({ name, bytes: [...bytes] }));
      return { ...(JSON.parse(reply.answer ?? reply.failed ?? '') as object), files };
    },
    { name, args, given },
  );
}

/** Makes a call that must succeed. */
export async function callIn<N extends keyof Calls>(
  page: Page,
  name: N,
  args: Calls[N]['args'],
  given?: { name: string; bytes: number[] },
): Promise<Calls[N]['out']> {
  const outcome = await callOn(page, name, args, given);
  if (outcome.failed) throw new Error(`${name}: ${JSON.stringify(outcome.failed)}`);
  return outcome.done as Calls[N]['out'];
}

/** How a student joins with the first slip of a class. */
export const joining = (room: OwnClass, pack: number): Calls['join']['args'] => ({
  ...{ pack, seat_code: room.codes[0] ?? '', nickname: 'Wren' },
  ...{ avatar: 'heron', language: 'en', beside: false },
});

/** Joins a class without the screens. Returns the student. */
export async function joined(page: Page, room: OwnClass): Promise<string> {
  const offer = await callIn(page, 'pick_class_pack', {}, given(room.pack));
  return (await callIn(page, 'join', joining(room, offer?.pack ?? 0))).id;
}
