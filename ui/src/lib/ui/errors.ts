import {
  CallFailed,
  type CallError,
  type FolderTrouble,
  type Language,
  type LineFault,
  type Refusal,
  type SeatCodeError,
} from '../backend';
import { hasWords, kebab, nameOf, number, say } from '../words';

/** A failed call, or a part of the screens that did not load. */
export type Trouble = CallError | { code: 'part' } | { code: 'words'; language: Language };

/** Makes an error with words of anything that was thrown. */
export function asError(thrown: unknown): CallError {
  return thrown instanceof CallFailed
    ? thrown.why
    : { code: 'storage', detail: thrown instanceof Error ? thrown.message : String(thrown) };
}

/** A sentence on why a class folder cannot be used now. */
export function folderTroubleWords(trouble: FolderTrouble): string {
  return say(`folder-trouble-${kebab(trouble)}`);
}

/** Sentences: what happened, that nothing was lost, and what to do. */
export function errorWords(error: Trouble): string[] {
  switch (error.code) {
    case 'part':
      return [say('error-part'), say('error-kept'), say('error-part-do')];
    case 'words':
      return [
        say('error-words', { name: nameOf(error.language) }),
        say('error-kept'),
        say('error-part-do'),
      ];
    case 'refused':
      return error.refusal.code === 'bad_content' && error.refusal.at === 'passphrase'
        ? [say('safe-passphrase-short')]
        : refusalWords(error.refusal);
    case 'seat_code':
      return seatCodeWords(error.error);
    case 'invalid': {
      const id = `error-invalid-${error.field}-${error.rule}`.replaceAll('_', '-');
      const what = say(hasWords(id) ? id : 'error-invalid');
      return [what, say('error-kept')];
    }
    case 'calendar':
      return [say(`error-calendar-${kebab(error.error.code)}`), say('error-kept')];
    case 'rotation':
      return [say(`error-rotation-${kebab(error.error.code)}`), say('error-kept')];
    case 'not_found':
      return [say(`error-not-found-${error.what}`), say('error-kept')];
    case 'newer_store':
      return [say('error-newer-store'), say('error-newer-store-do')];
    case 'damaged_store':
      return [say('error-damaged-store'), say('error-damaged-store-do')];
    case 'locked':
      return [say('error-locked'), say('error-kept')];
    case 'unreadable_answer':
      return [say('error-unreadable-answer'), say('error-unreadable-answer-do')];
    case 'no_voice':
      return [
        say('error-no-voice'),
        say('error-kept'),
        say(`error-no-voice-${kebab(error.missing)}-do`),
      ];
    case 'no_place':
      return [
        say(`error-no-place-${kebab(error.why)}`),
        say('error-kept'),
        say(`error-no-place-${kebab(error.why)}-do`),
      ];
    case 'cancelled':
      return [say('error-cancelled'), say('error-kept')];
    case 'not_loaded':
    case 'internal':
    case 'storage':
    case 'disk_full':
    case 'not_writable':
    case 'store_busy':
    case 'desk_locked':
    case 'files':
    case 'bad_arguments':
    case 'unknown_call':
      return [
        say(`error-${kebab(error.code)}`),
        say('error-kept'),
        say(`error-${kebab(error.code)}-do`),
      ];
  }
}

/** Why a file was refused, and what to do. */
export function refusalWords(refusal: Refusal): string[] {
  const args: Record<string, string> = {};
  for (const [name, value] of Object.entries(refusal)) {
    if (name !== 'code') args[name] = typeof value === 'number' ? number(value) : String(value);
  }
  const code = kebab(refusal.code);
  return [say(`refusal-${code}`, args), say(`refusal-${code}-do`)];
}

/** Why a line of a file was refused, and what helps. */
export function faultWords(fault: LineFault): string {
  const args: Record<string, string> = {};
  for (const [name, value] of Object.entries(fault)) {
    if (name !== 'code') args[name] = typeof value === 'number' ? number(value) : value;
  }
  return say(`line-fault-${kebab(fault.code)}`, args);
}

/** Why a seat code or PIN signs were refused. */
export function seatCodeWords(error: SeatCodeError): string[] {
  switch (error.code) {
    case 'length':
      return [
        say('seat-code-length', { found: error.found, expected: error.expected }),
        say('seat-code-do'),
      ];
    case 'sign':
      return [say('seat-code-sign', { sign: error.sign }), say('seat-code-do')];
    case 'check':
      return [say('seat-code-check'), say('seat-code-do')];
    case 'other_seat':
      return [say('seat-code-other-seat'), say('seat-code-do')];
    case 'other_class':
      return [say('seat-code-other-class'), say('seat-code-other-class-do')];
  }
}
