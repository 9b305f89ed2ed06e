import type { Block, Entry } from '../backend';
import { spoken } from '../math/spoken';
import { plain, say } from '../words';

function words(block: Block): string {
  switch (block.kind) {
    case 'say':
      return plain(block.say);
    case 'math':
      return spoken(block.expr);
    case 'figure':
      return plain(block.figure.alt);
  }
}

/** Sentences, mathematics and figures in words, one piece for each. */
export function blockWords(blocks: Block[]): string[] {
  return blocks.map(words);
}

/** The choices or things to order, numbered as shown. */
export function entryWords(entry: Entry): string[] {
  const numbered = (pieces: string[]) =>
    pieces.map((piece, place) => say('aloud-choice', { number: place + 1, words: piece }));
  switch (entry.kind) {
    case 'one_choice':
    case 'several_choices':
      return numbered(entry.choices.map((choice) => words(choice.shows)));
    case 'ordering':
      return numbered(entry.things.map((thing) => words(thing.shows)));
    case 'several_numbers':
      return entry.fields.map(plain);
    case 'two_parts':
      return [...entryWords(entry.first), plain(entry.ask), ...entryWords(entry.second)];
    case 'boxes':
    case 'whole_number':
    case 'decimal':
    case 'fraction':
    case 'mixed':
    case 'money':
    case 'time':
    case 'duration':
    case 'comparison':
    case 'expression':
    case 'equation':
    case 'coordinates':
    case 'number_line_point':
    case 'number_line_ray':
    case 'angle':
    case 'shaded_fraction':
    case 'plot':
    case 'grid_area':
    case 'quotient_remainder':
      return [];
  }
}
