import type { Expr, Sign } from '../backend/contract';
import { exact } from '../words/numbers';
import { kebab } from '../words/kebab';
import { say, sayFromProgram, sayPart } from '../words/words.svelte';

/** Mathematics in words, to be read out. */
export function spoken(expr: Expr): string {
  switch (expr.kind) {
    case 'number':
      return exact(expr.text).replace('−', `${say('math-minus')} `);
    case 'variable':
      return expr.name;
    case 'blank':
      return say('math-blank');
    case 'fraction':
      return say('math-fraction', { top: spoken(expr.top), bottom: spoken(expr.bottom) });
    case 'mixed':
      return say('math-mixed', {
        whole: spoken(expr.whole),
        top: spoken(expr.top),
        bottom: spoken(expr.bottom),
      });
    case 'sum':
      return expr.terms.map(spoken).join(` ${say('math-plus')} `);
    case 'difference':
      return `${spoken(expr.left)} ${say('math-minus')} ${spoken(expr.right)}`;
    case 'product':
      return expr.factors.map(spoken).join(expr.side_by_side ? ' ' : ` ${say('math-times')} `);
    case 'quotient':
      return `${spoken(expr.left)} ${say('math-divided-by')} ${spoken(expr.right)}`;
    case 'relation':
      return `${spoken(expr.left)} ${spokenSign(expr.sign)} ${spoken(expr.right)}`;
    case 'group':
      return say('math-group', { inner: spoken(expr.inner) });
    case 'power':
      return say('math-power', { base: spoken(expr.base), exponent: spoken(expr.exponent) });
    case 'negative':
      return `${say('math-minus')} ${spoken(expr.inner)}`;
    case 'absolute':
      return say('math-absolute', { inner: spoken(expr.inner) });
    case 'ratio':
      return say('math-ratio', { left: spoken(expr.left), right: spoken(expr.right) });
    case 'percent':
      return say('math-percent', { inner: spoken(expr.inner) });
    case 'measure':
      return `${spoken(expr.amount)} ${unitWords(expr.unit, expr.amount)}`;
    case 'money':
      return money(expr.hundredths);
    case 'time':
      return time(expr.hour, expr.minute);
    case 'pair':
      return say('math-pair', { x: spoken(expr.x), y: spoken(expr.y) });
    case 'degrees':
      return say('math-degrees', { inner: spoken(expr.inner) });
  }
}

/** The name of a sign. */
export function spokenSign(sign: Sign): string {
  return say(`math-sign-${kebab(sign)}`);
}

export const SIGNS: Record<Sign, string> = {
  less: '<',
  equal: '=',
  greater: '>',
  at_most: '≤',
  at_least: '≥',
  not_equal: '≠',
  about: '≈',
  blank: '○',
};

/** An amount with its currency sign; whole amounts have no point. */
export function money(hundredths: number): string {
  const whole = hundredths % 100 === 0;
  return `$${exact(whole ? String(hundredths / 100) : (hundredths / 100).toFixed(2))}`;
}

export function time(hour: number, minute: number): string {
  return `${hour}:${String(minute).padStart(2, '0')}`;
}

/** A unit after its amount: of one, of a part of one, or of several. */
export function unitWords(unit: string, amount: Expr): string {
  if (amount.kind === 'number' && amount.text === '1') return sayPart(unit, 'one');
  const part =
    amount.kind === 'fraction' &&
    amount.top.kind === 'number' &&
    amount.bottom.kind === 'number' &&
    Number(amount.top.text) <= Number(amount.bottom.text);
  return part ? sayPart(unit, 'part') : sayFromProgram(unit);
}
