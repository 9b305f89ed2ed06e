/** Whether the typed text is the wanted one, except for case and spaces around it. */
export const sameWords = (typed: string, wanted: string): boolean =>
  typed.trim().toLowerCase() === wanted.trim().toLowerCase();
