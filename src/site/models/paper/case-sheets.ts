import type { Box } from '../../../core/cases/boxes.ts';
import { lineHeight, setText } from '../../../core/cases/typeset-text.ts';
import { faceWords } from '../../words/faces.ts';
import { paperWords } from '../../words/paper.ts';
import type { SetCase } from '../exhibit/planned-case.ts';
import { caseDrawing, smallCaseDrawing } from './case-drawing.ts';
import type { Mark } from './marks.ts';
import { FINE, moved, textMark, textMarks } from './marks.ts';
import type { Paper, PaperSheet } from './paper.ts';
import { MARGIN, roomOn } from './paper.ts';
import type { Tile, Tiling } from './cut-into-sheets.ts';
import { cutIntoSheets, touches } from './cut-into-sheets.ts';

/** The plan of a case: one sheet with the whole, reduced, and then the sheets at true size, row by row. */
export function casePlanSheets(set: SetCase, paper: Paper): readonly PaperSheet[] {
  const drawing = caseDrawing(set);
  const lying = drawing.filter((mark) => !('name' in mark && mark.name === 'case'));
  const tiling = cutIntoSheets(lying, set.shown.inside, paper);
  return [overviewSheet(set, tiling, paper), ...trueSizeSheets(set, drawing, tiling)];
}

const POINTS = 10;
/** Between the two columns of the list. */
const GUTTER = 6;

/** The whole case as large as the sheet is wide, cut as the sheets that follow, with the list of its numbers below. */
function overviewSheet(set: SetCase, { tiles }: Tiling, paper: Paper): PaperSheet {
  const { inside, number } = set.shown;
  const room = roomOn(paper);
  const scale = reduced(inside, room.width, room.height * 0.6);
  const left = (room.width - inside.width / scale) / 2;
  const blank = tiles.filter(({ hasMarks }) => !hasMarks);
  const says = [
    paperWords.overviewSays(inside.text, scale),
    ...set.notes,
    ...(blank.length === 0
      ? []
      : [paperWords.blankTiles(blank.map(({ row, column }) => paperWords.tile(row, column)))]),
    ...(set.misfits.length === 0 ? [] : [paperWords.misfits, ...set.misfits.map((misfit) => misfit.says)]),
  ].flatMap((line) => setText(line, room.width, POINTS));
  const listFrom = inside.height / scale + says.length * lineHeight(POINTS) + 8;
  const wide = (room.width - GUTTER) / 2;
  const entries = set.groups.flatMap(({ cells }) =>
    cells.map(({ shown: { key, piece, faces } }) => {
      const says = `${key}. ${piece.title} (${piece.number}), ${faceWords.shown(faces, piece)}`;
      return setText(says, wide, POINTS);
    }),
  );
  const half = Math.ceil(entries.length / 2);
  const marks: readonly Mark[] = [
    ...moved(
      [...smallCaseDrawing(set, scale), ...tiles.flatMap((tile) => tileMarks(tile, scale, drawnIn(set)))],
      left,
      0,
    ),
    ...textMarks(says, 0, inside.height / scale + 4, POINTS),
    ...textMarks(entries.slice(0, half).flat(), 0, listFrom, POINTS),
    ...textMarks(entries.slice(half).flat(), wide + GUTTER, listFrom, POINTS),
  ];
  return { name: paperWords.overview(number, scale), marks: moved(marks, MARGIN.side, MARGIN.top) };
}

/** How many times smaller the case must be to fit, in half steps. */
function reduced(inside: { readonly width: number; readonly height: number }, width: number, height: number): number {
  return Math.max(1, Math.ceil(2 * Math.max(inside.width / width, inside.height / height)) / 2);
}

/** The places of all that is drawn in a case. */
function drawnIn({ groups }: SetCase): readonly Box[] {
  return groups.flatMap(({ headingBox, text, cells }) => [
    headingBox,
    ...(text === null ? [] : [text.box]),
    ...cells.flatMap(({ labelBox, faces }) => [labelBox, ...faces.map(({ box, holder }) => holder?.box ?? box)]),
  ]);
}

