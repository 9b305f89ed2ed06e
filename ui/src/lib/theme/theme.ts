import type { AppearanceTheme, Theme } from '../backend/contract';
import { valuesOf } from '../exhaustive';
import { kebab, say } from '../words';

type Shown = Exclude<Theme, 'system'>;

/** The themes with colours of their own. */
const SHOWN = valuesOf<Shown>({ light: true, dark: true, contrast: true, contrast_dark: true });

/** The themes that a device can have, and a student. */
export const THEMES: Theme[] = ['system', ...SHOWN];
export const APPEARANCE_THEMES: AppearanceTheme[] = ['device', ...SHOWN];

/** The name of a theme. */
export function themeWords(theme: Theme | AppearanceTheme): string {
  return say(`theme-${kebab(theme)}`);
}

const dark = window.matchMedia('(prefers-color-scheme: dark)');
const contrast = window.matchMedia('(prefers-contrast: more)');
let asked: Theme = 'system';

/** The theme that the system asks for. */
function ofSystem(): Shown {
  if (contrast.matches) return dark.matches ? 'contrast_dark' : 'contrast';
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

/** Sets the size of all text, in percent. */
export function setTextPercent(percent: number): void {
  document.documentElement.dataset.text = String(percent);
}

/** Stops all motion if `less`; otherwise the system's setting counts. */
export function setLessMotion(less: boolean): void {
  if (less) document.documentElement.dataset.motion = 'less';
  else delete document.documentElement.dataset.motion;
}
