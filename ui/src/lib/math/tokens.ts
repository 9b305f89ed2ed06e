import type { Expr } from '../backend/contract';
import { exact } from '../words/numbers';
import { numberBreak } from '../words/signs.svelte';
import { money, SIGNS, time, unitWords } from './spoken';

/** A piece of a label in a figure: text, or a fraction. */
export type Token = { text: string } | { top: string; bottom: string } | { blank: true };

/** Mathematics as pieces in a row, for labels in figures. */
export function tokens(expr: Expr): Token[] {
  const joined = (parts: Expr[], sign: string): Token[] =>
    parts.flatMap((part, at) => (at === 0 ? tokens(part) : [{ text: sign }, ...tokens(part)]));
  switch (expr.kind) {
    case 'number':
      return [{ text: exact(expr.text) }];
    case 'variable':
      return [{ text: expr.name }];
    case 'blank':
      return [{ blank: true }];
    case 'fraction':
      return [{ top: row(expr.top), bottom: row(expr.bottom) }];
    case 'mixed':
      return [...tokens(expr.whole), { top: row(expr.top), bottom: row(expr.bottom) }];
    case 'sum':
      return joined(expr.terms, ' + ');
    case 'difference':
      return joined([expr.left, expr.right], ' − ');
    case 'product':
      return joined(expr.factors, expr.side_by_side ? '' : ' × ');
    case 'quotient':
      return joined([expr.left, expr.right], ' ÷ ');
    case 'relation':
      return joined([expr.left, expr.right], ` ${SIGNS[expr.sign]} `);
    case 'group':
      return [{ text: '(' }, ...tokens(expr.inner), { text: ')' }];
    case 'power':
      return [...tokens(expr.base), { text: raised(row(expr.exponent)) }];
    case 'negative':
      return [{ text: '−' }, ...tokens(expr.inner)];
    case 'absolute':
      return [{ text: '|' }, ...tokens(expr.inner), { text: '|' }];
    case 'ratio':
      return joined([expr.left, expr.right], ' : ');
    case 'percent':
      return [...tokens(expr.inner), { text: '%' }];
    case 'measure':
      return [...tokens(expr.amount), { text: `\u00a0${unitWords(expr.unit, expr.amount)}` }];
    case 'money':
      return [{ text: money(expr.hundredths) }];
    case 'time':
      return [{ text: time(expr.hour, expr.minute) }];
    case 'pair':
      return [{ text: '(' }, ...joined([expr.x, expr.y], numberBreak()), { text: ')' }];
    case 'degrees':
      return [...tokens(expr.inner), { text: '°' }];
  }
}

/** The pieces as plain text. */
export function row(expr: Expr): string {
  return tokens(expr)
    .map((token) => {
      if ('text' in token) return token.text;
      return 'blank' in token ? '□' : `${token.top}/${token.bottom}`;
    })
    .join('');
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

function raised(text: string): string {
  return /^\d+$/.test(text)
    ? text.replace(/\d/g, (digit) => RAISED.charAt(Number(digit)))
    : `^${text}`;
}
