import { writeCsv } from '../../catalogue/csv.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';
import type { BroughtIn } from '../../import/reimport/last-import.ts';
import { formatBroughtIn } from '../../import/reimport/last-import.ts';
import { columnKeys } from '../../import/columns/column-key.ts';
import type { ImportPlan } from '../../import/plan/plan-import.ts';
import type { Sheet } from '../../import/sheets/sheet.ts';
import type { ImportPlaces } from './place-of.ts';
import type { Changes } from '../../catalogue/keep/change-cabinet.ts';

export type ImportToWrite = {
  readonly changes: Changes;
  readonly places: ImportPlaces;
  readonly plan: ImportPlan;
  readonly sheet: Sheet;
  readonly before: readonly BroughtIn[];
  readonly tell: (done: number, all: number) => void;
};

/** Writes what was planned as one stroke: the lists, the pieces, the ledger, the rows as they stood, and what was imported. */
export async function writeImport({ changes, places, plan, sheet, before, tell }: ImportToWrite): Promise<void> {
  const { put } = changes;
  for (const { file, text } of plan.lists) await put(file, text);
  const written = plan.pieces.filter(({ state }) => state !== 'same');
  for (const [at, { file, text }] of written.entries()) {
    await put(file, text);
    tell(at + 1, written.length);
  }
  if (plan.ledger !== null) await put('private/ledger.csv', plan.ledger);
  await put(places.rows, rowsCsv(sheet, plan));
  await put(places.broughtIn, formatBroughtIn(broughtIn(sheet, plan, before)));
}

/** Whether nobody has changed a text since a cabinet was read, but for what a trial itself writes, below `private/import/`. */
export function hasSameTexts(one: CabinetFolder, other: CabinetFolder): boolean {
  const [some, others] = [one, other].map(({ files }) =>
    files.filter(({ file }) => !file.startsWith('private/import/')),
  );
  return (
    some?.length === others?.length &&
    (some ?? []).every(({ file, text }, at) => file === others?.[at]?.file && text === others[at].text)
  );
}

/** The unread cells of a plan as a table, and every row that became no piece, in the order of the sheet. */
export function unreadCsv({ unread, setAside }: Pick<ImportPlan, 'unread' | 'setAside'>): string {
  const cells = unread.map(({ row, heading, text, because, field }) => ({
    row,
    cells: [heading, text, because, field],
  }));
  const rows = setAside.map(({ row, text, because }) => ({ row, cells: ['(the whole row)', text, because, ''] }));
  return writeCsv(
    ['row', 'column', 'cell', 'why', 'field'],
    [...cells, ...rows].toSorted((a, b) => a.row - b.row).map((line) => [String(line.row), ...line.cells]),
  );
}

/** Every row as it was in the sheet, with the piece it became or why it became none. */
function rowsCsv(sheet: Sheet, plan: ImportPlan): string {
  const became = new Map(plan.pieces.map(({ row, id }) => [row, id]));
  const because = new Map(plan.setAside.map((one) => [one.row, one.because]));
  return writeCsv(
    ['row', 'piece', 'skipped', ...columnKeys(sheet)],
    sheet.rows.map(({ row, cells }) => [
      String(row),
      became.get(row) ?? '',
      became.has(row) ? '' : (because.get(row) ?? ''),
      ...cells.map(({ text }) => text),
    ]),
  );
}

/** What counts as imported from now on: this sheet's pieces, then those whose row has gone. */
function broughtIn(sheet: Sheet, plan: ImportPlan, before: readonly BroughtIn[]): readonly BroughtIn[] {
  const cells = new Map(sheet.rows.map((row) => [row.row, row.cells.map(({ text }) => text)]));
  const now = plan.pieces.map(({ base }) => ({ ...base, cells: cells.get(base.row) ?? [] }));
  const ids = new Set(now.map(({ id }) => id));
  const numbers = new Set(now.map(({ number }) => number));
  return [...now, ...before.filter(({ id, number }) => !ids.has(id) && !numbers.has(number))];
}
