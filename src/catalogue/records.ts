import type { CabinetFields } from './schema/cabinet.ts';
import type { ExhibitFields } from './schema/exhibit.ts';
import type { EraFields, SetFields } from './schema/goals.ts';
import type { DenominationFields, MintFields, RulerFields, WorkFields } from './schema/lists.ts';
import type { PieceFields } from './schema/piece.ts';

/** A photograph that lies beside a piece: which face it shows, and the file inside the cabinet. */
export type Picture = { readonly face: string; readonly file: string };

/** One file of the cabinet, read: its id, where it stands, its fields, and the text below them. */
export type Filed<Fields> = { readonly id: string; readonly file: string; readonly fields: Fields; readonly story: string };
export type FiledPiece = Filed<PieceFields> & { readonly pictures: readonly Picture[] };

/** Every file of a cabinet, read and not yet linked. */
export type Records = {
  readonly cabinet: Filed<CabinetFields> | null;
  readonly pieces: readonly FiledPiece[];
  readonly rulers: readonly Filed<RulerFields>[];
  readonly mints: readonly Filed<MintFields>[];
  readonly denominations: readonly Filed<DenominationFields>[];
  readonly eras: readonly Filed<EraFields>[];
  readonly sets: readonly Filed<SetFields>[];
  readonly exhibits: readonly Filed<ExhibitFields>[];
  readonly works: readonly Filed<WorkFields>[];
};
