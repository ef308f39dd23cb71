import { fold } from './fold.ts';
import { PARTS } from './record.ts';
import type { FindRecord, Part } from './record.ts';

/** The words by which a piece was found that its title does not show, with what of it they are. */
export type Reason = { readonly part: Part; readonly words: readonly string[] };

/** Why a piece is among the results: for each part of it but the title, the words that answer; the weightiest part first. */
export function reasonsFor({ words, parts }: FindRecord, by: readonly string[]): readonly Reason[] {
  const all = words.split(' ');
  let from = 0;
  return PARTS.flatMap((part, at) => {
    const own = all.slice(from, (from += parts[at] ?? 0));
    const told = [...new Set(by)].filter((word) => own.includes(word));
    return part === 'title' || told.length === 0 ? [] : [{ part, words: told }];
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
