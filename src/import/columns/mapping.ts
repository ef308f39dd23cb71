import type { LedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
import type { Field } from './targets.ts';

/** One way a column is read. A column may have several: its whole text to a title, and its parts by a pattern. */
export type Reading =
  | { readonly kind: 'field'; readonly field: Field; readonly unit?: string }
  /** Without a column of the ledger it stands there under its own heading. */
  | { readonly kind: 'ledger'; readonly column?: LedgerColumn; readonly currency?: string }
  /** Every cell is a number in this book. */
  | { readonly kind: 'reference'; readonly work: string }
  /** `{denomination} of {ruler}, {mint}, {date}.` */
  | { readonly kind: 'pattern'; readonly pattern: string }
  /** Left out, because it follows from other columns. */
  | { readonly kind: 'nothing' };

export const LANGUAGES = ['en', 'fr', 'de', 'it', 'es', 'nl'] as const;
export type Language = (typeof LANGUAGES)[number];

/** What no cell can settle by itself, and the answers; a line left out means not settled, and such cells stay unread. */
export const SETTINGS = {
  /** What parts the whole from the fraction in 1,384. */
  decimal: ['point', 'comma'],
  /** What comes first in 03/04/2011. */
  days: ['day first', 'month first'],
  /** The hundred years that a year of two figures, as in 12/3/98, is one of. */
  short: ['1930-2029', '1900-1999'],
  /** The era of a bare year below 1000. */
  years: ['AD', 'BC', 'AH'],
  /** What -44 means: 44 BC, or 45 BC as astronomers count. */
  minus: ['BC', 'astronomical'],
  /** What 1902-10 means: the years 1902 to 1910, or October 1902. */
  hyphen: ['range', 'month'],
  /** That years far apart with a stroke between, as 1586/1635, are a first and a last one, as in EDTF. */
  stroke: ['range'],
  /** What a first year without a last one means: that year, or from it to an end not known. */
  alone: ['that year', 'from then'],
  /** What `gr` means beside a weight. */
  gr: ['grams', 'grains'],
  /** What number a row without one is given; not settled, such rows are skipped. */
  unnumbered: ['row'],
} as const;
export type Settings = {
  readonly [name in keyof typeof SETTINGS]?: (typeof SETTINGS)[name][number];
} & {
  /** ISO 4217, for sums that name none. */
  readonly currency?: string;
  /** The calendar of a row, by a rule under `calendars`. */
  readonly calendar?: Calendar;
};

/** Calendars that the years of some rows may be counted in. */
export const CALENDARS = ['AD', 'BC', 'AH', 'SE', 'Saka', 'VS', 'SH', 'AM', 'Minguo'] as const;
export type Calendar = (typeof CALENDARS)[number];

export const MEANINGS = ['unknown', 'none', 'not recorded'] as const;
export type Meaning = (typeof MEANINGS)[number];

/** How a sheet becomes pieces. */
export type Mapping = {
  /** The language of the sheet. */
  readonly language: Language;
  readonly settings: Settings;
  /** Facts every row has, unless a column says otherwise: `kind: coin`. */
  readonly always: Readonly<Partial<Record<Field, string>>>;
  /** How a title is made where no column gives one; a part with nothing in it falls out. */
  readonly title: string;
  /** Rows that are no piece: where the column says this; `*` stands for anything. */
  readonly skip: readonly { readonly column: string; readonly is: string }[];
  /** The calendar of rows in which the column says this; `*` stands for anything, and the first rule that fits counts. */
  readonly calendars: readonly { readonly column: string; readonly is: string; readonly years: Calendar }[];
  /** What the sheet's own words stand for, by field: `kind: { paper money: paper }`; capitals do not matter. */
  readonly words: Readonly<Partial<Record<Field, Readonly<Record<string, string>>>>>;
  /** The field that a heading between the rows states for the rows below it; null where such headings say nothing. */
  readonly sections: Field | null;
  /** Columns in which an empty cell or a ditto says what the cell above says, as far up as the heading over the rows. */
  readonly asAbove: readonly string[];
  /** Columns in which a ditto alone says so, and an empty cell says nothing. */
  readonly dittos: readonly string[];
  /** The keeper's own words for nothing. */
  readonly blanks: Readonly<Record<string, Meaning>>;
  /** By heading; `[C]` where a heading is empty or stands twice. */
  readonly columns: readonly MappedColumn[];
};

export type MappedColumn = { readonly heading: string; readonly readings: readonly Reading[] };

/** Without the date, which a label prints on a line of its own. */
export const DEFAULT_TITLE = '{denomination} of {ruler}, {mint}';
/** In languages whose word for *of* changes with the name behind it. */
export const PLAIN_TITLE = '{denomination}, {ruler}, {mint}';

export const EMPTY_MAPPING: Mapping = {
  language: 'en',
  settings: {},
  always: {},
  title: DEFAULT_TITLE,
  skip: [],
  calendars: [],
  words: {},
  sections: null,
  asAbove: [],
  dittos: [],
  blanks: {},
  columns: [],
};

/** The headings of one field: by language, and those that are the same in all. Accents, capitals and stops do not matter. */
export type Headings = { readonly to: string; readonly any?: readonly string[] } & {
  readonly [language in Language]?: readonly string[];
};
