import type { Box } from '../../../core/cases/boxes.ts';
import type { Run, SetLine } from '../../../core/cases/typeset-text.ts';
import { lineHeight, lineText } from '../../../core/cases/typeset-text.ts';
import { MILLIMETRES_PER_POINT } from '../../../core/cases/type-size.ts';
import { withApostrophes } from '../../words/no-break.ts';

/**
 * What is drawn on paper, in millimetres from the upper left corner. A line of text stands on its baseline and is never broken
 * or scaled; `book` is the reading face.
 */
export type Mark =
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      /** Type size in millimetres. */
      readonly size: number;
      readonly line: readonly Run[];
      /** Which end of the line stands at `x`: `start` is the right end of a line that runs from right to left. */
      readonly anchor: 'start' | 'middle' | 'end';
      readonly face: 'book' | 'sans';
      /** True for a line that runs from right to left. */
      readonly isLeftward: boolean;
    }
  | {
      readonly kind: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly weight: number;
      readonly dashed?: boolean;
      readonly name?: string;
    }
  | {
      readonly kind: 'frame';
      readonly box: Box;
      readonly weight: number;
      readonly dashed: boolean;
      readonly name?: string;
    }
  | {
      readonly kind: 'oval';
      readonly box: Box;
      readonly weight: number;
      readonly dashed: boolean;
      readonly name?: string;
    }
  /** A solid shape, its path in units of its own, `scale` millimetres each. */
  | {
      readonly kind: 'shape';
      readonly x: number;
      readonly y: number;
      readonly scale: number;
      readonly path: string;
      readonly says: string;
    }
  /** Part of a larger drawing, seen through `box`; `left` and `top` say which part. */
  | {
      readonly kind: 'window';
      readonly box: Box;
      readonly left: number;
      readonly top: number;
      readonly marks: readonly Mark[];
    };

/** The weights of lines, in millimetres. */
export const FINE = 0.1;
export const FIRM = 0.25;
/** Where the baseline is in a line, as a part of its height. Measured on the reading face: it keeps descenders inside. */
export const BASELINE = 0.74;

/** How a text is set; what is left out is `start`, `book`, and the way its first letter runs. */
type How = {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly face?: 'book' | 'sans';
  readonly isLeftward?: boolean;
};

export function textMark(text: string | SetLine, x: number, y: number, points: number, how: How = {}): Mark {
  const line = (typeof text === 'string' ? [{ text }] : text).map((run) => ({
    ...run,
    text: withApostrophes(run.text),
  }));
  return {
    kind: 'text',
    x,
    y,
    size: points * MILLIMETRES_PER_POINT,
    line,
    anchor: how.anchor ?? 'start',
    face: how.face ?? 'book',
    isLeftward: how.isLeftward ?? runsLeftward(lineText(line)),
  };
}

/**
 * Lines one under another from `top`, from the left or, with a `width`, from the right when their text runs so; the first so many,
 * `above`, are a text of their own.
 */
export function textMarks(
  lines: readonly SetLine[],
  x: number,
  top: number,
  points: number,
  {
    above = 0,
    ...how
  }: {
    readonly anchor?: 'start' | 'middle' | 'end';
    readonly width?: number;
    readonly above?: number | undefined;
  } = {},
): readonly Mark[] {
  if (above > 0)
    return [
      ...textMarks(lines.slice(0, above), x, top, points, how),
      ...textMarks(lines.slice(above), x, top + above * lineHeight(points), points, how),
    ];
  const isLeftward = runsLeftward(lines.map(lineText).join(' '));
  const from = isLeftward && (how.anchor ?? 'start') === 'start' ? x + (how.width ?? 0) : x;
  return lines.map((line, index) =>
    textMark(line, from, top + (index + BASELINE) * lineHeight(points), points, { ...how, isLeftward }),
  );
}

/** Whether the first letter with a direction runs from right to left: rule P2 of the Unicode Bidirectional Algorithm (UAX #9). */
export function runsLeftward(text: string): boolean {
  const [first] = /\p{L}/u.exec(text) ?? [];
  return first !== undefined && LEFTWARD.test(first);
}

const LEFTWARD = /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

/** The same marks, further right and down. */
export function moved(marks: readonly Mark[], right: number, down: number): readonly Mark[] {
  const box = (held: Box): Box => ({ ...held, left: held.left + right, top: held.top + down });
  return marks.map((mark): Mark => {
    switch (mark.kind) {
      case 'text':
      case 'shape':
        return { ...mark, x: mark.x + right, y: mark.y + down };
      case 'line':
        return { ...mark, x1: mark.x1 + right, x2: mark.x2 + right, y1: mark.y1 + down, y2: mark.y2 + down };
      case 'frame':
      case 'oval':
      case 'window':
        return { ...mark, box: box(mark.box) };
    }
  });
}
