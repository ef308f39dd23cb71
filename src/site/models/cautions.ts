import type { PublicPiece } from '../../publish/public-piece.ts';
import { cautionWords } from '../words/cautions.ts';

export type CautionView = { readonly title: string; readonly says: string };

/** The cautions a piece calls for, none for most. */
export function cautionsOf(piece: PublicPiece): readonly CautionView[] {
  const text = [piece.problem, piece.grade?.text, ...piece.treatments].join(' ');
  const calls: readonly (readonly [boolean, CautionView])[] = [
    [piece.kind === 'replica', cautionWords.copy],
    [piece.kind === 'counterfeit', cautionWords.counterfeit],
    [piece.found !== null || piece.provenance.some(({ how }) => /\bf(ind|ound)\b|detect/i.test(how ?? '')), cautionWords.find],
    [/clean|polish|whizz|dipped/i.test(text), cautionWords.cleaned],
    [/\blead\b|pewter/i.test(piece.metal ?? ''), cautionWords.lead],
  ];
  return calls.filter(([isCalledFor]) => isCalledFor).map(([, caution]) => caution);
}
