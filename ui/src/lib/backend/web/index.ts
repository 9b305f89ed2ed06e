/** The way to the program in a browser: a worker beside the page, and the browser's own means. */
import type { CallError, Calls, Language } from '../contract';
import { download, pick, share, shares } from './files';
import { askToKeep, forgetAllCarried, forgetCarried, noteCarried } from './kept';
import { speak, stopSpeaking } from './voice';
import { type Asked, type ProgramName, ProgramWorker, WorkerFailed } from './worker';

/** After a page is closed, its storage is free a moment later. */
const OTHER_TAB_TRIES = 20;
const OTHER_TAB_WAIT_MS = 100;

/** On a slow line the program starts after this time, before all files are kept. */
const FIRST_VISIT_WAIT_MS = 60_000;

/** Calls after which the browser should not clear what it keeps. */
const WORTH_KEEPING = new Set(['join', 'take_carry', 'hand_in', 'share_hand_in']);

/** The first bytes of a store: https://sqlite.org/fileformat.html#magic_header_string. */
const STORE_BEGINS = 'SQLite format 3\0';

/** Calls of the program that prints. */
const PRINTS = new Set(['print_practice', 'print_path']);

let opened: { name: ProgramName; worker: Promise<ProgramWorker> } | null = null;
let onOpenedFiles = (): void => undefined;
let served: Promise<void> = Promise.resolve();

/** What the screens tell of their languages. */
export interface Words {
  /** Words for where a saved file is. */
  downloads: () => string;
  /** The tags of voices for a language, the best first. */
  voices: (language: Language) => readonly string[];
}

let words: Words = { downloads: () => '', voices: () => [] };

/** Calls `then` whenever a file was dropped on the page. */
export function onDropped(then: () => void): void {
  onOpenedFiles = then;
}

function isTaken(error: unknown): boolean {
  return (
    error instanceof WorkerFailed && error.why.code === 'no_place' && error.why.why === 'other_tab'
  );
}

/** A file beside the page. Null if there is none, or the address leads elsewhere. */
async function beside(name: string): Promise<Response | null> {
  const folder = new URL('.', document.baseURI);
  const at = new URL(name, folder);
  if (at.origin !== folder.origin || !at.pathname.startsWith(folder.pathname)) return null;
  const answer = await fetch(at).catch(() => null);
  return answer?.ok ? answer : null;
}

/** The store of a student to show, where `./run web` put one and the address asks for it. */
async function shown(asked: URLSearchParams): Promise<ArrayBuffer | null> {
  // A link to a school's pages must not add a student to those who work there.
  if (!asked.has('sample') || location.hostname !== 'localhost') return null;
  const answer = await beside('sample/student.sqlite');
  const bytes = await answer?.arrayBuffer().catch(() => null);
  // Some servers answer with a page for what they do not have.
  return bytes && beginsAsStore(bytes) ? bytes : null;
}

function beginsAsStore(bytes: ArrayBuffer): boolean {
  const first = new TextDecoder('latin1').decode(bytes.slice(0, STORE_BEGINS.length));
  return first === STORE_BEGINS;
}

async function start(name: ProgramName): Promise<ProgramWorker> {
  await served;
  const asked = new URLSearchParams(location.search);
  const student = await shown(asked);
  for (let tried = 1; ; tried += 1) {
    const worker = new ProgramWorker();
    try {
      await worker.ask({ do: 'open', name, shares: shares(), student });
      await takeLinked(worker, asked);
      return worker;
    } catch (error) {
      worker.end('not opened');
      if (!isTaken(error) || tried === OTHER_TAB_TRIES) throw error;
      await new Promise((over) => setTimeout(over, OTHER_TAB_WAIT_MS));
    }
  }
}

/** Takes the class pack that the address names. */
async function takeLinked(worker: ProgramWorker, asked: URLSearchParams): Promise<void> {
  const name = asked.get('pack');
  if (!name) return;
  // A file of the folder itself, so its name has no slash. Other kinds of files can ask for a
  // passphrase, and no link may.
  const isPack = /^[^/]+\.sfclass$/.test(name);
  const answer = isPack ? await beside(encodeURIComponent(name)) : null;
  const bytes = await answer?.arrayBuffer().catch(() => null);
  if (bytes) await worker.ask({ do: 'file', name, bytes });
  // Once; a reload goes on where the student is.
  history.replaceState(history.state, '', location.pathname);
}

