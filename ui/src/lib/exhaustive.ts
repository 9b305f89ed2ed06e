/** Stands where no case of a union is left, so that a case added later does not compile. */
export function never(value: never): never {
  throw new Error(`Unexpected value: ${JSON.stringify(value)}`);
}

/** Lists every value of a union. A value that is left out or unknown does not compile. */
export function valuesOf<Value extends string>(all: Record<Value, true>): Value[] {
  return Object.keys(all) as Value[];
}
