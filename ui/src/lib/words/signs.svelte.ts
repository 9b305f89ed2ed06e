import type { DecimalSign } from '../backend/contract';
import { language } from './chosen.svelte';
import { lineOf } from './languages';

/** How the student who is at work writes numbers; what reads it changes with it. */
const chosen = $state<{ sign: DecimalSign }>({ sign: 'language' });

/** A space that is narrow and does not break. */
const NARROW = '\u{202f}';

export function setDecimalSign(to: DecimalSign): void {
  chosen.sign = to;
}

/** The sign between ones and tenths: the student's, or that of the language. */
export function decimalSign(): '.' | ',' {
  const sign = chosen.sign === 'language' ? lineOf(language()).decimal_sign : chosen.sign;
  return sign === 'comma' ? ',' : '.';
}

/** Between numbers in a row, where a comma could be taken for a decimal sign. */
export function numberBreak(): string {
  return decimalSign() === ',' ? '; ' : ', ';
}

/** A number written as 1,234.5, in the student's own signs. */
export function inSigns(text: string): string {
  if (decimalSign() === '.') return text;
  return text.replace(/[.,]/g, (sign) => (sign === ',' ? NARROW : ','));
}
