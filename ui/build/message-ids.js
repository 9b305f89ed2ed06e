// Writes the ids of the screens' messages as a type: npm run messages.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const HERE = fileURLToPath(import.meta.url);
const MESSAGES = join(dirname(HERE), '../../shared/messages/en');
const TYPE = join(dirname(HERE), '../src/lib/words/message-ids.ts');

/** Files whose messages only the program uses. */
const PROGRAM_ONLY = /^(reports|concepts|misconceptions|items-.*)\.ftl$/;

/** The ids of the messages that screens may name, in the order of their files. */
export function messageIds() {
  return readdirSync(MESSAGES)
    .filter((name) => name.endsWith('.ftl') && !PROGRAM_ONLY.test(name))
    .sort()
    .flatMap((name) => {
      const text = readFileSync(join(MESSAGES, name), 'utf8');
      return [...text.matchAll(/^([a-z][\w-]*) *=/gm)].map(([, id = '']) => id);
    });
}

/** The text of `message-ids.ts`. */
export function messageIdsType() {
  const ids = messageIds().map((id) => `  | '${id}'`);
  return `// Generated from shared/messages by npm run messages.\nexport type MessageId =\n${ids.join('\n')};\n`;
}

if (process.argv[1] === HERE) writeFileSync(TYPE, messageIdsType());
