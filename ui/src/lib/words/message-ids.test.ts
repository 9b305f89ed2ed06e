import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { messageIds, messageIdsType } from '../../../build/message-ids.js';

const TOP = '../';
const NO_SOURCE = /(^|\/)(target|node_modules|gen|dist[\w-]*|\.[^/]+)$/;

/** All files below a folder whose names end with one of these. */
function below(folder: string, ends: RegExp): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}${entry.name}`;
    if (!entry.isDirectory()) return ends.test(entry.name) ? [path] : [];
    return NO_SOURCE.test(path) ? [] : below(`${path}/`, ends);
  });
}

const texts = (paths: string[]) => paths.map((path) => readFileSync(path, 'utf8')).join('\n');
const matches = (text: string, pattern: RegExp) =>
  [...text.matchAll(pattern)].map(([, found = '']) => found);

const code = texts([
  ...below('src/', /\.(svelte|ts)$/).filter((path) => !/\.test\.ts$|message-ids\.ts$/.test(path)),
  ...below(TOP, /\.rs$/),
  ...below(`${TOP}web/page/`, /\.mjs$/),
]);
/** All quoted strings: ids, and codes that are parts of ids. */
const quoted = new Set(matches(code, /['"`]([a-z][\w-]*)['"`]/g));
const codes = new Set([...quoted, ...matches(code, /\b([a-z]\w*):/g)]);
const isCode = (part: string) =>
  /^\d+$/.test(part) || codes.has(part) || codes.has(part.replaceAll('-', '_'));

/** Template strings, as the pieces around their placeholders. */
const templates = matches(code, /["`]([a-z][\w-]*-\$?\{[^"`]*)["`]/g).map((text) =>
  text.split(/\$?\{(?:[^{}]|\{[^}]*\})*\}/),
);

/** Whether an id fits the pieces, with a code at each placeholder. */
function fits(id: string, [first = '', ...others]: string[]): boolean {
  if (!id.startsWith(first)) return false;
  const rest = id.slice(first.length);
  if (others.length === 0) return rest === '';
  return Array.from(rest, (_, at) => at + 1).some(
    (end) => isCode(rest.slice(0, end)) && fits(rest.slice(end), others),
  );
}

test('the type of the message ids is that of the message files: npm run messages', () => {
  expect(readFileSync('src/lib/words/message-ids.ts', 'utf8')).toBe(messageIdsType());
});

test('every message is used', () => {
  const messages = texts(below(`${TOP}shared/messages/en/`, /\.ftl$/));
  const inMessages = new Set(matches(messages, /\{ *([a-z][\w-]*)/g));
  const unused = messageIds().filter(
    (id) =>
      !inMessages.has(id) &&
      // The program appends the number of things in a figure.
      !quoted.has(id.replace(/-\d$/, '')) &&
      !quoted.has(id) &&
      !templates.some((template) => fits(id, template)),
  );
  expect(unused).toEqual([]);
});
