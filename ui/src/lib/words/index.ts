export { exercisesFrom } from './bundles';
export { language, locale } from './chosen.svelte';
export { dateFormat } from './formats';
export { LANGUAGE_OPTIONS, LANGUAGES, lineOf, lookup, nameOf, textIn } from './languages';
export { date, exact, list, number, opening, percent } from './numbers';
export { decimalSign, inSigns, setDecimalSign } from './signs.svelte';
export { pieces, plain, shownIn } from './sentence';
export {
  hasWords,
  loadExerciseWords,
  loadWords,
  say,
  sayIn,
  sayPart,
  setLanguage,
  wordsOf,
} from './words.svelte';
