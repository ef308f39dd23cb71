import { join } from 'node:path';
import process from 'node:process';
import { readFolder } from '../catalogue/files.ts';
import { readCabinet } from '../catalogue/read-cabinet.ts';
import { reignsOf } from '../catalogue/reigns.ts';
import { askForPiece } from './add/ask-for-piece.ts';
import { idOf, LISTED, newName, reignFrom, unknownName } from './add/names.ts';
import type { Listed } from './add/names.ts';
import { flagOf, ledgerWith, newId, nextNumber, pieceFile, problemsOfNew } from './add/new-piece.ts';
import type { NewFile } from './add/new-piece.ts';
import { QUESTIONS, readAloud } from './add/questions.ts';
import { canAsk } from './parts/ask.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { writeWhole } from './parts/write-whole.ts';

const HELP = `npm run add                         a new piece of the cabinet in content/, asked for step by step
npm run add -- --title "Penny of Edward I" --kind coin --weight "1.38 g" …      the same from flags, without a question

  --number "0178"                   your inventory number; without it, the next one
  --title "…"  --kind coin          what it is; the kinds stand in README.md; without a kind, coin
  --ruler edward-i                  by file or by name (several: repeat it); --mint, --denomination the same
  --realm England --reign 1216/1272   with --ruler: makes a ruler that is in no list yet
  --new-mint [--area England]       with --mint: makes a mint that is in no list yet
  --new-denomination                with --denomination: the same
  --story "…"                       the text below the facts
  --id york-penny                   the name of its folder; without it, made from the title

and any of these, each read aloud where there is something to read:
  ${QUESTIONS.filter(({ isPrivate }) => isPrivate !== true)
    .map(({ flag }) => `--${flag}`)
    .join(' ')}
into the ledger, which is never published:
  ${QUESTIONS.filter(({ isPrivate }) => isPrivate === true)
    .map(({ flag }) => `--${flag}`)
    .join(' ')}

  --cabinet DIR                     another cabinet
Nothing that is there already is ever changed, but for a new row of the ledger.
`;

const flags = Object.fromEntries(
  QUESTIONS.map(({ flag, isList }) => [flag, { type: 'string' as const, multiple: isList === true }]),
);
const { values, positionals, cabinet } = readWords(HELP, {
  ...flags,
  number: { type: 'string' },
  title: { type: 'string' },
  kind: { type: 'string' },
  ruler: { type: 'string', multiple: true },
  mint: { type: 'string' },
  denomination: { type: 'string' },
  realm: { type: 'string' },
  reign: { type: 'string' },
  'new-mint': { type: 'boolean' },
  area: { type: 'string' },
  'new-denomination': { type: 'boolean' },
  story: { type: 'string' },
  id: { type: 'string' },
  cabinet: { type: 'string' },
});
if (positionals.length > 0) endWith(`"${positionals[0]}" belongs to no flag. Put what has blanks in quotation marks.`);
const folder = await readFolder(cabinet.at);
if (folder === null) endWith(`There is no cabinet at ${cabinet.shown}. Begin one: npm run begin -- ${cabinet.shown}`);
const { records } = readCabinet(folder);
const consulted = {
  reigns: records.rulers.flatMap(reignsOf),
  works: records.works.map(({ id, fields }) => ({
    id,
    names: fields.short === undefined ? [] : [fields.short],
    title: fields.title,
  })),
};

const said: Record<string, string | readonly string[]> = {};
for (const [flag, value] of Object.entries(values as Readonly<Record<string, unknown>>)) {
  if (typeof value === 'string' && value.trim() !== '') said[flag] = value.trim();
  if (Array.isArray(value)) said[flag] = value.map((one) => String(one).trim()).filter((one) => one !== '');
}
const isAsked = said['title'] === undefined && canAsk();
const made: NewFile[] = [];
const answers: Record<string, string | readonly string[]> = isAsked
  ? await askForPiece({ said, records, consulted, made })
  : { number: nextNumber(records.pieces.map(({ fields }) => fields.number)), kind: 'coin', ...said };
if (typeof answers['title'] !== 'string') endWith('A piece wants a title. Write --title "Penny of Edward I, York".');
if (!isAsked) nameFromFlags();

const id = typeof said['id'] === 'string' ? said['id'] : newId(answers['title'], records.named.pieces);
if (records.named.pieces.includes(id)) endWith(`There is a piece ${id} already. Write another --id.`);
const story = typeof answers['story'] === 'string' ? answers['story'] : '';
const ledger = ledgerWith(folder.files.find(({ file }) => file === 'private/ledger.csv')?.text ?? null, id, answers);
const files = [...made, pieceFile(id, answers, story), ...(ledger === null ? [] : [ledger])];
const problems = problemsOfNew(folder, files);
if (problems.length > 0) {
  const told = problems.map((found) => {
    const flag = flagOf(found);
    return `${flag === null ? found.file : `--${flag}`}: ${found.says}`;
  });
  endWith(`${told.join('\n')}\n\nNothing was written.`);
}
if (!isAsked) {
  for (const question of QUESTIONS) {
    const scale = typeof answers['grade-scale'] === 'string' ? answers['grade-scale'] : undefined;
    for (const answer of [answers[question.flag] ?? []].flat()) {
      const aloud = readAloud(question, answer, consulted, scale);
      if (aloud.ok && aloud.value !== '') process.stdout.write(`${question.flag}: ${aloud.value}\n`);
    }
  }
}
await write(files);
const where = join(cabinet.shown, 'pieces', id);
process.stdout.write(
  `Written: ${files.map(({ file }) => join(cabinet.shown, file)).join(', ')}\nPut its photographs beside it, ${join(where, 'obverse.jpg')} and reverse.jpg, or bring them in: npm run photos -- FOLDER\n`,
);

/** Names said by flags become ids; those in no list are made where the flags say so. */
function nameFromFlags(): void {
  const text = (flag: string): string | undefined => (typeof said[flag] === 'string' ? said[flag] : undefined);
  const about = (listed: Listed): Readonly<Record<string, string | readonly Record<string, string>[]>> | null => {
    if (listed === 'denomination')
      return said['new-denomination'] === undefined && values['new-denomination'] !== true ? null : {};
    const area = text('area');
    if (listed === 'mint') return values['new-mint'] === true ? (area === undefined ? {} : { area }) : null;
    const realm = text('realm');
    const reign = text('reign');
    if (realm === undefined || reign === undefined) return null;
    const read = reignFrom(reign);
    return read.ok ? { realm, reigns: [read.value] } : endWith(`--reign: ${read.problem}`);
  };
  for (const listed of Object.keys(LISTED) as Listed[]) {
    const names = [said[listed] ?? []].flat().map((name) => {
      const known = idOf(listed, name, records);
      if (known !== null) return known;
      const fields = about(listed);
      if (fields === null) {
        const refusal = unknownName(listed, name, records);
        return endWith(refusal.ok ? '' : `--${listed}: ${refusal.problem}`);
      }
      const fresh = newName(listed, name, fields, records);
      if (fresh.made !== null) made.push(fresh.made);
      return fresh.id;
    });
    if (names.length > 0) answers[listed] = listed === 'ruler' ? names : (names[0] ?? '');
  }
}

/** The piece's own file comes last but for the ledger, and each is whole or is not there. */
async function write(written: readonly NewFile[]): Promise<void> {
  try {
    for (const { file, text } of written) await writeWhole(join(cabinet.at, file), text);
  } catch {
    endWith(`The piece cannot be written to ${cabinet.shown}. Allow writing there, and add it again.`);
  }
}
