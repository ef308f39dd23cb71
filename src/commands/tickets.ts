import { join, relative, resolve } from 'node:path';
import process from 'node:process';
import { PRIVATE_FILE, writeWhole } from '../catalogue/keep/flush.ts';
import { checkCabinet } from '../catalogue/check-cabinet.ts';
import { readCsv } from '../catalogue/csv.ts';
import { readFolder } from '../catalogue/files.ts';
import { recoverCabinet } from '../catalogue/keep/change-cabinet.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { selectPieces } from '../desk/select-pieces.ts';
import { PAPERS, TICKET_CHOICES, ticketsFile, ticketsOf } from '../desk/tickets.ts';
import type { PaperName } from '../desk/tickets.ts';
import { PRIVACY } from '../privacy/privacy.ts';
import { endWith, readWords } from './parts/command-line.ts';

const HELP = `npm run tickets                    tickets for every piece that is kept or lent, laid on sheets to print

  --tray "Cabinet S, tray 2"      those kept there, by the storage column of the ledger
  --tag favourite                 those with a tag
  --set mints-of-1279             those that fill the places of a set
  --exhibit struck-in-york        those in an exhibit
  --newest 12                     so many of those acquired last
  --piece york-penny              one piece (several: repeat it)
  --size round-28                 cut for: ${TICKET_CHOICES.map(({ id }) => id).join(', ')}; without it, each as wide as its piece
  --paper letter                  a4 or letter; without it, a4
  --out FILE                      another file
  --cabinet DIR                   another cabinet

Written to private/tickets.html, which opens in a browser and prints at true size. What is said together narrows it.
`;

const { values, positionals, cabinet } = readWords(HELP, {
  tray: { type: 'string' },
  tag: { type: 'string' },
  set: { type: 'string' },
  exhibit: { type: 'string' },
  newest: { type: 'string' },
  piece: { type: 'string', multiple: true },
  size: { type: 'string' },
  paper: { type: 'string' },
  out: { type: 'string' },
  cabinet: { type: 'string' },
});
if (positionals.length > 0)
  endWith(`"${positionals[0]}" belongs to no flag. Write --help to see what this command takes.`);
const size = TICKET_CHOICES.find(({ id }) => id === (values.size ?? 'fit'));
if (size === undefined)
  endWith(`There is no ticket "${values.size}". Write one of ${TICKET_CHOICES.map(({ id }) => id).join(', ')}.`);
const paper = (Object.keys(PAPERS) as PaperName[]).find((one) => one === (values.paper ?? 'a4'));
if (paper === undefined) endWith(`There is no paper "${values.paper}". Write a4 or letter.`);
const newest = values.newest === undefined ? undefined : Number(values.newest);
if (newest !== undefined && (!Number.isInteger(newest) || newest < 1))
  endWith(`--newest takes a number of pieces; this says "${values.newest}".`);

await recoverCabinet(cabinet.at);
const { records, problems } = await checkCabinet(cabinet.at, PRIVACY);
if (problems.length > 0)
  endWith(
    `${problems.map((found) => formatProblem(found, cabinet.shown)).join('\n\n')}\n\nNo ticket was written: fix what is listed above first.`,
  );
const table = (await readFolder(cabinet.at))?.files.find(({ file }) => file === 'private/ledger.csv')?.text ?? '';
const ledger = new Map(readCsv(table).rows.map((row) => [row['piece'] ?? '', row]));
const { tray, tag, set, exhibit, piece } = values;
const selected = selectPieces(records, ledger, {
  ...(tray === undefined ? {} : { tray }),
  ...(tag === undefined ? {} : { tag }),
  ...(set === undefined ? {} : { set }),
  ...(exhibit === undefined ? {} : { exhibit }),
  ...(newest === undefined ? {} : { newest }),
  ...(piece === undefined ? {} : { pieces: piece }),
});
if (!selected.ok) endWith(selected.problem);
const tickets = ticketsOf(records, selected.value, size.id, paper);
const into = values.out === undefined ? join(cabinet.at, 'private', 'tickets.html') : resolve(values.out);
const title = `Tickets: ${records.cabinet?.fields.title ?? ''}`;
await writeWhole(into, await ticketsFile(title, tickets, paper), PRIVATE_FILE);
process.stdout.write(
  [
    `${tickets.count} ${tickets.count === 1 ? 'ticket' : 'tickets'}, written to ${relative(process.cwd(), into)}. Open it in a browser and print it at 100 %.`,
    ...tickets.reports,
    '',
  ].join('\n'),
);
