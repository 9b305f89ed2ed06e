declare module 'virtual:languages' {
  import type { Language } from '../backend/contract';

  /** A line of `shared/languages.json`. */
  export interface LanguageLine {
    /** Its tag (BCP 47). */
    tag: Language;
    /** Its name in the language itself. */
    name: string;
    /** The locale (BCP 47) for dates, plurals and lists. */
    locale: string;
    decimal_sign: 'point' | 'comma';
    /** The paper that is offered first. */
    paper: 'letter' | 'a4';
    direction: 'ltr' | 'rtl';
    /** What is said when no messages can be loaded. */
    no_words: string;
  }

  /** The table of languages; there is always a first one. */
  export const LANGUAGES: [LanguageLine, ...LanguageLine[]];
  /** Loads the messages of the screens, by area. */
  export const WORDS: Record<Language, () => Promise<{ default: Record<string, string> }>>;
}
