import type { Misfit } from './boxes.ts';
import { inMillimetres } from './boxes.ts';
import type { CaseToSet } from './case-to-plan.ts';
import { HOLDERS } from './furniture.ts';

export function tooDeep({ inside, groups }: CaseToSet): readonly Misfit[] {
  return groups
    .flatMap(({ pieces }) => pieces)
    .flatMap(({ piece, title, thickness }): readonly Misfit[] => {
      const over = (thickness ?? 0) - (inside.depth ?? Infinity);
      if (over <= 1e-6) return [];
      const says = `“${title}” is too thick for the case by ${inMillimetres(over)}. Take it out, or take a case at least ${inMillimetres(thickness ?? 0)} deep.`;
      return [{ kind: 'deep', piece, over, says }];
    });
}

/** A piece larger than the outside of what it is to lie in. */
export function tooLargeForHolder({ groups }: CaseToSet): readonly Misfit[] {
  return groups
    .flatMap(({ pieces }) => pieces)
    .flatMap(({ piece, title, holder }): readonly Misfit[] => {
      if (holder === undefined || !HOLDERS[holder.is.kind].encloses) return [];
      const over = Math.max(holder.piece.width - holder.is.width, holder.piece.height - holder.is.height);
      if (over <= 1e-6) return [];
      const says = `“${title}” is larger than its ${HOLDERS[holder.is.kind].name} by ${inMillimetres(over)}. Write the outer size of the one it is in.`;
      return [{ kind: 'holder', piece, over, says }];
    });
}

/** Pieces whose depth could not be judged: that is no fault, and the plan says so. */
export function depthNotes({ inside, groups }: CaseToSet): readonly string[] {
  const pieces = groups.flatMap((group) => group.pieces);
  const unknown = pieces.filter(({ thickness }) => thickness === null).length;
  if (inside.depth === null || unknown === 0) return [];
  return [
    `The depth was not checked for ${ofAll(unknown, pieces.length)}: the thickness of the piece, or of its holder, is not recorded.`,
  ];
}

/** Bare pieces in a case that is not flat. */
export function slideNotes({ kind = 'flat', groups }: CaseToSet): readonly string[] {
  const pieces = groups.flatMap((group) => group.pieces);
  const bare = pieces.filter(({ holder }) => holder === undefined).length;
  if (kind === 'flat' || bare === 0) return [];
  const lie = bare === 1 ? 'lies' : 'lie';
  return [
    `The case is ${kind === 'sloped' ? 'sloped' : 'upright'}: ${ofAll(bare, pieces.length)} ${lie} without a holder and will slide unless held.`,
  ];
}

function ofAll(some: number, all: number): string {
  if (some === all) return all === 1 ? 'the piece' : `all ${String(all)} pieces`;
  return `${String(some)} of ${String(all)} pieces`;
}
