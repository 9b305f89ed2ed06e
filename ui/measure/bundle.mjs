// How much the page loads, gzipped and without fonts: node measure/bundle.mjs, after
// a build. Follows the file names in the built files, from the page on. The limit holds
// for everything in one language, with the desk and all tools. Also prints the size in
// both languages, and the size of the words of exercises, which the program sends.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const LIMIT_BYTES = 248_000;
const DIST = fileURLToPath(new URL('../dist/', import.meta.url));
const MESSAGES = fileURLToPath(new URL('../../shared/messages/', import.meta.url));
const EXERCISES = /^(items-.*|figures|misconceptions)\.ftl$/;
const text = (path) => readFileSync(DIST + path, 'utf8');
const files = readdirSync(`${DIST}assets`).filter((name) => /\.(js|css)$/.test(name));
const bytes = new Map(files.map((name) => [name, gzipSync(text(`assets/${name}`)).length]));

function named(words) {
  return new Set(files.filter((name) => words.includes(name)));
}

/** The files that a script imports at once, and those it imports later. */
function imports(name) {
  if (!name.endsWith('.js')) return { now: new Set(), later: new Set() };
  const words = text(`assets/${name}`);
  const statics = words.match(/(?:import|from)\s*["'`]\.\/[^"'`]+["'`]/g) ?? [];
  const now = named(statics.join());
  const later = new Set([...named(words)].filter((one) => one !== name && !now.has(one)));
  return { now, later };
}

/** All files that these load; `later` also follows imports on demand. */
function closure(from, { later = false, without = [] } = {}) {
  const found = new Set();
  const open = [...from];
  while (open.length > 0) {
    const name = open.pop();
    if (found.has(name) || without.some((part) => part.test(name))) continue;
    found.add(name);
    const next = imports(name);
    open.push(...next.now, ...(later ? next.later : []));
  }
  return found;
}

const sum = (names) => [...names].reduce((all, name) => all + bytes.get(name), 0);
const kb = (size) => `${(size / 1000).toFixed(1)} kB`;

/** The size of the words of exercises, gzipped like the page's files. */
function exerciseWords(language) {
  const folder = `${MESSAGES}${language}/`;
  const names = readdirSync(folder).filter((name) => EXERCISES.test(name));
  return gzipSync(names.map((name) => readFileSync(folder + name, 'utf8')).join('')).length;
}

const DESK = /^Desk-/;
const LANGUAGES = JSON.parse(
  readFileSync(new URL('../../shared/languages.json', import.meta.url), 'utf8'),
);
const WORDS = Object.fromEntries(LANGUAGES.map(({ tag }) => [tag, new RegExp(`^${tag}-`)]));
const page = named(text('index.html'));
let [passed, failed] = [0, 0];
function check(words, holds) {
  console.log(`${holds ? '' : 'FAILED '}${words}`);
  if (holds) passed += 1;
  else failed += 1;
}

for (const language of Object.keys(WORDS)) {
  const others = Object.keys(WORDS).filter((one) => one !== language);
  const other = others.map((one) => WORDS[one]);
  const own = files.filter((name) => WORDS[language].test(name));
  const first = sum(closure([...page, ...own]));
  const student = sum(closure(page, { later: true, without: [DESK, ...other] }));
  const teacher = sum(closure(page, { later: true, without: other }));
  check(
    `${language}: ${kb(first)} for the first screen, ${kb(student)} with all of a student's ` +
      `screens and tools, ${kb(teacher)} with the desk (limit ${kb(LIMIT_BYTES)}); ` +
      `${kb(exerciseWords(language))} of words of exercises come from the program`,
    own.length === 1 && first < student && student < teacher && teacher <= LIMIT_BYTES,
  );
}
check(
  'neither the desk nor any words load before they are asked for',
  [...closure(page)].every(
    (name) => ![DESK, ...Object.values(WORDS)].some((part) => part.test(name)),
  ),
);
const words = files.map((name) => text(`assets/${name}`)).join('');
check(
  'no words of exercises are among them',
  !/^(misconception|unit|figure)-[a-z-]+ = /m.test(words.replaceAll('\\n', '\n')),
);
const all = closure(page, { later: true });
check(
  `${kb(sum(files))} in all, every language and the desk, in ${files.length} files`,
  files.every((name) => all.has(name)),
);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
