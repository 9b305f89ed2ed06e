import { invoke, isTauri } from '@tauri-apps/api/core';

/** Hides the window from screenshots while a PIN is typed, where the system can. */
export function protectScreen(on: boolean): void {
  if (isTauri()) void invoke('protect_screen', { on });
}
