export { call, CallFailed, onDeskLocked, type CallName } from './call';
export { lastCarried, prepare } from './browser';
export { onOpened } from './opened';
export { printPage } from './print';
export { protectScreen } from './screen';
export type * from './contract';
