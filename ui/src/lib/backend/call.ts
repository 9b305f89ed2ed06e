import { invoke, isTauri } from '@tauri-apps/api/core';
import type { CallError, Calls } from './contract';
import { callInBrowser, WebCallFailed } from './web';

export type CallName = keyof Calls;

/** A call that failed. It has changed nothing that was stored. */
export class CallFailed extends Error {
  /** The reason as a code with arguments; its words are `error-<code>`. */
  readonly why: CallError;

  constructor(why: CallError) {
    super(why.code);
    this.name = 'CallFailed';
    this.why = why;
  }
}

let lockedNow = (): void => undefined;

/** Sets what happens when a call fails because the desk is locked. */
export function onDeskLocked(happens: () => void): void {
  lockedNow = happens;
}

/** Makes the error of a call. */
function failed(error: unknown): CallFailed {
  const why = asCallError(error);
  if (why.code === 'desk_locked') lockedNow();
  return new CallFailed(why);
}

/** The only way to the program: the window's command, a worker in a browser, or HTTP in tests. */
export async function call<N extends CallName>(
  name: N,
  args: Calls[N]['args'],
): Promise<Calls[N]['out']> {
  if (__WEB__) {
    try {
      return (await callInBrowser(name, args)) as Calls[N]['out'];
    } catch (error) {
      throw failed(error instanceof WebCallFailed ? error.why : error);
    }
  }
  if (isTauri()) {
    try {
      return await invoke<Calls[N]['out']>('call', { name, args });
    } catch (error) {
      throw failed(error);
    }
  }
  if (!__TEST_BRIDGE__) throw new CallFailed({ code: 'files', detail: 'not inside the program' });
  const answer = await fetch(`/call/${name}`, { method: 'POST', body: JSON.stringify(args) });
  const body: unknown = await answer.json().catch(() => null);
  if (!answer.ok) throw failed(body);
  return body as Calls[N]['out'];
}

/** Makes an error with words of anything that came back. */
function asCallError(error: unknown): CallError {
  if (typeof error === 'object' && error !== null && 'code' in error) return error as CallError;
  return { code: 'storage', detail: String(error) };
}
