import type {
  Box, CaseGroup, CasePlan, Cell, Corner, Fixed, Headings, LabelStand, PlacedCell, PlacedGroup, Size, Spacing,
} from './boxes.ts'; // prettier-ignore
import { around, overlapOf, SPACING } from './boxes.ts';
import { misfitsOf } from './misfits.ts';
import { facesHeight, facesSize, placeCell, placeFixed, roomOfCell, rowHeight } from './place-cell.ts';
import { balancedRows, lengthOf } from './rows.ts';

/** One way to lay a case; `isLoose` lets every piece take only its own width, so that columns no longer meet. */
export type Arrangement = { readonly stand: LabelStand; readonly headings: Headings; readonly isLoose: boolean };

/**
 * Lays groups one under another in the keeper's order, the pieces of each in rows read from left to right. All headings begin
 * on one upright line, all pieces on another, and the pieces are in columns that run through the whole case. What the keeper
 * has fixed stays where it is, and the rest flows round it. What height is left over is shared between the groups; what is
 * wanting is said in millimetres.
 */
export function layOutCase(
  inside: Size,
  groups: readonly CaseGroup[],
  how: Arrangement,
  usual: Spacing = SPACING,
): CasePlan {
  const fixed = fixedIn(groups, how.stand, usual);
  const spacing = fixed.length > 0 ? usual : spreadIn(inside, groups, how, usual);
  const frame = frameOf(inside, groups, how, fixed.length > 0, spacing);
  const lay = (spare: number): Flow => flow(groups, frame, fixed, spare, spacing);
  const tight = lay(0);
  const over = tight.bottom + spacing.edge - inside.height;
  // What is fixed does not move with the rest, so the gaps that fit are tried from the widest.
  const shares = fixed.length === 0 ? [1] : [1, 0.75, 0.5, 0.25];
  const laid =
    over >= 0
      ? tight
      : (shares
          .map((share) => lay((-over / (tight.count + 1)) * share))
          .find(({ bottom }) => bottom + spacing.edge <= inside.height + 1e-6) ?? tight);
  return {
    groups: laid.groups,
    misfits: misfitsOf(inside, groups, laid.groups, fixed, over, frame.right - frame.left),
  };
}

function fixedIn(groups: readonly CaseGroup[], stand: LabelStand, spacing: Spacing): readonly Fixed[] {
  return groups.flatMap((group): readonly Fixed[] => [
    ...(group.at === undefined
      ? []
      : [{ title: group.title, piece: null, box: { ...group.at, ...titleSize(group, spacing) }, at: group.at }]),
    ...group.cells.flatMap((cell) => {
      if (cell.at === undefined) return [];
      const { faces, label } = placeFixed(cell, cell.at, stand, spacing);
      return [{ title: cell.title ?? cell.piece, piece: cell.piece, box: around([...faces, label]), at: cell.at }];
    }),
  ]);
}

function titleSize({ heading, text }: CaseGroup, spacing: Spacing): Size {
  return text === null
    ? heading
    : {
        width: Math.max(heading.width, text.width),
        height: heading.height + spacing.label + text.height,
      };
}

/** The upright lines a case is laid by: where headings begin, and between which the pieces lie. */
type Frame = {
  readonly how: Arrangement;
  readonly headings: number;
  readonly left: number;
  readonly right: number;
  readonly facesRoom: number;
  readonly widthOf: (cell: Cell) => number;
};

