// @ts-check
// Keeps the program for when there is no network. Every file of one version is kept together:
// a page never sees the files of two. A new version waits until all its pages are closed.
// The version before stays kept, so that it can be used again.
//
// `pages.mjs` replaces the values.

const VERSION = '%VERSION%';
/** The files of this version with their digests, as the attribute `integrity` has them.
 * @type {Record<string, string>} */
const FILES = { '%FILES%': '' };
/** Files that are kept once they were asked for: the program that prints.
 * @type {Record<string, string>} */
const LATER = { '%LATER%': '' };
const POLICY = '%POLICY%';
/** The words of the page that asks, for each language.
 * @type {Record<string, Record<string, string>>} */
const WORDS = { '%WORDS%': {} };

/** @type {any} */
const worker = self;
/** The folder of the pages. A name (origin) may have several, and they share its caches. */
const SCOPE = worker.registration.scope;
const at = (/** @type {string} */ file) => new URL(file, SCOPE).href;

const OURS = `surefoot ${SCOPE} `;
const KEPT = OURS + VERSION;

/** Names of versions: `now` is used, `before` was used before it, and `choice` is used instead.
 * `token` is what the page that asks knows. */
const notes = () => caches.open(`${OURS}notes`);

async function noted(/** @type {string} */ what) {
  return (await (await notes()).match(at(what)))?.text() ?? null;
}

async function note(/** @type {string} */ what, /** @type {string | null} */ value) {
  if (value === null) await (await notes()).delete(at(what));
  else await (await notes()).put(at(what), new Response(value));
}

/** Gets a file from the place of the page, past every cache on the way. A file that is not the one
 * of this version, such as half an upload, is an error. */
async function fetched(/** @type {string} */ file, /** @type {string} */ integrity) {
  const answer = await fetch(at(file), {
    cache: 'reload',
    credentials: 'same-origin',
    integrity,
  });
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
    for (const [file, digest] of Object.entries(FILES)) {
      await cache.put(at(file), await fetched(file, digest));
    }
  } catch (error) {
    const used = [await noted('now'), await noted('before')];
    if (!used.includes(KEPT)) await caches.delete(KEPT);
    throw error;
  }
}

/** Becomes the version that is used, and forgets all older ones but the one before. */
async function takeOver() {
  const now = await noted('now');
  if (now !== KEPT) {
    // What was chosen is what opened; the one after it may not.
    await note('before', (await chosen()) ?? now);
    await note('now', KEPT);
  }
  await note('choice', null);
  const before = await noted('before');
  const kept = (await caches.keys()).filter(
    (name) => name.startsWith(OURS) && /^[0-9a-f]{16}$/.test(name.slice(OURS.length)),
  );
  // What was kept after this one may be a newer version on its way.
  for (const name of kept.slice(0, kept.indexOf(KEPT))) {
    if (name !== before) await caches.delete(name);
  }
}

/** The version that is chosen instead of this one, if any. */
async function chosen() {
  const choice = await noted('choice');
  return choice !== null && (await caches.has(choice)) ? choice : null;
}

/** Answers `?version=before` and `?version=newest`. Any site may link to them, so the person is
 * asked, on a page that no other site can read, frame or skip. */
async function choose(/** @type {string | null} */ which, /** @type {string | null} */ sure) {
  const before = await noted('before');
  const wanted = which === 'before' ? before : null;
  const home = Response.redirect(SCOPE, 303);
  if (wanted === (await chosen())) return home;
  const token = await noted('token');
  await note('token', null);
  if (token !== null && sure === token) {
    await note('choice', wanted);
    return home;
  }
  const next = crypto.randomUUID();
  await note('token', next);
  return asking(which === 'before' ? 'before' : 'newest', next);
}

function asking(/** @type {'before' | 'newest'} */ which, /** @type {string} */ token) {
  const parts = Object.entries(WORDS).map(
    ([language, words]) => `<section lang="${language}">
      <h1>${words[`${which}-ask`]}</h1>
      <p>${words.why}</p>
      <p><a id="yes-${language}" href="?version=${which}&amp;sure=${token}">${words[`${which}-yes`]}</a></p>
      <p><a href="./">${words.no}</a></p>
    </section>`,
  );
  const page = `<!doctype html>
    <html lang="${Object.keys(WORDS)[0]}">
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <title>Surefoot</title>
    <style>
      :root { color-scheme: light dark; }
      body { max-width: 36rem; margin: 0 auto; padding: 1rem; font: 1.125rem/1.5 sans-serif; }
      h1 { font-size: 1.5rem; }
      a { display: inline-block; padding: 0.75rem 0; }
    </style>
    ${parts.join('<hr>')}`;
  const headers = {
    'Content-Type': 'text/html; charset=utf-8',
    'Content-Security-Policy':
      "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    'Referrer-Policy': 'no-referrer',
    'Cache-Control': 'no-store',
  };
  return new Response(page, { headers });
}

worker.addEventListener('install', (/** @type {any} */ event) => event.waitUntil(keep()));

worker.addEventListener('activate', (/** @type {any} */ event) =>
  event.waitUntil(takeOver().then(() => worker.clients.claim())),
);

worker.addEventListener('fetch', (/** @type {any} */ event) => {
  const { request } = event;
  const asked = new URL(request.url);
  if (request.method !== 'GET' || !asked.href.startsWith(SCOPE)) return;
  const { searchParams } = asked;
  if (request.mode === 'navigate' && searchParams.has('version')) {
    event.respondWith(choose(searchParams.get('version'), searchParams.get('sure')));
    return;
  }
  asked.search = '';
  asked.hash = '';
  const wanted = asked.href === SCOPE ? at('index.html') : asked.href;
  event.respondWith(answer(wanted, request));
});

async function answer(/** @type {string} */ wanted, /** @type {Request} */ request) {
  const kept = await caches.open((await chosen()) ?? KEPT);
  const found = await kept.match(wanted);
  if (found) return found;
  const later = wanted.slice(SCOPE.length);
  const digest = Object.hasOwn(LATER, later) ? LATER[later] : undefined;
  if (digest !== undefined) {
    const loaded = await fetched(later, digest);
    await kept.put(wanted, loaded.clone());
    return loaded;
  }
  // Class packs beside the page are not among the files.
  return fetch(request);
}
