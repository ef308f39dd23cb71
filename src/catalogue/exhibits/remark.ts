/** What a judge would remark on in an exhibit: gentle, and never in the way of a build. */
export type ExhibitRemark = {
  /** The exhibit's file, as in a problem. */
  readonly file: string;
  /** Counted from 1; null when the whole exhibit is meant. */
  readonly line: number | null;
  readonly says: string;
  /** Where the rule is printed, or that it is our own judgement. */
  readonly source: string;
};

/** A remark before its line is looked up; no path means the whole exhibit, an empty one its statement. */
export type Remark = {
  readonly path: readonly (string | number)[] | null;
  readonly says: string;
  readonly source: string;
};