/** The room of the number of a sheet, and how far it stays from the edges, in millimetres. */
const NUMBER = { width: 5, height: 2.4, edge: 1 } as const;

/** Where the number of a sheet lies on nothing that is drawn: at a corner or, where none is free, along the foot; in millimetres. */
function numberPlace(tile: Box, taken: readonly Box[]): { readonly x: number; readonly y: number } {
  const [left, right] = [tile.left + NUMBER.edge, tile.left + tile.width - NUMBER.edge - NUMBER.width];
  const [foot, head] = [tile.top + tile.height - NUMBER.edge, tile.top + NUMBER.edge + NUMBER.height];
  const along = [0.25, 0.5, 0.75].map((share) => left + share * (right - left));
  const places = [foot, head].flatMap((y) => [left, right, ...along].map((x) => ({ x, y })));
  const isFree = ({ x, y }: { readonly x: number; readonly y: number }): boolean =>
    taken.every(
      (box) =>
        x + NUMBER.width < box.left ||
        x > box.left + box.width ||
        y < box.top ||
        y - NUMBER.height > box.top + box.height,
    );
  return places.find(isFree) ?? { x: left, y: foot };
}

/** The edges of a sheet in the overview, with its row and column. */
function tileMarks({ row, column, box, hasMarks }: Tile, scale: number, drawn: readonly Box[]): readonly Mark[] {
  const reducedBox = ({ left, top, width, height }: Box): Box => ({
    left: left / scale,
    top: top / scale,
    width: width / scale,
    height: height / scale,
  });
  const small = reducedBox(box);
  const { x, y } = numberPlace(small, drawn.map(reducedBox));
  return [
    { kind: 'frame', box: small, weight: FINE, dashed: true, name: 'tile' },
    textMark(hasMarks ? `${row}.${column}` : paperWords.blankTile(row, column), x, y, 6, { face: 'sans' }),
  ];
}

/** The parts of the case at true size. Each says where in the case it lies, and how it meets its neighbours. */
function trueSizeSheets(set: SetCase, drawing: readonly Mark[], { tiles, isAcross }: Tiling): readonly PaperSheet[] {
  const shown = tiles.filter(({ hasMarks }) => hasMarks);
  return shown.map(({ row, column, box: { left, top, width, height } }) => {
    const tile = { left, top, width, height };
    const marks = [...drawing.filter((mark) => touches(mark, tile)), ...joints(tile, shown)];
    const box = { left: MARGIN.side, top: MARGIN.top, width, height };
    return {
      name: `${paperWords.plan(set.shown.number)}: ${paperWords.tile(row, column)}`,
      isAcross,
      marks: [
        { kind: 'window', box, left, top, marks },
        { kind: 'frame', box, weight: FINE, dashed: true, name: 'tile' },
        textMark(paperWords.joins(left, top), MARGIN.side, MARGIN.top - 1.2, 7, { face: 'sans' }),
      ],
    };
  });
}

const JOINT = 4;

/** Circles on the edges a sheet shares with another that is printed: half on one, half on the other. */
function joints(tile: Box, others: readonly Tile[]): readonly Mark[] {
  const { left, top, width, height } = tile;
  const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
  const has = (x: number, y: number): boolean => others.some(({ box }) => near(box.left, x) && near(box.top, y));
  const sides: readonly (readonly [boolean, readonly (readonly [number, number])[]])[] = [
    [has(left - width, top), thirds(top, height).map((y) => [left, y])],
    [has(left + width, top), thirds(top, height).map((y) => [left + width, y])],
    [has(left, top - height), thirds(left, width).map((x) => [x, top])],
    [has(left, top + height), thirds(left, width).map((x) => [x, top + height])],
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
