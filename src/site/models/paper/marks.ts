import type { Box } from '../../../core/cases/case-plan.ts';
import type { Run, SetLine } from '../../../core/cases/set-text.ts';
import { lineHeight } from '../../../core/cases/set-text.ts';
import { MILLIMETRES_PER_POINT } from '../../../core/cases/type-size.ts';

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
      readonly anchor: 'start' | 'middle' | 'end';
      readonly face: 'book' | 'sans';
    }
  | {
      readonly kind: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly weight: number;
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
/** Where the baseline stands in a line, as a part of its height. Measured on the reading face: it keeps descenders inside. */
const BASELINE = 0.74;

export function textMark(
  text: string | SetLine,
  x: number,
  y: number,
  points: number,
  how: { readonly anchor?: 'start' | 'middle' | 'end'; readonly face?: 'book' | 'sans' } = {},
): Mark {
  const line = typeof text === 'string' ? [{ text }] : text;
  return {
    kind: 'text',
    x,
    y,
    size: points * MILLIMETRES_PER_POINT,
    line,
    anchor: how.anchor ?? 'start',
    face: how.face ?? 'book',
  };
}

/** Lines one under another from `top`. */
export function textMarks(
  lines: readonly SetLine[],
  x: number,
  top: number,
  points: number,
  how: { readonly anchor?: 'start' | 'middle' | 'end' } = {},
): readonly Mark[] {
  return lines.map((line, index) => textMark(line, x, top + (index + BASELINE) * lineHeight(points), points, how));
}

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
