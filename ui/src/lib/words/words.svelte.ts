import type { FluentVariable } from '@fluent/bundle';
import type { Language } from '../backend/contract';
import { bundles } from './bundles';

/** The language of the screens; what reads it changes with it. */
const chosen = $state<{ language: Language }>({ language: 'en' });

export function language(): Language {
  return chosen.language;
}

export function setLanguage(to: Language): void {
  chosen.language = to;
  document.documentElement.lang = to;
}

/** A sentence of the message files. A number chooses the plural and is grouped. */
export function say(id: string, args?: Record<string, FluentVariable>): string {
  return sayIn(chosen.language, id, args);
}

/** An attribute of a message, such as the teacher's name of a mistake. */
export function sayPart(id: string, part: string): string {
  const bundle = bundles[chosen.language];
  const pattern = bundle.getMessage(id)?.attributes[part];
  return pattern ? bundle.formatPattern(pattern) : missing(id);
}

/** As `say`, in a language of its own: for the choice of a language. */
export function sayIn(
  language: Language,
  id: string,
  args?: Record<string, FluentVariable>,
): string {
  const bundle = bundles[language];
  const pattern = bundle.getMessage(id)?.value;
  if (!pattern) return missing(id);
  const errors: Error[] = [];
  const text = bundle.formatPattern(pattern, args ?? null, errors);
  return errors.length > 0 ? missing(id) : text;
}

/** Whether there is such a message in the language of the screens. */
export function hasWords(id: string): boolean {
  return bundles[chosen.language].hasMessage(id);
}

function missing(id: string): string {
  return `⟨${id}⟩`;
}