/** Puts the whole program in the place of the student's. It asks for PINs again: a page could say
 * anything about who typed one. */
async function change(before: Promise<ProgramWorker>): Promise<ProgramWorker> {
  (await before).end('another program takes over');
  return start('whole');
}

/** The running program, started if it is not; the one that prints if `whole`. */
async function program(whole = false): Promise<ProgramWorker> {
  opened ??= { name: 'program', worker: start('program') };
  // Set before it is there, so that other calls wait for it.
  if (whole && opened.name !== 'whole') opened = { name: 'whole', worker: change(opened.worker) };
  const mine = opened;
  try {
    return await mine.worker;
  } catch (error) {
    // The next call tries again.
    if (opened === mine) opened = null;
    throw error;
  }
}

type Outcome = { done: unknown } | { failed: CallError } | { pick: string[] } | { share: string };

/** A call that failed in a browser. */
export class WebCallFailed extends Error {
  constructor(readonly why: CallError) {
    super(why.code);
  }
}

/** Makes a call. Throws `WebCallFailed`. */
export async function callInBrowser(name: string, args: object): Promise<unknown> {
  if (name === 'speak') return read(args as Calls['speak']['args']);
  if (name === 'stop_speaking') {
    stopSpeaking();
    return {};
  }
  try {
    return await ask({ do: 'call', name, args: JSON.stringify(args), place: words.downloads() });
  } catch (error) {
    if (!(error instanceof WorkerFailed)) throw error;
    if (error.crashed) opened = null;
    throw new WebCallFailed(error.why);
  }
}

async function read({ text, language }: Calls['speak']['args']): Promise<object> {
  const why: CallError = { code: 'no_voice', missing: 'system_voice' };
  if (!(await speak(text, words.voices(language)))) throw new WebCallFailed(why);
  return {};
}

async function ask(asked: Asked & { do: 'call' }): Promise<unknown> {
  const worker = await program(PRINTS.has(asked.name));
  const { answer, files } = await worker.ask(asked);
  const outcome = JSON.parse(answer) as Outcome;
  if ('pick' in outcome) {
    const file = await pick(outcome.pick);
    const given = file ? { name: file.name, bytes: await file.arrayBuffer() } : null;
    return ask({ ...asked, given });
  }
  const [first] = files;
  if ('share' in outcome) {
    return ask({ ...asked, shared: first ? await share(first) : 'cannot' });
  }
  if ('failed' in outcome) {
    throw new WorkerFailed(outcome.failed, false);
  }
  files.forEach(download);
  if (WORTH_KEEPING.has(asked.name)) askToKeep();
  if (asked.name === 'remove_student') {
    forgetCarried((JSON.parse(asked.args) as Calls['remove_student']['args']).student);
  }
  if (asked.name === 'remove_everything') forgetAllCarried();
  if (asked.name === 'make_carry') {
    noteCarried((JSON.parse(asked.args) as Calls['make_carry']['args']).student);
  }
  return outcome.done;
}

/** Lets files be dropped on the page, and keeps the program for when there is no network. */
export function prepareBrowser(known: Words): void {
  words = known;
  window.addEventListener('dragover', (event) => event.preventDefault());
  window.addEventListener('drop', (event) => {
    event.preventDefault();
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length > 0) void drop(files);
  });
  // Missing in some private windows.
  const { serviceWorker } = navigator as Partial<Navigator>;
  if (serviceWorker) served = serve(serviceWorker).catch(() => undefined);
}

/** Registers the service worker. Resolves when it serves this page, or when it does not yet. What it
 * serves has the page's policy, also the program's worker, and is not loaded a second time. */
async function serve(workers: ServiceWorkerContainer): Promise<void> {
  const registration = await workers.register(new URL('offline.js', document.baseURI));
  const first = registration.installing ?? registration.waiting;
  if (workers.controller || registration.active || !first) return;
  await new Promise<void>((over) => {
    setTimeout(over, FIRST_VISIT_WAIT_MS);
    workers.addEventListener('controllerchange', () => over());
    first.addEventListener('statechange', () => {
      if (first.state === 'redundant') over();
    });
  });
}

async function drop(files: File[]): Promise<void> {
  const worker = await program().catch(() => null);
  for (const file of files) {
    await worker?.ask({ do: 'file', name: file.name, bytes: await file.arrayBuffer() });
  }
  onOpenedFiles();
}
