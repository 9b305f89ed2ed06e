import { mount } from 'svelte';
import '../../src/lib/theme/base.css';
import Gallery from './Gallery.svelte';

const target = document.getElementById('app');
if (target) mount(Gallery, { target });
