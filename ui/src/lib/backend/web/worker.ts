/** The worker that holds the program, from the page's side. */
import type { CallError } from '../contract';

/** A file on its way between page and program. */
export interface WebFile {
  name: string;
  type: string;
  bytes: Uint8Array<ArrayBuffer>;
}

export interface Answer {
  answer: string;
  files: WebFile[];
}

/** The student's program, or the whole one, which prints. */
export type ProgramName = 'program' | 'whole';

export type Asked =
  | { do: 'open'; name: ProgramName; shares: boolean; student: ArrayBuffer | null }
  | {
      do: 'call';
      name: string;
      args: string;
      place: string;
      given?: { name: string; bytes: ArrayBuffer } | null;
      shared?: 'went' | 'cancelled' | 'cannot';
    }
  | { do: 'file'; name: string; bytes: ArrayBuffer };

/** Why the worker did not do what was asked. */
export class WorkerFailed extends Error {
  constructor(
    readonly why: CallError,
    /** Whether the program is broken, so that the worker must be started anew. */
    readonly crashed: boolean,
  ) {
    super(why.code);
  }
}

interface Waiting {
  done: (answer: unknown) => void;
  failed: (error: WorkerFailed) => void;
}

interface Reply {
  id: number;
  failed?: string;
  crashed?: string;
  missing?: string;
}

/** A running worker. */
export class ProgramWorker {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, Waiting>();
  #last = 0;

  constructor() {
    this.#worker = new Worker(new URL('worker.js', document.baseURI), { type: 'module' });
    this.#worker.onmessage = ({ data }: MessageEvent<Reply>) => this.#take(data);
    // The worker itself could not be loaded.
    this.#worker.onerror = (event) => this.end(event.message || 'the worker stopped');
  }

  ask(asked: Asked & { do: 'call' }): Promise<Answer>;
  ask(asked: Asked): Promise<unknown>;
  ask(asked: Asked): Promise<unknown> {
    this.#last += 1;
    const id = this.#last;
    return new Promise((done, failed) => {
      this.#waiting.set(id, { done, failed });
      this.#worker.postMessage({ id, ...asked });
    });
  }

  #take(reply: Reply): void {
    const waiting = this.#waiting.get(reply.id);
    this.#waiting.delete(reply.id);
    if (!waiting) return;
    if (reply.crashed !== undefined) {
      waiting.failed(fault(reply.crashed));
      this.end(reply.crashed);
    } else if (reply.missing !== undefined) {
      waiting.failed(new WorkerFailed({ code: 'not_loaded' }, true));
    } else if (reply.failed !== undefined) {
      waiting.failed(new WorkerFailed(JSON.parse(reply.failed) as CallError, false));
    } else {
      waiting.done(reply);
    }
  }

  /** Ends the worker. What is still asked fails. */
  end(detail: string): void {
    this.#worker.terminate();
    for (const { failed } of this.#waiting.values()) failed(fault(detail));
    this.#waiting.clear();
  }
}

function fault(detail: string): WorkerFailed {
  return new WorkerFailed({ code: 'internal', detail }, true);
}
