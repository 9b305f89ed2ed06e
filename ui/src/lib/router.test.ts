import { beforeEach, expect, test } from 'vitest';
import {
  back,
  backAnyway,
  go,
  holdBack,
  replace,
  restart,
  route,
  up,
  visit,
  type DeskRoute,
  type Route,
} from './router.svelte';

const desk = (to: DeskRoute): Route => ({ name: 'desk', class: 'a', desk: to });
const BOARD = desk({ at: 'board' });
const CONCEPT = desk({ at: 'concept', concept: 'm5-add', pass: 2 });
const STUDENT = desk({ at: 'student', seat: 7 });

/** History moves are asynchronous. */
const settled = () => new Promise((done) => setTimeout(done, 60));

async function backed(): Promise<Route> {
  history.back();
  await settled();
  return route();
}

beforeEach(() => restart({ name: 'start' }));

test('Back goes through the screens of the desk with their parameters', async () => {
  for (const to of [BOARD, CONCEPT, STUDENT]) go(to);
  expect(await backed()).toEqual(CONCEPT);
  expect(await backed()).toEqual(BOARD);
  expect(await backed()).toEqual({ name: 'start' });
});

test('Back goes through the tabs of a student with the concept that was practised', async () => {
  const practice: Route = { name: 'student', student: 's', tab: 'practice', concept: 'm5-add' };
  go({ name: 'student', student: 's', tab: 'path' });
  go(practice);
  go({ name: 'student', student: 's', tab: 'settings' });
  expect(await backed()).toEqual(practice);
  expect(await backed()).toMatchObject({ tab: 'path' });
});

test('Forward returns to a screen of the desk, but not past the list of students', async () => {
  go(BOARD);
  go(CONCEPT);
  await backed();
  history.forward();
  await settled();
  expect(route()).toEqual(CONCEPT);
  await backed();
  await backed();
  history.forward();
  await settled();
  expect(route()).toEqual({ name: 'start' });
  go(BOARD);
  expect(await backed()).toEqual({ name: 'start' });
});

test('nothing leads back past a restart', async () => {
  go(BOARD);
  restart({ name: 'join' });
  expect(await backed()).toEqual({ name: 'join' });
  go({ name: 'start' });
  expect(await backed()).toEqual({ name: 'join' });
});

test('the same screen again is not a step, and a replaced screen is gone', async () => {
  go(BOARD);
  go({ ...BOARD });
  go(CONCEPT);
  replace(STUDENT);
  expect(await backed()).toEqual(BOARD);
  expect(await backed()).toEqual({ name: 'start' });
});

test('going up is a step back if the screen before is the target', async () => {
  go(BOARD);
  go(CONCEPT);
  up(BOARD);
  await settled();
  expect(route()).toEqual(BOARD);
  expect(await backed()).toEqual({ name: 'start' });
  go(CONCEPT);
  up(BOARD);
  expect(await backed()).toEqual(CONCEPT);
});

test('each step is another visit, a replacement is not', async () => {
  go(BOARD);
  const first = visit();
  replace(desk({ at: 'concept', concept: 'm5-add' }));
  expect(visit()).toBe(first);
  go(STUDENT);
  await backed();
  expect(visit()).toBe(first + 2);
});

test('the hold added last acts on Back, each step once, until it is removed', async () => {
  go(BOARD);
  go(CONCEPT);
  const calls: string[] = [];
  const hold = (name: string) =>
    holdBack(() => {
      calls.push(name);
      return true;
    });
  const removeForm = hold('form');
  const removeDialog = hold('dialog');
  expect(await backed()).toEqual(CONCEPT);
  removeDialog();
  expect(await backed()).toEqual(CONCEPT);
  expect(calls).toEqual(['dialog', 'form']);
  backAnyway();
  await settled();
  expect(route()).toEqual(BOARD);
  // It counts once: the next step is held again.
  expect(await backed()).toEqual(BOARD);
  removeForm();
  expect(await backed()).toEqual({ name: 'start' });
  expect(calls).toEqual(['dialog', 'form', 'form']);
});

test('if a hold lets Back pass, the holds below it are called', async () => {
  go(BOARD);
  go(CONCEPT);
  const asked: string[] = [];
  const below = holdBack(() => asked.push('below') === 0);
  const above = holdBack(() => asked.push('above') === 0);
  back();
  await settled();
  expect(route()).toEqual(BOARD);
  expect(asked).toEqual(['above', 'below']);
  below();
  above();
});

test('Alt with the arrows and the buttons of a mouse go back and forward', async () => {
  go(BOARD);
  go(CONCEPT);
  const key = (name: string, from: EventTarget = window) => {
    const init = { key: name, altKey: true, bubbles: true, cancelable: true };
    return from.dispatchEvent(new KeyboardEvent('keydown', init));
  };
  expect(key('ArrowLeft')).toBe(false);
  await settled();
  expect(route()).toEqual(BOARD);
  key('ArrowRight');
  await settled();
  expect(route()).toEqual(CONCEPT);
  const mouse = (button: number) =>
    window.dispatchEvent(new MouseEvent('mouseup', { button, cancelable: true }));
  expect(mouse(3)).toBe(false);
  await settled();
  expect(route()).toEqual(BOARD);
  mouse(4);
  await settled();
  expect(route()).toEqual(CONCEPT);
  // In a field the keys move the caret. The left button is not Back.
  const field = document.body.appendChild(document.createElement('input'));
  expect(key('ArrowLeft', field)).toBe(true);
  field.remove();
  mouse(0);
  await settled();
  expect(route()).toEqual(CONCEPT);
});
