import { mount } from 'svelte';
import './lib/theme/base.css';
import { loadWords, setLanguage } from './lib/words';
import App from './App.svelte';

const target = document.getElementById('app');
// The device's language until the settings are read.
const first = navigator.language.startsWith('es') ? 'es' : 'en';
setLanguage(first);
await loadWords(first);
if (target) mount(App, { target });
