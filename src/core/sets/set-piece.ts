import type { Interval } from '../eras/era-scheme.ts';
import type { Graded } from '../grade/compare-grades.ts';
import { PROBLEM_NOT_SAID } from '../grade/grade.ts';
import type { Grade } from '../grade/grade.ts';
import type { Reference } from '../references/reference.ts';

export type HowSure = 'certain' | 'probable' | 'possible';

/**
 * When something was made: the years, both ends included, and, where the first and the last day are known, their fixed day numbers
 * (see `core/calendars`). `alternatives`: one of several separate years or spans.
 */
export type TimeSpan = Interval & {
  readonly days?: readonly [first: number, last: number] | undefined;
  readonly alternatives?: readonly Interval[] | undefined;
};

/** As much of a reference as a set compares. */
export type StatedReference = Pick<Reference, 'work' | 'number' | 'relation'> &
  Partial<Pick<Reference, 'to' | 'volume' | 'edition' | 'doubtful'>> & {
    /** The number of a type it may be, being known no nearer than a broader one. */
    readonly mayBe?: true;
    /** A number that several types claim, or of which one type claims several. */
    readonly disputed?: true;
  };

/** What a set needs to know of a piece. Ids are those of the list files; a fact left out is not recorded. */
export type SetPiece = {
  readonly id: string;
  /** How sentences name it; its id when left out. */
  readonly title?: string | undefined;
  readonly kind: string;
  /** kept lent sold given exchanged lost */
  readonly status: string;
  /** In whose name it stands; several for a joint reign. */
  readonly rulers: readonly string[];
  /** For whom it was struck in fact; empty when that is the ruler named. */
  readonly struckFor: readonly string[];
  readonly issuer?: string | undefined;
  readonly mint?: string | undefined;
  readonly area?: string | undefined;
  readonly denomination?: string | undefined;
  readonly metal?: string | undefined;
  readonly shape?: string | undefined;
  readonly made?: string | undefined;
  /** Facts that the keeper states to be unknown, or not to apply; others that are left out are not recorded. */
  readonly blanks?: Readonly<Partial<Record<string, 'unknown' | 'none'>>> | undefined;
  /** When it was made; null when undated. */
  readonly interval: TimeSpan | null;
  /** The date that stands on the piece; `unreadable` where nothing here reads it, left out where there is none. */
  readonly dated?: TimeSpan | 'unreadable' | undefined;
  readonly references: readonly StatedReference[];
  /** The types it is of, by id and `series/id`, broader ones included; and those it may be, being known no nearer. */
  readonly types?: { readonly is: readonly string[]; readonly maybe: readonly string[] } | undefined;
  readonly tags: readonly string[];
  /** A question mark at the end of a die's name doubts it. */
  readonly dies?: { readonly obverse?: string | undefined; readonly reverse?: string | undefined } | undefined;
  /** Whether it was made over from another piece. */
  readonly altered: boolean;
  /** The ruler of the piece it was made from. */
  readonly host?: string | undefined;
  /** Whether a problem keeps it from a straight grade. */
  readonly details: boolean;
  /** On the numeric scale; null when not graded. */
  readonly grade: Interval | null;
  /** The grade in full, where there is one: on one scale its labels decide, and a proof is compared with proofs alone. */
  readonly stated?: Grade | null | undefined;
  /** How sure each statement is; certain when nothing is said. */
  readonly sure: Readonly<Partial<Record<string, HowSure | undefined>>>;
  /** Year of acquisition, as far as the keeper publishes it. */
  readonly acquired?: number | null | undefined;
  /** The keeper's choice among sound pieces that fit a place, before any grade: 1 before 2, and either before none. */
  readonly prefer?: number | undefined;
};

export function nameOf(piece: SetPiece): string {
  return piece.title ?? piece.id;
}

/** The names of two pieces in one sentence; with their ids, where they are called alike. */
export function namesOf(one: SetPiece, other: SetPiece): readonly [string, string] {
  const names = [nameOf(one), nameOf(other)] as const;
  return names[0] === names[1] ? [`${names[0]} (${one.id})`, `${names[1]} (${other.id})`] : names;
}

/** The grade as far as it can be compared. */
export function gradedAs({ stated, grade, details }: SetPiece): Graded {
  const known: Graded = stated ?? { words: '', low: grade?.low ?? null, high: grade?.high ?? null, mappings: [] };
  return details ? { ...known, problem: known.problem ?? PROBLEM_NOT_SAID } : known;
}

/** The grade in its own words where they are known, else its steps. */
export function gradeInWords({ stated, grade }: SetPiece): string {
  if (stated != null && stated.words !== '') return stated.words;
  if (grade === null) return 'not graded';
  return grade.low === grade.high ? String(grade.low) : `${String(grade.low)}–${String(grade.high)}`;
}
