import { paperWords } from '../../words/paper.ts';
import type { Mark } from './marks.ts';
import { FINE, FIRM, moved, textMark } from './marks.ts';

/** A size of paper, upright, in millimetres. */
export type Paper = { readonly name: string; readonly width: number; readonly height: number };

/** ISO 216 and ANSI/ASME Y14.1. */
export const A4: Paper = { name: 'A4', width: 210, height: 297 };
export const LETTER: Paper = { name: 'Letter', width: 215.9, height: 279.4 };

/** The room for what is printed, in millimetres from the edges: a common printer reaches to 5 mm. */
export const MARGIN = { side: 9, top: 14, bottom: 17 } as const;
export const CHECK_RULE = 100;

/** The same paper laid across. */
export function across({ name, width, height }: Paper): Paper {
  return { name, width: height, height: width };
}

/** One printed side: what it is, for listeners and for its own head line, and all that is drawn on it. */
export type PaperSheet = {
  readonly name: string;
  readonly marks: readonly Mark[];
  /** Drawn on the paper laid across. Every page is printed upright, so that no printer is asked to turn one. */
  readonly isAcross?: boolean;
  /** Cut-outs in equal cells, whose first may lie further on. */
  readonly cells?: readonly PlacedCell[];
  /** Printed only when the first cell lies so far on that the others do not hold everything. */
  readonly isSpare?: boolean;
};

/**
 * A cut-out in its cell, counted from 0 on this sheet; below 0 it belongs to the sheet before, and comes onto this one only when
 * the first cell lies further on. Such a one is a copy of what is drawn there.
 */
export type PlacedCell = { readonly at: number; readonly id: string; readonly marks: readonly Mark[] | null };

/** Something cut out of a sheet: its size and what stands on it, from its own upper left corner. */
export type CutOut = {
  /** What it is, for a keeper who is told that it was cut off. */
  readonly name?: string;
  readonly width: number;
  readonly height: number;
  /** `own`: it brings its own line to cut along. */
  readonly cut?: 'own';
  readonly marks: readonly Mark[];
};

export function roomOn(paper: Paper): { readonly width: number; readonly height: number } {
  return { width: paper.width - 2 * MARGIN.side, height: paper.height - MARGIN.top - MARGIN.bottom };
}

/** The line at the head of a sheet and the rule at its foot, by which a print is checked. */
export function furniture(paper: Paper, name: string, sheet: string): readonly Mark[] {
  const y = paper.height - 8;
  const left = MARGIN.side;
  const ticks = Array.from({ length: CHECK_RULE / 10 + 1 }, (_, at): Mark => {
    const x = left + at * 10;
    return { kind: 'line', x1: x, x2: x, y1: y, y2: y - (at % 5 === 0 ? 3 : 1.8), weight: FIRM };
  });
  return [
    textMark(name, left, 9, 8, { face: 'sans' }),
    textMark(sheet, paper.width - MARGIN.side, 9, 8, { face: 'sans', anchor: 'end' }),
    { kind: 'line', x1: left, x2: left + CHECK_RULE, y1: y, y2: y, weight: FIRM },
    ...ticks,
    textMark(paperWords.rule, left, y + 3.4, 7, { face: 'sans' }),
    textMark(paperWords.ruleSays, left + CHECK_RULE + 4, y, 7, { face: 'sans' }),
  ];
}

/** From one cut-out to the next, so that each has its own cut marks. */
export const BETWEEN = 8;
const MARK = { from: 1, long: 2.5 } as const;

/**
 * Lays cut-outs on sheets in their order, left to right and down. One that is larger than a sheet is cut off at the edge
 * of the sheet, and said to be.
 */
export function layOnSheets(
  cutOuts: readonly CutOut[],
  paper: Paper,
  name: string,
  between = BETWEEN,
): readonly PaperSheet[] {
  const room = roomOn(paper);
  const sheets: Mark[][] = [];
  let [left, top, row] = [0, Infinity, 0];
  for (const whole of cutOuts) {
    const cutOut = fitted(whole, room);
    if (left > 0 && left + cutOut.width > room.width) [left, top, row] = [0, top + row + between, 0];
    if (top + cutOut.height > room.height) {
      sheets.push([]);
      [left, top, row] = [0, 0, 0];
    }
    sheets.at(-1)?.push(...moved(withCutMarks(cutOut), MARGIN.side + left, MARGIN.top + top));
    left += cutOut.width + between;
    row = Math.max(row, cutOut.height);
  }
  return sheets.map((marks) => ({ name, marks }));
}

/** What does not fit a sheet is cut off, and said to be. */
export function fitted(cutOut: CutOut, room: { readonly width: number; readonly height: number }): CutOut {
  if (cutOut.width <= room.width && cutOut.height <= room.height) return cutOut;
  const [width, height] = [Math.min(cutOut.width, room.width), Math.min(cutOut.height, room.height - 5)];
  return {
    width,
    height,
    marks: [
      { kind: 'window', box: { left: 0, top: 0, width, height }, left: 0, top: 0, marks: cutOut.marks },
      textMark(paperWords.tooLarge(cutOut.width, cutOut.height), 0, height + 4, 8, { face: 'sans' }),
    ],
  };
}

export function withCutMarks(cutOut: CutOut): readonly Mark[] {
  return [...cutOut.marks, ...cutMarks(cutOut)];
}

/** Two strokes at each corner. */
function cutMarks({ width, height, cut }: CutOut): readonly Mark[] {
  if (cut === 'own') return [];
  const stroke = (x1: number, y1: number, x2: number, y2: number): Mark => ({
    kind: 'line',
    x1,
    y1,
    x2,
    y2,
    weight: FINE,
  });
  const { from, long } = MARK;
  return [0, width].flatMap((x) =>
    [0, height].flatMap((y) => {
      const [outX, outY] = [x === 0 ? -1 : 1, y === 0 ? -1 : 1];
      return [
        stroke(x + outX * from, y, x + outX * (from + long), y),
        stroke(x, y + outY * from, x, y + outY * (from + long)),
      ];
    }),
  );
}
