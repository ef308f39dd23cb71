import { join } from 'node:path';
import process from 'node:process';
import { readFolder } from '../catalogue/files.ts';
import { changeCabinet } from '../catalogue/keep/change-cabinet.ts';
import type { Changes } from '../catalogue/keep/change-cabinet.ts';
import { readCabinet } from '../catalogue/read-cabinet.ts';
import type { Records } from '../catalogue/records.ts';
import { reignsOf } from '../catalogue/for-core/reigns.ts';
import { good, refuse } from '../core/outcome.ts';
import type { Outcome } from '../core/outcome.ts';
import { askForPiece, privateAnswer } from './add/ask-for-piece.ts';
import { idOf, LISTED, newName, reignFrom, unknownName } from './add/names.ts';
import type { Listed } from './add/names.ts';
import { flagOf, ledgerWith, newId, nextNumber, pieceFile, problemsOfNew } from './add/new-piece.ts';
import type { Answers, NewFile } from './add/new-piece.ts';
import { QUESTIONS, readAloud } from './add/questions.ts';
import { askYesOrNo, canAsk } from './parts/ask.ts';
import { endWith, readWords } from './parts/command-line.ts';
import type { Consulted } from './read/consulted.ts';
import { rm } from 'node:fs/promises';
import { z } from 'zod';
import { PRIVATE_FILE, readIfThere, writeWhole } from '../catalogue/keep/flush.ts';

