// Lets the tests of the student's screens run, as they are, against the program in a browser: a
// page without screens holds it, and answers each call of a student or of the device. The native
// program behind the screens answers for the desk alone.
import { readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Browser, BrowserContext, Page, Route } from '@playwright/test';
import type { Calls } from '../src/lib/backend/contract';
import type { Bridge } from '../e2e/bridge';
import { UI } from '../e2e/places';
import { callOn, drive } from './driver';
import { Site } from './site';

/** The calls of the desk. */
function ofDesk(): Set<string> {
  const contract = readFileSync(join(UI, 'src/lib/backend/contract.ts'), 'utf8');
  const [, table = ''] =
    /interface DeskCalls \{\n([^}]*(?:\{[^}]*\}[^}]*)*?)\n\}/.exec(contract) ?? [];
  return new Set([...table.matchAll(/^ {2}(\w+): \{/gm)].map(([, name = '']) => name));
}

export class InBrowser {
  readonly #desk = ofDesk();
  readonly #picks: string[][] = [];

  private constructor(
    private readonly site: Site,
    private readonly page: Page,
    private readonly context: BrowserContext,
    private readonly bridge: Bridge,
  ) {}

  /** Starts the program, and takes the calls of the bridge. */
  static async start(bridge: Bridge, browser: Browser, today?: string): Promise<InBrowser> {
    const site = await Site.start(today);
    const context = await browser.newContext();
    const page = await context.newPage();
    await drive(page, site.url);
    const program = new InBrowser(site, page, context, bridge);
    program.#takeOver();
    return program;
  }

  #takeOver(): void {
    const { bridge } = this;
    const native = { call: bridge.call.bind(bridge), pick: bridge.pick.bind(bridge) };
    bridge.call = async <N extends keyof Calls>(name: N, args: Calls[N]['args']) => {
      if (this.#desk.has(name)) {
        const paths = this.#picks.shift();
        if (paths) await native.pick(...paths);
        return native.call(name, args);
      }
      const [status, answer] = await this.call(name, args);
      if (status !== 200) throw new Error(`/call/${name}: ${status} ${JSON.stringify(answer)}`);
      return answer as Calls[N]['out'];
    };
    bridge.pick = async (...paths) => {
      this.#picks.push(paths);
      return Promise.resolve();
    };
    bridge.setToday = async (date) => {
      this.site.setToday(date);
      await drive(this.page, this.site.url);
    };
  }

  /** Makes a call. Returns the status and the body that the bridge would answer with. */
  async call(name: string, args: unknown): Promise<[number, unknown]> {
    let outcome = await callOn(this.page, name, args);
    if (outcome.pick) {
      const [path] = this.#picks.shift() ?? [];
      const file = path ? { name: basename(path), bytes: [...readFileSync(path)] } : null;
      outcome = await callOn(this.page, name, args, file);
    }
    for (const { name: file, bytes } of outcome.files) {
      writeFileSync(this.bridge.savedAt(file), Buffer.from(bytes));
    }
    return outcome.failed ? [422, outcome.failed] : [200, outcome.done];
  }

  /** Answers the calls of screens. */
  async answer(context: BrowserContext): Promise<void> {
    await context.route('**/call/*', async (route: Route) => {
      const name = new URL(route.request().url()).pathname.split('/').at(-1) ?? '';
      if (this.#desk.has(name)) return route.continue();
      const [status, answer] = await this.call(name, route.request().postDataJSON());
      return route.fulfill({ status, json: answer });
    });
  }

  async stop(): Promise<void> {
    await this.context.close();
    await this.site.stop();
  }
}
