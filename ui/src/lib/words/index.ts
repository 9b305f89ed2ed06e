export { exercisesFrom } from './bundles';
export { language, locale } from './chosen.svelte';
export { dateFormat } from './formats';
export { LANGUAGE_OPTIONS, LANGUAGES, lineOf, lookup, nameOf, textIn } from './languages';
export { date, exact, list, number, opening, percent } from './numbers';
export { decimalSign, inSigns, setDecimalSign } from './signs.svelte';
export { kebab } from './kebab';
export type { MessageId } from './message-ids';
export { pieces, plain, shownIn } from './sentence';
export { strandWords } from './strand';
export {
  hasWords,
  loadExerciseWords,
  loadWords,
  say,
  sayFromProgram,
  sayIn,
  sayPart,
  setLanguage,
  wordsOf,
} from './words.svelte';
