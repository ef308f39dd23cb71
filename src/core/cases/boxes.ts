/** Lengths here are millimetres; a box is measured from the upper left corner of the case, inside its frame. */
export type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
export type Size = { readonly width: number; readonly height: number };
/** A corner the keeper has fixed, from the left and the top inside the case. */
export type Corner = { readonly left: number; readonly top: number };

/** Where labels stand: below their pieces, at the right of them, or on a key that numbers in the case lead to. */
export const LABEL_STANDS = ['below', 'beside', 'key'] as const;
export type LabelStand = (typeof LABEL_STANDS)[number];

/** One piece as it is to lie: its faces at true size, and the card that goes with it. */
export type Cell = {
  readonly piece: string;
  /** How a sentence names it; its id when left out. */
  readonly title?: string;
  /** Width and height of each face shown, left to right. */
  readonly faces: readonly Size[];
  /** The label; where labels are on a key, the card with the number. */
  readonly label: Size;
  /** The upper left corner of its first face, where the keeper has fixed it. */
  readonly at?: Corner;
};

/** Pieces that belong together, under a heading and, if there is one, a text below it. */
export type CaseGroup = {
  readonly title: string;
  readonly heading: Size;
  readonly text: Size | null;
  readonly cells: readonly Cell[];
  /** The upper left corner of its heading, where the keeper has fixed it. */
  readonly at?: Corner;
};

/** Headings in a column of their own at the left, or each above its pieces. */
export type Headings = 'aside' | 'above';

/** Clear space: round the case, between cells, between faces of one piece, between a piece and its label, rows, groups. */
export type Spacing = {
  readonly edge: number;
  readonly cells: number;
  readonly faces: number;
  readonly label: number;
  readonly rows: number;
  readonly groups: number;
};

/** What is near belongs together: each step out is wider than the one within. Our own judgement. */
export const SPACING: Spacing = { edge: 12, cells: 10, faces: 5, label: 4, rows: 9, groups: 16 };

export type PlacedCell = { readonly piece: string; readonly faces: readonly Box[]; readonly label: Box };
export type PlacedGroup = {
  readonly title: string;
  readonly heading: Box;
  readonly text: Box | null;
  readonly cells: readonly PlacedCell[];
};

/** What does not fit: of which piece or case, by how many millimetres, and what would help. */
export type Misfit = {
  readonly kind: 'wide' | 'high' | 'deep' | 'outside' | 'overlap' | 'label' | 'holder';
  /** The piece meant; null when it is the case, or a heading. */
  readonly piece: string | null;
  readonly over: number;
  readonly says: string;
};

export type CasePlan = { readonly groups: readonly PlacedGroup[]; readonly misfits: readonly Misfit[] };

/** A length in a sentence, rounded up to a tenth, so that a misfit is never told smaller than it is. */
export function inMillimetres(length: number): string {
  return `${String(Math.ceil(length * 10 - 1e-6) / 10)} mm`;
}

/** The smallest box round all of these; they are at least one. */
export function around(boxes: readonly Box[]): Box {
  const left = Math.min(...boxes.map((box) => box.left));
  const top = Math.min(...boxes.map((box) => box.top));
  return {
    left,
    top,
    width: Math.max(...boxes.map((box) => box.left + box.width)) - left,
    height: Math.max(...boxes.map((box) => box.top + box.height)) - top,
  };
}

/** By how much two boxes lie over one another, across and down; null when they do not. */
export function overlapOf(a: Box, b: Box): Size | null {
  const width = Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left);
  const height = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  return width > 1e-6 && height > 1e-6 ? { width, height } : null;
}

/** What the keeper has fixed: a heading with its text, or a piece with its label. */
export type Fixed = { readonly title: string; readonly piece: string | null; readonly box: Box; readonly at: Corner };
