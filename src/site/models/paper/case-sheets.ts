import type { Box } from '../../../core/cases/case-plan.ts';
import { setText, lineHeight } from '../../../core/cases/set-text.ts';
import { paperWords } from '../../words/paper.ts';
import type { SetCase } from '../exhibit/set-case.ts';
import { caseDrawing, smallCaseDrawing, smallEnough } from './case-drawing.ts';
import type { Mark } from './marks.ts';
import { FINE, moved, textMark, textMarks } from './marks.ts';
import type { Paper, PaperSheet } from './paper.ts';
import { MARGIN, roomOn } from './paper.ts';

/** One sheet with the whole case reduced and the key to its numbers. */
export function overviewSheet(set: SetCase, paper: Paper): PaperSheet {
  const { inside, number } = set.shown;
  const room = roomOn(paper);
  const scale = smallEnough(inside, room.width, room.height / 2);
  const points = 9;
  const says = [
    paperWords.overviewSays(inside.width, inside.height, scale),
    ...(set.misfits.length === 0 ? [] : [paperWords.misfits, ...set.misfits.map((misfit) => misfit.says)]),
  ].flatMap((line) => setText(line, room.width, points));
  const listFrom = inside.height / scale + says.length * lineHeight(points) + 8;
  const entries = set.groups.flatMap(({ cells }) =>
    cells.map(({ shown: { key, piece, faces } }) => {
      const side = faces.length === 2 ? paperWords.faces.both : paperWords.faces[faces[0] ?? 'obverse'];
      return setText(`${key}. ${piece.title} (${piece.number}), ${side}`, room.width, points);
    }),
  );
  const marks: readonly Mark[] = [
    ...smallCaseDrawing(set, scale),
    ...textMarks(says, 0, inside.height / scale + 4, points),
    ...textMarks(entries.flat(), 0, listFrom, points),
  ];
  return { name: paperWords.overview(number, scale), marks: moved(marks, MARGIN.side, MARGIN.top) };
}

/** The case at true size, cut into as many sheets as it takes; row by row. */
export function trueSizeSheets(set: SetCase, paper: Paper): readonly PaperSheet[] {
  const { inside, number } = set.shown;
  const room = roomOn(paper);
  const drawing = caseDrawing(set);
  const columns = Math.ceil(inside.width / room.width);
  const rows = Math.ceil(inside.height / room.height);
  return Array.from({ length: rows * columns }, (_, at) => {
    const [row, column] = [Math.floor(at / columns), at % columns];
    const [left, top] = [column * room.width, row * room.height];
    const tile: Box = {
      left,
      top,
      width: Math.min(room.width, inside.width - left),
      height: Math.min(room.height, inside.height - top),
    };
    const marks = [...drawing.filter((mark) => touches(mark, tile)), ...joints(tile, inside)];
    const box = { left: MARGIN.side, top: MARGIN.top, width: tile.width, height: tile.height };
    return {
      name: `${paperWords.plan(number)}: ${paperWords.tile(row + 1, column + 1)}`,
      marks: [
        { kind: 'window', box, left, top, marks },
        { kind: 'frame', box, weight: FINE, dashed: true, name: 'tile' },
        textMark(paperWords.joins, MARGIN.side, MARGIN.top - 1.5, 7, { face: 'sans' }),
      ],
    };
  });
}

const JOINT = 4;

/** Circles on the edges a sheet shares with its neighbours: half on one, half on the other. */
function joints(
  { left, top, width, height }: Box,
  inside: { readonly width: number; readonly height: number },
): readonly Mark[] {
  const sides: readonly (readonly [boolean, readonly (readonly [number, number])[]])[] = [
    [left > 0, thirds(top, height).map((y) => [left, y])],
    [left + width < inside.width, thirds(top, height).map((y) => [left + width, y])],
    [top > 0, thirds(left, width).map((x) => [x, top])],
    [top + height < inside.height, thirds(left, width).map((x) => [x, top + height])],
  ];
  return sides
    .filter(([isShared]) => isShared)
    .flatMap(([, at]) => at)
    .map(([x, y]) => ({
      kind: 'oval',
      box: { left: x - JOINT / 2, top: y - JOINT / 2, width: JOINT, height: JOINT },
      weight: FINE,
      dashed: false,
      name: 'joint',
    }));
}

function thirds(from: number, long: number): readonly number[] {
  return [from + long / 3, from + (2 * long) / 3];
}

/** Whether any of a mark may be seen in the tile. A line of text is taken to be as long as the tile is wide. */
function touches(mark: Mark, tile: Box): boolean {
  const within = ({ left, top, width, height }: Box): boolean =>
    left <= tile.left + tile.width &&
    left + width >= tile.left &&
    top <= tile.top + tile.height &&
    top + height >= tile.top;
  if (mark.kind === 'text') {
    const long = mark.line.reduce((sum, { text }) => sum + text.length, 0) * mark.size * 0.6;
    const left = mark.anchor === 'start' ? mark.x : mark.x - long / 2;
    return within({ left, top: mark.y - mark.size, width: long, height: 1.3 * mark.size });
  }
  return !('box' in mark) || within(mark.box);
}
