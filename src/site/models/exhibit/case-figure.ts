import { exhibitWords } from '../../words/exhibits.ts';
import { smallCaseDrawing, smallEnough } from '../paper/case-drawing.ts';
import type { Mark } from '../paper/marks.ts';
import type { SetCase } from './typeset-case.ts';
import type { ShownPiece } from './shown-exhibit.ts';

/** The plan of a case as a figure on a page: its drawing in millimetres, and in words all that the drawing shows. */
export type CaseFigure = {
  readonly title: string;
  readonly name: string;
  readonly says: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly misfits: readonly string[];
  /** What each number stands for, group by group. */
  readonly list: readonly { readonly title: string; readonly entries: readonly string[] }[];
  /** What labels on a key say, where the plan has put them there; empty when they lie by their pieces. */
  readonly key: readonly string[];
};

/** The figure is drawn no larger than this, in millimetres: legible on a page and whole on a telephone. */
const MOST = { width: 170, height: 130 };
/** So that the outer line is not cut in half. */
const AROUND = 0.5;

export function caseFigure(set: SetCase): CaseFigure {
  const { inside, number } = set.shown;
  const scale = smallEnough(inside, MOST.width, MOST.height);
  const misfits = set.misfits.map(({ says }) => says);
  return {
    title: exhibitWords.planTitle(number),
    name: exhibitWords.planName(number),
    says: [
      exhibitWords.planSays(inside.width, inside.height, inside.depth),
      exhibitWords.labelsStand[set.stand],
      ...(misfits.length === 0 ? [exhibitWords.fits] : []),
    ].join(' '),
    width: inside.width / scale + 2 * AROUND,
    height: inside.height / scale + 2 * AROUND,
    marks: [
      {
        kind: 'window',
        box: { left: 0, top: 0, width: inside.width / scale + 2 * AROUND, height: inside.height / scale + 2 * AROUND },
        left: -AROUND,
        top: -AROUND,
        marks: smallCaseDrawing(set, scale),
      },
    ],
    misfits,
    list: set.groups.map(({ group: { title }, cells }) => ({
      title,
      entries: cells.map(({ shown }) => inList(shown)),
    })),
    key: set.key.map(({ key, says }) => `${key}. ${says}`),
  };
}

function inList({ key, piece, faces }: ShownPiece): string {
  const side = faces.length === 2 ? 'both' : (faces[0] ?? 'obverse');
  return `${key}. ${piece.title} (${piece.number}), ${exhibitWords.side[side]}`;
}
