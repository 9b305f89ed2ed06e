import { FluentNumber } from '@fluent/bundle';
import { decimalSign, say } from '../words';

const AMOUNT = /\$(\d[\d.,\u{202f}]*)/gu;
const NUMBER = /\d[\d.,\u{202f}]*/gu;

/** The parts of a written number; punctuation after it belongs to the sentence. */
function parts(written: string): { whole: string; part: string; behind: string } {
  const number = written.replace(/[.,\u{202f}]+$/u, '');
  const behind = written.slice(number.length);
  const at = number.lastIndexOf(decimalSign());
  const [whole, part] = at < 0 ? [number, ''] : [number.slice(0, at), number.slice(at + 1)];
  return { whole: whole.replace(/\D/g, ''), part, behind };
}

function amount(written: string): string {
  const { whole, part, behind } = parts(written);
  const dollars = new FluentNumber(Number(whole), { useGrouping: false });
  if (part === '') return say('aloud-dollars', { dollars }) + behind;
  return say('aloud-money', { dollars, cents: Number(part.padEnd(2, '0')) }) + behind;
}

function number(written: string): string {
  const { whole, part, behind } = parts(written);
  if (part === '') return whole + behind;
  // Digit by digit, because voices misread decimals and grouped numbers.
  const digits = Array.from(part).join(' ');
  return say(decimalSign() === ',' ? 'aloud-comma' : 'aloud-point', { whole, digits }) + behind;
}

/**
 * Text for a voice. Voices read 1,234 and 3.5 by the rules of their country, so numbers
 * are not grouped and the decimal sign is a word.
 */
export function speakable(text: string): string {
  return text
    .replace(AMOUNT, (_, written: string) => amount(written))
    .replace(NUMBER, number)
    .replaceAll('□', ` ${say('math-blank')} `)
    .replace(/\s+/g, ' ')
    .trim();
}

/** Joins pieces to be read one after the other, each with a full stop. */
export function inTurn(pieces: string[]): string {
  return pieces
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')
    .map((piece) => (/[.!?:…]$/.test(piece) ? piece : `${piece}.`))
    .join(' ');
}
