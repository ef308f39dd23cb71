import { good, type Outcome } from '../../../core/outcome.ts';
import type { Hanging } from '../grid.ts';
import { readPart, type Package } from '../package/read-part.ts';
import type { Relation } from './relations.ts';
import { cellText, textCollector } from './rich-text.ts';
import { place, range } from './worksheet.ts';

/** The comments of a sheet: those in threads where there are any, and the older ones of other cells. */
export function readComments(from: Package, relations: readonly Relation[]): Outcome<readonly Hanging[]> {
  const comments: Hanging[] = [];
  for (const { target } of relations.filter(({ type }) => type === 'threadedComment')) {
    const read = collect(from, target, 'threaded:threadedComment', 'threaded:text');
    if (!read.ok) return read;
    comments.push(...read.value);
  }
  const threaded = new Set(comments.map(({ row, column }) => `${row} ${column}`));
  for (const { target } of relations.filter(({ type }) => type === 'comments')) {
    const read = collect(from, target, 'comment', 't');
    if (!read.ok) return read;
    comments.push(...read.value.filter(({ row, column }) => !threaded.has(`${row} ${column}`)));
  }
  return good(comments);
}

function collect(from: Package, part: string, comment: string, text: string): Outcome<readonly Hanging[]> {
  const comments: Hanging[] = [];
  const collector = textCollector();
  let at: ReturnType<typeof place> = null;
  const read = readPart(from, part, {
    open(name, attributes) {
      if (name === comment) {
        at = place(attributes['ref']);
        collector.begin();
      }
      collector.open(name === text ? 't' : name);
    },
    close(name) {
      collector.close(name === text ? 't' : name);
      const said = name === comment ? cellText(collector.text()) : '';
      if (at !== null && said !== '') comments.push({ ...at, text: said });
    },
    text: collector.take,
  });
  return read.ok ? good(comments) : read;
}

/** The first row of the one table of a sheet, which is its row of headings; null where there is none or there are several. */
export function readTableRow(from: Package, relations: readonly Relation[]): Outcome<number | null> {
  const tables = relations.filter(({ type }) => type === 'table');
  const table = tables.length === 1 ? tables[0] : undefined;
  if (table === undefined) return good(null);
  let row: number | null = null;
  const read = readPart(from, table.target, {
    open(name, attributes) {
      if (name === 'table' && attributes['headerRowCount'] !== '0') row = range(attributes['ref'])?.fromRow ?? null;
    },
  });
  return read.ok ? good(row) : read;
}
