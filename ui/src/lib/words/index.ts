export { exercisesFrom, LOCALES } from './bundles';
export { dateFormat } from './formats';
export { date, exact, list, number, opening, percent } from './numbers';
export { decimalSign, inSigns, setDecimalSign } from './signs.svelte';
export { pieces, plain } from './sentence';
export {
  hasWords,
  language,
  loadExerciseWords,
  loadWords,
  say,
  sayIn,
  sayPart,
  setLanguage,
  wordsOf,
} from './words.svelte';
