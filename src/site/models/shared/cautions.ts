import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { CautionName } from '../../words/cautions.ts';

/** The cautions a piece calls for, none for most. */
export function cautionsOf(piece: PublicPiece): readonly CautionName[] {
  const told = [piece.problem, piece.grade?.text, ...piece.treatments].join(' ');
  const wasFound =
    piece.found !== null || piece.provenance.some(({ how }) => /\bfind\b|\bfound\b|detect/i.test(how ?? ''));
  const calls: readonly (readonly [CautionName, boolean])[] = [
    ['copies', piece.kind === 'replica'],
    ['counterfeits', piece.kind === 'counterfeit'],
    ['finds', wasFound],
    ['cleaning', /\b(?:(?:over)?clean(?:ed|ing)|polish(?:ed|ing)|whizzed|dipped)\b/i.test(told)],
    ['lead', /\blead\b|pewter/i.test(piece.metal ?? '')],
  ];
  return calls.filter(([, isCalledFor]) => isCalledFor).map(([name]) => name);
}
