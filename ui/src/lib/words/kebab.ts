/** The type of `kebab`. */
export type Kebab<Code extends string> = Code extends `${infer Head}_${infer Tail}`
  ? `${Head}-${Kebab<Tail>}`
  : Code;

/** Writes a code of the contract as message ids write it: `not_done` becomes `not-done`. */
export function kebab<Code extends string>(code: Code): Kebab<Code> {
  return code.replaceAll('_', '-') as Kebab<Code>;
}
