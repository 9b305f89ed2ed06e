import { mount } from 'svelte';
import './lib/theme/base.css';
import { keepFocus } from './lib/keep-focus';
import { call } from './lib/backend';
import { exercisesFrom, loadWords, setLanguage } from './lib/words';
import App from './App.svelte';

exercisesFrom((language) => call('exercise_words', { language }));

const target = document.getElementById('app');
// The device's language until the settings are read.
const first = navigator.language.startsWith('es') ? 'es' : 'en';
const other = first === 'es' ? 'en' : 'es';

/** The device's language, or the other one rather than none. */
async function firstWords(): Promise<boolean> {
  for (const language of [first, other] as const) {
    setLanguage(language);
    const came = await loadWords(language).then(
      () => true,
      () => false,
    );
    if (came) return true;
  }
  return false;
}

async function begin(place: HTMLElement): Promise<void> {
  if (await firstWords()) {
    mount(App, { target: place });
    keepFocus(place);
    return;
  }
  // The only words outside the message files: none of those could be opened.
  place.append(
    'Surefoot could not open its words. Nothing that you did before is lost. Close it and open it again. ',
    '· Surefoot no pudo abrir sus palabras. No se perdió nada de lo que hiciste antes. Ciérralo y ábrelo otra vez.',
  );
}

// Not awaited here: the desk imports this file, and waits for no more than its own start.
if (target) void begin(target);
