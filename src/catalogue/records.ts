import type { CabinetFields } from './schema/cabinet.ts';
import type { ExhibitFields } from './schema/exhibit.ts';
import type { EraFields, SetFields } from './schema/sets-and-eras.ts';
import type { DenominationFields, MintFields, RulerFields, WorkFields } from './schema/lists.ts';
import type { PieceFields } from './schema/piece.ts';
import type { SeriesFields } from './schema/series.ts';
import type { SeriesRows, SeriesTable } from './types/series-tables.ts';

/** A photograph that is next to a piece: which face it shows, and the file inside the cabinet. */
export type Picture = { readonly face: string; readonly file: string };

/** One file of the cabinet, read: its id, where it stands, its fields, and the text below them. */
export type Filed<Fields> = {
  readonly id: string;
  readonly file: string;
  readonly fields: Fields;
  readonly story: string;
};
export type FiledPiece = Filed<PieceFields> & { readonly pictures: readonly Picture[] };

/** A series of types: what all share, and its tables. */
export type FiledSeries = Filed<SeriesFields> & {
  readonly tables: Readonly<Partial<Record<SeriesTable, SeriesRows>>>;
  /** The texts of the drawings in its folder, by the names of their files. */
  readonly drawn: ReadonlyMap<string, string>;
  /** False where `series.yaml` has a slip: what depends on the part that was left out is not told again. */
  readonly whole: boolean;
};

/** The folders of a cabinet that hold named things. */
export const NAMED_FOLDERS = [
  'pieces',
  'rulers',
  'mints',
  'denominations',
  'eras',
  'sets',
  'exhibits',
  'works',
  'types',
] as const;
export type NamedFolder = (typeof NAMED_FOLDERS)[number];

/** Every file of a cabinet, read and not yet linked. */
export type Records = {
  /** The ids that have a file, also where it could not be read: so that one slip is told once. */
  readonly named: Readonly<Record<NamedFolder, readonly string[]>>;
  readonly cabinet: Filed<CabinetFields> | null;
  readonly pieces: readonly FiledPiece[];
  readonly rulers: readonly Filed<RulerFields>[];
  readonly mints: readonly Filed<MintFields>[];
  readonly denominations: readonly Filed<DenominationFields>[];
  readonly eras: readonly Filed<EraFields>[];
  readonly sets: readonly Filed<SetFields>[];
  readonly exhibits: readonly Filed<ExhibitFields>[];
  readonly works: readonly Filed<WorkFields>[];
  readonly series: readonly FiledSeries[];
};
