import { FluentNumber, type FluentVariable } from '@fluent/bundle';
import { numberFormat } from './formats';
import { inSigns } from './signs.svelte';

/** A number that chooses the plural and is written with the student's signs. */
class Counted extends FluentNumber {
  override toString(): string {
    return inSigns(numberFormat('en-US', {}).format(this.value));
  }
}

type Args = Record<string, FluentVariable>;

/** The arguments of a message, with numbers in the student's signs. */
export function counted(args: Args): Args {
  return Object.fromEntries(
    Object.entries(args).map(([name, arg]) => [
      name,
      typeof arg === 'number' ? new Counted(arg) : arg,
    ]),
  );
}
