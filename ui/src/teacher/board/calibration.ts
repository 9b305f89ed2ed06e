import { number } from '../../lib/words';

/** A share from −1 to 1 as hundredths with its sign: "+12", "−5", "0". */
export function ofHundred(share: number): string {
  const whole = Math.round(share * 100);
  if (whole === 0) return '0';
  return `${whole > 0 ? '+' : '−'}${number(Math.abs(whole))}`;
}
