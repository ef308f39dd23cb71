import { today } from '../catalogue/check-cabinet.ts';
import { relative, resolve } from 'node:path';
import process from 'node:process';
import { readFolder } from '../catalogue/files.ts';
import { checkShape } from '../catalogue/ledger-and-guide.ts';
import { formatProblem } from '../catalogue/problem.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import { changeCabinet } from '../catalogue/keep/change-cabinet.ts';
import { PRIVATE_FILE, readIfThere, writeWhole } from '../catalogue/keep/flush.ts';
import { good, refuse } from '../core/outcome.ts';
import type { BroughtIn } from '../import/reimport/last-import.ts';
import { parseBroughtIn } from '../import/reimport/last-import.ts';
import { headingsOfFields } from '../import/columns/heading-of-field.ts';
import { formatNames, NOTHING_SAID, parseNames } from '../import/names/names-file.ts';
import { isLedger } from '../import/plan/merge-ledger.ts';
import { planImport } from '../import/plan/plan-import.ts';
import type { ImportPlan } from '../import/plan/plan-import.ts';
import type { RulerOfDates } from '../import/cells/read-rows.ts';
import { readRows } from '../import/cells/read-rows.ts';
import { reignsOf } from '../catalogue/for-core/reigns.ts';
import { readCabinet } from '../catalogue/read-cabinet.ts';
import { readSheetsFrom } from '../import/sheets/read-sheets.ts';
import { chooseSheet, tellReading } from './import/choose-sheet.ts';
import { mappingOf } from './import/mapping-of.ts';
import { earlierImport } from './import/earlier-import.ts';
import { importName, importPlaces, pathIn } from './import/place-of.ts';
import { tellNames, tellOffers } from './import/tell-names.ts';
import { lentLists } from './import/demo-lists.ts';
import { tellColumns } from './import/tell-columns.ts';
import { tellPlan } from './import/tell-plan.ts';
import { hasSameTexts, unreadCsv, writeImport } from './import/write-import.ts';
import { tellSecrets } from './import/tell-secrets.ts';
import { tellTargets } from './import/tell-targets.ts';
import { tellUnnamed } from './import/tell-unnamed.ts';
import { writeTrial } from './import/write-trial.ts';
import { askYesOrNo, canAsk } from './parts/ask.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { offerTypes } from './parts/offer-types.ts';
import { progressLine } from './parts/progress-line.ts';
import { undoLast } from './parts/undo-last.ts';

const HELP = `npm run import -- coins.xlsx       what a spreadsheet (CSV, TSV, XLSX, XLS, ODS) would become; writes no piece yet

  --write                 writes the pieces, the lists and the ledger
  --mapping FILE          how the columns are read; without it, the one kept in private/import/, or one is suggested there
  --sheet NAME            which sheet of a workbook
  --heading-row 3         the row the headings are in, when it is not found
  --encoding NAME         of a text file: utf-8, windows-1252, macintosh …
  --separator ";"         of a text file: comma, semicolon, tab, pipe, or the sign itself
  --publish no            what is said of every new piece: yes, unlisted or no; without it, yes
  --conflicts sheet       whose word counts where the sheet and a file have both changed: sheet or file
  --targets               lists what a column may be read into, with a sentence and an example each
  --as coins              the name it was imported by before, when the file has another name now
  --undo                  takes back what the last import wrote
  --lists                 takes rulers, mints, denominations and books of the same name from the lists that come with the program
  --yes                   takes the suggested mapping and the joined names as they are
  --cabinet DIR           another cabinet than content/

Without --write nothing but the mapping, the names and the list of unread cells is written, all under private/import/ in the cabinet.
A column that the mapping does not name goes to the ledger, never to the public side. Imported again, the same sheet changes only
what has changed in it and was not changed by hand; nothing is ever deleted.
`;

const { values, positionals, cabinet } = readWords(HELP, {
  write: { type: 'boolean' },
  mapping: { type: 'string' },
  sheet: { type: 'string' },
  'heading-row': { type: 'string' },
  encoding: { type: 'string' },
  separator: { type: 'string' },
  publish: { type: 'string' },
  conflicts: { type: 'string' },
  as: { type: 'string' },
  undo: { type: 'boolean' },
  targets: { type: 'boolean' },
  lists: { type: 'boolean' },
  yes: { type: 'boolean' },
  cabinet: { type: 'string' },
});
if (values.undo === true) await undoLast(cabinet, 'npm run import');
const say = (text: string): void => void process.stdout.write(`${text}\n`);
if (values.targets === true) {
  say(tellTargets());
  process.exit(0);
}
const oneOf = (flag: 'publish' | 'conflicts', words: readonly string[]): string | null => {
  const said = values[flag];
  if (said === undefined || words.includes(said)) return said ?? null;
  return endWith(`--${flag} takes ${words.join(' or ')}; this says "${said}".`);
};
const publish = oneOf('publish', ['yes', 'unlisted', 'no']);
const conflicts = oneOf('conflicts', ['sheet', 'file']);
const headingRow = values['heading-row'];
if (headingRow !== undefined && !/^\d{1,5}$/.test(headingRow))
  endWith(`--heading-row takes the number of a row, or 0 for none; this says "${headingRow}".`);
