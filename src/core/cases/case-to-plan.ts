import type { Corner, LabelStand, Size } from './boxes.ts';
import type { CaseKind, CaseUnit, Holder } from './furniture.ts';

/** A piece to be laid in a case. */
export type PieceToSet = {
  /** Its number in the exhibit, from 1. */
  readonly key: number;
  readonly piece: string;
  readonly title: string;
  /** The room each face shown takes, in millimetres: its own size, or that of what it lies in. */
  readonly faces: readonly Size[];
  /** How deep it needs the case, in millimetres, with what it lies in; null when that is not recorded. */
  readonly thickness: number | null;
  /** What it lies in, and its own size where that is a holder; left out, it lies bare. */
  readonly holder?: { readonly is: Holder; readonly piece: Size } | undefined;
  readonly label: string;
  /** What a derived label says, fact by fact; null for a label written by hand. */
  readonly facts: readonly string[] | null;
  /** What stands on lines of its own above a label written by hand, fact by fact. */
  readonly identity?: readonly string[];
  readonly at?: Corner;
};
export type GroupToSet = {
  readonly title: string;
  readonly text: string | null;
  readonly pieces: readonly PieceToSet[];
  readonly at?: Corner;
};
export type CaseToSet = {
  /** In millimetres; `unit` is the one the keeper measures in. */
  readonly inside: Size & { readonly depth: number | null; readonly unit?: CaseUnit };
  readonly kind?: CaseKind;
  readonly groups: readonly GroupToSet[];
};
/** How labels are made: millimetres, points; a height that derived ones keep to, and where they stand, if the keeper says. */
export type LabelStyle = {
  readonly width: number;
  readonly points: number;
  readonly height: number | null;
  readonly stand: LabelStand | null;
};
