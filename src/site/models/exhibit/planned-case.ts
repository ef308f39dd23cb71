import type { Box, Size } from '../../../core/cases/boxes.ts';
import type { CaseToSet, LabelStyle } from '../../../core/cases/case-to-plan.ts';
import type { LaidCase, LaidCell, LaidGroup } from '../../../core/cases/plan-case.ts';
import { layCase } from '../../../core/cases/plan-case.ts';
import { roomOf } from '../../../catalogue/exhibits/exhibit-texts.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { extentOf, isRound, UNMEASURED } from '../shared/sizes.ts';
import type { ShownCase, ShownFace, ShownGroup, ShownPiece } from './shown-exhibit.ts';

/** What the core laid, with the pieces and groups it was laid for. Where labels are on a key, a label is the small card with its number. */
export type SetCell = Omit<LaidCell, 'faces'> & {
  readonly shown: ShownPiece;
  readonly faces: readonly LaidFace[];
};
/** A face where it lies, and round it what it lies in, if anything. */
export type LaidFace = {
  readonly face: ShownFace;
  readonly box: Box;
  readonly round: boolean;
  readonly holder: { readonly box: Box; readonly round: boolean } | null;
};
export type SetGroup = Omit<LaidGroup, 'cells'> & { readonly group: ShownGroup; readonly cells: readonly SetCell[] };
export type SetCase = Pick<LaidCase, 'stand' | 'misfits' | 'notes' | 'key'> & {
  readonly shown: ShownCase;
  readonly groups: readonly SetGroup[];
};

/** A case with every label, heading and text set, and all of it laid out at true size. */
export function setCase(shown: ShownCase, label: LabelStyle): SetCase {
  const { stand, groups, misfits, notes, key } = layCase(caseToSet(shown), label);
  return {
    shown,
    stand,
    misfits,
    notes,
    key,
    groups: groups.map((laid, g): SetGroup => {
      const group = shown.groups[g] ?? fail();
      return {
        ...laid,
        group,
        cells: laid.cells.map((cell, c): SetCell => {
          const piece = group.pieces[c] ?? fail();
          return { ...cell, shown: piece, faces: cell.faces.map((box, side) => faceIn(box, piece, side)) };
        }),
      };
    }),
  };
}

/** The piece in the middle of the room that it takes with its holder. */
function faceIn(room: Box, { piece, faces, holder }: ShownPiece, side: number): LaidFace {
  const middle = ({ width, height }: Size): Box => ({
    left: room.left + (room.width - width) / 2,
    top: room.top + (room.height - height) / 2,
    width,
    height,
  });
  const laid = { face: faces[side] ?? ('obverse' as const), round: isRound(piece) };
  if (holder === null) return { ...laid, box: room, holder: null };
  return {
    ...laid,
    box: middle(extentOf(piece) ?? UNMEASURED),
    holder: { box: middle(holder), round: holder.isRound },
  };
}

/** A case as the core lays it: sizes, labels and titles in place of pieces. */
export function caseToSet({ inside, kind, groups }: ShownCase): CaseToSet {
  return {
    inside,
    kind,
    groups: groups.map(({ title, text, at, pieces }) => ({
      title,
      text,
      ...(at === undefined ? {} : { at }),
      pieces: pieces.map((shown) => ({
        key: shown.key,
        piece: shown.piece.id,
        title: shown.piece.title,
        ...roomOf(
          extentOf(shown.piece) ?? UNMEASURED,
          shown.faces.length,
          known(shown.piece.thickness)?.high ?? null,
          shown.holder,
        ),
        label: shown.label,
        facts: shown.facts,
        identity: shown.identity,
        ...(shown.at === undefined ? {} : { at: shown.at }),
      })),
    })),
  };
}

function fail(): never {
  throw new Error('A plan has not as many groups or cells as its case.');
}
