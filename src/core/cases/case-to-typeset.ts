import type { Corner, LabelStand, Size } from './case-plan.ts';

/** A piece to be laid in a case. */
export type PieceToSet = {
  /** Its number in the exhibit, from 1. */
  readonly key: number;
  readonly piece: string;
  readonly title: string;
  /** The size of each face shown, in millimetres. */
  readonly faces: readonly Size[];
  /** In millimetres; null when it is not recorded. */
  readonly thickness: number | null;
  readonly label: string;
  /** What a derived label says, fact by fact; null for a label written by hand. */
  readonly facts: readonly string[] | null;
  readonly at?: Corner;
};
export type GroupToSet = {
  readonly title: string;
  readonly text: string | null;
  readonly pieces: readonly PieceToSet[];
  readonly at?: Corner;
};
export type CaseToSet = {
  readonly inside: Size & { readonly depth: number | null };
  readonly groups: readonly GroupToSet[];
};
/** How labels are made: millimetres, points; a height that derived ones keep to, and where they stand, if the keeper says. */
export type LabelStyle = {
  readonly width: number;
  readonly points: number;
  readonly height: number | null;
  readonly stand: LabelStand | null;
};
