// Serves pages for tests from memory.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { test as base, expect } from '@playwright/test';
import { build } from 'vite';
import { watch } from './fixtures';
import { UI } from './places';

export { expect };

const TYPES: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
};

/** Builds and serves the page of a folder in `test`. Returns its address. */
async function serve(folder: string): Promise<{ url: string; stop: () => void }> {
  const built = await build({
    configFile: join(UI, 'test', folder, 'vite.config.ts'),
    logLevel: 'error',
    build: { write: false },
  });
  if (!('output' in built)) throw new Error('one build was wanted');
  const files = new Map(
    built.output.map((file) => [
      `/${file.fileName}`,
      file.type === 'chunk' ? file.code : file.source,
    ]),
  );
  const server = createServer((request, response) => {
    const path = request.url === '/' ? '/index.html' : (request.url ?? '');
    const file = files.get(path);
    response.statusCode = file === undefined ? 404 : 200;
    response.setHeader('Content-Type', TYPES[extname(path)] ?? 'application/octet-stream');
    response.end(file);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}/`, stop: () => server.close() };
}

export function testOf(folder: string) {
  return base.extend<object, { url: string }>({
    url: [
      async ({}, use) => {
        const { url, stop } = await serve(folder);
        await use(url);
        stop();
      },
      { scope: 'worker', timeout: 300_000 },
    ],
    page: async ({ page, url }, use) => {
      const trouble = await watch(page.context(), url);
      await page.goto(url);
      await use(page);
      expect(trouble, 'errors and requests to elsewhere').toEqual([]);
    },
  });
}
