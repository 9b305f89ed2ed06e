import type { FluentVariable } from '@fluent/bundle';
import type { Language } from '../backend/contract';
import { load, loaded, loadExercises } from './bundles';
import { language, speak } from './chosen.svelte';
import { counted } from './counted';
import type { MessageId } from './message-ids';

/** The language that was asked for last. */
let asked: Language = language();

/** What came of loading a language; nothing while it was not asked for or is on its way. */
const came = $state<Partial<Record<Language, 'loaded' | 'failed'>>>({});

/** What came of loading a language, once something did. */
export function wordsOf(of: Language): 'loaded' | 'failed' | undefined {
  return came[of];
}

/** Speaks a language: at once when it is loaded, else as soon as it is. */
export function setLanguage(to: Language): void {
  asked = to;
  if (loaded(to)) speak(to);
  // A failure is said by the screen that waits for the words.
  else loadWords(to).catch(() => undefined);
}

/** Loads a language, and speaks it if it is still the one asked for. */
export async function loadWords(to: Language): Promise<void> {
  try {
    await load(to);
    came[to] = 'loaded';
  } catch (error) {
    came[to] = 'failed';
    throw error;
  }
  if (asked === to) speak(to);
}

/**
 * Loads the words of exercises in a language, by itself the one spoken. What shows
 * exercises waits for them.
 */
export function loadExerciseWords(of: Language = asked): Promise<void> {
  return loadExercises(of);
}

/** A sentence of the message files. A number chooses the plural and is grouped. */
export function say(id: MessageId, args?: Record<string, FluentVariable>): string {
  return sayFromProgram(id, args);
}

/** As `say`, for an id that the program sent. */
export function sayFromProgram(id: string, args?: Record<string, FluentVariable>): string {
  return format(language(), id, args);
}

/** As `say`, in a language that is loaded. */
export function sayIn(to: Language, id: MessageId, args?: Record<string, FluentVariable>): string {
  return format(to, id, args);
}

function format(
  to: Language,
  id: string,
  args: Record<string, FluentVariable> | undefined,
): string {
  const bundle = loaded(to);
  const pattern = bundle?.getMessage(id)?.value;
  if (!pattern) return missing(id);
  const errors: Error[] = [];
  const text = bundle.formatPattern(pattern, args ? counted(args) : null, errors);
  return errors.length > 0 ? missing(id) : text;
}

/** An attribute of a message, such as the teacher's name of a misconception. */
export function sayPart(id: string, part: string): string {
  const bundle = loaded(language());
  const pattern = bundle?.getMessage(id)?.attributes[part];
  return pattern ? bundle.formatPattern(pattern) : missing(id);
}

/** Whether there is such a message in the language of the screens. */
export function hasWords(id: string): id is MessageId {
  return loaded(language())?.hasMessage(id) ?? false;
}

function missing(id: string): string {
  return `⟨${id}⟩`;
}
