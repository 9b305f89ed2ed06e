import type { Unlocked } from '../../lib/backend';
import { say } from '../../lib/words';

/** What to say after a passphrase of the desk was typed; nothing if it is right. */
export function wrongWords(answer: Unlocked): string[] {
  if (answer.kind === 'open') return [];
  const { wait_seconds } = answer;
  const wait = wait_seconds > 0 ? [say('error-pin-wait', { wait_seconds })] : [];
  return answer.kind === 'wrong' ? [say('safe-lock-wrong'), ...wait] : wait;
}
