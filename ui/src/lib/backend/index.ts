export { call, CallFailed, type CallName } from './call';
export { printPage } from './print';
export type * from './contract';
