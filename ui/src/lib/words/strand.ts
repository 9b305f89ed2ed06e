import { sayFromProgram } from './words.svelte';

/** The name of a strand, by the id that a concept has for it. */
export function strandWords(strand: string): string {
  return sayFromProgram(`strand-${strand}`);
}
