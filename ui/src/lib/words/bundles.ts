import { FluentBundle, FluentResource } from '@fluent/bundle';
import type { Language } from '../backend/contract';

/** `es-US` writes 1,234.5 as the classes here do; plain `es` would write 1234,5. */
export const LOCALES: Record<Language, string> = { en: 'en-US', es: 'es-US' };

const FILES = { en: () => import('./en'), es: () => import('./es') };
const bundles: Partial<Record<Language, FluentBundle>> = {};

/** The messages of a language, once they are loaded. */
export function loaded(language: Language): FluentBundle | undefined {
  return bundles[language];
}

/** Loads the messages of one language; a slip in a file is an error at once. */
export async function load(language: Language): Promise<void> {
  if (bundles[language]) return;
  const made = new FluentBundle(LOCALES[language], { useIsolating: false });
  for (const [path, text] of Object.entries((await FILES[language]()).default)) {
    const errors = made.addResource(new FluentResource(text));
    if (errors.length > 0) throw new Error(`${path}: ${errors.map(String).join('; ')}`);
  }
  bundles[language] = made;
}
