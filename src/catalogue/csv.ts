import Papa from 'papaparse';

/** A table as written: the headings, and each row by heading. Every cell is text. */
export type CsvTable = { readonly headings: readonly string[]; readonly rows: readonly Readonly<Record<string, string>>[] };

export function readCsv(text: string): CsvTable {
  const { data, meta } = Papa.parse<Record<string, string>>(text.replace(/^\uFEFF/, ''), {
    header: true,
    skipEmptyLines: 'greedy',
    transformHeader: (heading) => heading.trim(),
  });
  return { headings: meta.fields ?? [], rows: data };
}
