import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { LANGUAGES } from '../src/lib/words';
import { load, loaded } from '../src/lib/words/bundles';

const contract = readFileSync('src/lib/backend/contract.ts', 'utf8');

/** The codes of a union type as the program's types list them. */
function codes(type: string): string[] {
  const start = contract.indexOf(`export type ${type} = `);
  const end = contract.indexOf('export type ', start + 1);
  const text = contract.slice(start, end < 0 ? undefined : end);
  return [...text.matchAll(/"code": "(\w+)"/g)].map((found) => found[1] ?? '');
}

/** Every sentence a code needs; a code that the program adds is missed here. */
const NEEDED: Record<string, (code: string) => string[]> = {
  Refusal: (code) => [`refusal-${code}`, `refusal-${code}-do`],
  SeatCodeError: (code) => [`seat-code-${code}`],
  CalendarError: (code) => [`error-calendar-${code}`],
  RotationError: (code) => [`error-rotation-${code}`],
  LineFault: (code) => [`line-fault-${code}`],
  Reason: (code) => [`reason-${code}`],
};

beforeAll(() => Promise.all(LANGUAGES.map(({ tag }) => load(tag))));

describe.each(Object.entries(NEEDED))('%s', (type, needed) => {
  it('has codes', () => expect(codes(type).length).toBeGreaterThan(1));

  it.each(codes(type))('%s has its words in every language', (code) => {
    for (const id of needed(code.replaceAll('_', '-'))) {
      for (const language of LANGUAGES.map(({ tag }) => tag)) {
        expect(loaded(language)?.hasMessage(id), `${id} in ${language}`).toBe(true);
      }
    }
  });
});
