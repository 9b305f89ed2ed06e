// Completes a folder for a school's web space: `node web/page/pages.mjs FOLDER`.
//
// FOLDER has the screens and the compiled program. This adds the worker, the service worker with
// the list of all files, the manifest and the policy of the page.
import { createHash } from 'node:crypto';
import { cpSync, existsSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const HERE = dirname(fileURLToPath(import.meta.url));
const TOP = join(HERE, '../..');

/** What the page may do: nothing outside its own place. */
const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-src 'none'",
].join('; ');

/** The same as a header, which alone can refuse to be framed. */
const HEADER = `${POLICY}; frame-ancestors 'none'`;

/** The words of the page that asks which version to use. */
const ASKING = {
  'before-ask': 'web-version-before-ask',
  'before-yes': 'web-version-before-yes',
  'newest-ask': 'web-version-newest-ask',
  'newest-yes': 'web-version-newest-yes',
  why: 'web-version-why',
  no: 'web-version-no',
};

const [folder] = process.argv.slice(2);
if (!folder) throw new Error('usage: pages.mjs FOLDER');

/** The digest of the files of a folder. */
function digestOf(names) {
  const digest = createHash('sha256');
  for (const name of names) digest.update(name).update(readFileSync(join(folder, name)));
  return digest.digest('hex').slice(0, 16);
}

// The program that prints is loaded later, maybe when a newer version lies there. So its folder has
// the name of its content.
const whole = existsSync(join(folder, 'whole'))
  ? `whole-${digestOf(['whole/program.js', 'whole/program_bg.wasm'])}`
  : 'whole';
if (whole !== 'whole') renameSync(join(folder, 'whole'), join(folder, whole));
const worker = readFileSync(join(HERE, 'worker.js'), 'utf8');
writeFileSync(join(folder, 'worker.js'), worker.replace('%WHOLE%', whole));
const icons = { 256: '128x128@2x.png', 512: 'icon.png' };
for (const [size, name] of Object.entries(icons)) {
  cpSync(join(TOP, 'src-tauri/icons', name), join(folder, `icon-${size}.png`));
}
cpSync(join(TOP, 'src-tauri/icons/source/surefoot.svg'), join(folder, 'icon.svg'));

const manifest = {
  name: 'Surefoot',
  short_name: 'Surefoot',
  // In both languages, because a folder has one manifest.
  description: 'Rate each concept, and practise. · Califica cada concepto y practica.',
  id: './',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: '#faf6ec',
  theme_color: '#faf6ec',
  icons: [
    { src: 'icon.svg', type: 'image/svg+xml', sizes: 'any' },
    { src: 'icon-256.png', type: 'image/png', sizes: '256x256' },
    { src: 'icon-512.png', type: 'image/png', sizes: '512x512' },
  ],
};
writeFileSync(join(folder, 'manifest.webmanifest'), `${JSON.stringify(manifest, null, 2)}\n`);

const page = join(folder, 'index.html');
const html = readFileSync(page, 'utf8');
const head = [
  `<meta http-equiv="Content-Security-Policy" content="${POLICY}" />`,
  '<meta name="referrer" content="no-referrer" />',
  '<link rel="manifest" href="manifest.webmanifest" />',
  '<link rel="apple-touch-icon" href="icon-256.png" />',
];
if (!html.includes('http-equiv'))
  writeFileSync(
    page,
    html
      .replace('<meta charset="utf-8" />', `<meta charset="utf-8" />\n    ${head.join('\n    ')}`)
      .replace('href="data:,"', 'href="icon.svg"'),
  );

/** Messages of one line, for HTML. */
function wordsOf(language) {
  const text = readFileSync(join(TOP, `shared/messages/${language}/screens-web.ftl`), 'utf8');
  return Object.fromEntries(
    Object.entries(ASKING).map(([name, id]) => {
      const words = new RegExp(`^${id} = (.*)$`, 'm').exec(text)?.[1];
      if (words === undefined) throw new Error(`${language}: no ${id}`);
      return [name, words.replaceAll('&', '&amp;').replaceAll('<', '&lt;')];
    }),
  );
}
const languages = JSON.parse(readFileSync(join(TOP, 'shared/languages.json'), 'utf8'));
const words = Object.fromEntries(languages.map(({ tag }) => [tag, wordsOf(tag)]));

/** The digests of files, as the attribute `integrity` has them. */
function integrityOf(names) {
  return Object.fromEntries(
    names.map((name) => {
      const digest = createHash('sha256').update(readFileSync(join(folder, name)));
      return [name, `sha256-${digest.digest('base64')}`];
    }),
  );
}

/** All files of a folder but those that are no part of a version. */
function filesIn(under = '') {
  return readdirSync(join(folder, under), { withFileTypes: true })
    .flatMap((entry) => {
      const path = under + entry.name;
      if (entry.isDirectory()) return filesIn(`${path}/`);
      return /^(offline\.js|sample\/.*|whole-.*|.*\.(br|gz|sfclass))$/.test(path) ? [] : [path];
    })
    .sort();
}

const files = filesIn();
const digest = createHash('sha256');
for (const file of files) digest.update(file).update(readFileSync(join(folder, file)));
const offline = readFileSync(join(HERE, 'offline.js'), 'utf8');
digest.update(offline).update(HEADER).update(JSON.stringify(words));
const later = ['program.js', 'program_bg.wasm']
  .map((name) => `${whole}/${name}`)
  .filter((name) => existsSync(join(folder, name)));
const version = digest.digest('hex').slice(0, 16);
writeFileSync(
  join(folder, 'offline.js'),
  offline
    .replace("'%VERSION%'", JSON.stringify(version))
    .replace("{ '%FILES%': '' }", JSON.stringify(integrityOf(files)))
    .replace("{ '%LATER%': '' }", JSON.stringify(integrityOf(later)))
    .replace("{ '%WORDS%': {} }", () => JSON.stringify(words))
    .replace("'%POLICY%'", JSON.stringify(HEADER)),
);
console.log(`${folder}: ${files.length} files, version ${version}`);
