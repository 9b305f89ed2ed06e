import { cleanup } from '@testing-library/svelte';
import { afterEach } from 'vitest';
import { loadExerciseWords, loadWords } from '../src/lib/words';
import { exercisesFromFiles } from './exercise-files';

// What happy-dom lacks, at the least the components need.
window.scrollTo = () => undefined;

exercisesFromFiles();
await Promise.all([loadWords('en'), loadWords('es')]);
await Promise.all([loadExerciseWords('en'), loadExerciseWords('es')]);

afterEach(cleanup);