if (values.as !== undefined && !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(values.as))
  endWith(`--as takes the name of an import, a folder in private/import/ like coins; this says "${values.as}".`);
const [file, ...more] = positionals;
if (file === undefined || more.length > 0) endWith('Name one spreadsheet: npm run import -- coins.xlsx');

const folder = await readFolder(cabinet.at);
if (folder?.files.some((held) => held.file === 'cabinet.yaml') !== true)
  endWith(`There is no cabinet at ${cabinet.shown}. Begin one: npm run begin -- ${cabinet.shown}`);
const { records } = readCabinet(folder);
const unreadable = records.named.pieces.filter((id) => !records.pieces.some((piece) => piece.id === id));
if (unreadable.length > 0)
  endWith(
    `${unreadable.length === 1 ? 'The piece' : 'The pieces'} ${unreadable.slice(0, 3).join(', ')} cannot be read, so no number can be told from theirs. Run npm run check, and fix what it says first.`,
  );

const ledger = folder.files.find((held) => held.file === 'private/ledger.csv');
if (ledger !== undefined && (ledger.text === null || !isLedger(ledger.text)))
  endWith(
    `${cabinet.shown}/private/ledger.csv ${ledger.text === null ? 'is not UTF-8 text' : 'has no column piece'}, so nothing can be put in it and nothing was written. Run npm run check, and fix what it says first.`,
  );

const uneven = ledger === undefined ? [] : checkShape(ledger.file, ledger.text ?? '');
if (uneven.length > 0)
  endWith(
    `${uneven.map((found) => formatProblem(found, cabinet.shown)).join('\n\n')}\n\nNothing was written: fix the ledger first.`,
  );

const read = await readSheetsFrom(resolve(file), {
  ...(values.encoding === undefined ? {} : { encoding: values.encoding }),
  ...(values.separator === undefined ? {} : { separator: values.separator }),
  ...(values.sheet === undefined ? {} : { sheet: values.sheet }),
  ...(headingRow === undefined ? {} : { headingRow: Number(headingRow) }),
});
if (!read.ok) endWith(read.problem);
const chosen = await chooseSheet(read.value, values.sheet ?? null);
if (!chosen.ok) endWith(chosen.problem);
const { sheet, isOneOfSeveral } = chosen.value;
const name = values.as ?? importName(file, isOneOfSeveral ? sheet.name : null);
const places = importPlaces(name);
const shown = (inside: string): string => relative(process.cwd(), pathIn(cabinet.at, inside));
say(tellReading(file, read.value, sheet));

const shownMapping = values.mapping ?? shown(places.mapping);
const found = await mappingOf({
  sheet,
  records,
  at: values.mapping === undefined ? pathIn(cabinet.at, places.mapping) : resolve(values.mapping),
  shown: shownMapping,
  isGiven: values.mapping !== undefined,
});
if (!found.ok) endWith(found.problem);
const { mapping, isNew, asked } = found.value;
const rows = readRows(sheet, mapping, records.rulers.map(rulerOfDates));

const namesText = await readIfThere(pathIn(cabinet.at, places.names));
const said = namesText === null ? null : parseNames(namesText);
if (said?.ok === false) endWith(`${shown(places.names)} · ${said.problem}`);
const readBefore = async (): Promise<string> => (await readIfThere(pathIn(cabinet.at, places.broughtIn))) ?? '';
const beforeText = await readBefore();
const before = parseBroughtIn(beforeText);
const earlier = before.length === 0 ? await earlierImport(folder, rows.drafts) : null;
const lent = await lentLists(cabinet.at);
let takesOffers = values.lists === true;
const planOn = (onto: CabinetFolder, earlierRows: readonly BroughtIn[]): ImportPlan =>
  planImport(
    {
      ...rows,
      cells: new Map(sheet.rows.map(({ row, cells }) => [row, cells.map(({ text }) => text)])),
      headings: headingsOfFields(sheet, mapping),
      said: said?.value ?? NOTHING_SAID,
      before: earlierRows,
      prefer: conflicts === 'sheet' || conflicts === 'file' ? conflicts : null,
      always: publish === null ? {} : { publish },
      lent,
      takesOffers,
      day: today(),
    },
    onto,
  );
let plan = planOn(folder, before);
if (plan.offers.length > 0 && !takesOffers && canAsk()) {
  say(`\n${tellOffers(plan.offers, false)}`);
  takesOffers = await askYesOrNo('Take these from the lists that come with the program?', true);
  if (takesOffers) plan = planOn(folder, before);
}

