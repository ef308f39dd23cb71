/** How a piece stands to the entry cited: it is that entry, is like it, is a variety of it, or is not in the book. */
export type Relation = 'is' | 'cf.' | 'var.' | 'unlisted';

/**
 * A reference: `work` is the key of the book, `number` as printed there (empty when the piece is unlisted and no near
 * number is given), `to` the last number of a range, written out in full: `223-5` runs from `223` to `225`.
 */
export type Reference = {
  readonly text: string;
  readonly work: string;
  readonly number: string;
  readonly relation: Relation;
  readonly to?: string;
};

/** A book that may be cited, by its key and by the names lists use for it. */
export type CitedWork = { readonly id: string; readonly names?: readonly string[] };
