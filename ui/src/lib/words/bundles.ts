import { FluentBundle, FluentResource } from '@fluent/bundle';
import type { Language } from '../backend/contract';

/** `es-US` writes 1,234.5 as the classes here do; plain `es` would write 1234,5. */
export const LOCALES: Record<Language, string> = { en: 'en-US', es: 'es-US' };

const files = import.meta.glob<string>('../../../../shared/messages/*/*.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** Makes the messages of one language; a slip in a file is an error at once. */
function bundle(language: Language): FluentBundle {
  const made = new FluentBundle(LOCALES[language], { useIsolating: false });
  for (const [path, text] of Object.entries(files)) {
    if (!path.includes(`/messages/${language}/`)) continue;
    const errors = made.addResource(new FluentResource(text));
    if (errors.length > 0) throw new Error(`${path}: ${errors.map(String).join('; ')}`);
  }
  return made;
}

export const bundles: Record<Language, FluentBundle> = { en: bundle('en'), es: bundle('es') };
