import { join } from 'node:path';
import process from 'node:process';
import { checkCabinet, today } from '../catalogue/check-cabinet.ts';
import { recoverCabinet } from '../catalogue/keep/change-cabinet.ts';
import { PRIVATE_FILE, writeWhole } from '../catalogue/keep/flush.ts';
import { readFolder } from '../catalogue/files.ts';
import { linkRecords } from '../catalogue/link.ts';
import { nearestName } from '../catalogue/nearest.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { GROUPED_BY, tellWithout, totalsOf } from '../catalogue/ledger-totals.ts';
import type { TotalGroup, Totals } from '../catalogue/ledger-totals.ts';
import { ledgerRows } from '../import/plan/merge-ledger.ts';
import { READERS } from '../catalogue/fields/ledger-columns.ts';
import { scheduleOf } from './inventory/schedule.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { PRIVACY } from '../privacy/privacy.ts';
import { writeCsv } from '../catalogue/csv.ts';
import { escape } from '../publish/xml.ts';
import type { Schedule, ScheduledPiece } from './inventory/schedule.ts';

/** What stands at the head of a schedule. */
export type ScheduleHead = {
  readonly title: string;
  /** `2026-11-25`. */
  readonly day: string;
  /** For whom it was written. */
  readonly reader: string;
};

const NOT_A_VALUATION =
  'Values are the keeper’s own figures, not a valuation: an insurer may ask for one by a qualified valuer. Keep this schedule apart from the pieces.';

