// @ts-check
// Keeps the program for when there is no network. Every file of one version is kept together:
// a page never sees the files of two. A new version waits until all its pages are closed.
// The version before stays kept, so that it can be used again.
//
// `pages.mjs` replaces the two values.

const VERSION = '%VERSION%';
/** @type {string[]} */
const FILES = ['%FILES%'];
const POLICY = '%POLICY%';

const KEPT = `surefoot-${VERSION}`;
/** Which version is used instead of this one, if any. `?version=before` on the page chooses the one
 * before, `?version=newest` this one again; a newer version ends the choice. */
const CHOICE = 'surefoot-choice';

/** @type {any} */
const worker = self;
const at = (/** @type {string} */ file) => new URL(file, worker.registration.scope).href;

/** Gets a file from the place of the page, past every cache on the way. */
async function fetched(/** @type {string} */ file) {
  const answer = await fetch(at(file), { cache: 'reload', credentials: 'same-origin' });
  if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
  // The page's policy for all files, also where a school cannot set headers.
  const headers = new Headers(answer.headers);
  headers.set('Content-Security-Policy', POLICY);
  // The content is unpacked here.
  headers.delete('Content-Encoding');
  headers.delete('Content-Length');
  if (file.endsWith('.wasm')) headers.set('Content-Type', 'application/wasm');
  headers.set('X-Content-Type-Options', 'nosniff');
  headers.set('Referrer-Policy', 'no-referrer');
  return new Response(await answer.blob(), { status: 200, headers });
}

async function keep() {
  const cache = await caches.open(KEPT);
  try {
    for (const file of FILES) await cache.put(at(file), await fetched(file));
  } catch (error) {
    await caches.delete(KEPT);
    throw error;
  }
}

/** The other versions that are kept, the newest last. */
async function others() {
  const versions = (await caches.keys()).filter((name) => /^surefoot-[0-9a-f]{16}$/.test(name));
  return versions.filter((name) => name !== KEPT);
}

/** Forgets all versions but this one and the one before. */
async function forget() {
  await caches.delete(CHOICE);
  for (const name of (await others()).slice(0, -1)) await caches.delete(name);
}

async function choose(/** @type {string | null} */ which) {
  const before = (await others()).at(-1);
  if (which === 'newest') await caches.delete(CHOICE);
  if (which === 'before' && before) {
    await (await caches.open(CHOICE)).put(at('version'), new Response(before));
  }
}

worker.addEventListener('install', (/** @type {any} */ event) => event.waitUntil(keep()));

worker.addEventListener('activate', (/** @type {any} */ event) =>
  event.waitUntil(forget().then(() => worker.clients.claim())),
);

worker.addEventListener('fetch', (/** @type {any} */ event) => {
  const { request } = event;
  const asked = new URL(request.url);
  if (request.method !== 'GET' || !asked.href.startsWith(worker.registration.scope)) return;
  const which = request.mode === 'navigate' ? asked.searchParams.get('version') : null;
  asked.search = '';
  asked.hash = '';
  const wanted = asked.href === worker.registration.scope ? at('index.html') : asked.href;
  event.respondWith(choose(which).then(() => answer(wanted, request)));
});

async function answer(/** @type {string} */ wanted, /** @type {Request} */ request) {
  const choice = await (await caches.open(CHOICE)).match(at('version'));
  const kept = await caches.open(choice ? await choice.text() : KEPT);
  const found = await kept.match(wanted);
  if (found) return found;
  // The program that prints is kept once it was asked for. Its name says its content.
  const later = wanted.slice(worker.registration.scope.length);
  if (/^whole-[0-9a-f]{16}\//.test(later)) {
    const loaded = await fetched(later);
    await kept.put(wanted, loaded.clone());
    return loaded;
  }
  // Class packs beside the page are not among the files.
  return fetch(request);
}
