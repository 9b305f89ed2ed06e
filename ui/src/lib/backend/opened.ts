import { isTauri } from '@tauri-apps/api/core';
import { listen } from '@tauri-apps/api/event';
import { onDropped } from './web';

/** Calls `then` whenever another program opens a file with this one. */
export async function onOpened(then: () => void): Promise<void> {
  if (__WEB__) onDropped(then);
  else if (isTauri()) await listen('opened', then);
}
