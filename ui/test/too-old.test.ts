import { readFileSync } from 'node:fs';
import { Linter } from 'eslint';
import { beforeEach, describe, expect, test } from 'vitest';
import { tooOldWords } from '../build/too-old';

const SCRIPT = readFileSync('public/too-old.js', 'utf8');
const TABLE = readFileSync('../shared/languages.json', 'utf8');
const PAGE = readFileSync('index.html', 'utf8').replace('<!-- too old -->', tooOldWords(TABLE));
const BODY =
  /<body>([^]*)<\/body>/.exec(PAGE)?.[1]?.replaceAll(/<script[^]*?<\/script>/g, '') ?? '';

/** The first fault that a parser of ECMAScript 5 finds. */
function es5Fault(code: string): string | undefined {
  const options = { languageOptions: { ecmaVersion: 5, sourceType: 'script' } } as const;
  return new Linter().verify(code, options).find(({ fatal }) => fatal)?.message;
}

/** What the script sees: a window that knows everything, but for what is said. */
function engine(lacks: { name?: string; css?: string; array?: boolean } = {}): object {
  const known = {
    structuredClone: () => null,
    MathMLElement: () => null,
    CSS: { supports: (property: string, value: string) => `${property}: ${value}` !== lacks.css },
    navigator: { userAgent: 'Mozilla/5.0 (Linux; Android 9) Chrome/83.0.4103.106 Safari/537.36' },
  };
  return Object.fromEntries(Object.entries(known).filter(([name]) => name !== lacks.name));
}

/** Runs the script on the page and returns what the page shows then. */
function shown(window: object, arrays: object = Array): { place: boolean; words: string } {
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  const script = new Function('window', 'document', 'Array', SCRIPT) as (
    ...given: unknown[]
  ) => void;
  script(window, document, arrays);
  const notice = document.getElementById('too-old');
  return {
    place: document.getElementById('app') !== null,
    words: notice?.hidden === false ? notice.textContent : '',
  };
}

beforeEach(() => {
  document.body.innerHTML = BODY;
});

test('an engine of 2015 can read the script', () => {
  expect(es5Fault(SCRIPT)).toBeUndefined();
  expect(es5Fault('var f = (a) => a?.b;')).toMatch(/parsing error/i);
});

test('a complete engine shows the place of the page and no words', () => {
  expect(shown(engine())).toEqual({ place: true, words: '' });
  expect(document.getElementById('too-old')).toBeNull();
});

describe('an engine that lacks something', () => {
  test.each([
    { name: 'structuredClone' },
    { name: 'MathMLElement' },
    { name: 'CSS' },
    { css: 'color: color-mix(in srgb, red 50%, blue)' },
    { css: 'height: 1dvh' },
    { css: 'container-type: inline-size' },
  ])('says it in every language: %o', (lacks) => {
    const { place, words } = shown(engine(lacks));
    expect(place).toBe(false);
    expect(words).toContain('ask a grown-up to open the Play Store');
    expect(words).toContain('Pide a una persona adulta que abra Play Store');
    expect(words).toContain('Chrome/83.0.4103.106');
  });

  test('says it where arrays lack what came with Chromium 110', () => {
    expect(shown(engine(), { prototype: {} }).place).toBe(false);
  });
});
