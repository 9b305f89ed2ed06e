import { call, type DeviceSettings, type Language, type Profile, type Start } from './backend';
import { inOrder } from './in-order';
import { setTheme } from './theme/theme';
import { language } from './words';

/** What the program opened with: students, classes, settings, and whose data it is. */
const state = $state<{ start: Start | null }>({ start: null });

export function start(): Start | null {
  return state.start;
}

/** Takes over what a call gave back, with its theme. */
export function take(next: Start): Start {
  state.start = next;
  setTheme(next.settings.theme);
  return next;
}

/** Reads it anew, for after something changed. */
export async function refresh(): Promise<Start> {
  return take(await call('start', {}));
}

/** The language of a student's screens; elsewhere that of the device. */
export function languageFor(student: Profile | null): Language {
  return student?.language ?? state.start?.settings.language ?? language();
}

const oneByOne = inOrder();

/** Changes what is set for the device; changes in quick succession all count. */
export function changeSettings(change: Partial<DeviceSettings>): Promise<void> {
  return oneByOne(async () => {
    const settings = state.start?.settings;
    if (settings) take(await call('save_device_settings', { ...settings, ...change }));
  });
}

export function inSample(): boolean {
  return state.start?.world === 'sample';
}
