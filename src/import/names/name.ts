import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { NamedInSheet } from '../plan/draft.ts';
import type { Span } from './spans.ts';

/** A list file that is there: its id, every name it has, and when it reigned; no reigns for what does not reign. */
export type KnownName = {
  readonly id: string;
  readonly names: readonly string[];
  readonly reigns: readonly Span[];
  readonly realm?: string;
};

/** A name where it is in the sheet, with the years its piece was made in. */
export type NameUse = NamedInSheet & { readonly row: number; readonly made: Span | null };

/** A file a name gets that has none yet. */
export type NewName = {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  /** The reign as the sheet has it: `1272-1307`. */
  readonly years: string | null;
  readonly realm?: string;
};

/** Names that are spelled in several ways and may be one; `spelled` as the sheet has them, the reign in brackets. */
export type NameQuestion = {
  readonly kind: ListKind;
  readonly id: string;
  /** Whether there is a file already. */
  readonly isKnown: boolean;
  /** Whether it is kept apart from others of the same spelling. */
  readonly isParted: boolean;
  readonly spelled: readonly string[];
  /** How many pieces carry these spellings. */
  readonly uses: number;
  /** Files whose names are nearly the same, most used first; they stay apart until somebody says they are one. */
  readonly like: readonly { readonly id: string; readonly name: string; readonly uses: number }[];
};

/** What a keeper has said: under each file's name, the spellings that are meant by it. */
export type SaidNames = Readonly<Record<string, readonly string[]>>;

/** Which names of one list are one, and which are nearly so. */
export type Likeness = {
  /** Names with one key are one, but for what a realm or a date distinguishes. */
  readonly same: (name: string) => string;
  /** Names that may be one, and are asked about. */
  readonly isNear: (one: string, other: string) => boolean;
};