const HELP = `npm run add                         a new piece of the cabinet in content/, asked for step by step
npm run add -- --title "Penny of Edward I" --kind coin --weight "1.38 g" …      the same from flags, without a question

  --number "0178"                   your inventory number; without it, the next one
  --title "…"  --kind coin          what it is; the kinds are in README.md; without a kind, coin
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
const there = await readFolder(cabinet.at);
if (there === null) endWith(`There is no cabinet at ${cabinet.shown}. Begin one: npm run begin -- ${cabinet.shown}`);

const said: Record<string, string | readonly string[]> = {};
for (const [flag, value] of Object.entries(values as Readonly<Record<string, unknown>>)) {
  if (typeof value === 'string' && value.trim() !== '') said[flag] = value.trim();
  if (Array.isArray(value)) said[flag] = value.map((one) => String(one).trim()).filter((one) => one !== '');
}
const made: NewFile[] = [];
const asked = said['title'] === undefined && canAsk() ? await ask(readCabinet(there).records) : null;
const outcome = await changeCabinet(cabinet.at, { command: 'npm run add' }, addPiece);
if (!outcome.ok) endWith(outcome.problem);
if (asked !== null) await forgetUnfinished(cabinet.at);
const { id, files } = outcome.value;
const where = join(cabinet.shown, 'pieces', id);
process.stdout.write(
  `Written: ${files.map(({ file }) => join(cabinet.shown, file)).join(', ')}\nPut its photographs beside it, ${join(where, 'obverse.jpg')} and reverse.jpg, or bring them in: npm run photos -- FOLDER\n`,
);

/** Adds the piece to the cabinet as it is now, which another command may have changed while the keeper was asked. */
async function addPiece(changes: Changes): Promise<Outcome<{ id: string; files: readonly NewFile[] }>> {
  const folder = await readFolder(cabinet.at);
  if (folder === null) return refuse(`There is no cabinet at ${cabinet.shown} any more.`);
  const { records } = readCabinet(folder);
  const numbers = records.pieces.map(({ fields }) => fields.number);
  const answers: Record<string, string | readonly string[]> = asked ?? {
    number: nextNumber(numbers),
    kind: 'coin',
    ...said,
  };
  if (typeof answers['title'] !== 'string')
    return refuse('A piece wants a title. Write --title "Penny of Edward I, York".');
  if (asked === null) nameFromFlags(answers, records);
  for (const { flag } of QUESTIONS.filter(({ isPrivate }) => isPrivate === true)) {
    const answer = answers[flag];
    if (typeof answer !== 'string') continue;
    const read = privateAnswer(flag, answer, records.cabinet?.fields.currency);
    if (!read.ok) return refuse(`--${flag}: ${read.problem}\n\nNothing was written.`);
    answers[flag] = read.value;
  }

  const id = typeof said['id'] === 'string' ? said['id'] : newId(answers['title'], records.named.pieces);
  if (records.named.pieces.includes(id)) return refuse(`There is a piece ${id} already. Write another --id.`);
  const story = typeof answers['story'] === 'string' ? answers['story'] : '';
  const rows = folder.files.find(({ file }) => file === 'private/ledger.csv')?.text ?? null;
  const ledger = ledgerWith(rows, id, answers);
  const created = [...made, pieceFile(id, answers, story)];
  const files = [...created, ...(ledger === null ? [] : [ledger])];
  const problems = problemsOfNew(folder, files);
  if (problems.length > 0) {
    const told = problems.map((found) => {
      const flag = flagOf(found);
      return `${flag === null ? found.file : `--${flag}`}: ${found.says}`;
    });
    return refuse(`${told.join('\n')}\n\nNothing was written.`);
  }
  if (asked === null) tellReadings(answers, records);
  for (const { file, text } of created) await changes.create(file, text);
  if (ledger !== null) await changes.put(ledger.file, ledger.text, rows);
  return good({ id, files });
}

/** Asks for a piece; what is answered is kept, and offered again where somebody broke off. */
async function ask(records: Records): ReturnType<typeof askForPiece> {
  const earlier = await readUnfinished(cabinet.at);
  if (earlier !== null && (await askYesOrNo(`Go on with the piece you began? (${inShort(earlier.answers)})`, true))) {
    Object.assign(said, { ...earlier.answers, ...said });
    made.push(...earlier.made);
  }
  const keep = (answers: Answers): Promise<void> => keepUnfinished(cabinet.at, { answers, made });
  return askForPiece({ said, records, consulted: consultedIn(records), made, keep });
}

function inShort(answers: Answers): string {
  return ['number', 'kind', 'denomination', 'ruler', 'date'].flatMap((flag) => answers[flag] ?? []).join(', ');
}

function consultedIn({ rulers, works }: Records): Consulted {
  return {
    types: null,
    reigns: rulers.flatMap(reignsOf),
    works: works.map(({ id, fields }) => ({
      id,
      names: fields.short === undefined ? [] : [fields.short],
      title: fields.title,
      ...(fields.numbers && { numbers: fields.numbers }),
    })),
  };
}

/** Says how each answer given by a flag was read. */
function tellReadings(answers: Answers, records: Records): void {
  const consulted = consultedIn(records);
  const scale = typeof answers['grade-scale'] === 'string' ? answers['grade-scale'] : undefined;
  for (const question of QUESTIONS)
    for (const answer of [answers[question.flag] ?? []].flat()) {
      const aloud = readAloud(question, answer, consulted, scale);
      if (aloud.ok && aloud.value !== '') process.stdout.write(`${question.flag}: ${aloud.value}\n`);
    }
}

/** Names said by flags become ids; those in no list are made where the flags say so. */
function nameFromFlags(answers: Record<string, string | readonly string[]>, records: Records): void {
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

/** What was answered before somebody broke off, and the list files made on the way. */
type Unfinished = { readonly answers: Answers; readonly made: readonly NewFile[] };

const form = z.object({
  answers: z.record(z.string(), z.union([z.string(), z.array(z.string())])),
  made: z.array(z.object({ file: z.string(), text: z.string() })),
});
const placeIn = (cabinet: string): string => join(cabinet, 'private', 'add-unfinished.json');

/** The piece that was broken off; null where there is none, or where its file cannot be read. */
async function readUnfinished(cabinet: string): Promise<Unfinished | null> {
  const text = await readIfThere(placeIn(cabinet));
  if (text === null) return null;
  try {
    return form.safeParse(JSON.parse(text)).data ?? null;
  } catch {
    return null;
  }
}

async function keepUnfinished(cabinet: string, unfinished: Unfinished): Promise<void> {
  await writeWhole(placeIn(cabinet), JSON.stringify(unfinished, null, 1), PRIVATE_FILE);
}

async function forgetUnfinished(cabinet: string): Promise<void> {
  await rm(placeIn(cabinet), { force: true });
}
