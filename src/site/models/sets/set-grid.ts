import type { GridLine } from '../../../core/sets/grid.ts';
import { setGrid } from '../../../publish/set-states.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { setsWords } from '../../words/sets.ts';
import { acrossClass, leadingFace } from '../shared/face.ts';
import type { FaceView } from '../shared/face.ts';
import type { Link } from './place-shown.ts';
import { setStatesOf } from './set-states-of.ts';

/** A piece in a cell; `possible` when it may belong elsewhere. */
export type GridPieceShown = Link & { readonly face: FaceView; readonly possible: boolean };
export type GridRow = {
  readonly label: string;
  readonly cells: readonly { readonly pieces: readonly GridPieceShown[]; readonly more: number }[];
};
/** A set by two facts: a table with the board in each cell. */
export type GridShown = {
  readonly title: string;
  readonly rowFact: string;
  /** The size classes of a row in which every column holds its widest piece: the scale at which it fits follows from it. */
  readonly across: string;
  readonly columns: readonly string[];
  readonly rows: readonly GridRow[];
};

/** Pieces laid in one cell. */
const LAID = 3;

/** The second view of a set; null when its file asks for none, or nothing fits it yet. */
export function gridShown(cabinet: Cabinet, id: string): GridShown | null {
  const set = cabinet.lists.sets.find((one) => one.id === id);
  const state = setStatesOf(cabinet).find((one) => one.id === id);
  if (set?.fields.grid === undefined || state === undefined) return null;
  const grid = setGrid(cabinet.lists, cabinet.listed, set, state);
  if (grid === null || grid.columns.length === 0) return null;
  const byId = new Map(cabinet.listed.map((piece) => [piece.id, piece]));
  const { rows, columns } = set.fields.grid;
  const label = (line: GridLine): string => (line.value === null ? setsWords.notRecorded : line.label);
  const shown = grid.rows.map((row, at) => ({
    label: label(row),
    cells: (grid.cells[at] ?? []).map((cell) => ({
      pieces: cell.slice(0, LAID).flatMap(({ piece: which, sure }) => {
        const piece = byId.get(which);
        if (piece === undefined) return [];
        const face = leadingFace(piece, cabinet.photographs);
        return [{ href: urls.piece(which), name: piece.title, face, possible: !sure }];
      }),
      more: Math.max(0, cell.length - LAID),
    })),
  }));
  // A row without a piece says only what the set's own list says.
  const held = shown.filter(({ cells }) => cells.some(({ pieces }) => pieces.length > 0));
  const faces = held.flatMap(({ cells }) => cells.flatMap(({ pieces }) => pieces.map(({ face }) => face)));
  const widest = faces.toSorted((a, b) => b.millimetres - a.millimetres).slice(0, 1);
  return {
    across: acrossClass([grid.columns.flatMap(() => widest)]),
    title: setsWords.gridOf(setsWords.gridFacts[rows], setsWords.gridFacts[columns]),
    rowFact: setsWords.gridFacts[rows],
    columns: grid.columns.map(label),
    rows: held,
  };
}
