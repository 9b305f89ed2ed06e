// A test bridge with its own port and data folder.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Calls, DeviceSettings } from '../src/lib/backend/contract';
import { PSEUDO_LANGUAGE, TOP } from './places';

interface Saved {
  name: string;
  bytes: number;
}

interface Said {
  said: { language: string; text: string }[];
  stops: number;
}

export class Bridge {
  private constructor(
    readonly url: string,
    readonly data: string,
    private readonly process: ChildProcess,
  ) {}

  /** Starts the program on a given day, with an empty data folder or a copy of one. */
  static async start(today: string | undefined, copyOf?: string, pseudo = false): Promise<Bridge> {
    const data = mkdtempSync(join(tmpdir(), 'surefoot-e2e-'));
    if (copyOf) cpSync(copyOf, data, { recursive: true });
    const program = process.env.BRIDGE ?? join(TOP, 'target/debug/surefoot-bridge');
    const child = spawn(
      program,
      [
        ...['--dist', join(TOP, pseudo ? 'ui/dist-pseudo' : 'ui/dist-bridge'), '--data', data],
        ...(pseudo ? ['--extra-language', PSEUDO_LANGUAGE] : []),
        ...['--config', join(TOP, 'src-tauri/tauri.conf.json')],
        ...(today ? ['--today', today] : []),
      ],
      { stdio: ['ignore', 'pipe', 'inherit'] },
    );
    const lines = createInterface({ input: child.stdout });
    const ended = once(child, 'exit').then(() => {
      throw new Error(`${program} ended before it served`);
    });
    const [url] = (await Promise.race([once(lines, 'line'), ended])) as [string];
    ended.catch(() => undefined);
    return new Bridge(url, data, child);
  }

  async end(): Promise<void> {
    if (this.process.exitCode !== null || this.process.signalCode !== null) return;
    const exit = once(this.process, 'exit');
    this.process.kill();
    await exit;
  }

  /** Ends the program and removes its data. */
  async stop(): Promise<void> {
    await this.end();
    rmSync(this.data, { recursive: true, force: true });
  }

  /** Makes a call like the screens. Fails with the program's error. */
  async call<N extends keyof Calls>(name: N, args: Calls[N]['args']): Promise<Calls[N]['out']> {
    return (await this.#ask(`/call/${name}`, args)) as Calls[N]['out'];
  }

  /** Sets what the next dialog returns; without files it is cancelled. */
  async pick(...paths: string[]): Promise<void> {
    await this.#ask('/test/pick', paths);
  }

  /** Makes the next save be cancelled, or fail. */
  async save(decision: 'decline' | 'unwritable'): Promise<void> {
    await this.#ask('/test/save', decision);
  }

  async setToday(date: string): Promise<void> {
    await this.#ask('/test/today', date);
  }

  /** Lets minutes pass at once, for the program alone. */
  async pass(minutes: number): Promise<void> {
    await this.#ask('/test/pass', minutes);
  }

  async setVoice(manner: 'quick' | 'long' | 'missing'): Promise<void> {
    await this.#ask('/test/voice', manner);
  }

  /** Lets class folders refuse from now on. */
  async setFolder(refuses: 'not_allowed' | 'changes_names' | null): Promise<void> {
    await this.#ask('/test/folder', refuses);
  }

  async setShares(shares: boolean): Promise<void> {
    await this.#ask('/test/shares', shares);
  }

  saved = () => this.#ask('/test/saved') as Promise<Saved[]>;
  shared = () => this.#ask('/test/shared') as Promise<Saved[]>;
  said = () => this.#ask('/test/said') as Promise<Said>;

  /** The path of a saved file. */
  savedAt = (name: string) => join(this.data, 'saves', name);

  async changeDevice(change: Partial<DeviceSettings>): Promise<void> {
    const { settings } = await this.call('start', {});
    await this.call('save_device_settings', { ...settings, ...change });
  }

  async #ask(path: string, body?: unknown): Promise<unknown> {
    const asked = body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) };
    const answer = await fetch(new URL(path, this.url), asked);
    const text = await answer.text();
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${text}`);
    return text === '' ? null : JSON.parse(text);
  }
}
