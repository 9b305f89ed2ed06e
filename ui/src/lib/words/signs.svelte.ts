import type { DecimalSign } from '../backend/contract';
import { language } from './chosen.svelte';
import { lineOf } from './languages';

/** The decimal sign that the student chose (reactive). */
const chosen = $state<{ sign: DecimalSign }>({ sign: 'language' });

/** A narrow no-break space. */
const NARROW = '\u{202f}';

export function setDecimalSign(to: DecimalSign): void {
  chosen.sign = to;
}

/** The decimal sign: the student's choice, or that of the language. */
export function decimalSign(): '.' | ',' {
  const sign = chosen.sign === 'language' ? lineOf(language()).decimal_sign : chosen.sign;
  return sign === 'comma' ? ',' : '.';
}

/** The separator of numbers in a list; with decimal commas it is a semicolon. */
export function numberBreak(): string {
  return decimalSign() === ',' ? '; ' : ', ';
}

/** Writes a number such as 1,234.5 with the student's signs. */
export function inSigns(text: string): string {
  if (decimalSign() === '.') return text;
  return text.replace(/[.,]/g, (sign) => (sign === ',' ? NARROW : ','));
}
