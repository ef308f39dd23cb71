import type { Kind } from './kind.ts';
import { kinds } from './all-kinds.ts';

const USAGE = `npm run read -- KIND "TEXT"      how a text is understood, in a sentence
      --json                     the same for a program
      --scale ID                 the scale of a grade or a rarity
      --problem "cleaned"        what is wrong with a graded piece
      --cabinet DIR              whose rulers and works are known: date "Edward I, year 7", reference "North 1018"

Ends with 0 when the text can be read, and with 1 and a sentence on what to write instead when it cannot.
`;

/** A word as it is typed, in quotation marks where a shell needs them. */
function typed(word: string): string {
  return /^[\w./-]+$/u.test(word) ? word : `"${word}"`;
}

function lesson(kind: Kind): string {
  const lines = kind.examples.map((words) => {
    const outcome = kind.read(words, {});
    return `  ${kind.name} ${words.map(typed).join(' ')}\n      ${outcome.ok ? outcome.value.sentence : outcome.problem}\n`;
  });
  return lines.join('');
}

/** What the command takes, taught by examples with the answers it gives to them; of one kind, or of all. */
export function help(kind?: Kind): string {
  const shown = kind === undefined ? kinds() : [kind];
  return `${USAGE}\n${shown.map(lesson).join('\n')}`;
}
