/** The scales a grade can be on. `numeric` is the scale of thirty steps from 1 to 70. */
export const SCALE_IDS = ['numeric', 'us', 'uk', 'de', 'fr', 'it', 'es', 'nl', 'nordic', 'ancient'] as const;
export type ScaleId = (typeof SCALE_IDS)[number];

/** Where one published table puts a word on the numeric scale. */
export type Mapping = { readonly source: string; readonly low: number; readonly high: number };

/** Where labels are in the order of one scale. */
export type Rank = { readonly scale: ScaleId; readonly low: number; readonly high: number };

/** A grade as it was given, and where it may stand on the numeric scale. */
export type Grade = {
  readonly text: string;
  readonly scale: ScaleId;
  /** The grade in the scale's own short words: `good VF/F`. Empty when the piece was not graded. */
  readonly words: string;
  /** The union of all mappings; null when it was not graded. */
  readonly low: number | null;
  readonly high: number | null;
  /** One for each table that has the word; they disagree, and all are kept. */
  readonly mappings: readonly Mapping[];
  /**
   * Where its labels are in the order of each scale it was read on: ten for every word from the poorest, less or more for *near*
   * and *good*. `VF/F` runs from F to VF. Numbers have none: their steps are their order.
   */
  readonly ranks?: readonly Rank[];
  /** The scales it was read on together, when none was named and the word is at home on several. */
  readonly alsoOn?: readonly ScaleId[];
  /** What ails it. A piece with a problem is a details piece: its grade speaks of wear alone. */
  readonly problem?: string;
  /** Why it was not graded. */
  readonly notGraded?: string;
  /** Made as a proof, which is a way of striking and not a state of keeping. */
  readonly proof?: true;
  /** Said of copper in the trade: how much of the mint's colour is left. */
  readonly colour?: 'red' | 'red and brown' | 'brown';
  /** Out of 5, as lists of ancient coins give them beside the grade. */
  readonly strike?: number;
  readonly surface?: number;
  /** What else was said that is no fault: `toned`, `prooflike`. */
  readonly remarks?: readonly string[];
};

/** Said of a details piece whose problem was not named. */
export const PROBLEM_NOT_SAID = 'not said which';

/** A piece that has no grade. That is not a poor grade; the reason takes its place. */
export function notGraded(reason: string, text = `not graded: ${reason}`): Grade {
  return { text, scale: 'numeric', words: '', low: null, high: null, mappings: [], notGraded: reason };
}

/** What a grade would have to know of a piece to be refused one. */
export type Gradable = {
  readonly kind: string;
  readonly altered: boolean;
  readonly treatments: readonly string[];
};

/** Kinds that wear says nothing about. Common practice. */
const UNGRADABLE_KINDS: ReadonlyMap<string, string> = new Map([
  ['ingot', 'an ingot'],
  ['hacksilver', 'hacksilver'],
  ['coin-weight', 'a coin-weight'],
]);

/** Treatments that leave too little to grade. Common practice. */
const UNGRADABLE_TREATMENTS: ReadonlySet<string> = new Set(['cut', 'halved', 'quartered', 'melted', 'fragment']);

/** Why a piece is not to be graded: it is an ingot, altered, or cut. Null when it may be. */
export function whyNotGraded(piece: Gradable): string | null {
  const kind = UNGRADABLE_KINDS.get(piece.kind);
  if (kind !== undefined) return kind;
  if (piece.altered) return 'altered';
  return piece.treatments.find((treatment) => UNGRADABLE_TREATMENTS.has(treatment)) ?? null;
}

/** The grade in the short words of its scale, to be read back on that scale: `good VF/F`, `EF details, cleaned`. */
export function formatGrade(grade: Grade): string {
  if (grade.notGraded !== undefined) return `not graded: ${grade.notGraded}`;
  const beside = [
    grade.colour,
    grade.strike === undefined ? undefined : `strike ${grade.strike}/5`,
    grade.surface === undefined ? undefined : `surface ${grade.surface}/5`,
    ...(grade.remarks ?? []),
  ].filter((each) => each !== undefined);
  const said = [grade.words, ...beside].join(', ');
  if (grade.problem === undefined) return said;
  const details = beside.length === 0 ? `${said} details` : `${said}, details`;
  return grade.problem === PROBLEM_NOT_SAID ? details : `${details}, ${grade.problem}`;
}
