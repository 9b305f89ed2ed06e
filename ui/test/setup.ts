import { cleanup } from '@testing-library/svelte';
import { afterEach } from 'vitest';

// What happy-dom lacks, at the least the components need.
window.scrollTo = () => undefined;

afterEach(cleanup);
