import {
  call,
  onDeskLocked,
  type DeskLock,
  type DeviceSettings,
  type Language,
  type Profile,
  type Start,
} from './backend';
import { inOrder } from './requests';
import { setLessMotion, setTextPercent, setTheme } from './theme/theme';
import { language, setDecimalSign } from './words';

/** The students, classes and settings of the device, and whether the sample is open. */
const state = $state<{ start: Start | null }>({ start: null });

export function start(): Start | null {
  return state.start;
}

/** The student whose screens are shown, if any. */
let shownFor: Profile | null = null;

/** Takes over the state that a call returned, and shows its theme. */
export function take(next: Start): Start {
  // A locked desk names no classes. The screens behind the lock keep theirs, and their place.
  const before = state.start;
  const keep = next.desk_lock.locked && next.world === 'own' && before?.world === 'own';
  state.start = keep ? { ...next, classes: before.classes } : next;
  show();
  if (!deskLocked()) {
    const all = waiting;
    waiting = [];
    for (const go of all) go();
  }
  return next;
}

/** Whether the person's own desk is open on the screens and locked. */
export function deskLocked(): boolean {
  return state.start?.world === 'own' && state.start.desk_lock.locked;
}

/** Called when the desk is unlocked. */
let waiting: (() => void)[] = [];

/** Waits while the desk is locked. */
export function unlocked(): Promise<void> {
  if (!deskLocked()) return Promise.resolve();
  return new Promise((done) => waiting.push(done));
}

/** Takes over the state of the desk's lock. */
export function takeLock(desk_lock: DeskLock): void {
  const { start } = state;
  // A removal can name a student.
  if (start) state.start = { ...start, desk_lock, removed: desk_lock.locked ? [] : start.removed };
}

onDeskLocked(() => {
  const lock = state.start?.desk_lock;
  if (lock && !lock.locked) takeLock({ ...lock, has_lock: true, locked: true });
});

/** Loads the state again after a change. */
export async function refresh(): Promise<Start> {
  return take(await call('start', {}));
}

/** A student of this device; null once removed. */
export function studentOf(id: string): Profile | null {
  return state.start?.students.find((one) => one.id === id) ?? null;
}

/** Shows a student's settings at once, without loading all students again. */
export function changeStudent(changed: Profile): void {
  const { start } = state;
  if (!start) return;
  const students = start.students.map((one) => (one.id === changed.id ? changed : one));
  take({ ...start, students });
}

/** The student's language, or the device's without a student. */
export function languageFor(student: Profile | null): Language {
  return student?.language ?? state.start?.settings.language ?? language();
}

/** Shows the screens in the student's appearance, or in the device's without a student. */
export function showFor(student: Profile | null): void {
  shownFor = student;
  show();
}

function show(): void {
  const appearance = shownFor?.appearance;
  const own = appearance && appearance.theme !== 'device' ? appearance.theme : null;
  setTheme(own ?? state.start?.settings.theme ?? 'system');
  setTextPercent(appearance?.text_percent ?? 100);
  setLessMotion(appearance?.less_motion ?? false);
  setDecimalSign(appearance?.decimal_sign ?? 'language');
}

const oneByOne = inOrder();

/** Changes settings of the device. Changes in quick succession do not lose each other. */
export function changeSettings(change: Partial<DeviceSettings>): Promise<void> {
  return oneByOne(async () => {
    const settings = state.start?.settings;
    if (settings) take(await call('save_device_settings', { ...settings, ...change }));
  });
}

export function inSample(): boolean {
  return state.start?.world === 'sample';
}
