import { expect, test } from 'vitest';
import { localVoice } from './voice';

const voice = (lang: string, localService = true) => ({ lang, localService });

test('only a voice of the device reads', () => {
  expect(localVoice([voice('en-US', false)], ['en-US', 'en'])).toBeNull();
  expect(localVoice([voice('en-US', false), voice('en-GB')], ['en-US', 'en'])).toEqual(
    voice('en-GB'),
  );
});

test('the tags of the language come in their order, written either way', () => {
  const all = [voice('es-ES'), voice('es_MX'), voice('fr-FR')];
  expect(localVoice(all, ['es-US', 'es-MX', 'es'])).toEqual(voice('es_MX'));
  expect(localVoice([voice('fr-FR')], ['es-US', 'es'])).toBeNull();
  expect(localVoice([voice('est-EE')], ['es'])).toBeNull();
});
