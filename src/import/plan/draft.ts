import type { Reference } from '../../core/references/reference.ts';
import type { Written } from '../../catalogue/yaml.ts';

/** A cell that could not be read as what its column is, or that had no place. Its text is kept. */
export type UnreadCell = {
  /** The row as a spreadsheet counts it. */
  readonly row: number;
  readonly heading: string;
  readonly text: string;
  /** A sentence: why it could not be read, and what to write instead. */
  readonly because: string;
  /** The field of the piece it was meant for. */
  readonly field: string;
};

/**
 * One row of a sheet, read by a mapping: what will be in the piece's file and what in the ledger. Rulers, mints,
 * denominations and works are still names as the sheet has them; joining them to the list files comes after.
 */
export type Draft = {
  readonly row: number;
  /** The name of the folder, where the sheet has a column of them, as our own tables do. */
  readonly id?: string;
  /** Fields of `piece.md` with texts its form can read; names of rulers, mints, denominations are in `names` instead. */
  readonly facts: Readonly<Record<string, Written>>;
  readonly names: {
    readonly ruler?: readonly NamedInSheet[];
    /** What was ruled, as a column of countries or realms has it; it tells rulers of one name apart. */
    readonly realm?: string;
    readonly mint?: NamedInSheet;
    /** The country or region the mint lies in, as a column has it; it tells places of one name apart. */
    readonly mintArea?: string;
    readonly denomination?: NamedInSheet;
    /** References as the core reads them, each with the work as the sheet names it: `North`. */
    readonly references?: readonly CitedInSheet[];
  };
  /** The pattern the title was composed by, when the sheet gives none. */
  readonly titledBy?: string;
  /** What stands below the facts. */
  readonly story: string;
  /** Columns of the ledger; those of columns that nobody mapped stand under their own heading. */
  readonly ledger: Readonly<Record<string, string>>;
  readonly unread: readonly UnreadCell[];
};

/** A reference, and the book as the sheet names it. */
export type CitedInSheet = { readonly name: string; readonly cited: Reference };

/** A name with what the sheet says beside it: `Edward I` and `1272-1307`. */
export type NamedInSheet = { readonly name: string; readonly years?: string; readonly realm?: string };
