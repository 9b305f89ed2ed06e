import type { FluentVariable } from '@fluent/bundle';
import type { Language } from '../backend/contract';
import { load, loaded, loadExercises } from './bundles';
import { language, speak } from './chosen.svelte';
import { counted } from './counted';
import type { MessageId } from './message-ids';

/** The language that was chosen last; it may still be loading. */
let asked: Language = language();

/** The languages that were loaded or failed to load. */
const came = $state<Partial<Record<Language, 'loaded' | 'failed'>>>({});

/** Whether a language was loaded or failed; undefined before. */
export function wordsOf(of: Language): 'loaded' | 'failed' | undefined {
  return came[of];
}

/** Shows a language, at once or as soon as it is loaded. */
export function setLanguage(to: Language): void {
  asked = to;
  if (loaded(to)) speak(to);
  // The screen that waits for the words reports a failure.
  else loadWords(to).catch(() => undefined);
}

/** Loads a language, and shows it if it is still the chosen one. */
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
 * Loads the words of exercises, without argument in the chosen language. Screens with
 * exercises wait for them.
 */
export function loadExerciseWords(of: Language = asked): Promise<void> {
  return loadExercises(of);
}

/** A message in the language of the screens. Numbers choose plurals and are grouped. */
export function say(id: MessageId, args?: Record<string, FluentVariable>): string {
  return sayFromProgram(id, args);
}

/** Like `say`, for an id from the program. */
export function sayFromProgram(id: string, args?: Record<string, FluentVariable>): string {
  return format(language(), id, args);
}

/** Like `say`, in any loaded language. */
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

/** Whether the language of the screens has this message. */
export function hasWords(id: string): id is MessageId {
  return loaded(language())?.hasMessage(id) ?? false;
}

function missing(id: string): string {
  return `⟨${id}⟩`;
}
