import { backAnyway, holdBack } from './router.svelte';

const state = $state({ asking: false });

/** Whether the question about unsaved work is shown. */
export const askingToLeave = (): boolean => state.asking;

/** Makes Back ask first while there is unsaved work. Call it when a component starts. */
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

/** Goes back and loses the work. */
export function leaveAnyway(): void {
  state.asking = false;
  backAnyway();
}