say(`\nWhat each column becomes (change it in ${shownMapping}):\n${tellColumns(sheet, mapping, plan)}`);
say(`\n${tellPlan(plan, sheet.rows.length + sheet.setAside.length, shown(places.unread))}`);
const unnamed = tellUnnamed(sheet, mapping);
if (unnamed !== '') say(`\n${unnamed}`);
const fieldHeadings = headingsOfFields(sheet, mapping);
const secrets = tellSecrets(plan.secrets, fieldHeadings, shownMapping, today());
if (secrets !== '') say(`\n${secrets}`);
if (earlier !== null)
  say(`\nMost of these numbers were imported as "${earlier}" before. If this is that sheet, add --as ${earlier}`);
if (asked.length > 0)
  say(
    `\nWhat the sheet does not tell (the answers go into ${shownMapping}):\n${asked.map((line) => `  ${line}`).join('\n')}`,
  );
if (plan.unread.length + plan.setAside.length > 0)
  await writeWhole(pathIn(cabinet.at, places.unread), unreadCsv(plan), PRIVATE_FILE);
const names = formatNames(namesText, plan.questions);
if (names !== null && names !== namesText) await writeWhole(pathIn(cabinet.at, places.names), names, PRIVATE_FILE);
const named = tellNames(plan.questions, shown(places.names));
if (named !== '') say(`\n${named}`);
const offered = tellOffers(plan.offers, takesOffers);
if (offered !== '') say(`\n${offered}`);

// Two imports of one sheet at once would mix their pages.
const trial = await changeCabinet(cabinet.at, { command: 'npm run import' }, async () =>
  good(
    await writeTrial(pathIn(cabinet.at, places.trial), {
      sheet,
      mapping,
      plan,
      before,
      questions: [...asked, named, offered, secrets],
    }),
  ),
);
if (!trial.ok) endWith(trial.problem);
say(`\nEvery row and what it becomes, to be read in a browser: ${relative(process.cwd(), trial.value)}`);

const isLookedAt = values.yes === true || (!isNew && plan.questions.length === 0);
const isSaid = values.write === true && isLookedAt;
const isWanted = isSaid || (canAsk() && (await askYesOrNo('Write this to the cabinet?', false)));
if (!isWanted) {
  const again = process.argv
    .slice(2)
    .filter((word) => word !== '--write')
    .map(quoted)
    .join(' ');
  const reason =
    values.write !== true ? '' : ' The mapping or the names above are new: look at them first, or add --yes.';
  say(`\nNothing was written to the cabinet.${reason} When it is right: npm run import -- ${again} --write`);
} else {
  const outcome = await changeCabinet(cabinet.at, { command: 'npm run import' }, async (changes) => {
    const now = await readFolder(cabinet.at);
    const textNow = await readBefore();
    const isSame = now !== null && textNow === beforeText && hasSameTexts(now, folder);
    if (now === null || (!isSame && !isSaid))
      return refuse(
        'The cabinet was changed while you looked at this. Nothing was written: run the same command again.',
      );
    const beforeNow = isSame ? before : parseBroughtIn(textNow);
    const planned = isSame ? plan : planOn(now, beforeNow);
    await writeImport({ changes, places, plan: planned, sheet, before: beforeNow, tell: progressLine('Pieces') });
    return good(planned.pieces.filter(({ state }) => state !== 'same').map(({ id }) => id));
  });
  if (!outcome.ok) endWith(outcome.problem);
  const ids = new Set(outcome.value);
  const written = ids.size;
  say(
    `\n${written} ${written === 1 ? 'piece' : 'pieces'} written to ${cabinet.shown}. Now: npm run check -- --cabinet ${quoted(cabinet.shown)}\nTo take it back: npm run import -- --undo --cabinet ${quoted(cabinet.shown)}`,
  );
  const after = records.series.length === 0 ? null : await readFolder(cabinet.at);
  const held = after === null ? null : readCabinet(after).records;
  if (held !== null) {
    say('\nTypes that follow for what was written:');
    await offerTypes(cabinet.at, { ...held, pieces: held.pieces.filter(({ id }) => ids.has(id)) }, false);
  }
}

/** What dates are settled by of a ruler in the cabinet. */
function rulerOfDates(ruler: (typeof records.rulers)[number]): RulerOfDates {
  const { name, realm, 'other-names': others } = ruler.fields;
  return { names: [name, ...others], realm, reigns: reignsOf(ruler) };
}

/** A word as it is written to a shell. */
function quoted(word: string): string {
  return /^[\w./:=@%+-]+$/.test(word) ? word : `"${word.replace(/["\\$`]/g, '\\$&')}"`;
}
