import type { Box } from '../../../core/cases/case-plan.ts';
import { paperWords } from '../../words/paper.ts';
import type { SetCase, SetCell } from '../exhibit/set-case.ts';
import { CARD_MARGIN } from '../exhibit/set-case.ts';
import type { Mark } from './marks.ts';
import { FINE, FIRM, textMark, textMarks } from './marks.ts';

/** The rim of a case, and all that lies in it, drawn at true size: where each piece, label and text is to be put. */
export function caseDrawing({ shown, groups }: SetCase): readonly Mark[] {
  return [
    frame({ left: 0, top: 0, width: shown.inside.width, height: shown.inside.height }, 'case'),
    ...groups.flatMap(({ heading, headingBox, text, cells }) => [
      ...textMarks(heading.lines, headingBox.left + CARD_MARGIN, headingBox.top + CARD_MARGIN, heading.points),
      frame(headingBox),
      ...(text === null
        ? []
        : [
            frame(text.box),
            ...textMarks(text.card.lines, text.box.left + CARD_MARGIN, text.box.top + CARD_MARGIN, text.card.points),
          ]),
      ...cells.flatMap(cellDrawing),
    ]),
  ];
}

const NOTE = 9;

/** The outline of each face with its name, and that of the label with the number and title of the piece. */
function cellDrawing({ shown, labelBox, faces }: SetCell): readonly Mark[] {
  const { number, title } = shown.piece;
  return [
    ...faces.flatMap(({ face, box, round }): readonly Mark[] => [
      { kind: round ? 'oval' : 'frame', box, weight: FIRM, dashed: false },
      textMark(paperWords.faceShort[face], box.left + box.width / 2, box.top + box.height / 2 + 1, NOTE, {
        anchor: 'middle',
        face: 'sans',
      }),
    ]),
    frame(labelBox),
    textMark(`${shown.key}. ${title}`, labelBox.left + CARD_MARGIN, labelBox.top + 5.5, NOTE, { face: 'sans' }),
    textMark(number, labelBox.left + CARD_MARGIN, labelBox.top + 9.5, NOTE, { face: 'sans' }),
  ];
}

/** The same, small: outlines, and the key number of each piece. `scale` is how many times smaller. */
export function smallCaseDrawing({ shown, groups }: SetCase, scale: number): readonly Mark[] {
  const small = ({ left, top, width, height }: Box): Box => ({
    left: left / scale,
    top: top / scale,
    width: width / scale,
    height: height / scale,
  });
  return [
    { kind: 'frame', box: small({ left: 0, top: 0, ...shown.inside }), weight: FIRM, dashed: false, name: 'case' },
    ...groups.flatMap(({ group, headingBox, text, cells }): readonly Mark[] => {
      const heading = small(headingBox);
      return [
        textMark(group.title, heading.left, heading.top + 2.6, 24 / scale, {}),
        ...(text === null ? [] : [frame(small(text.box))]),
        ...cells.flatMap(({ shown: { key }, labelBox, faces }): readonly Mark[] => {
          const label = small(labelBox);
          return [
            ...faces.map(({ box, round }): Mark => ({
              kind: round ? 'oval' : 'frame',
              box: small(box),
              weight: FINE,
              dashed: false,
            })),
            frame(label),
            textMark(String(key), label.left + label.width / 2, label.top + label.height / 2 + 0.9, 7, {
              anchor: 'middle',
              face: 'sans',
            }),
          ];
        }),
      ];
    }),
  ];
}

/** How many times smaller a case must be drawn to be no wider and no higher than this; a whole number. */
export function smallEnough(
  inside: { readonly width: number; readonly height: number },
  width: number,
  height: number,
): number {
  return Math.max(1, Math.ceil(inside.width / width), Math.ceil(inside.height / height));
}

function frame(box: Box, name?: string): Mark {
  return {
    kind: 'frame',
    box,
    weight: name === undefined ? FINE : FIRM,
    dashed: name === undefined,
    ...(name === undefined ? {} : { name }),
  };
}
