import { writeCsv } from '../../catalogue/csv.ts';
import { escape } from '../../publish/xml.ts';
import type { Schedule, ScheduledPiece } from './schedule.ts';

/** What stands at the head of a schedule. */
export type ScheduleHead = {
  readonly title: string;
  /** `2026-11-25`. */
  readonly day: string;
  /** For whom it was written. */
  readonly reader: string;
};

const NOT_A_VALUATION =
  'Values are the keeper’s own figures, not a valuation: an insurer may ask for one by a licensed valuer. Keep this schedule apart from the pieces.';

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
