// A school's web space: serves the folder under a path, on a name that a browser trusts.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { TOP } from '../e2e/places';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

/** The folder that `tests/steps/web.sh` makes. */
export const PAGES = process.env.WEB_PAGES ?? join(TOP, 'target/web-pages');

/** Another folder than the site's own, as in a school's web space. */
const UNDER = '/school/surefoot/';

export class Site {
  /** Files beside those of the folder, or in their place. */
  readonly extra = new Map<string, string | Buffer>();
  /** The paths that were asked for. */
  readonly asked: string[] = [];

  private constructor(
    readonly url: string,
    private readonly server: Server,
  ) {}

  /** Serves the folder; the program's worker believes that it is `today`. */
  static async start(today?: string): Promise<Site> {
    const server = createServer();
    await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    const { port } = server.address() as AddressInfo;
    const site = new Site(`http://localhost:${port}${UNDER}`, server);
    site.extra.set(
      'blank.html',
      '<!doctype html><link rel="icon" href="data:," /><title>blank</title>',
    );
    if (today) site.setToday(today);
    server.on('request', ({ url = '/' }, response) => {
      const path = decodeURIComponent(url.split('?')[0] ?? '/');
      site.asked.push(path);
      const name = path.startsWith(UNDER)
        ? normalize(path.slice(UNDER.length) || 'index.html')
        : '';
      const body = name === '' || name.startsWith('..') ? null : site.file(name);
      response.statusCode = body === null ? 404 : 200;
      response.setHeader('Content-Type', TYPES[extname(name)] ?? 'application/octet-stream');
      response.setHeader('Cache-Control', 'no-cache');
      response.end(body ?? '');
    });
    return site;
  }

  /** Sets the date of workers that start from now on. */
  setToday(today: string): void {
    const noon = Date.parse(`${today}T12:00:00`);
    const clock = `{
      const Real = Date;
      const ahead = ${noon} - Real.now();
      self.Date = class extends Real {
        constructor(...at) { at.length > 0 ? super(...at) : super(Real.now() + ahead); }
        static now() { return Real.now() + ahead; }
      };
    }\n`;
    this.extra.set('worker.js', clock + readFileSync(join(PAGES, 'worker.js'), 'utf8'));
  }

  file(name: string): string | Buffer | null {
    const own = this.extra.get(name);
    if (own !== undefined) return own;
    try {
      const file = readFileSync(join(PAGES, name));
      return name === 'offline.js' ? this.#withDigests(String(file)) : file;
    } catch {
      return null;
    }
  }

  /** The service worker of a version that has the files in `extra`. */
  #withDigests(offline: string): string {
    for (const [name, content] of this.extra) {
      const digest = createHash('sha256').update(content).digest('base64');
      const before = offline.split(`"${name}":"sha256-`);
      if (before.length !== 2) continue;
      const [start = '', rest = ''] = before;
      offline = `${start}"${name}":"sha256-${digest}${rest.slice(rest.indexOf('"'))}`;
    }
    return offline;
  }

  /** Goes off the network. */
  async stop(): Promise<void> {
    this.server.closeAllConnections();
    await new Promise((over) => this.server.close(over));
  }
}