/** One page to print, black on white, a piece never broken over two sheets. Pictures are the photographs beside the pieces. */
export function scheduleAsHtml(head: ScheduleHead, { pieces, totals }: Schedule): string {
  const count = `${pieces.length} ${pieces.length === 1 ? 'piece' : 'pieces'}`;
  const sums = totals.map(({ heading, says }) => ` ${escape(heading)}: ${escape(says)}.`).join('');
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${escape(head.title)}: schedule</title>
<style>
@page { size: A4; margin: 18mm 15mm }
body { font: 10pt/1.35 Georgia, serif; color: #000; background: #fff; max-width: 180mm; margin: 0 auto }
h1 { font-size: 16pt; margin: 0 } h2 { font-size: 11pt; margin: 0 0 2mm }
article { break-inside: avoid; border-top: 0.3mm solid; padding: 3mm 0; display: grid; grid-template-columns: 1fr 62mm; gap: 4mm }
dl { display: grid; grid-template-columns: 34mm 1fr; gap: 0 3mm; margin: 0 } dt { font-style: italic } dd { margin: 0; overflow-wrap: anywhere }
.pictures { display: flex; gap: 2mm; flex-wrap: wrap } img { width: 30mm; height: 30mm; object-fit: contain }
</style></head><body>
<h1>${escape(head.title)}</h1>
<p>Schedule for the ${escape(head.reader)}, ${escape(head.day)}. ${count}.${sums} Headings are the categories of Object ID. ${NOT_A_VALUATION}</p>
${pieces.map(article).join('\n')}
</body></html>
`;
}

function article({ number, title, entries, pictures }: ScheduledPiece): string {
  const rows = entries.map(({ heading, says }) => `<dt>${escape(heading)}</dt><dd>${escape(says)}</dd>`).join('');
  const shown = pictures.map((file) => `<img src="../${file.split('/').map(encodeURIComponent).join('/')}" alt="">`);
  return `<article><div><h2>${escape(number)} · ${escape(title)}</h2><dl>${rows}</dl></div><div class="pictures">${shown.join('')}</div></article>`;
}

/** The same as a table for a spreadsheet: a column for each heading that any piece has, in the order of the schedule. */
export function scheduleAsCsv({ pieces }: Schedule): string {
  const longest = [...pieces].sort((a, b) => b.entries.length - a.entries.length);
  const headings = [...new Set(longest.flatMap(({ entries }) => entries.map(({ heading }) => heading)))];
  const rows = pieces.map(({ id, number, entries, pictures }) => [
    id,
    number,
    ...headings.map((wanted) => safe(entries.find(({ heading }) => heading === wanted)?.says ?? '')),
    pictures.join(' '),
  ]);
  return writeCsv(['Folder', 'Number', ...headings, 'Photographs'], rows);
}

/** A spreadsheet takes a cell that begins so for a formula; an apostrophe keeps it a text. */
function safe(cell: string): string {
  return /^[=+\-@\t]/.test(cell) ? `'${cell}` : cell;
}

const HELP = `npm run inventory                  a schedule of the cabinet in content/, by the categories of Object ID

  --for insurer|police            leaves out what that reader does not need; without it, for you: everything
  --by storage|metal              prints what each tray or each metal comes to, beside what all does
  --piece york-penny              one piece (several: repeat it), as after a theft; without it, every piece kept or lent
  --cabinet DIR                   another cabinet

Written to private/inventory.html, to print, and private/inventory.csv, for a spreadsheet. Both are private: they hold what your
ledger holds. Nobody but the police or your insurer should have one, and a copy belongs in another place than the pieces.
`;

const { values, cabinet } = readWords(HELP, {
  for: { type: 'string' },
  by: { type: 'string' },
  piece: { type: 'string', multiple: true },
  cabinet: { type: 'string' },
});
const reader = READERS.find((known) => known === (values.for ?? 'keeper'));
if (reader === undefined)
  endWith(`A schedule is for the insurer or the police; this says "${values.for}". Write --for insurer.`);
const by = GROUPED_BY.find((known) => known === (values.by ?? 'nothing'));
if (by === undefined) endWith(`Totals are by storage or by metal; this says "${values.by}". Write --by storage.`);
await recoverCabinet(cabinet.at);
const { records, problems } = await checkCabinet(cabinet.at, PRIVACY);
if (problems.length > 0)
  endWith(
    `${problems.map((found) => formatProblem(found, cabinet.shown)).join('\n\n')}\n\nNo schedule was written: fix what is listed above first.`,
  );
const only = values.piece ?? [];
const unknown = only.find((id) => !records.named.pieces.includes(id));
if (unknown !== undefined) {
  const meant = nearestName(unknown, records.named.pieces);
  endWith(`There is no piece "${unknown}" in ${cabinet.shown}.${meant === null ? '' : ` Write ${meant}.`}`);
}
const ledger = (await readFolder(cabinet.at))?.files.find(({ file }) => file === 'private/ledger.csv')?.text ?? '';
const schedule = scheduleOf(linkRecords(records), ledger, reader, only);
const sums = only.length > 0 ? [] : tellTotals(totalsOf(records.pieces, ledgerRows(ledger), 'value', by));
const head = { title: records.cabinet?.fields.title ?? '', day: today(), reader };
const into = join(cabinet.at, 'private');
await writeWhole(join(into, 'inventory.html'), scheduleAsHtml(head, schedule), PRIVATE_FILE);
await writeWhole(join(into, 'inventory.csv'), scheduleAsCsv(schedule), PRIVATE_FILE);
const unpictured = schedule.pieces.filter(({ pictures }) => pictures.length === 0).length;
process.stdout.write(
  `${schedule.pieces.length} ${schedule.pieces.length === 1 ? 'piece' : 'pieces'}, written to ${join(cabinet.shown, 'private', 'inventory.html')} and inventory.csv beside it.${
    unpictured === 0 ? '' : ` ${unpictured} of them have no photograph: the police can do little without one.`
  }\n${sums.map((line) => `${line}\n`).join('')}Both are private. Keep a copy in another place than the pieces.\n`,
);

/** What the pieces are worth by the keeper's own figures, which of them have none, and which are not counted. */
function tellTotals({ all, groups, leftOut }: Totals): readonly string[] {
  const line = (group: TotalGroup): string =>
    [
      `${group.name}, ${group.pieces} ${group.pieces === 1 ? 'piece' : 'pieces'}: ${group.sums.join(', ') || 'no value written down'}.`,
      tellWithout(group, 'value', 5),
    ]
      .filter((part) => part !== '')
      .join(' ');
  return [
    ...groups.map(line),
    line(all),
    ...leftOut.map(({ why, pieces }) => `Not counted: ${pieces.join(', ')} (${why}).`),
  ];
}
