import { lastCarried as carriedInBrowser } from './web/kept';
import { prepareBrowser, type Words } from './web';

/** Prepares what only a browser needs: words for downloads, voices, work without a network. */
export function prepare(words: Words): void {
  if (__WEB__) prepareBrowser(words);
}

/** The date of a student's last carry file, where a browser keeps the data. */
export function lastCarried(student: string): string | null {
  return __WEB__ ? carriedInBrowser(student) : null;
}
