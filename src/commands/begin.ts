import { chmod, readdir } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import process from 'node:process';
import { changeCabinet, recoverCabinet } from '../catalogue/keep/change-cabinet.ts';
import { isCode, makeFolder } from '../catalogue/keep/fault-sentence.ts';
import { cabinetSchema } from '../catalogue/schema/cabinet.ts';
import { good, refuse } from '../core/outcome.ts';
import { filesOfNewCabinet } from './begin/new-cabinet.ts';
import { TO_RUN } from './begin/starters.ts';
import { askText, askYesOrNo, canAsk } from './parts/ask.ts';
import { endWith, readWords } from './parts/command-line.ts';

const HELP = `npm run begin -- ../my-cabinet      a new cabinet in a new folder; what is not said here is asked

  --title "My cabinet"              the name of the site
  --keeper "A. N. Other"            your public name: a first name, initials or a club will do
  --language en                     the language of your texts; without it, en
  --currency GBP                    the money your ledger is kept in; without it, GBP
  --address https://example.org/    where the site will stand; may be written later
  --lists                           also the demo's rulers, mints, denominations, books and eras, which are facts and free to use

Writes commented examples beside what a cabinet must have, and a .gitignore that keeps private/ out of git.
A folder that holds anything already is left as it is.
`;

const { values, positionals } = readWords(HELP, {
  title: { type: 'string' },
  keeper: { type: 'string' },
  language: { type: 'string' },
  currency: { type: 'string' },
  address: { type: 'string' },
  lists: { type: 'boolean' },
});
const [folder, ...more] = positionals;
if (folder === undefined || more.length > 0)
  endWith('Name one new folder for the cabinet: npm run begin -- ../my-cabinet');
const into = resolve(folder);
const shown = relative(process.cwd(), into) || '.';
await recoverCabinet(into);
// What a begin that was stopped leaves: empty folders, its lock and an empty journal.
const OURS = /^private[/\\](\.gitignore|\.lock[/\\].*)$/;
const TAKEN = `The folder ${shown} holds something already, and nothing was written. Choose a new one.`;
if (await isTaken()) endWith(TAKEN);

const form = cabinetSchema.shape;
type Field = 'title' | 'keeper' | 'language' | 'currency' | 'address';
/** The sentence that is wrong with an answer; null when it will do. */
const refusal = (field: Field, answer: string): string | null => {
  const read = form[field].safeParse(answer);
  return read.success ? null : answer.trim() === '' ? 'This wants a few words.' : (read.error.issues[0]?.message ?? '');
};
const isAsked = canAsk();

async function answer(field: Field, question: string, otherwise: string | null): Promise<string> {
  const said = values[field];
  if (said !== undefined) {
    const problem = refusal(field, said);
    if (problem !== null) endWith(`--${field}: ${problem}`);
    return said.trim();
  }
  if (isAsked)
    return askText(question, {
      initial: otherwise ?? '',
      refuse: (given) => (given === '' && otherwise === '' ? null : refusal(field, given)),
    });
  return (
    otherwise ?? endWith(`Say --${field}: there is nobody here to ask. Write --help to see what this command takes.`)
  );
}

const title = await answer('title', 'What is the site called?', null);
const keeper = await answer(
  'keeper',
  'Your public name, as the site will print it? A first name or a club will do.',
  null,
);
const language = await answer('language', 'In which language do you write?', 'en');
const currency = await answer('currency', 'In which money is your ledger kept?', 'GBP');
const address = await answer('address', 'Where will the site stand? Leave it empty if you do not know yet.', '');
const withLists =
  values.lists ??
  (isAsked &&
    (await askYesOrNo(
      'Copy the demo’s lists of English rulers, mints, denominations, books and eras as well?',
      false,
    )));

const files = await filesOfNewCabinet({ title, keeper, language, currency, address: address || null, withLists });
makeFolder(into);
const outcome = await changeCabinet(into, { command: 'npm run begin' }, async (changes) => {
  // Another may have begun the same one while this one asked its questions.
  if (await isTaken()) return refuse(TAKEN);
  for (const { file, text } of files) await changes.create(file, text);
  return good(files.length);
});
if (!outcome.ok) endWith(outcome.problem);
for (const file of TO_RUN) await chmod(join(into, file), 0o755).catch(() => undefined);
process.stdout.write(`A new cabinet is in ${shown}: ${files.length} files, one example piece that is never published.

Three things to do next:
  1. Import what you have:   npm run import -- my-sheet.xlsx --cabinet ${shown}
     or open the desk:         npm run desk -- --cabinet ${shown}
     (or double-click open-the-desk in that folder)
  2. Ask what is wrong:        npm run check -- --cabinet ${shown}
  3. Look at it:               npm start -- --cabinet ${shown}
`);

async function isTaken(): Promise<boolean> {
  const found = await readdir(into, { recursive: true, withFileTypes: true }).catch((error: unknown) =>
    isCode(error, 'ENOENT') ? [] : endWith(`${shown} is not a folder that can be read. Choose a new one.`),
  );
  return found.some((one) => !one.isDirectory() && !OURS.test(relative(into, join(one.parentPath, one.name))));
}
