/** The ways a list of pieces can be narrowed, in the order they are offered. */
export const FACETS = ['ruler', 'mint', 'denomination', 'metal', 'era', 'grade', 'kind', 'tag'] as const;
export type FacetName = (typeof FACETS)[number];

/** What is told of a piece, in the order in which a word of it is a reason: a word is of the first that has it. */
export const PARTS = [
  'title', 'number', 'ruler', 'mint', 'denomination', 'maker', 'reference', 'legend', 'fact', 'story',
] as const; // prettier-ignore
export type Part = (typeof PARTS)[number];

/** How the face of a found piece is laid: by a picture, or as a plain disc. */
export type FoundFace =
  | { readonly wide: string; readonly src: string; readonly width: number; readonly height: number }
  | { readonly wide: string; readonly tall: string; readonly look: string };

/** A found piece as it is laid. */
export type ShownRecord = {
  readonly id: string;
  readonly to: string;
  readonly title: string;
  readonly number: string;
  readonly line: string;
  /** The grade in the words of its scale; null where it has none. */
  readonly grade: string | null;
  readonly note: string | null;
  readonly face: FoundFace;
  /** What it is sorted by; null where that is not recorded. Years are astronomical, weights grams, sizes millimetres. */
  readonly by: {
    readonly date: number | null;
    readonly weight: number | null;
    readonly size: number | null;
    readonly grade: number | null;
  };
};

/** What the search knows of a piece: public facts of listed pieces and no more. */
export type FindRecord = ShownRecord & {
  /** Every word it can be found by, folded, part by part; of descriptions and stories those that no earlier part has. */
  readonly words: Readonly<Partial<Record<Part, readonly string[]>>>;
  /** The years it may have been made in, null where an end is open; null when undated. */
  readonly years: readonly [low: number | null, high: number | null] | null;
  /** Its legends as read, obverse first. */
  readonly legends: readonly string[];
  /** For each facet the values it answers to. */
  readonly facets: Readonly<Partial<Record<FacetName, readonly string[]>>>;
};
