import type { PublicPiece } from '../../../publish/public-piece.ts';
import { siteWords } from '../../words/site.ts';

/** A fact on a page: its name, its value, and where it leads. */
export type Row = {
  readonly name: string;
  /** Where it leads to besides, which is no answer of this piece. */
  readonly onward?: { readonly text: string; readonly to: string };
  readonly values: readonly {
    readonly text: string;
    readonly to?: string | undefined;
    /** `none`, `not known`. */ readonly isBlank: boolean;
  }[];
  /** `probably`, `possibly`; empty when certain. */
  readonly doubt: string;
  /** A short remark under the value. */
  readonly note?: string | undefined;
  /** What else it is told of than the piece itself. */
  readonly under?: string | undefined;
};

/** A row of one value; nothing when there is none. */
export function row(
  name: string,
  text: string | null | undefined,
  rest: { to?: string; doubt?: string; note?: string | undefined } = {},
): readonly Row[] {
  if (text === null || text === undefined || text === '') return [];
  return [
    {
      name,
      values: [{ text, to: rest.to, isBlank: text === siteWords.none || text === siteWords.unknown }],
      doubt: rest.doubt ?? '',
      note: rest.note,
    },
  ];
}

/** Whether a row says only that something does not apply, of a piece of which nobody would expect it: the mint of an ingot. */
export function isIdle({ values }: Row, { kind }: Pick<PublicPiece, 'kind'>): boolean {
  return kind !== 'coin' && kind !== 'unknown' && values.every(({ text }) => text === siteWords.none);
}
