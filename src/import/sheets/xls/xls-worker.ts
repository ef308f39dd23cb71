import { parentPort, workerData } from 'node:worker_threads';
import * as XLSX from '@e965/xlsx';
import * as codepages from '@e965/xlsx/dist/cpexcel.full.mjs';

/** A cell as the library found it: type, stored value, format code, formula, comment, address. */
export type XlsCell = {
  readonly row: number;
  readonly column: number;
  readonly type: string;
  readonly value: string | number | boolean | null;
  /** What an error reads as: `#REF!`. */
  readonly shown: string;
  readonly format: string;
  readonly isFormula: boolean;
  readonly comment: string | null;
  readonly link: string | null;
};

export type XlsSheet = {
  readonly name: string;
  readonly isHidden: boolean;
  readonly cells: readonly XlsCell[];
  readonly hiddenColumns: readonly number[];
  readonly hiddenRows: readonly number[];
  readonly merges: readonly {
    readonly from: readonly [row: number, column: number];
    readonly to: readonly [row: number, column: number];
  }[];
};

export type XlsBook = { readonly is1904: boolean; readonly sheets: readonly XlsSheet[] };

// Runs in a thread of its own, which read-xls.ts ends when it takes too long or too much memory.
parentPort?.postMessage(readBook(workerData as Uint8Array));

function readBook(bytes: Uint8Array): XlsBook {
  XLSX.set_cptable(codepages);
  const book = XLSX.read(bytes, { type: 'array', cellNF: true, cellStyles: true, cellHTML: false, cellText: true });
  return {
    is1904: book.Workbook?.WBProps?.date1904 === true,
    sheets: book.SheetNames.map((name, at) => {
      const sheet = book.Sheets[name] ?? {};
      const hidden = (all: readonly ({ hidden?: boolean } | undefined)[] = []): readonly number[] =>
        Array.from(all, (one, index) => (one?.hidden === true ? index : -1)).filter((index) => index !== -1);
      return {
        name,
        isHidden: (book.Workbook?.Sheets?.[at]?.Hidden ?? 0) !== 0,
        cells: cellsOf(sheet),
        hiddenColumns: hidden(sheet['!cols']),
        hiddenRows: hidden(sheet['!rows']),
        merges: (sheet['!merges'] ?? []).map(({ s, e }) => ({ from: [s.r, s.c], to: [e.r, e.c] })),
      };
    }),
  };
}

function cellsOf(sheet: XLSX.WorkSheet): readonly XlsCell[] {
  return Object.keys(sheet).flatMap((address): readonly XlsCell[] => {
    if (address.startsWith('!')) return [];
    const cell = sheet[address] as XLSX.CellObject;
    const { r: row, c: column } = XLSX.utils.decode_cell(address);
    return [
      {
        row,
        column,
        type: cell.t,
        value: cell.v instanceof Date ? cell.v.toISOString() : (cell.v ?? null),
        shown: cell.w ?? '',
        format: typeof cell.z === 'string' ? cell.z : 'General',
        isFormula: cell.f !== undefined,
        comment: cell.c?.map(({ t }) => t).join('\n') ?? null,
        link: cell.l?.Target ?? null,
      },
    ];
  });
}
