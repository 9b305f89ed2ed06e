import { FluentBundle, FluentResource } from '@fluent/bundle';
import type { Language, MessageFile } from '../backend/contract';
import { lineOf, WORDS } from './languages';

const bundles: Partial<Record<Language, FluentBundle>> = {};

/** Loads the words of exercises from the program. */
let exerciseFiles: ((language: Language) => Promise<MessageFile[]>) | null = null;

/** Sets where the words of exercises come from. */
export function exercisesFrom(files: typeof exerciseFiles): void {
  exerciseFiles = files;
}

/** The messages of a language, once they are loaded. */
export function loaded(language: Language): FluentBundle | undefined {
  return bundles[language];
}

/** Runs once for each language, and again only after a failure. */
function once(doing: (language: Language) => Promise<void>) {
  const done = new Map<Language, Promise<void>>();
  return (language: Language): Promise<void> => {
    const asked =
      done.get(language) ??
      doing(language).catch((error: unknown) => {
        done.delete(language);
        throw error;
      });
    done.set(language, asked);
    return asked;
  };
}

/** Loads the messages of the screens in one language. Fails if a file has a fault. */
export const load = once(async (language) => {
  const made = new FluentBundle(lineOf(language).locale, { useIsolating: false });
  const files = (await WORDS[language]()).default;
  for (const [area, text] of Object.entries(files)) add(made, { area, text });
  bundles[language] = made;
});

/** Loads the words of exercises in one language, after those of the screens. */
export const loadExercises = once(async (language) => {
  const [files] = await Promise.all([exerciseFiles?.(language) ?? [], load(language)]);
  const bundle = bundles[language];
  if (bundle) for (const file of files) add(bundle, file);
});

function add(bundle: FluentBundle, { area, text }: MessageFile): void {
  const errors = bundle.addResource(new FluentResource(text));
  if (errors.length > 0) throw new Error(`${area}: ${errors.map(String).join('; ')}`);
}
