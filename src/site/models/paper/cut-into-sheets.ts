import type { Box } from '../../../core/cases/boxes.ts';
import type { Mark } from './marks.ts';
import type { Paper } from './paper.ts';
import { across, roomOn } from './paper.ts';

/** One sheet's part of a drawing that is larger than a sheet; row and column counted from 1. */
export type Tile = { readonly row: number; readonly column: number; readonly box: Box; readonly hasMarks: boolean };
export type Tiling = { readonly isAcross: boolean; readonly tiles: readonly Tile[] };

type Size = { readonly width: number; readonly height: number };

/** Beyond the outermost mark, when the empty border of a case is left off. */
const CLEAR = 5;

/**
 * Cuts a drawing into the fewest sheets: upright or across, over the whole case or only over what lies in it, in equal parts.
 * Parts without a mark need no sheet. Between equals, the whole case and upright paper come first.
 */
export function cutIntoSheets(marks: readonly Mark[], inside: Size, paper: Paper): Tiling {
  const whole = { left: 0, top: 0, ...inside };
  const used = extentOf(marks, whole);
  const extents = [
    whole,
    { ...whole, left: used.left, width: used.width },
    { ...whole, top: used.top, height: used.height },
    used,
  ];
  const all = extents.flatMap((extent) =>
    [false, true].map((isAcross) => tiled(marks, extent, isAcross ? across(paper) : paper, isAcross)),
  );
  return all.reduce((best, one) => (printed(one) < printed(best) ? one : best));
}

function printed({ tiles }: Tiling): number {
  return tiles.filter(({ hasMarks }) => hasMarks).length;
}

function tiled(marks: readonly Mark[], extent: Box, paper: Paper, isAcross: boolean): Tiling {
  const room = roomOn(paper);
  const columns = Math.ceil(extent.width / room.width - 1e-9);
  const rows = Math.ceil(extent.height / room.height - 1e-9);
  const [width, height] = [extent.width / columns, extent.height / rows];
  return {
    isAcross,
    tiles: Array.from({ length: rows * columns }, (_, at): Tile => {
      const [row, column] = [Math.floor(at / columns), at % columns];
      const box = { left: extent.left + column * width, top: extent.top + row * height, width, height };
      return { row: row + 1, column: column + 1, box, hasMarks: marks.some((mark) => touches(mark, box)) };
    }),
  };
}

/** The box round all marks and a little more, within the case. */
function extentOf(marks: readonly Mark[], whole: Box): Box {
  const boxes = marks.flatMap((mark) => ('box' in mark ? [mark.box] : []));
  if (boxes.length === 0) return whole;
  const left = Math.max(0, Math.min(...boxes.map((box) => box.left)) - CLEAR);
  const top = Math.max(0, Math.min(...boxes.map((box) => box.top)) - CLEAR);
  const right = Math.min(whole.width, Math.max(...boxes.map((box) => box.left + box.width)) + CLEAR);
  const bottom = Math.min(whole.height, Math.max(...boxes.map((box) => box.top + box.height)) + CLEAR);
  return { left, top, width: right - left, height: bottom - top };
}

/** Whether any of a mark may be seen in the tile. A line of text is taken to be longer than it is. */
export function touches(mark: Mark, tile: Box): boolean {
  const within = ({ left, top, width, height }: Box): boolean =>
    left <= tile.left + tile.width &&
    left + width >= tile.left &&
    top <= tile.top + tile.height &&
    top + height >= tile.top;
  if (mark.kind === 'text') {
    const long = mark.line.reduce((sum, { text }) => sum + text.length, 0) * mark.size * 0.6;
    const left = mark.anchor === 'middle' ? mark.x - long / 2 : mark.isLeftward ? mark.x - long : mark.x;
    return within({ left, top: mark.y - mark.size, width: long, height: 1.3 * mark.size });
  }
  return !('box' in mark) || within(mark.box);
}
