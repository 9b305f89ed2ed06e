import { backAnyway, holdBack } from './router.svelte';

const state = $state({ asking: false });

/** Whether the user is asked if unsaved work may be lost. */
export const askingToLeave = (): boolean => state.asking;

/** Makes Back ask first while there is unsaved work. Call it as a component starts. */
export function guardUnsaved(unsaved: () => boolean): void {
  $effect(() =>
    holdBack(() => {
      state.asking = unsaved();
      return state.asking;
    }),
  );
}

export function stay(): void {
  state.asking = false;
}

/** Goes back although work is lost. */
export function leaveAnyway(): void {
  state.asking = false;
  backAnyway();
}
