import { zipSync } from 'fflate';
import process from 'node:process';
import { formatColumn } from '../../src/import/sheets/column-letter.ts';
import { readSheets } from '../../src/import/sheets/read-sheets.ts';
import { odsOf, workbookOf } from '../import/sheets/make-workbook.ts';

/**
 * How long a large sheet takes to read and how much memory: 12,000 rows of 30 columns in each format, and a bomb. Run it
 * with `node tests/benchmarks/sheets.ts`; it ends with 1 when a limit is passed.
 */
const ROWS = 12_000;
const COLUMNS = 30;
const MOST_MILLISECONDS = 3000;

function textAt(row: number, column: number): string {
  if (row === 1) return `Heading ${column}`;
  return column % 3 === 0 ? `Penny of Edward I, York, ${row} ${column}` : String((row * column) / 7);
}

type Writer = {
  readonly cell: (text: string, row: number, column: number) => string;
  readonly row: (cells: string, row: number) => string;
};

function write({ cell, row }: Writer): string {
  const columns = Array.from({ length: COLUMNS }, (_, column) => column);
  const rows = Array.from({ length: ROWS }, (_, at) =>
    row(columns.map((column) => cell(textAt(at + 1, column), at + 1, column)).join(''), at + 1),
  );
  return rows.join('');
}

const isText = (text: string): boolean => /[a-z]/.test(text);

function asCsv(): Uint8Array {
  return new TextEncoder().encode(write({ cell: (text) => `"${text}",`, row: (cells) => `${cells.slice(0, -1)}\r\n` }));
}

function asXlsx(): Uint8Array {
  let strings = '';
  let count = 0;
  const rows = write({
    cell: (text, row, column) => {
      const at = `${formatColumn(column)}${row}`;
      if (!isText(text)) return `<c r="${at}" s="1"><v>${text}</v></c>`;
      strings += `<si><t>${text}</t></si>`;
      count += 1;
      return `<c r="${at}" s="1" t="s"><v>${count - 1}</v></c>`;
    },
    row: (cells, row) => `<row r="${row}">${cells}</row>`,
  });
  return workbookOf(`<sheetData>${rows}</sheetData>`, { strings, formats: ['#,##0.00'] });
}

function asOds(): Uint8Array {
  const cell = (text: string): string =>
    `<t:table-cell ${isText(text) ? 'o:value-type="string"' : `o:value-type="float" o:value="${text}"`}><text:p>${text}</text:p></t:table-cell>`;
  return odsOf(write({ cell, row: (cells) => `<t:table-row>${cells}</t:table-row>` }));
}

function bomb(): Uint8Array {
  return zipSync({ 'content.xml': new Uint8Array(600 * 1024 * 1024).fill(32) }, { level: 1 });
}

const files = [
  ['sheet.csv', asCsv(), MOST_MILLISECONDS],
  ['sheet.xlsx', asXlsx(), MOST_MILLISECONDS],
  ['sheet.ods', asOds(), MOST_MILLISECONDS],
  ['bomb.ods', bomb(), 60_000],
] as const;

for (const [name, bytes, most] of files) {
  const before = process.memoryUsage().rss;
  const started = performance.now();
  const read = await readSheets(bytes, name);
  const took = Math.round(performance.now() - started);
  const more = Math.round((process.memoryUsage().rss - before) / 1024 / 1024);
  const came = read.ok ? `${read.value.sheets[0]?.rows.length ?? 0} rows` : read.problem;
  console.log(`${name}: ${took} ms of ${most}, ${more} MB more, ${came}`);
  if (took > most) process.exitCode = 1;
}
