/** Whether somebody typed the words asked for, however large and with whatever spaces around. */
export const sameWords = (typed: string, wanted: string): boolean =>
  typed.trim().toLowerCase() === wanted.trim().toLowerCase();
