import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

const SHARED = fileURLToPath(new URL('../../shared/', import.meta.url));

/** The program sends these words itself. */
const NOT_FOR_SCREENS = /^(reports|concepts|items-.*|figures|misconceptions)\.ftl$/;

/** An additional language for tests; its line is in its `language.json`. */
const EXTRA = process.env.EXTRA_LANGUAGE;

interface Line {
  tag: string;
}

function table(): Line[] {
  const lines = JSON.parse(readFileSync(`${SHARED}languages.json`, 'utf8')) as Line[];
  if (!EXTRA) return lines;
  return [...lines, JSON.parse(readFileSync(`${EXTRA}/language.json`, 'utf8')) as Line];
}

/** The messages of the screens in one language, by area. */
function wordsOf(tag: string): { folder: string; words: Record<string, string> } {
  const folder = table().at(-1)?.tag === tag && EXTRA ? EXTRA : `${SHARED}messages/${tag}`;
  const names = readdirSync(folder).filter(
    (name) => name.endsWith('.ftl') && !NOT_FOR_SCREENS.test(name),
  );
  return {
    folder,
    words: Object.fromEntries(
      names.map((name) => [name.replace(/\.ftl$/, ''), readFileSync(`${folder}/${name}`, 'utf8')]),
    ),
  };
}

/**
 * Provides the table of languages as `virtual:languages`, and the messages of each
 * language as `virtual:words/TAG`.
 */
export function languages(): Plugin {
  const words = 'virtual:words/';
  return {
    name: 'languages',
    resolveId: (id) => (id === 'virtual:languages' || id.startsWith(words) ? `\0${id}` : null),
    load(id) {
      if (id === '\0virtual:languages') {
        this.addWatchFile(`${SHARED}languages.json`);
        const lines = table();
        const loaders = lines.map(({ tag }) => `'${tag}': () => import('${words}${tag}')`);
        return `export const LANGUAGES = ${JSON.stringify(lines)};\nexport const WORDS = { ${loaders.join(', ')} };`;
      }
      if (!id.startsWith(`\0${words}`)) return null;
      const found = wordsOf(id.slice(words.length + 1));
      for (const area of Object.keys(found.words)) {
        this.addWatchFile(`${found.folder}/${area}.ftl`);
      }
      return `export default ${JSON.stringify(found.words)};`;
    },
  };
}
