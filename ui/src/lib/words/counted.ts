import { FluentNumber, type FluentVariable } from '@fluent/bundle';
import { numberFormat } from './formats';
import { inSigns } from './signs.svelte';

/** A count that chooses the plural as usual and is written in the student's signs. */
class Counted extends FluentNumber {
  override toString(): string {
    return inSigns(numberFormat('en-US', {}).format(this.value));
  }
}

type Args = Record<string, FluentVariable>;

/** The arguments of a sentence with their numbers in the student's signs. */
export function counted(args: Args): Args {
  return Object.fromEntries(
    Object.entries(args).map(([name, arg]) => [
      name,
      typeof arg === 'number' ? new Counted(arg) : arg,
    ]),
  );
}