function frameOf(
  inside: Size,
  groups: readonly CaseGroup[],
  how: Arrangement,
  isFixed: boolean,
  spacing: Spacing,
): Frame {
  const cells = groups.flatMap((group) => group.cells.filter(({ at }) => at === undefined));
  const titles = groups.filter(({ at }) => at === undefined).map((group) => titleSize(group, spacing).width);
  const room = inside.width - 2 * spacing.edge;
  const aside = how.headings === 'aside' ? Math.max(0, ...titles) + spacing.groups : 0;
  const facesRoom = how.isLoose ? 0 : Math.max(0, ...cells.map(({ faces }) => facesSize(faces, spacing).width));
  const widthAlone = (cell: Cell): number => roomOfCell(cell, how.stand, facesRoom, spacing).width;
  const columns = how.stand === 'key' ? cells.map(widthAlone) : cells.map((cell) => cell.label.width);
  const column = Math.max(0, ...columns) + spacing.cells;
  const widthOf = (cell: Cell): number => {
    const width = widthAlone(cell);
    const snapped = Math.ceil((width + spacing.cells) / column - 1e-9) * column - spacing.cells;
    const isSnapped = !how.isLoose && how.stand !== 'beside' && snapped <= room - aside;
    return isSnapped ? Math.max(width, snapped) : width;
  };
  const rows = groups.flatMap((group) => brokenInRows(group, widthOf, room - aside, spacing));
  const widest = Math.max(0, ...rows.map((row) => lengthOf(row, spacing.cells)));
  const used = Math.max(aside + widest, how.headings === 'above' ? Math.max(0, ...titles) : 0);
  // Round something fixed the keeper counts from the edge; else the whole is in the middle.
  const start = spacing.edge + (isFixed ? 0 : Math.max(0, (room - used) / 2));
  return { how, headings: start, left: start + aside, right: inside.width - spacing.edge, facesRoom, widthOf };
}

/** Columns moved apart until they reach the right edge of the case, at most by half their own width. */
function spreadIn(inside: Size, groups: readonly CaseGroup[], how: Arrangement, spacing: Spacing): Spacing {
  const { left, headings, widthOf } = frameOf(inside, groups, how, false, spacing);
  const room = inside.width - 2 * spacing.edge - (left - headings);
  const rows = groups.flatMap((group) => brokenInRows(group, widthOf, room, spacing));
  const most = Math.max(0, ...rows.map((row) => row.length));
  const spare = room - Math.max(0, ...rows.map((row) => lengthOf(row, spacing.cells)));
  if (most < 2 || spare <= 0) return spacing;
  const column = Math.max(...rows.flat());
  return { ...spacing, cells: spacing.cells + Math.min(spare / (most - 1) - 1e-6, column / 2) };
}

/** The widths of the pieces of a group, row by row. */
function brokenInRows(
  { cells }: CaseGroup,
  widthOf: Frame['widthOf'],
  room: number,
  spacing: Spacing,
): readonly (readonly number[])[] {
  const widths = cells.filter(({ at }) => at === undefined).map(widthOf);
  let from = 0;
  return balancedRows(widths, room, spacing.cells).map((many) => {
    from += many;
    return widths.slice(from - many, from);
  });
}

type Flow = { readonly groups: readonly PlacedGroup[]; readonly bottom: number; readonly count: number };

function flow(
  groups: readonly CaseGroup[],
  frame: Frame,
  fixed: readonly Fixed[],
  spare: number,
  spacing: Spacing,
): Flow {
  const blocked = fixed.map(({ box }) => box);
  let top = spacing.edge + spare;
  let bottom = 0;
  let count = 0;
  const placed = groups.map((group): PlacedGroup => {
    const size = titleSize(group, spacing);
    const at = group.at ?? clearOf(blocked, { left: frame.headings, top, ...size }, spacing);
    const heading = { ...at, ...group.heading };
    const text =
      group.text === null ? null : { left: at.left, top: at.top + group.heading.height + spacing.label, ...group.text };
    const isAbove = group.at === undefined && frame.how.headings === 'above';
    const from = isAbove ? at.top + size.height + spacing.rows : group.at === undefined ? at.top : top;
    const rows = layRows(group, frame, blocked, from, spacing);
    const ends = [
      ...(group.at === undefined ? [at.top + size.height] : []),
      ...(rows.bottom === null ? [] : [rows.bottom]),
    ];
    if (ends.length > 0) {
      bottom = Math.max(...ends);
      top = bottom + spacing.groups + spare;
      count += 1;
    }
    return { title: group.title, heading, text, cells: rows.cells };
  });
  return { groups: placed, bottom, count };
}

