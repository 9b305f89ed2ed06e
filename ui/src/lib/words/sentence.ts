import type { FluentVariable } from '@fluent/bundle';
import type { Arg, Block, Expr, Language, Say } from '../backend/contract';
import { spoken } from '../math/spoken';
import { language } from './chosen.svelte';
import { LANGUAGES, textIn } from './languages';
import { exact } from './numbers';
import { numberBreak } from './signs.svelte';
import { sayFromProgram } from './words.svelte';

/** These signs mark an argument that is mathematics. */
const MATH_START = '\u{E000}';
const MATH_END = '\u{E001}';

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
      return textIn(arg.words, language());
  }
}

function format(sentence: Say, aloud: boolean): string {
  const args = Object.entries(sentence.args).map(
    ([name, arg]) => [name, variable(name, arg, aloud)] as const,
  );
  const text = sayFromProgram(sentence.id, Object.fromEntries(args));
  if (!aloud) return text;
  // A teacher's words have their own marks for mathematics.
  return text.replaceAll(/\u{E000}([^\u{E001}]*)\u{E001}/gu, (_, name: string) => {
    const arg = sentence.args[name];
    return arg?.kind === 'math' ? spoken(arg.expr) : '';
  });
}

/** Splits a sentence into text and mathematics. */
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

/** The language of the blocks, if it is not that of the screens. */
export function shownIn(blocks: Block[]): Language | null {
  const texts = blocks.flatMap((block) =>
    block.kind === 'say'
      ? Object.values(block.say.args).flatMap((arg) => (arg.kind === 'words' ? [arg.words] : []))
      : [],
  );
  const missing = texts.find((text) => text[language()] === undefined);
  return (missing && LANGUAGES.find(({ tag }) => missing[tag] !== undefined)?.tag) ?? null;
}

/** The sentence in words, with mathematics in words too: for names and text alternatives. */
export function plain(sentence: Say): string {
  return format(sentence, true);
}
