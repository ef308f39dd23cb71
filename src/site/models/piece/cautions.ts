import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { CautionName } from '../../words/cautions.ts';

/** The cautions a piece calls for. */
export function cautionsFor(piece: PublicPiece): readonly CautionName[] {
  const metal = (piece.metal ?? '').toLowerCase();
  const cautions: readonly (readonly [boolean, CautionName])[] = [
    [piece.found !== null, 'finds'],
    [piece.kind === 'replica' || piece.kind === 'counterfeit', 'copies'],
    [/clean|polish|tool/.test(`${piece.problem ?? ''} ${piece.treatments.join(' ')}`), 'cleaning'],
    [/\blead\b|pewter/.test(metal), 'lead'],
  ];
  return cautions.filter(([calls]) => calls).map(([, caution]) => caution);
}
