import Papa from 'papaparse';
import { guarded, unguarded } from './csv-guard.ts';

/** A table as written: the headings, and each row by heading. Every cell is text. */
export type CsvTable = {
  readonly headings: readonly string[];
  readonly rows: readonly Readonly<Record<string, string>>[];
};

export function readCsv(text: string): CsvTable {
  const { data, meta } = Papa.parse<Record<string, string>>(text.replace(/^\uFEFF/, ''), {
    header: true,
    skipEmptyLines: 'greedy',
    transformHeader: (heading) => unguarded(heading.trim()),
    transform: unguarded,
  });
  return { headings: meta.fields ?? [], rows: data };
}

/**
 * A table as a file: UTF-8 with a mark, so that spreadsheets read its letters right, and lines ending as RFC 4180 has it. What a spreadsheet
 * would evaluate has an apostrophe before it, which `readCsv` takes off.
 */
export function writeCsv(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  return `\uFEFF${Papa.unparse({ fields: headings.map(guarded), data: rows.map((row) => row.map(guarded)) }, { newline: '\r\n' })}\r\n`;
}
