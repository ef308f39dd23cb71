import type { Box, CaseGroup, Cell, Fixed, Misfit, PlacedGroup, Size } from './boxes.ts';
import { inMillimetres, overlapOf, SPACING } from './boxes.ts';
import { formatPosition } from './position.ts';

/** What does not fit, each with its millimetres: too wide, too high, outside, one over another. */
export function misfitsOf(
  inside: Size,
  groups: readonly CaseGroup[],
  placed: readonly PlacedGroup[],
  fixed: readonly Fixed[],
  over: number,
  room: number,
): readonly Misfit[] {
  const larger = groups.flatMap(({ cells }) => cells.flatMap((cell) => largerThanCase(cell, inside)));
  const told = new Set(larger.map(({ piece }) => piece));
  const wide = groups.flatMap(({ cells }, g) =>
    cells.flatMap((cell, c): readonly Misfit[] => {
      const laid = placed[g]?.cells[c];
      if (cell.at !== undefined || laid === undefined || told.has(cell.piece)) return [];
      const by = acrossOf([...laid.faces, laid.label]) - room;
      if (by <= 1e-6) return [];
      const says = `${nameOf(cell)} and its label are wider by ${inMillimetres(by)} than the room for them in the case.`;
      return [{ kind: 'wide', piece: cell.piece, over: by, says }];
    }),
  );
  return [...larger, ...wide, ...tooHigh(over), ...outside(inside, fixed), ...overlaps(fixed)];
}

function nameOf({ title, piece }: Cell): string {
  return title === undefined ? piece : `“${title}”`;
}

/** A piece that no label or heading keeps out: it is larger than the case itself. */
function largerThanCase(cell: Cell, inside: Size): readonly Misfit[] {
  const broad = Math.max(...cell.faces.map(({ width }) => width)) - inside.width;
  const high = Math.max(...cell.faces.map(({ height }) => height)) - inside.height;
  const over = Math.max(broad, high);
  if (over <= 1e-6) return [];
  const way = broad >= high ? 'wide' : 'high';
  const says = `${nameOf(cell)} is itself larger than the case, by ${inMillimetres(over)}.`;
  return [{ kind: way, piece: cell.piece, over, says }];
}

function acrossOf(boxes: readonly Box[]): number {
  return Math.max(...boxes.map(({ left, width }) => left + width)) - Math.min(...boxes.map(({ left }) => left));
}

function tooHigh(over: number): readonly Misfit[] {
  if (over <= 1e-6) return [];
  return [
    { kind: 'high', piece: null, over, says: `The case is too low by ${inMillimetres(over)} for what it holds.` },
  ];
}

function outside(inside: Size, fixed: readonly Fixed[]): readonly Misfit[] {
  return fixed.flatMap(({ title, piece, box, at }): readonly Misfit[] => {
    const right = Math.max(0, box.left + box.width - inside.width);
    const low = Math.max(0, box.top + box.height - inside.height);
    const [left, high] = [Math.max(0, -box.left), Math.max(0, -box.top)];
    const over = Math.max(right, low, left, high);
    if (over <= 1e-6) return [];
    const sides = [
      ...(left > 1e-6 ? [`${inMillimetres(left)} at the left`] : []),
      ...(right > 1e-6 ? [`${inMillimetres(right)} at the right`] : []),
      ...(high > 1e-6 ? [`${inMillimetres(high)} at the top`] : []),
      ...(low > 1e-6 ? [`${inMillimetres(low)} at the foot`] : []),
    ].join(' and ');
    const fits = box.width <= inside.width && box.height <= inside.height;
    const within = {
      left: fits ? tidy(at.left + left - right, right > 0) : 0,
      top: fits ? tidy(at.top + high - low, low > 0) : 0,
    };
    const advice = fits ? `Write at: ${formatPosition(within)}.` : 'Take a larger case.';
    const says = `“${title}” is fixed where it reaches out of the case, by ${sides}. ${advice}`;
    return [{ kind: 'outside', piece, over, says }];
  });
}

/** To a tenth of a millimetre, towards the inside. */
function tidy(length: number, isDown: boolean): number {
  return (isDown ? Math.floor(length * 10 + 1e-6) : Math.ceil(length * 10 - 1e-6)) / 10;
}

function overlaps(fixed: readonly Fixed[]): readonly Misfit[] {
  return fixed.flatMap((one, index) =>
    fixed.slice(index + 1).flatMap((other): readonly Misfit[] => {
      const both = overlapOf(one.box, other.box);
      if (both === null) return [];
      const over = Math.min(both.width, both.height);
      const right = one.box.left + one.box.width - other.box.left + SPACING.label;
      const down = one.box.top + one.box.height - other.box.top + SPACING.label;
      const apart = `${inMillimetres(right)} to the right, or ${inMillimetres(down)} down`;
      const says = `“${one.title}” and “${other.title}” are fixed one over the other, by ${inMillimetres(both.width)} across and ${inMillimetres(both.height)} down. Move the second ${apart}.`;
      return [{ kind: 'overlap', piece: other.piece, over, says }];
    }),
  );
}
