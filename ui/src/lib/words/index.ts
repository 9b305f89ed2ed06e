export { exercisesFrom, LOCALES } from './bundles';
export { dateFormat } from './formats';
export { date, exact, list, number, opening, percent } from './numbers';
export { decimalSign, inSigns, setDecimalSign } from './signs.svelte';
export { kebab } from './kebab';
export type { MessageId } from './message-ids';
export { pieces, plain } from './sentence';
export { strandWords } from './strand';
export {
  hasWords,
  language,
  loadExerciseWords,
  loadWords,
  say,
  sayFromProgram,
  sayIn,
  sayPart,
  setLanguage,
  wordsOf,
} from './words.svelte';
