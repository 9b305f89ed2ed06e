import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const MESSAGES = '../shared/messages/';
const CSS = 'node_modules/@fontsource-variable/atkinson-hyperlegible-next/wght.css';

const ranges = [...readFileSync(CSS, 'utf8').matchAll(/U\+([0-9A-F]+)(?:-([0-9A-F]+))?/g)].map(
  ([, first = '', last = first]) => [parseInt(first, 16), parseInt(last, 16)] as const,
);

test.each(readdirSync(MESSAGES))('the font for words covers the messages of %s', (tag) => {
  const texts = readdirSync(`${MESSAGES}${tag}`)
    .filter((name) => name.endsWith('.ftl'))
    .map((name) => readFileSync(`${MESSAGES}${tag}/${name}`, 'utf8').replaceAll(/^#.*/gm, ''));
  const lacking = [...new Set(texts.join(''))].filter((character) => {
    const code = character.codePointAt(0) ?? 0;
    return !ranges.some(([first, last]) => first <= code && code <= last);
  });
  expect(lacking).toEqual([]);
});
