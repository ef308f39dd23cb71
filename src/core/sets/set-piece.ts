import type { Interval } from '../eras/era-scheme.ts';
import type { Grade } from '../grade/grade.ts';

export type HowSure = 'certain' | 'probable' | 'possible';

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
  /** The years it may have been made in, both ends included; null when undated. */
  readonly interval: Interval | null;
  /** When it was made in one of several separate years or spans. */
  readonly years?: readonly (readonly [number, number])[] | undefined;
  readonly references: readonly { readonly work: string; readonly number: string; readonly relation: string }[];
  readonly tags: readonly string[];
  readonly dies?: { readonly obverse?: string | undefined; readonly reverse?: string | undefined } | undefined;
  /** Whether it was made over from another piece. */
  readonly altered: boolean;
  /** The ruler of the piece it was made from. */
  readonly host?: string | undefined;
  /** Whether a problem keeps it from a straight grade. */
  readonly details: boolean;
  /** On the numeric scale; null when not graded. */
  readonly grade: Interval | null;
  /** The grade in full, where there is one: two grades cannot be compared by their numbers when one is of a proof. */
  readonly stated?: Grade | null | undefined;
  /** How sure each statement is; certain when nothing is said. */
  readonly sure: Readonly<Partial<Record<string, HowSure | undefined>>>;
  /** Year of acquisition, as far as the keeper publishes it. */
  readonly acquired?: number | null | undefined;
  /** The keeper's choice between equals: 1 before 2, and either before none. */
  readonly prefer?: number | undefined;
};
