import type { Box, Cell, Corner, LabelStand, PlacedCell, Size, Spacing } from './boxes.ts';

/** How much room a piece and its label take together. Beside, the label begins behind a room for faces this wide. */
export function roomOfCell(cell: Cell, stand: LabelStand, facesRoom: number, spacing: Spacing): Size {
  const faces = facesSize(cell.faces, spacing);
  return stand === 'beside'
    ? {
        width: Math.max(faces.width, facesRoom) + spacing.label + cell.label.width,
        height: Math.max(faces.height, cell.label.height),
      }
    : {
        width: Math.max(faces.width, cell.label.width),
        height: faces.height + spacing.label + cell.label.height,
      };
}

export function facesSize(faces: Cell['faces'], spacing: Spacing): Size {
  return {
    width: faces.reduce((sum, { width }) => sum + width, 0) + Math.max(0, faces.length - 1) * spacing.faces,
    height: Math.max(0, ...faces.map(({ height }) => height)),
  };
}

/** How high a row of these is: its highest face and its highest label, one over the other or side by side. */
export function rowHeight(cells: readonly Cell[], stand: LabelStand, spacing: Spacing): number {
  const faces = facesHeight(cells, spacing);
  const label = Math.max(...cells.map((cell) => cell.label.height));
  return stand === 'beside' ? Math.max(faces, label) : faces + spacing.label + label;
}

export function facesHeight(cells: readonly Cell[], spacing: Spacing): number {
  return Math.max(...cells.map(({ faces }) => facesSize(faces, spacing).height));
}

/**
 * Puts a piece into its room in a row. Below, all faces of a row stand on one middle line and all labels begin on one
 * line; beside, faces and label stand on the middle line of the row.
 */
export function placeCell(
  cell: Cell,
  room: Box,
  row: { readonly faces: number; readonly stand: LabelStand; readonly facesRoom: number },
  spacing: Spacing,
): PlacedCell {
  const { width } = facesSize(cell.faces, spacing);
  if (row.stand === 'beside') {
    const facesRoom = Math.max(width, row.facesRoom);
    const label = {
      left: room.left + facesRoom + spacing.label,
      top: room.top + (room.height - cell.label.height) / 2,
      ...cell.label,
    };
    const start = { left: room.left + (facesRoom - width) / 2, top: room.top };
    return { piece: cell.piece, faces: facesOn(cell, start, room.height, spacing), label };
  }
  const start = { left: room.left + (room.width - width) / 2, top: room.top };
  const label = {
    left: room.left + (room.width - cell.label.width) / 2,
    top: room.top + row.faces + spacing.label,
    ...cell.label,
  };
  return { piece: cell.piece, faces: facesOn(cell, start, row.faces, spacing), label };
}

/** A piece whose first face the keeper has fixed; the label below it, or beside it. */
export function placeFixed(cell: Cell, at: Corner, stand: LabelStand, spacing: Spacing): PlacedCell {
  const { width, height } = facesSize(cell.faces, spacing);
  const first = cell.faces[0]?.height ?? height;
  const top = at.top - (height - first) / 2;
  const label =
    stand === 'beside'
      ? { left: at.left + width + spacing.label, top: top + (height - cell.label.height) / 2 }
      : { left: at.left + (width - cell.label.width) / 2, top: top + height + spacing.label };
  return {
    piece: cell.piece,
    faces: facesOn(cell, { left: at.left, top }, height, spacing),
    label: { ...label, ...cell.label },
  };
}

function facesOn(cell: Cell, start: Corner, height: number, spacing: Spacing): readonly Box[] {
  let { left } = start;
  return cell.faces.map((face) => {
    const box = { left, top: start.top + (height - face.height) / 2, ...face };
    left += face.width + spacing.faces;
    return box;
  });
}
