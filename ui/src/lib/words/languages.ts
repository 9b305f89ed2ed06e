import { LANGUAGES as table, WORDS as loaders } from 'virtual:languages';
import type { Language, Text } from '../backend/contract';

/** A line of `shared/languages.json`. */
export interface LanguageLine {
  /** The tag (BCP 47). */
  tag: Language;
  /** The name in the language itself. */
  name: string;
  /** The locale (BCP 47) for dates, plurals and lists. */
  locale: string;
  decimal_sign: 'point' | 'comma';
  /** The tags of voices (BCP 47), the best first. */
  voices: readonly string[];
  /** The default paper. */
  paper: 'letter' | 'a4';
  direction: 'ltr' | 'rtl';
  /** The text if no messages can be loaded. */
  no_words: string;
}

/** The table of languages; never empty. */
export const LANGUAGES = table as [LanguageLine, ...LanguageLine[]];

export const WORDS = loaders as Record<
  Language,
  () => Promise<{ default: Record<string, string> }>
>;

/** The line of a language in the table. */
export function lineOf(language: Language): LanguageLine {
  return LANGUAGES.find(({ tag }) => tag === language) ?? LANGUAGES[0];
}

export function nameOf(language: Language): string {
  return lineOf(language).name;
}

/** The languages as options. */
export const LANGUAGE_OPTIONS = LANGUAGES.map(({ tag, name }) => ({
  value: tag,
  words: name,
  lang: tag,
}));

/** The language that fits a tag best (RFC 4647, lookup). */
export function lookup(tag: string): Language | undefined {
  for (let range = tag.toLowerCase(); range !== ''; range = range.replace(/-?[^-]*$/, '')) {
    const found = LANGUAGES.find((line) => line.tag.toLowerCase() === range);
    if (found) return found.tag;
  }
  return undefined;
}

/** A text in a language, or else in the first language that it has. */
export function textIn(text: Text, language: Language): string {
  const found = [language, ...LANGUAGES.map(({ tag }) => tag)].find((tag) => text[tag]);
  return (found && text[found]) ?? '';
}
