import type { Entry, HalfDay, Response, Sign } from '../backend/contract';
import { SIGNS } from '../math/spoken';
import { decimalSign, plain, say } from '../words';

export type Layout = 'row' | 'fraction' | 'mixed' | 'time';

export interface Typed {
  layout: Layout;
  /** The names of the boxes. */
  labels: string[];
  /** Words after the boxes, such as a unit. */
  unit: string | null;
  /** Keys beside the digits. */
  keys: string[];
  /** The response; null while it is incomplete. */
  response: (texts: string[], half: HalfDay | null) => Response | null;
}

const filled = (text: string | undefined): text is string => (text ?? '').trim() !== '';
const minus = (signed: boolean) => (signed ? ['−'] : []);
const sign = (of: Sign) => SIGNS[of];

/** The boxes of an entry; null if it is not typed. */
export function typed(entry: Entry): Typed | null {
  const one = (
    label: string,
    keys: string[],
    response: (text: string) => Response,
    unit: string | null = null,
  ): Typed => ({
    layout: 'row',
    labels: [label],
    unit,
    keys,
    response: ([text]) => (filled(text) ? response(text) : null),
  });
  switch (entry.kind) {
    case 'whole_number':
    case 'decimal': {
      const { kind } = entry;
      const keys = [...(kind === 'decimal' ? [decimalSign()] : []), ...minus(entry.signed)];
      return one(say('entry-box'), keys, (text) => ({ kind, text }), unitOf(entry));
    }
    case 'money':
      return one(say('entry-amount'), [decimalSign()], (text) => ({ kind: 'money', text }));
    case 'angle':
      if (entry.turned) return null;
      return one(say('entry-degrees'), [], (text) => ({ kind: 'angle', text }), '°');
    case 'expression':
      return one(
        say('entry-expression'),
        [...entry.letters, '+', '−', '×', '÷', '/', '(', ')', '^'],
        (text) => ({ kind: 'expression', text }),
      );
    case 'equation':
      return one(
        say('entry-equation'),
        [...entry.letters, ...entry.signs.map(sign), '+', '−', '×', '÷', '/', '(', ')'],
        (text) => ({ kind: 'equation', text }),
      );
    case 'fraction':
      return {
        layout: 'fraction',
        labels: [say('entry-top'), say('entry-bottom')],
        unit: unitOf(entry),
        keys: minus(entry.signed),
        response: ([top, bottom = '']) => (filled(top) ? { kind: 'fraction', top, bottom } : null),
      };
    case 'mixed':
      return {
        layout: 'mixed',
        labels: [say('entry-whole'), say('entry-top'), say('entry-bottom')],
        unit: unitOf(entry),
        keys: minus(entry.signed),
        response: ([whole = '', top = '', bottom = '']) =>
          filled(whole) || filled(top) ? { kind: 'mixed', whole, top, bottom } : null,
      };
    case 'time':
      return {
        layout: 'time',
        labels: [say('entry-hour'), say('entry-minute')],
        unit: null,
        keys: [],
        response: ([hour, minute], half) =>
          filled(hour) && filled(minute) && (half !== null || !entry.half_day)
            ? { kind: 'time', hour, minute, half_day: entry.half_day ? half : null }
            : null,
      };
    case 'duration':
      return {
        layout: 'row',
        labels: entry.hours ? [say('entry-hours'), say('entry-minute')] : [say('entry-minute')],
        unit: null,
        keys: [],
        response: (texts) => {
          const [hours = '', minutes = ''] = entry.hours ? texts : ['', texts[0]];
          return filled(hours) || filled(minutes) ? { kind: 'duration', hours, minutes } : null;
        },
      };
    case 'coordinates':
      return {
        layout: 'row',
        labels: [say('entry-x'), say('entry-y')],
        unit: null,
        keys: ['−', decimalSign(), '/'],
        response: ([x, y]) => (filled(x) && filled(y) ? { kind: 'coordinates', x, y } : null),
      };
    case 'quotient_remainder':
      return {
        layout: 'row',
        labels: [say('entry-quotient'), say('entry-remainder')],
        unit: null,
        keys: [],
        response: ([quotient, remainder = '']) =>
          filled(quotient) ? { kind: 'quotient_remainder', quotient, remainder } : null,
      };
    case 'several_numbers':
      return {
        layout: 'row',
        labels: entry.fields.map(plain),
        unit: null,
        keys: [...(entry.decimals ? [decimalSign()] : []), ...minus(entry.signed)],
        response: (texts) =>
          texts.every(filled) ? { kind: 'several_numbers', texts: [...texts] } : null,
      };
    case 'boxes': {
      const { boxes, numbers } = entry;
      const texts = numbers.kind === 'cards' ? numbers.cards : [];
      const offered = (sign: string) => texts.some((text) => text.includes(sign));
      return {
        layout: 'row',
        labels: Array.from({ length: boxes }, (_, at) =>
          say('entry-box-number', { number: at + 1 }),
        ),
        unit: null,
        keys: [...(offered('.') ? [decimalSign()] : []), ...minus(offered('-'))],
        response: (typed) => (typed.every(filled) ? { kind: 'boxes', texts: [...typed] } : null),
      };
    }
    case 'two_parts':
    case 'comparison':
    case 'one_choice':
    case 'several_choices':
    case 'ordering':
    case 'number_line_point':
    case 'number_line_ray':
    case 'shaded_fraction':
    case 'plot':
    case 'grid_area':
      return null;
  }
}

function unitOf(entry: Extract<Entry, { unit: unknown }>): string | null {
  return entry.unit ? plain(entry.unit) : null;
}
