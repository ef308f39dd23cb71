import Papa from 'papaparse';

/** A table as written: the headings, and each row by heading. Every cell is text. */
export type CsvTable = {
  readonly headings: readonly string[];
  readonly rows: readonly Readonly<Record<string, string>>[];
};

export function readCsv(text: string): CsvTable {
  const { data, meta } = Papa.parse<Record<string, string>>(text.replace(/^\uFEFF/, ''), {
    header: true,
    skipEmptyLines: 'greedy',
    transformHeader: (heading) => heading.trim(),
  });
  return { headings: meta.fields ?? [], rows: data };
}

/** A table as a file: UTF-8 with a mark, so that spreadsheets read its letters right, and lines ending as RFC 4180 has it. */
export function writeCsv(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  return `\uFEFF${Papa.unparse({ fields: [...headings], data: rows.map((row) => [...row]) }, { newline: '\r\n' })}\r\n`;
}
