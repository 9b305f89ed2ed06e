import { mount } from 'svelte';
import '../../src/lib/theme/base.css';
import { loadExerciseWords, loadWords } from '../../src/lib/words';
import { exercisesFromFiles } from '../exercise-files';
import Gallery from './Gallery.svelte';

const target = document.getElementById('app');
exercisesFromFiles();
await Promise.all([loadWords('en'), loadExerciseWords('en')]);
if (target) mount(Gallery, { target });
