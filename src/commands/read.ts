import process from 'node:process';
import { parseArgs } from 'node:util';
import type { Outcome } from '../core/outcome.ts';
import { refuse } from '../core/outcome.ts';
import { consult, NOTHING } from './read/consulted.ts';
import type { Answer, Beside, Kind } from './read/kind.ts';
import { kinds } from './read/all-kinds.ts';

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

const OPTIONS = {
  json: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  scale: { type: 'string' },
  problem: { type: 'string' },
  cabinet: { type: 'string' },
} as const;

/** Stands before a word that begins with a hyphen and is no flag, such as the year -0043. */
const GUARD = '\u0000';

function commandLine(words: readonly string[]) {
  const guarded = words.map((word) => (/^-[^-h]/u.test(word) ? GUARD + word : word));
  const { values, positionals } = parseArgs({ args: guarded, options: OPTIONS, allowPositionals: true, strict: true });
  return { values, positionals: positionals.map((word) => word.replace(GUARD, '')) };
}

/** Where reigns and works are looked up: the cabinet named, or the usual one if there is one. */
type Cabinet = { readonly named: string | undefined; readonly usual: string };

/** Reads the words as the kind does, with the help of the cabinet where the kind wants it. */
async function read(kind: Kind, words: readonly string[], beside: Beside, cabinet: Cabinet): Promise<Outcome<Answer>> {
  const least = kind.args.length - (kind.optional ?? 0);
  if (words.length < least)
    return refuse(`${kind.name} takes ${kind.args.slice(0, least).join(', then ')}. Write --help to see examples.`);
  const most = kind.args.length === 1 || kind.optional !== undefined ? Infinity : kind.args.length;
  if (words.length > most)
    return refuse(`${kind.name} takes ${kind.args.join(', then ')} and nothing more. Put each in quotation marks.`);
  const outcome = kind.read(words, beside);
  if (kind.consults === undefined || (kind.consults === 'in need' && outcome.ok)) return outcome;
  const consulted = await consult(cabinet.named ?? cabinet.usual);
  if (consulted === null && cabinet.named !== undefined)
    return refuse(`There is no cabinet in ${cabinet.named}. Write the folder that holds cabinet.yaml.`);
  const informed = kinds(consulted ?? NOTHING).find(({ name }) => name === kind.name);
  return informed?.read(words, beside) ?? outcome;
}

function print(outcome: Outcome<Answer>, json: boolean): void {
  process.exitCode = outcome.ok ? 0 : 1;
  if (json)
    process.stdout.write(`${JSON.stringify(outcome.ok ? { ok: true, ...outcome.value.fields } : outcome, null, 2)}\n`);
  else if (outcome.ok) process.stdout.write(`${outcome.value.sentence}\n`);
  else process.stderr.write(`${outcome.problem}\n`);
}

async function run(): Promise<void> {
  const { values, positionals } = commandLine(process.argv.slice(2));
  const [name, ...words] = positionals;
  const all = kinds();
  const kind = all.find((one) => one.name === name);
  if (values.help === true || name === undefined) {
    process.stdout.write(help(kind));
    process.exitCode = values.help === true ? 0 : 1;
    return;
  }
  const known = all.map((one) => one.name).join(', ');
  const { scale, problem } = values;
  const beside = { ...(scale === undefined ? {} : { scale }), ...(problem === undefined ? {} : { problem }) };
  const outcome =
    kind === undefined
      ? refuse(`There is no kind "${name}" to read. Write one of ${known}, then the text.`)
      : await read(kind, words, beside, { named: values.cabinet ?? process.env['CABINET'], usual: 'content' });
  print(outcome, values.json === true);
}

try {
  await run();
} catch (error) {
  const said = error instanceof Error ? (error.message.split('. ')[0] ?? '') : String(error);
  print(refuse(`${said}. Write --help to see what this command takes.`), process.argv.includes('--json'));
}
