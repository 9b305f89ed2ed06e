import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const FOLDER = '../shared/messages/';

/** Message ids and, for each, the arguments and attributes it names. */
function shape(language: string, file: string): Map<string, string> {
  const text = readFileSync(`${FOLDER}${language}/${file}`, 'utf8');
  const found = new Map<string, string>();
  for (const [, id = '', body = ''] of text.matchAll(
    /^([a-z][\w-]*) = ?((?:.*\n?)(?:[ }].*\n?)*)/gm,
  )) {
    const uses = new Set(
      [...body.matchAll(/\$(\w+)|^ +(\.\w+) =/gm)].map(([, arg, part]) => arg ?? part),
    );
    found.set(id, [...uses].sort().join(' '));
  }
  return found;
}

const files = readdirSync(`${FOLDER}en`);

test('both languages have the same files', () => {
  expect(readdirSync(`${FOLDER}es`)).toEqual(files);
});

describe.each(files)('%s', (file) => {
  const en = shape('en', file);
  const es = shape('es', file);

  test('has the same messages in both languages', () => {
    expect([...es.keys()]).toEqual([...en.keys()]);
  });
  test('has messages with the same arguments in both languages', () => {
    expect(Object.fromEntries(es)).toEqual(Object.fromEntries(en));
  });
});

test('no message id stands twice', () => {
  const ids = files.flatMap((file) => [...shape('en', file).keys()]);
  expect(ids.filter((id, place) => ids.indexOf(id) !== place)).toEqual([]);
});

test('there are messages to compare', () => {
  expect(files.flatMap((file) => [...shape('en', file).keys()]).length).toBeGreaterThan(300);
});
