import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { Sheet, SheetFile } from '../../import/sheets/sheet.ts';
import { askWhich, canAsk } from '../parts/ask.ts';
import { shorten } from './tell-columns.ts';

/** The sheet that is meant: the one named, the only one with rows that is not hidden, or the one chosen when asked. */
export async function chooseSheet(
  { sheets }: SheetFile,
  named: string | null,
): Promise<Outcome<{ readonly sheet: Sheet; readonly isOneOfSeveral: boolean }>> {
  const withRows = sheets.filter(({ rows }) => rows.length > 0);
  const open = named === null ? withRows.filter(({ isHidden }) => !isHidden) : withRows;
  const [first, ...others] = open;
  if (first === undefined) {
    const hidden = withRows.map(({ name }) => name);
    return refuse(
      hidden.length === 0
        ? 'There is no row below the headings, so there is nothing to import. Choose another sheet with --sheet, or say where the headings stand with --heading-row.'
        : `Only hidden sheets hold rows: ${hidden.join(', ')}. Name the one that is meant with --sheet.`,
    );
  }
  if (others.length === 0) return good({ sheet: first, isOneOfSeveral: named !== null });
  if (canAsk()) {
    const name = await askWhich(
      'Which sheet?',
      open.map((one) => ({ value: one.name, label: one.name, hint: `${one.rows.length} rows` })),
    );
    return good({ sheet: open.find((one) => one.name === name) ?? first, isOneOfSeveral: true });
  }
  const list = open.map(({ name, rows }) => `${name} (${rows.length} rows)`).join(', ');
  return refuse(`There are ${open.length} sheets with rows: ${list}. Name one with --sheet "${first.name}".`);
}

/** How the file was read, in a few lines, with what was doubtful about it. */
export function tellReading(file: string, { reading }: SheetFile, sheet: Sheet): string {
  const how =
    reading.kind === 'workbook'
      ? `sheet "${sheet.name}"`
      : `a text in ${reading.encoding}, its columns separated by ${separatorInWords(reading.separator)}`;
  const where = sheet.headingRow === 0 ? 'no headings' : `headings in row ${sheet.headingRow}`;
  const doubts = reading.kind === 'text' && reading.doubts.length > 1 ? reading.doubts : [];
  const remarks = (sheet.remarks ?? []).map(
    ({ rows, says }) =>
      `  ${rows.length === 0 ? '' : `${rows.length === 1 ? 'row' : 'rows'} ${rowsInWords(rows)}: `}${says}`,
  );
  return [
    `${file}: ${how}, ${where}, ${sheet.rows.length} rows below`,
    ...(doubts.length === 0
      ? []
      : [
          'Its letters could be read in more than one way; it was read in the first. Choose another with --encoding:',
          ...doubts.slice(0, 4).map(({ encoding, preview }) => `  ${encoding}: ${shorten(preview, 70)}`),
        ]),
    ...(remarks.length === 0 ? [] : ['To know:', ...remarks]),
  ].join('\n');
}

function rowsInWords(rows: readonly number[]): string {
  const shown = rows.slice(0, 6).join(', ');
  return rows.length > 6 ? `${shown} and ${rows.length - 6} more` : shown;
}

function separatorInWords(separator: string): string {
  const names: Readonly<Record<string, string>> = {
    ',': 'commas',
    ';': 'semicolons',
    '\t': 'tabs',
    '|': 'upright strokes',
  };
  return names[separator] ?? `"${separator}"`;
}
