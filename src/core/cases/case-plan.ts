/** Lengths here are millimetres; a box is measured from the upper left corner of the case, inside its frame. */
export type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** One piece as it is to lie: its faces at true size, and the height its label needs. */
export type Cell = {
  readonly piece: string;
  /** Width and height of each face shown, left to right. */
  readonly faces: readonly { readonly width: number; readonly height: number }[];
  readonly label: { readonly width: number; readonly height: number };
};

/** Pieces that belong together, under a heading. */
export type CaseGroup = {
  readonly title: string;
  /** The height of the heading over the whole width. */
  readonly heading: number;
  /** The height of the group's text over the whole width; 0 when there is none. */
  readonly text: number;
  readonly cells: readonly Cell[];
};

/** Clear space: round the case, between cells, between faces of one piece, between a piece and its label, between groups. */
export type Spacing = {
  readonly edge: number;
  readonly cells: number;
  readonly faces: number;
  readonly label: number;
  readonly groups: number;
};

export const SPACING: Spacing = { edge: 12, cells: 10, faces: 5, label: 4, groups: 12 };

export type PlacedCell = { readonly piece: string; readonly faces: readonly Box[]; readonly label: Box };
export type PlacedGroup = {
  readonly title: string;
  readonly heading: Box;
  readonly text: Box | null;
  readonly cells: readonly PlacedCell[];
};

/** What does not fit: of which piece or case, by how many millimetres, and what would help. */
export type Misfit = { readonly piece: string | null; readonly over: number; readonly says: string };

export type CasePlan = { readonly groups: readonly PlacedGroup[]; readonly misfits: readonly Misfit[] };
