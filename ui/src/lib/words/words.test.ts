import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { LANGUAGES } from '.';

const FOLDER = '../shared/messages/';

/** The message ids, each with its arguments and attributes. */
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

const languages = readdirSync(FOLDER);
const [first = ''] = LANGUAGES.map(({ tag }) => tag);
const files = readdirSync(FOLDER + first).filter((file) => file.endsWith('.ftl'));

test('a folder and a line make a language', () => {
  expect(languages.toSorted()).toEqual(LANGUAGES.map(({ tag }) => tag).toSorted());
});

describe.each(LANGUAGES.map(({ tag }) => tag))('%s', (language) => {
  test('has the same files as the first language', () => {
    expect(readdirSync(FOLDER + language)).toEqual(readdirSync(FOLDER + first));
  });
  test.each(files)('%s has the same messages with the same arguments', (file) => {
    const [want, have] = [shape(first, file), shape(language, file)];
    expect([...have.keys()]).toEqual([...want.keys()]);
    expect(Object.fromEntries(have)).toEqual(Object.fromEntries(want));
  });
});

test('no message id is given twice', () => {
  const ids = files.flatMap((file) => [...shape(first, file).keys()]);
  expect(ids.filter((id, place) => ids.indexOf(id) !== place)).toEqual([]);
});

test('there are messages to compare', () => {
  expect(files.flatMap((file) => [...shape(first, file).keys()]).length).toBeGreaterThan(300);
});
