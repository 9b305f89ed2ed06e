import type { Plugin } from 'vite';

/** Switches of Svelte's that stay off here, each in a file of its own. */
const SWITCHES = /\/svelte\/src\/internal\/(?:client\/dom\/hydration|flags\/index)\.js$/;
const COMPONENT = /\.svelte$/;

/** What a component does only for the sake of a page that a server wrote, or of slots. */
const SPARED: [RegExp, string][] = [
  // Steps along such a page, which do nothing on ours.
  [/^\s*\$\.(?:reset|next)\([^()]*\);$/gm, ''],
  [/\$\.(?:only_)?child\((\w+)(?:, true)?\)/g, '$.child($1)'],
  [/\$\.first_child\((\w+), true\)/g, '$.first_child($1)'],
  [/(\$\.sibling\((?:\w+|\$\.\w+\(\w+\)))(?:, 1)?(?:(, \d+))?(?:, true)?\)/g, '$1$2)'],
  // Whether a component is one of this version: here each is.
  [/\$\.push\(\$\$props, true\)/g, '$.push($$$$props)'],
  // Slots of earlier versions, which no component here has.
  [/,\s*\$\$slots: \{(?:\s*\w+: true,?)+\s*\}/g, ''],
  // Whatever is open at the end of its HTML a template closes by itself.
  [/(\$\.from_(?:html|svg|mathml)\(`[^`]*?)(?:<\/[\w-]+>)+`/g, '$1`'],
];

/**
 * Leaves out of the build what Svelte has for pages that a server wrote first, since the
 * window's page never comes from one, and for components of earlier versions. The
 * switches become constants, so that what stands behind them falls away.
 */
export function clientOnly(): Plugin {
  return {
    name: 'client-only',
    apply: 'build',
    transform(code, id) {
      if (SWITCHES.test(id)) {
        const fixed = code
          .replace(/^export let (\w+) = false;$/gm, 'export const $1 = false;')
          .replace(/^\t(?:hydrating|\w+_flag) = \w+;$/gm, '');
        if (fixed === code) this.error(`no switch in ${id}`);
        return { code: fixed, map: null };
      }
      if (!COMPONENT.test(id)) return undefined;
      const spared = SPARED.reduce((text, [what, instead]) => text.replace(what, instead), code);
      return { code: spared, map: null };
    },
  };
}
