import type { Theme } from '../backend/contract';

type Shown = 'light' | 'dark' | 'contrast';

const dark = window.matchMedia('(prefers-color-scheme: dark)');
const contrast = window.matchMedia('(prefers-contrast: more)');
let asked: Theme = 'system';

/** What the system asks for. */
function ofSystem(): Shown {
  if (contrast.matches) return 'contrast';
  return dark.matches ? 'dark' : 'light';
}

function apply(): void {
  document.documentElement.dataset.theme = asked === 'system' ? ofSystem() : asked;
}

/** Shows a theme; `system` follows the system as it changes. */
export function setTheme(theme: Theme): void {
  asked = theme;
  apply();
}

for (const query of [dark, contrast]) query.addEventListener('change', apply);
