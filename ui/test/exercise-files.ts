import type { Language } from '../src/lib/backend/contract';
import { exercisesFrom } from '../src/lib/words';

const FILES = import.meta.glob<string>(
  '../../shared/messages/*/{items-*,figures,misconceptions}.ftl',
  { query: '?raw', import: 'default', eager: true },
);

/** The words of exercises, for pages without the program. */
export function exercisesFromFiles(): void {
  exercisesFrom((language: Language) =>
    Promise.resolve(
      Object.entries(FILES)
        .filter(([path]) => path.includes(`/${language}/`))
        .map(([path, text]) => ({ area: path.replace(/^.*\/|\.ftl$/g, ''), text })),
    ),
  );
}
