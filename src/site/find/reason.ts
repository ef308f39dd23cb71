import { fold } from './fold.ts';
import { PARTS } from './record.ts';
import type { Part } from './record.ts';
import { partWith } from './table.ts';
import type { Known } from './table.ts';

/** The words by which a piece was found that its title does not show, with what of it they are. */
export type Reason = { readonly part: Part; readonly words: readonly string[] };

/** Why a piece is among the results: for each part of it but the title, the words that answer; the weightiest part first. */
export function reasonsOf(by: readonly Known[], at: number): readonly Reason[] {
  const told = [...new Set(by)].map((known) => ({ word: known.word, part: partWith(known, at) }));
  return PARTS.flatMap((part) => {
    const words = told.filter((one) => one.part === part).map(({ word }) => word);
    return part === 'title' || words.length === 0 ? [] : [{ part, words }];
  });
}

/** A text cut where its words begin and end, each piece with whether it is one of these folded words. */
export function cutAtWords(
  text: string,
  by: readonly string[],
): readonly { readonly text: string; readonly isMeant: boolean }[] {
  const meant = new Set(by);
  return (text.match(/[\p{L}\p{N}\p{M}]+|[^\p{L}\p{N}\p{M}]+/gu) ?? []).map((piece) => ({
    text: piece,
    isMeant: meant.has(fold(piece)),
  }));
}
