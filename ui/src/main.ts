import { mount } from 'svelte';
import './lib/theme/base.css';
import { keepFocus } from './lib/keep-focus';
import { call, prepare } from './lib/backend';
import { exercisesFrom, LANGUAGES, lineOf, loadWords, lookup, say, setLanguage } from './lib/words';
import App from './App.svelte';

exercisesFrom((language) => call('exercise_words', { language }));

prepare({
  downloads: () => say('web-downloads'),
  voices: (language) => lineOf(language).voices,
});

const target = document.getElementById('app');
// The device's language, until the settings are loaded.
const first = lookup(navigator.language) ?? LANGUAGES[0].tag;

/** The device's language, or the first that loads. */
async function firstWords(): Promise<boolean> {
  for (const language of new Set([first, ...LANGUAGES.map(({ tag }) => tag)])) {
    setLanguage(language);
    const came = await loadWords(language).then(
      () => true,
      () => false,
    );
    if (came) return true;
  }
  return false;
}

/** In the frame of another page, a tap could be led to something else than is seen. */
const framed = __WEB__ && window.top !== window.self;

async function begin(place: HTMLElement): Promise<void> {
  if (await firstWords()) {
    if (framed) {
      place.append(`${say('web-framed')} ${say('web-framed-do')}`);
      return;
    }
    mount(App, { target: place });
    keepFocus(place);
    return;
  }
  // These words are not in the message files, because none could be loaded.
  place.append(LANGUAGES.map(({ no_words }) => no_words).join(' · '));
}

// Not awaited: the desk imports this file and must not wait for it.
if (target) void begin(target);
