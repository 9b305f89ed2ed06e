import { changeSettings, start } from '../session.svelte';

/** The screens with a guide. Its messages are `guide-<at>-title`, `guide-<at>-1` and so on. */
export const GUIDES = [
  'now',
  'board',
  'compare',
  'concept',
  'student',
  'talk',
  'groups',
  'taught',
  'assign',
  'enter',
  'files',
  'class-seats',
  'class-calendar',
  'class-rotation',
  'class-exercises',
  'class-concepts',
  'class-pack',
  'print',
  'safe',
  'new-class',
  'my-today',
  'my-practice',
  'my-path',
  'my-handin',
  'my-settings',
] as const;
export type GuideId = (typeof GUIDES)[number];

/**
 * These guides never open by themselves: the check-in takes thirty seconds, and its
 * concepts fit on one screen.
 */
const QUIET: readonly string[] = ['my-today'];

/** An entry in the list of read guides: no guide opens by itself. */
const ALL = 'all';

/** The guide that a key or button opened; it stays until it is closed. */
const asked = $state<{ at: string | null; focus: boolean }>({ at: null, focus: false });

const read = (): string[] => start()?.settings.guides_read ?? [ALL];

export const isGuide = (at: string): at is GuideId => (GUIDES as readonly string[]).includes(at);

/** Whether the guide of a screen is open: by request, or because it was never read. */
export function guideOpen(at: string): boolean {
  if (!isGuide(at)) return false;
  if (asked.at === at) return true;
  return !(QUIET.includes(at) || read().includes(at) || read().includes(ALL));
}

/** Whether the focus should go to the guide. Returns true only once. */
export function guideWantsFocus(at: string): boolean {
  const wants = asked.focus && asked.at === at;
  asked.focus = false;
  return wants;
}

export async function turnGuide(at: string): Promise<void> {
  if (guideOpen(at)) await closeGuide(at);
  else {
    asked.at = at;
    asked.focus = true;
  }
}

/** Closes a guide, which no longer opens by itself. */
export async function closeGuide(at: string): Promise<void> {
  asked.at = null;
  const known = read();
  if (QUIET.includes(at) || known.includes(at) || known.includes(ALL)) return;
  await changeSettings({ guides_read: [...known, at].sort() });
}

/** Closes all guides, which no longer open by themselves. */
export async function hideGuides(): Promise<void> {
  asked.at = null;
  await changeSettings({ guides_read: [ALL] });
}

/** Lets all guides open by themselves again. */
export const showGuides = (): Promise<void> => changeSettings({ guides_read: [] });
