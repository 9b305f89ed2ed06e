import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { AVATARS } from './avatars';
import { hasWords, LANGUAGES, setLanguage } from '../words';

const ids = Object.keys(AVATARS);

test.each(LANGUAGES.map(({ tag }) => tag))('each avatar has a name in %s', (language) => {
  setLanguage(language);
  expect(ids.filter((id) => !hasWords(`avatar-${id}`))).toEqual([]);
});

test('the avatars of the sample students are there', () => {
  const demo = readFileSync('../crates/app/src/demo/student_year.rs', 'utf8');
  const named = /const AVATARS[^=]*= \[([^\]]*)\]/.exec(demo)?.[1]?.match(/[a-z]+/g) ?? [];
  expect(named.length).toBeGreaterThan(3);
  expect(named.filter((id) => !ids.includes(id))).toEqual([]);
});
