import { beforeEach, expect, test } from 'vitest';
import type { ClassSummary, Start } from '../lib/backend';
import { go, restart } from '../lib/router.svelte';
import { take } from '../lib/session.svelte';
import { desk } from './desk.svelte';

const named = (id: string) => ({ id, title: id }) as ClassSummary;
const withClasses = (...ids: string[]) =>
  take({
    classes: ids.map(named),
    students: [],
    settings: {},
    desk_lock: {},
    today: '',
  } as unknown as Start);

async function back() {
  history.back();
  await new Promise((done) => setTimeout(done, 60));
}

beforeEach(() => {
  withClasses('a', 'b');
  restart({ name: 'start' });
  go({ name: 'desk', class: 'a', desk: { at: 'board' } });
});

test('Back returns to the screen of its class', async () => {
  desk.go({ at: 'student', seat: 3 });
  desk.go({ at: 'board' }, 'b');
  desk.go({ at: 'talk' });
  await back();
  await back();
  expect([desk.summary?.id, desk.route]).toEqual(['a', { at: 'student', seat: 3 }]);
});

test('Back to a class that was deleted shows the first screen of another one', async () => {
  desk.go({ at: 'student', seat: 3 });
  desk.go({ at: 'board' }, 'b');
  withClasses('b');
  await back();
  expect([desk.summary?.id, desk.route]).toEqual(['b', { at: 'now' }]);
});

test('the desk opens again with its last class', () => {
  desk.go({ at: 'talk' }, 'b');
  expect(desk.summary?.id).toBe('b');
  restart({ name: 'start' });
  expect(desk.summary?.id).toBe('b');
  go({ name: 'desk', desk: { at: 'board' } });
  expect([desk.summary?.id, desk.route.at]).toEqual(['b', 'board']);
});

test('a message of one screen is gone on the next, however it is reached', async () => {
  desk.go({ at: 'talk' });
  desk.say('kept');
  desk.go({ at: 'groups' });
  expect(desk.done).toBeNull();
  desk.trouble = 'failed';
  await back();
  expect([desk.done, desk.trouble]).toEqual([null, '']);
  desk.say('kept');
  desk.replace({ at: 'talk' }, 'b');
  expect(desk.done?.words).toBe('kept');
});