/** The pieces of a group in rows, fixed ones where they are; `bottom` is null when none flows. */
function layRows(
  group: CaseGroup,
  frame: Frame,
  blocked: readonly Box[],
  from: number,
  spacing: Spacing,
): { readonly cells: readonly PlacedCell[]; readonly bottom: number | null } {
  const { how, widthOf } = frame;
  const flowing = group.cells.filter(({ at }) => at === undefined);
  const laid = new Map<Cell, PlacedCell>();
  let [top, done, bottom] = [from, 0, null as number | null];
  while (done < flowing.length) {
    // Round something fixed a row may hold fewer than it was to, and those that are left are shared out anew.
    const [most = 1] = balancedRows(flowing.slice(done).map(widthOf), frame.right - frame.left, spacing.cells);
    const found = findRow(flowing.slice(done, done + most), frame, blocked, top, spacing);
    const cells = flowing.slice(done, done + found.lefts.length);
    const height = rowHeight(cells, how.stand, spacing);
    const faces = facesHeight(cells, spacing);
    cells.forEach((cell, index) => {
      const room = { left: found.lefts[index] ?? frame.left, top: found.top, width: widthOf(cell), height };
      laid.set(cell, placeCell(cell, room, { faces, stand: how.stand, facesRoom: frame.facesRoom }, spacing));
    });
    done += cells.length;
    bottom = found.top + height;
    top = bottom + spacing.rows;
  }
  const cells = group.cells.map(
    (cell) => laid.get(cell) ?? placeFixed(cell, cell.at ?? { left: 0, top: 0 }, how.stand, spacing),
  );
  return { cells, bottom };
}

/** The highest row at or under `top` that clears what is fixed, with as many of these pieces as it holds; at least one. */
function findRow(
  cells: readonly Cell[],
  frame: Frame,
  blocked: readonly Box[],
  top: number,
  spacing: Spacing,
): { readonly top: number; readonly lefts: readonly number[] } {
  const step = (height: number): number | null => {
    const strip = { left: frame.left, top, width: frame.right - frame.left, height };
    const under = blocked.filter((box) => overlapOf(wider(box, spacing.label), strip) !== null);
    return under.length === 0 ? null : Math.min(...under.map((box) => box.top + box.height)) + spacing.label + 1e-6;
  };
  for (;;) {
    for (let many = cells.length; many > 0; many -= 1) {
      const part = cells.slice(0, many);
      const lefts = packed(part, frame, blocked, { top, height: rowHeight(part, frame.how.stand, spacing) }, spacing);
      if (lefts !== null) return { top, lefts };
    }
    const next = step(rowHeight(cells.slice(0, 1), frame.how.stand, spacing));
    if (next === null) return { top, lefts: [frame.left] };
    top = next;
  }
}

/** Where each of these begins in a row of that height, clear of what is fixed; null when they do not all go in. */
function packed(
  cells: readonly Cell[],
  frame: Frame,
  blocked: readonly Box[],
  row: { readonly top: number; readonly height: number },
  spacing: Spacing,
): readonly number[] | null {
  let cursor = frame.left;
  const lefts: number[] = [];
  for (const cell of cells) {
    const width = frame.widthOf(cell);
    for (;;) {
      if (cursor + width > frame.right + 1e-6) return null;
      const room = { left: cursor, width, ...row };
      const across = blocked.find((box) => overlapOf(wider(box, spacing.label), room) !== null);
      if (across === undefined) break;
      cursor = across.left + across.width + spacing.label + 1e-6;
    }
    lefts.push(cursor);
    cursor += width + spacing.cells;
  }
  return lefts;
}

/** The nearest corner straight under this one where the box clears what is fixed. */
function clearOf(blocked: readonly Box[], box: Box, spacing: Spacing): Corner {
  const across = blocked.find((one) => overlapOf(wider(one, spacing.label), box) !== null);
  if (across === undefined) return { left: box.left, top: box.top };
  return clearOf(blocked, { ...box, top: across.top + across.height + spacing.label + 1e-6 }, spacing);
}

function wider({ left, top, width, height }: Box, by: number): Box {
  return { left: left - by, top: top - by, width: width + 2 * by, height: height + 2 * by };
}
