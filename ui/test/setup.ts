import { cleanup } from '@testing-library/svelte';
import { afterEach } from 'vitest';
import { loadWords } from '../src/lib/words';

// What happy-dom lacks, at the least the components need.
window.scrollTo = () => undefined;

await Promise.all([loadWords('en'), loadWords('es')]);

afterEach(cleanup);
