/** One face of a piece as it is laid for comparing. `millimetres` is how wide the whole picture, or the disc, is. */
export type ComparedFace = {
  readonly alt: string;
  /** Size class of what is shown. */
  readonly wide: string;
  readonly millimetres: number;
} & (
  | {
      /** The same picture at several widths in pixels, smallest first. */
      readonly pictures: readonly { readonly src: string; readonly width: number }[];
      readonly width: number;
      readonly height: number;
    }
  | { readonly tall: string; readonly look: string; readonly says: string }
);

/** A fact as it is in a table of several pieces: its name, and what this piece answers. */
export type ComparedFact = {
  readonly name: string;
  readonly text: string;
  /** The figure itself where two can be distinguished by how much. */
  readonly measure?: { readonly value: number; readonly unit: 'g' | 'mm' };
};

/** The file of a piece, as far as the page of comparing reads it. */
export type ComparedFile = { readonly compared: ComparedPiece };

/** All that the page of comparing knows of a piece: public facts of a piece that has a page, and no more. */
export type ComparedPiece = {
  readonly id: string;
  readonly to: string;
  readonly title: string;
  readonly line: string;
  readonly faces: { readonly obverse: ComparedFace; readonly reverse: ComparedFace };
  /** The die axis in degrees; null where it has none or none is recorded. */
  readonly turn: number | null;
  readonly facts: readonly ComparedFact[];
};
