import type { Box, CaseGroup, CasePlan, Cell, Misfit, PlacedCell, PlacedGroup, Spacing } from './case-plan.ts';
import { SPACING } from './case-plan.ts';

/**
 * Lays groups one under another in a case, the pieces of each in rows read from left to right, every label beneath its
 * piece and all labels of a row in one line. The order is the keeper's. What height is left over is shared between the
 * groups; what is wanting is said in millimetres.
 */
export function layOutCase(
  inside: { width: number; height: number },
  groups: readonly CaseGroup[],
  spacing: Spacing = SPACING,
): CasePlan {
  const width = inside.width - 2 * spacing.edge;
  const laid = groups.map((group) => rowsOf(group.cells, width, spacing));
  const heights = groups.map((group, index) => {
    const rows = laid[index] ?? [];
    const blocks = [group.heading, group.text, ...rows.map(({ height }) => height)].filter((height) => height > 0);
    return blocks.reduce((sum, height) => sum + height, 0) + Math.max(0, blocks.length - 1) * spacing.label;
  });
  const needed =
    heights.reduce((sum, height) => sum + height, 0) +
    Math.max(0, groups.length - 1) * spacing.groups +
    2 * spacing.edge;
  const spare = Math.max(0, inside.height - needed) / (groups.length + 1);
  let top = spacing.edge + spare;
  const placed = groups.map((group, index): PlacedGroup => {
    const result = placeGroup(
      group,
      laid[index] ?? [],
      { left: spacing.edge, top, width, height: heights[index] ?? 0 },
      spacing,
    );
    top += (heights[index] ?? 0) + spacing.groups + spare;
    return result;
  });
  return { groups: placed, misfits: [...tooWide(groups, width), ...tooHigh(needed, inside.height, groups)] };
}

type Row = { readonly cells: readonly Cell[]; readonly faces: number; readonly height: number };

function rowsOf(cells: readonly Cell[], width: number, spacing: Spacing): readonly Row[] {
  const rows: Cell[][] = [];
  let used = Infinity;
  for (const cell of cells) {
    const wide = widthOf(cell, spacing);
    if (used + spacing.cells + wide > width) {
      rows.push([]);
      used = -spacing.cells;
    }
    rows.at(-1)?.push(cell);
    used += spacing.cells + wide;
  }
  return rows.map((row) => {
    const faces = Math.max(...row.map(({ faces: shown }) => Math.max(...shown.map(({ height }) => height))));
    return { cells: row, faces, height: faces + spacing.label + Math.max(...row.map(({ label }) => label.height)) };
  });
}

function widthOf({ faces, label }: Cell, spacing: Spacing): number {
  return Math.max(facesWidth(faces, spacing), label.width);
}

function facesWidth(faces: Cell['faces'], spacing: Spacing): number {
  return faces.reduce((sum, { width }) => sum + width, 0) + Math.max(0, faces.length - 1) * spacing.faces;
}

function placeGroup(group: CaseGroup, rows: readonly Row[], within: Box, spacing: Spacing): PlacedGroup {
  const heading = { left: within.left, top: within.top, width: within.width, height: group.heading };
  let top = within.top + group.heading + spacing.label;
  const text = group.text === 0 ? null : { left: within.left, top, width: within.width, height: group.text };
  if (text !== null) top += group.text + spacing.label;
  const cells = rows.flatMap((row): readonly PlacedCell[] => {
    const used =
      row.cells.reduce((sum, cell) => sum + widthOf(cell, spacing), 0) + (row.cells.length - 1) * spacing.cells;
    let left = within.left + Math.max(0, (within.width - used) / 2);
    const placed = row.cells.map((cell): PlacedCell => {
      const wide = widthOf(cell, spacing);
      const placedCell = placeCell(cell, { left, top, width: wide, height: row.faces }, spacing);
      left += wide + spacing.cells;
      return placedCell;
    });
    top += row.height + spacing.label;
    return placed;
  });
  return { title: group.title, heading, text, cells };
}

/** The faces of a piece on one line through their middles, the label centred beneath. */
function placeCell(cell: Cell, within: Box, spacing: Spacing): PlacedCell {
  let left = within.left + (within.width - facesWidth(cell.faces, spacing)) / 2;
  const faces = cell.faces.map(({ width, height }) => {
    const box = { left, top: within.top + (within.height - height) / 2, width, height };
    left += width + spacing.faces;
    return box;
  });
  const label = {
    left: within.left + (within.width - cell.label.width) / 2,
    top: within.top + within.height + spacing.label,
    ...cell.label,
  };
  return { piece: cell.piece, faces, label };
}

function tooWide(groups: readonly CaseGroup[], width: number): readonly Misfit[] {
  return groups
    .flatMap(({ cells }) => cells)
    .flatMap((cell) => {
      const over = widthOf(cell, SPACING) - width;
      if (over <= 0) return [];
      const says = `${cell.piece} is wider than the case by ${millimetres(over)}. Show one face, make the label narrower, or take a wider case.`;
      return [{ piece: cell.piece, over, says }];
    });
}

function tooHigh(needed: number, height: number, groups: readonly CaseGroup[]): readonly Misfit[] {
  const over = needed - height;
  if (over <= 0) return [];
  const last = groups.at(-1)?.title ?? '';
  return [
    {
      piece: null,
      over,
      says: `The case is too low by ${millimetres(over)}. Move “${last}” to the next case, shorten the texts, or make the labels wider.`,
    },
  ];
}

function millimetres(length: number): string {
  return `${String(Math.ceil(length * 10) / 10)} mm`;
}
