import type { FiledPiece } from '../../catalogue/records.ts';
import { matchName } from './match-name.ts';

/** A photograph that will be copied: to the face its name says, or to the faces that are seen in it. */
export type Bringing = { readonly from: string; readonly piece: string; readonly face: string | null };
/** A photograph that stays where it is, and why. */
export type LeftOut = { readonly from: string; readonly because: string };
export type BringingPlan = { readonly brought: readonly Bringing[]; readonly leftOut: readonly LeftOut[] };

/** Which photographs go to which piece and face. A face that has a photograph keeps it, and of two for one face the first goes. */
export function planBringing(paths: readonly string[], pieces: readonly FiledPiece[]): BringingPlan {
  const known = pieces.map(({ id, fields }) => ({ id, number: fields.number }));
  const brought: Bringing[] = [];
  const leftOut: LeftOut[] = [];
  const taken = new Map(
    pieces.flatMap(({ id, pictures }) => pictures.map(({ face, file }) => [`${id} ${face}`, file])),
  );
  const matched = paths.map((from) => ({ from, match: matchName(from, known) }));
  for (const { from, match } of matched) {
    if (!match.ok) {
      leftOut.push({ from, because: match.because });
      continue;
    }
    const { piece, face } = match;
    const unnamed = matched.filter(({ match: other }) => other.ok && other.piece === piece && other.face === null);
    if (face === null && unnamed.length > 1) {
      const because = `${unnamed.length} pictures are of ${piece} and do not say of which face. Add obverse or reverse to their names.`;
      leftOut.push({ from, because });
      continue;
    }
    const there = (face === null ? ['obverse', 'reverse'] : [face]).map((one) => taken.get(`${piece} ${one}`));
    const held = there.find((file) => file !== undefined);
    if (held !== undefined) {
      leftOut.push({
        from,
        because: `${held} is there already, and nothing is written over. Take that one away first if this is better.`,
      });
      continue;
    }
    for (const one of face === null ? ['obverse', 'reverse'] : [face]) taken.set(`${piece} ${one}`, from);
    brought.push({ from, piece, face });
  }
  return { brought, leftOut };
}
