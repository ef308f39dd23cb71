/** A cell as the sheet shows it, and what the sheet knows of it besides. An empty cell has an empty text. */
export type SheetCell = {
  /** What a reader of the sheet sees, without markup and without blanks at either end. */
  readonly text: string;
  /** What the sheet knows the cell to be, where it says so; a text file says nothing. */
  readonly value?: SheetValue;
};

export type SheetValue =
  /** A figure in full, with a point: `1.38`, `-3`. */
  | { readonly kind: 'number'; readonly figure: string }
  /** A sum with the currency of its number format: `12.50`, `GBP`. */
  | { readonly kind: 'money'; readonly figure: string; readonly currency: string }
  /** A day of the calendar: `2011-05-14`. */
  | { readonly kind: 'day'; readonly iso: string }
  /** What a formula could not answer: `#REF!`. */
  | { readonly kind: 'error'; readonly says: string };

export type SheetColumn = {
  /** `A`, `B` … `AA`, as a spreadsheet names it. */
  readonly letter: string;
  /** The heading; empty where the sheet has none. */
  readonly heading: string;
  readonly isHidden: boolean;
};

/** One row below the headings. It has as many cells as the sheet has columns. */
export type SheetRow = {
  /** The number of the row as a spreadsheet counts it, the first being 1; of a text file, the record. */
  readonly row: number;
  readonly cells: readonly SheetCell[];
  /** Hidden by hand or by a filter. It is a record all the same. */
  readonly isHidden?: true;
};

/** What a keeper should be told of how the rows were read; nothing is lost by it. */
export type SheetRemark = { readonly rows: readonly number[]; readonly says: string };

export type Sheet = {
  readonly name: string;
  readonly isHidden: boolean;
  /** The row the headings are in; 0 where the sheet has none. */
  readonly headingRow: number;
  /** Columns that hold something; wholly empty ones are left out. Comments and links of cells have columns of their own, last. */
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
  /** Rows that hold something but are no record: titles above the headings. Blank rows are not told of. */
  readonly setAside: readonly {
    readonly row: number;
    readonly text: string;
    readonly because: string;
    /** Whether it is a heading between the rows, of what stands below it. */
    readonly isHeading?: true;
  }[];
  readonly remarks?: readonly SheetRemark[];
};

/** How the file was read, to be told and, where a text file leaves a doubt, asked about. */
export type SheetReading =
  | {
      readonly kind: 'text';
      /** As the Encoding Standard names it: `utf-8`, `windows-1252`, `macintosh`. */
      readonly encoding: string;
      readonly separator: string;
      /**
       * Encodings that would do, the one that was taken first and the others by likelihood, each with a line in which
       * they differ; empty when there is no doubt.
       */
      readonly doubts: readonly { readonly encoding: string; readonly preview: string }[];
    }
  | { readonly kind: 'workbook'; readonly format: 'xlsx' | 'ods' | 'xls' };

export type SheetFile = { readonly reading: SheetReading; readonly sheets: readonly Sheet[] };
