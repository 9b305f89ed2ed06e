import { cleanup } from '@testing-library/svelte';
import { afterEach } from 'vitest';
import { LANGUAGES, loadExerciseWords, loadWords } from '../src/lib/words';
import { exercisesFromFiles } from './exercise-files';

// What the components need and happy-dom lacks.
window.scrollTo = () => undefined;

exercisesFromFiles();
for (const { tag } of LANGUAGES) {
  await loadWords(tag);
  await loadExerciseWords(tag);
}

afterEach(cleanup);
