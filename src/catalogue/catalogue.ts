import type { EraScheme } from '../core/eras/era-scheme.ts';
import type { Grade } from '../core/grade/grade.ts';
import type { Reference } from '../core/references/reference.ts';
import type { CabinetFields } from './schema/cabinet.ts';
import type { ExhibitFields } from './schema/exhibit.ts';
import type { EraFields, SetFields } from './schema/sets-and-eras.ts';
import type { DenominationFields, MintFields, RulerFields, WorkFields } from './schema/lists.ts';
import type { PieceFields } from './schema/piece.ts';
import type { PieceType, TypeNumber, Types } from './types/types-of.ts';
import type { Filed, Picture } from './records.ts';

/** A piece with its words read and its names checked against the lists. */
export type Piece = {
  readonly id: string;
  readonly file: string;
  readonly fields: PieceFields;
  /** Markdown. */
  readonly story: string;
  readonly pictures: readonly Picture[];
  /** Null when no grade is recorded. */
  readonly grade: Grade | null;
  readonly references: readonly Reference[];
  /** The fields that are not its own word and follow from its type: `mint`, `obverse.design`. */
  readonly fromType: readonly string[];
  /** What it is a specimen of: what its file says, or what follows from its references. */
  readonly types: readonly PieceType[];
  /** The names of the types it is, broader ones included, and of those under them that it may be, with their numbers. */
  readonly mayBe: {
    readonly is: readonly string[];
    readonly maybe: readonly string[];
    readonly numbers: readonly TypeNumber[];
  };
  /** Numbers of other books that are the equals of its types, without those it cites. */
  readonly elsewhere: readonly TypeNumber[];
};

export type ById<T> = Readonly<Record<string, T>>;
export type Ruler = Filed<RulerFields>;
export type Mint = Filed<MintFields>;
export type Denomination = Filed<DenominationFields>;
export type Work = Filed<WorkFields>;
export type Era = Filed<EraFields> & { readonly scheme: EraScheme };
export type CollectingSet = Filed<SetFields>;
export type Exhibit = Filed<ExhibitFields>;

/** A cabinet in which every name leads to what it names. Nothing here has been kept from a page yet: `publicPiece` does that. */
export type Catalogue = {
  readonly cabinet: CabinetFields;
  /** In the order of their inventory numbers. */
  readonly pieces: readonly Piece[];
  readonly rulers: ById<Ruler>;
  readonly mints: ById<Mint>;
  readonly denominations: ById<Denomination>;
  readonly works: ById<Work>;
  readonly eras: readonly Era[];
  readonly sets: readonly CollectingSet[];
  readonly exhibits: readonly Exhibit[];
  readonly types: Types;
};
