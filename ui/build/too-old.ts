import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

interface Line {
  tag: string;
  direction: string;
  too_old: string;
}

function escaped(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}

/** What `public/too-old.js` shows: a paragraph for each line of `languages.json`. */
export function tooOldWords(table: string): string {
  return (JSON.parse(table) as Line[])
    .map(({ tag, direction, too_old: words }) => {
      return `<p lang="${tag}" dir="${direction}">${escaped(words)}</p>`;
    })
    .join('');
}

/** Writes these words into index.html, because an old engine cannot load the messages. */
export function tooOld(): Plugin {
  const table = new URL('../../shared/languages.json', import.meta.url);
  return {
    name: 'too-old',
    transformIndexHtml: (html) =>
      html.replace('<!-- too old -->', tooOldWords(readFileSync(table, 'utf8'))),
  };
}
