// How long the program takes in a browser, beside the native one in the same run. It prints the
// times; the bounds are wide, because other work may use the machine.
import { callIn, drive, joined, joining } from './driver';
import { expect, test } from './fixtures';
import type { Calls } from '../src/lib/backend/contract';

const TAPS = 100;

function median(times: number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

test('opening, a tap to the disk, Today and practice', async ({ page, site, desk, room }) => {
  await drive(page, site.url);
  const student = await joined(page, room);
  await desk.pick(room.pack);
  const there = await desk.call('pick_class_pack', {});
  const { id: native } = await desk.call('join', joining(room, there?.pack ?? 0));
  const { concepts } = await callIn(page, 'today', { student, date: null });
  const ids = concepts.map(({ concept }) => concept.id);

  /** Times calls in the page, from the message to the answer. */
  const inBrowser = async (calls: [string, unknown][]) =>
    page.evaluate(async (all) => {
      const times: number[] = [];
      for (const [name, args] of all) {
        const began = performance.now();
        const reply = await window.driver.ask({
          do: 'call',
          ...{ name, args: JSON.stringify(args), place: '' },
        });
        times.push(performance.now() - began);
        if (!reply.answer?.includes('"done"')) throw new Error(JSON.stringify(reply));
      }
      return times;
    }, calls);
  const atDesk = async (calls: [string, unknown][]) => {
    const times: number[] = [];
    for (const [name, args] of calls) {
      const began = performance.now();
      await desk.call(name as keyof Calls, args as never);
      times.push(performance.now() - began);
    }
    return times;
  };
  const taps = (of: string) =>
    Array.from({ length: TAPS }, (_, n): [string, unknown] => [
      'check_in',
      {
        ...{ student: of, date: '2026-09-16', concept: ids[n % ids.length] },
        ...{ confidence: Math.floor(n / ids.length) % 4, outcome: null },
      },
    ]);
  const again = (call: [string, unknown]) => Array.from({ length: 20 }, () => call);
  const rows: [string, number, number][] = [
    [
      'a tap to the disk',
      median(await inBrowser(taps(student))),
      median(await atDesk(taps(native))),
    ],
    [
      'Today',
      median(await inBrowser(again(['today', { student, date: null }]))),
      median(await atDesk(again(['today', { student: native, date: null }]))),
    ],
    [
      'practice',
      median(await inBrowser(again(['practice', { student, concept: null, more: false }]))),
      median(await atDesk(again(['practice', { student: native, concept: null, more: false }]))),
    ],
  ];
  const openings: number[] = [];
  for (let n = 0; n < 5; n += 1) {
    await page.evaluate(() => window.driver.kill());
    openings.push(await page.evaluate(() => window.driver.open()));
  }
  for (const [what, browser, beside] of rows) {
    console.log(
      `times: ${what}: ${browser.toFixed(1)} ms in a browser, ${beside.toFixed(1)} ms native`,
    );
  }
  console.log(`times: opening the program: ${median(openings).toFixed(0)} ms`);
  expect(rows[0]?.[1], 'a tap').toBeLessThan(100);
});
