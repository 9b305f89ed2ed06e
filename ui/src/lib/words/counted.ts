import { FluentNumber, type FluentVariable, type Scope } from '@fluent/bundle';
import { decimalSign, inSigns } from './signs.svelte';

/** A count that chooses the plural as ever and is written in the student's signs. */
class Counted extends FluentNumber {
  override toString(scope?: Scope): string {
    return inSigns(scope ? super.toString(scope) : String(this.value));
  }
}

type Args = Record<string, FluentVariable>;

/** The arguments of a sentence with their numbers in the student's signs. */
export function counted(args: Args): Args {
  if (decimalSign() === '.') return args;
  return Object.fromEntries(
    Object.entries(args).map(([name, arg]) => [
      name,
      typeof arg === 'number' ? new Counted(arg) : arg,
    ]),
  );
}
