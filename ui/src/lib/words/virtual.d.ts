// Made by build/languages.ts; typed in languages.ts.
declare module 'virtual:languages' {
  export const LANGUAGES: unknown;
  export const WORDS: unknown;
}
