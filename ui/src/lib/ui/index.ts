export { default as Button } from './Button.svelte';
export { default as ConfidencePicker } from './ConfidencePicker.svelte';
export { default as Dialog } from './Dialog.svelte';
export { default as EmptyState } from './EmptyState.svelte';
export { default as ErrorBox } from './ErrorBox.svelte';
export { default as Icon } from './Icon.svelte';
export { default as LeaveDialog } from './LeaveDialog.svelte';
export { default as Load } from './Load.svelte';
export { default as OnlyIn } from './OnlyIn.svelte';
export { default as Options } from './Options.svelte';
export { default as Progress } from './Progress.svelte';
export { default as Stones } from './Stones.svelte';
export { default as Tabs } from './Tabs.svelte';
export { default as Tick } from './Tick.svelte';
export { default as Toasts } from './Toasts.svelte';
export { CONFIDENCES, confidenceWords } from './confidence';
export {
  asError,
  errorWords,
  faultWords,
  folderTroubleWords,
  refusalWords,
  seatCodeWords,
} from './errors';
export type { Trouble } from './errors';
export { drawn } from './drawn';
export { cellAfter, placeAfter } from './roving';
export { dismiss, toast, toasts } from './toasts.svelte';
export type { IconName } from './icons';
