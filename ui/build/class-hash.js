import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const UI = fileURLToPath(new URL('..', import.meta.url)).replaceAll('\\', '/');

/** All components, in the same order on every machine. */
const components = ['src', 'test'].flatMap((folder) =>
  readdirSync(UI + folder, { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith('.svelte'))
    .sort(),
);

/**
 * The class that scopes the styles of a component. Most elements and rules have it, so it
 * is the component's short number instead of a hash of its styles.
 *
 * @param {{ filename: string, css: string, hash: (input: string) => string }} component
 */
export function classHash({ filename, css, hash }) {
  const path = filename.replaceAll('\\', '/');
  const place = components.indexOf(path.startsWith(UI) ? path.slice(UI.length) : path);
  return place < 0 ? `svelte-${hash(css)}` : `_${place.toString(36)}`;
}
