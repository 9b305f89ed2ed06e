import type { FluentVariable } from '@fluent/bundle';
import type { Arg, Expr, Say } from '../backend/contract';
import { spoken } from '../math/spoken';
import { exact } from './numbers';
import { numberBreak } from './signs.svelte';
import { language, sayFromProgram } from './words.svelte';

/** Stand around an argument's name where mathematics goes into a sentence. */
const MATH_START = '\u{E000}';
const MATH_END = '\u{E001}';

/** A piece of a formatted sentence. */
export type Piece = { text: string } | { expr: Expr };

function variable(name: string, arg: Arg, aloud: boolean): FluentVariable {
  switch (arg.kind) {
    case 'count':
      return arg.value;
    case 'number':
      return exact(arg.text);
    case 'numbers':
      return arg.texts.map(exact).join(numberBreak());
    case 'math':
      return aloud ? spoken(arg.expr) : MATH_START + name + MATH_END;
    case 'text':
      return arg.text;
    case 'word':
      return sayFromProgram(arg.id);
    case 'words':
      return language() === 'es' ? arg.es : arg.en;
  }
}

function format(sentence: Say, aloud: boolean): string {
  const args = Object.entries(sentence.args).map(
    ([name, arg]) => [name, variable(name, arg, aloud)] as const,
  );
  const text = sayFromProgram(sentence.id, Object.fromEntries(args));
  if (!aloud) return text;
  // A teacher's words bring marks of their own for the mathematics in them.
  return text.replaceAll(/\u{E000}([^\u{E001}]*)\u{E001}/gu, (_, name: string) => {
    const arg = sentence.args[name];
    return arg?.kind === 'math' ? spoken(arg.expr) : '';
  });
}

/** The sentence as text and mathematics in their order. */
export function pieces(sentence: Say): Piece[] {
  const found: Piece[] = [];
  for (const [place, part] of format(sentence, false)
    .split(/[\uE000\uE001]/u)
    .entries()) {
    const arg = place % 2 === 1 ? sentence.args[part] : undefined;
    if (arg?.kind === 'math') found.push({ expr: arg.expr });
    else if (part !== '') found.push({ text: part });
  }
  return found;
}

/** The sentence as plain words, mathematics read out: for names and alternatives. */
export function plain(sentence: Say): string {
  return format(sentence, true);
}
