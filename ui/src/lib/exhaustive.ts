/** For the place where no case of a union is left: a new case then does not compile. */
export function never(value: never): never {
  throw new Error(`Unexpected value: ${JSON.stringify(value)}`);
}

/** Lists the values of a union. A missing or unknown value does not compile. */
export function valuesOf<Value extends string>(all: Record<Value, true>): Value[] {
  return Object.keys(all) as Value[];
}
