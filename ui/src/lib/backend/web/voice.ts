/** Reading aloud by the browser's own voices. A voice that a service far away speaks is not used. */

const VOICES_WAIT_MS = 1000;

/** The voices; some browsers load them after they are first asked for. */
async function voices(): Promise<SpeechSynthesisVoice[]> {
  const found = speechSynthesis.getVoices();
  if (found.length > 0) return found;
  await new Promise<void>((come) => {
    const timer = setTimeout(come, VOICES_WAIT_MS);
    speechSynthesis.addEventListener(
      'voiceschanged',
      () => {
        clearTimeout(timer);
        come();
      },
      { once: true },
    );
  });
  return speechSynthesis.getVoices();
}

/** A voice of this device for a language: the first of those that suit it. */
export function localVoice(
  all: Pick<SpeechSynthesisVoice, 'lang' | 'localService'>[],
  wanted: readonly string[],
) {
  const local = all.filter((voice) => voice.localService);
  for (const tag of wanted) {
    const fits = local.find(({ lang }) => {
      const found = lang.replace('_', '-').toLowerCase();
      return found === tag.toLowerCase() || found.startsWith(`${tag.toLowerCase()}-`);
    });
    if (fits) return fits;
  }
  return null;
}

/** Reads a text aloud by a voice for one of the wanted tags. Resolves when it is over or stopped; false without a voice. */
export async function speak(text: string, wanted: readonly string[]): Promise<boolean> {
  if (!('speechSynthesis' in window)) return false;
  stopSpeaking();
  const voice = localVoice(await voices(), wanted) as SpeechSynthesisVoice | null;
  if (!voice) return false;
  if (text.trim() === '') return true;
  const utterance = new SpeechSynthesisUtterance(text);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  await new Promise<void>((over) => {
    utterance.onend = () => over();
    utterance.onerror = () => over();
    speechSynthesis.speak(utterance);
  });
  return true;
}

export function stopSpeaking(): void {
  if ('speechSynthesis' in window) speechSynthesis.cancel();
}
