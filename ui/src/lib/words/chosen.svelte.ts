import type { Language } from '../backend/contract';
import { LANGUAGES, lineOf } from './languages';

/** The language of the screens (reactive). */
const chosen = $state<{ language: Language }>({ language: LANGUAGES[0].tag });

export function language(): Language {
  return chosen.language;
}

/** Shows a language, which must be loaded. */
export function speak(to: Language): void {
  chosen.language = to;
  document.documentElement.lang = to;
  document.documentElement.dir = lineOf(to).direction;
}

/** The locale for dates, plurals and lists. */
export function locale(): string {
  return lineOf(chosen.language).locale;
}
