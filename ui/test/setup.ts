import { cleanup } from '@testing-library/svelte';
import { afterEach } from 'vitest';
import { LANGUAGES, loadExerciseWords, loadWords } from '../src/lib/words';
import { exercisesFromFiles } from './exercise-files';

// What happy-dom lacks, at the least the components need.
window.scrollTo = () => undefined;

exercisesFromFiles();
for (const { tag } of LANGUAGES) {
  await loadWords(tag);
  await loadExerciseWords(tag);
}

afterEach(cleanup);
