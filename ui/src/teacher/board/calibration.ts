import { exact, number } from '../../lib/words';

/** A share from −1 to 1 as hundredths with its sign: "+12", "−5", "0". */
export function ofHundred(share: number): string {
  const whole = Math.round(share * 100);
  if (whole === 0) return '0';
  return `${whole > 0 ? '+' : '−'}${number(Math.abs(whole))}`;
}

/** A measure from −1 to 1 with two places always, so that a column of them stands in line. */
export const hundredths = (value: number): string =>
  exact(Math.abs(value) < 0.005 ? '0.00' : value.toFixed(2));
