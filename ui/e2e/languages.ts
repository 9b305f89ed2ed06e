// The languages of the program and their messages, as the files have them.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import type { Language } from '../src/lib/backend/contract';
import { TOP } from './places';

interface Line {
  tag: Language;
  /** The name in the language itself. */
  name: string;
}

const SHARED = join(TOP, 'shared');

/** The table of languages; never empty. */
export const LANGUAGE_LINES = JSON.parse(readFileSync(join(SHARED, 'languages.json'), 'utf8')) as [
  Line,
  ...Line[],
];
export const LANGUAGES = LANGUAGE_LINES.map(({ tag }) => tag);

/** A message in a language. */
export function messageIn(
  language: Language,
  id: string,
  values: Record<string, FluentVariable> = {},
): string {
  const folder = join(SHARED, 'messages', language);
  const bundle = new FluentBundle(language, { useIsolating: false });
  for (const name of readdirSync(folder).filter((file) => file.endsWith('.ftl')))
    bundle.addResource(new FluentResource(readFileSync(join(folder, name), 'utf8')));
  const pattern = bundle.getMessage(id)?.value;
  if (!pattern) throw new Error(`${language} has no message ${id}`);
  return bundle.formatPattern(pattern, values);
}
