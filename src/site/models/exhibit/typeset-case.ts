import type { Box } from '../../../core/cases/case-plan.ts';
import type { CaseToSet, LabelStyle } from '../../../core/cases/case-to-typeset.ts';
import type { LaidCase, LaidCell, LaidGroup } from '../../../core/cases/typeset-case.ts';
import { layCase } from '../../../core/cases/typeset-case.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { extentOf, isRound, UNMEASURED } from '../shared/sizes.ts';
import type { ShownCase, ShownFace, ShownGroup, ShownPiece } from './shown-exhibit.ts';

/** What the core laid, with the pieces and groups it was laid for. Where labels are on a key, a label is the small card with its number. */
export type SetCell = Omit<LaidCell, 'faces'> & {
  readonly shown: ShownPiece;
  readonly faces: readonly { readonly face: ShownFace; readonly box: Box; readonly round: boolean }[];
};
export type SetGroup = Omit<LaidGroup, 'cells'> & { readonly group: ShownGroup; readonly cells: readonly SetCell[] };
export type SetCase = Pick<LaidCase, 'stand' | 'misfits' | 'key'> & {
  readonly shown: ShownCase;
  readonly groups: readonly SetGroup[];
};

/** A case with every label, heading and text set, and all of it laid out at true size. */
export function setCase(shown: ShownCase, label: LabelStyle): SetCase {
  const { stand, groups, misfits, key } = layCase(caseToSet(shown), label);
  return {
    shown,
    stand,
    misfits,
    key,
    groups: groups.map((laid, g): SetGroup => {
      const group = shown.groups[g] ?? fail();
      return {
        ...laid,
        group,
        cells: laid.cells.map((cell, c): SetCell => {
          const piece = group.pieces[c] ?? fail();
          const round = isRound(piece.piece);
          return {
            ...cell,
            shown: piece,
            faces: cell.faces.map((box, side) => ({ face: piece.faces[side] ?? 'obverse', box, round })),
          };
        }),
      };
    }),
  };
}

/** A case as the core lays it: sizes, labels and titles in place of pieces. */
export function caseToSet({ inside, groups }: ShownCase): CaseToSet {
  return {
    inside,
    groups: groups.map(({ title, text, at, pieces }) => ({
      title,
      text,
      ...(at === undefined ? {} : { at }),
      pieces: pieces.map((shown) => ({
        key: shown.key,
        piece: shown.piece.id,
        title: shown.piece.title,
        faces: shown.faces.map(() => extentOf(shown.piece) ?? UNMEASURED),
        thickness: known(shown.piece.thickness)?.high ?? null,
        label: shown.label,
        facts: shown.facts,
        ...(shown.at === undefined ? {} : { at: shown.at }),
      })),
    })),
  };
}

function fail(): never {
  throw new Error('A plan has not as many groups or cells as its case.');
}
