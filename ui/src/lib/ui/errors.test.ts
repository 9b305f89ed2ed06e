import { describe, expect, expectTypeOf, test } from 'vitest';
import type {
  CallError,
  Field,
  PlaceTrouble,
  Reason,
  Refusal,
  Rule,
  SeatCodeError,
  Thing,
  VoiceMissing,
} from '../backend';
import { errorWords, refusalWords, seatCodeWords, type Trouble } from '.';
import { LANGUAGES, setLanguage, type MessageId } from '../words';
import { reasonWords } from '../../student/reason';

type OfCode<T extends { code: string }> = { [C in T['code']]: Extract<T, { code: C }> };

const REFUSALS: OfCode<Refusal> = {
  too_large: { code: 'too_large', found_bytes: 9, most_bytes: 5 },
  unpacks_too_large: { code: 'unpacks_too_large', most_bytes: 5 },
  too_many_entries: { code: 'too_many_entries', most: 5 },
  too_much_at_once: { code: 'too_much_at_once' },
  not_ours: { code: 'not_ours' },
  wrong_class: { code: 'wrong_class' },
  damaged: { code: 'damaged' },
  bad_signature: { code: 'bad_signature' },
  newer_format: { code: 'newer_format', found: 2, known: 1 },
  bad_content: { code: 'bad_content', at: '/seat' },
  seat_unknown: { code: 'seat_unknown' },
  seat_full: { code: 'seat_full' },
  not_newer: { code: 'not_newer', found: 1, held: 2 },
  wrong_passphrase: { code: 'wrong_passphrase' },
  too_much_work: { code: 'too_much_work', found: 30, most: 18 },
  unsafe_name: { code: 'unsafe_name' },
  unreadable: { code: 'unreadable' },
};
const SEAT_CODES: OfCode<SeatCodeError> = {
  length: { code: 'length', found: 3, expected: 8 },
  sign: { code: 'sign', sign: '!' },
  check: { code: 'check' },
  other_class: { code: 'other_class' },
  other_seat: { code: 'other_seat' },
};
const ERRORS: OfCode<CallError> = {
  unknown_call: { code: 'unknown_call', name: 'x' },
  bad_arguments: { code: 'bad_arguments', detail: 'x' },
  not_found: { code: 'not_found', what: 'student' },
  invalid: { code: 'invalid', field: 'nickname', rule: 'too_long' },
  calendar: { code: 'calendar', error: { code: 'no_school_day' } },
  rotation: { code: 'rotation', error: { code: 'twice', concept: 'x' } },
  refused: { code: 'refused', refusal: REFUSALS.damaged },
  seat_code: { code: 'seat_code', error: SEAT_CODES.check },
  unreadable_answer: { code: 'unreadable_answer', detail: 'x' },
  newer_store: { code: 'newer_store', found: 9, known: 1 },
  storage: { code: 'storage', detail: 'x' },
  internal: { code: 'internal', detail: 'x' },
  damaged_store: { code: 'damaged_store', detail: 'x' },
  disk_full: { code: 'disk_full' },
  not_writable: { code: 'not_writable', detail: 'x' },
  store_busy: { code: 'store_busy' },
  desk_locked: { code: 'desk_locked' },
  locked: { code: 'locked' },
  files: { code: 'files', detail: 'x' },
  no_voice: { code: 'no_voice', missing: 'speech_dispatcher' },
  not_loaded: { code: 'not_loaded' },
  no_place: { code: 'no_place', why: 'other_tab' },
  cancelled: { code: 'cancelled' },
};
const MISSING_VOICES: VoiceMissing[] = [
  'speech_dispatcher',
  'system_voice',
  'tablet_voice',
  'everything',
];
const NO_PLACES: PlaceTrouble[] = ['other_tab', 'missing', 'refused', 'full'];
const SCREEN_TROUBLES: Trouble[] = [{ code: 'part' }, { code: 'words', language: 'es' }];
const REASONS: OfCode<Reason> = {
  assigned: { code: 'assigned', due: '2026-09-18', done: 1, of: 4 },
  marked_not_yet: { code: 'marked_not_yet', on: '2026-09-16' },
  marked_with_help: { code: 'marked_with_help', on: '2026-09-16' },
  wrong_last_time: { code: 'wrong_last_time', on: '2026-09-16' },
  time_to_see_again: { code: 'time_to_see_again', days: 6 },
  focus: { code: 'focus' },
  chosen: { code: 'chosen' },
  first_practice: { code: 'first_practice' },
  before: { code: 'before', concept: 'x' },
};

/** A missing message or argument is shown in these brackets. */
const MISSING = /[⟨⟩{}]/;

describe.each(LANGUAGES.map(({ tag }) => tag))('%s', (language) => {
  test.each([...Object.values(ERRORS), ...SCREEN_TROUBLES])(
    'error $code says what happened and what to do',
    (error) => {
      setLanguage(language);
      const words = errorWords(error);
      expect(words.length).toBeGreaterThanOrEqual(2);
      expect(words.join(' ')).not.toMatch(MISSING);
    },
  );
  test.each(MISSING_VOICES)('what helps where %s is missing', (missing) => {
    setLanguage(language);
    const words = errorWords({ code: 'no_voice', missing });
    expect(words).toHaveLength(3);
    expect(words.join(' ')).not.toMatch(MISSING);
  });
  test.each(NO_PLACES)('what helps where a browser has no place: %s', (why) => {
    setLanguage(language);
    const words = errorWords({ code: 'no_place', why });
    expect(words).toHaveLength(3);
    expect(words.join(' ')).not.toMatch(MISSING);
  });
  test.each(Object.values(REFUSALS))('refusal $code', (refusal) => {
    setLanguage(language);
    expect(refusalWords(refusal).join(' ')).not.toMatch(MISSING);
  });
  test.each(Object.values(SEAT_CODES))('seat code $code', (error) => {
    setLanguage(language);
    expect(seatCodeWords(error).join(' ')).not.toMatch(MISSING);
  });
  test.each(Object.values(REASONS))('reason $code', (reason) => {
    setLanguage(language);
    expect(reasonWords(reason)).not.toMatch(MISSING);
  });
});

test('each message on what is not found is of a thing that exists', () => {
  type Worded = Extract<MessageId, `error-not-found-${string}`>;
  expectTypeOf<Worded>().toEqualTypeOf<`error-not-found-${Thing}`>();
});

type Kebab<S extends string> = S extends `${infer A}_${infer B}` ? `${A}-${Kebab<B>}` : S;
type InvalidId = `error-invalid-${Kebab<Field>}-${Kebab<Rule>}`;

test('each message on an invalid value is of a field and a rule that exist', () => {
  type Worded = Extract<MessageId, `error-invalid-${string}`>;
  expectTypeOf<Exclude<Worded, InvalidId>>().toBeNever();
});

test('an unknown message shows as missing', () => {
  expect(errorWords({ code: 'rotation', error: { code: 'none' } as never }).join()).toMatch(
    MISSING,
  );
});
