import { mount } from 'svelte';
import '../../src/lib/theme/base.css';
import { loadWords } from '../../src/lib/words';
import Gallery from './Gallery.svelte';

const target = document.getElementById('app');
await loadWords('en');
if (target) mount(Gallery, { target });
