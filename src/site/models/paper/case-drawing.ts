import type { Box } from '../../../core/cases/boxes.ts';
import { lineHeight, setText } from '../../../core/cases/typeset-text.ts';
import { MILLIMETRES_PER_POINT } from '../../../core/cases/type-size.ts';
import { faceWords } from '../../words/faces.ts';
import type { SetCase, SetCell } from '../exhibit/planned-case.ts';
import { CARD_MARGIN } from '../../../core/cases/card.ts';
import type { Mark } from './marks.ts';
import { BASELINE, FINE, FIRM, textMark, textMarks } from './marks.ts';

/** The rim of a case, and all that lies in it, drawn at true size: where each piece, label and text is to be put. */
export function caseDrawing({ shown, stand, groups }: SetCase): readonly Mark[] {
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
      ...cells.flatMap((cell) => cellDrawing(cell, stand === 'key')),
    ]),
  ];
}

const NOTE = 9;

/**
 * The outline of each face with its name, and that of the label with the number and title of the piece, as much of it as the
 * label holds; where labels are on a key, the card with the number as it will be.
 */
function cellDrawing({ shown, label, labelBox, faces }: SetCell, isOnKey: boolean): readonly Mark[] {
  const { left, top, width, height } = labelBox;
  const { number, title } = shown.piece;
  const note = [`${shown.key}. ${title}`, number].flatMap((line) =>
    // The plain face is a little broader than the reading face, whose letters the lines are measured by.
    setText(line, (width - 2 * CARD_MARGIN) * 0.9, NOTE),
  );
  const most = Math.max(1, Math.floor((height - CARD_MARGIN) / lineHeight(NOTE)));
  return [
    ...faces.flatMap(({ face, box, round, holder }): readonly Mark[] => [
      ...(holder === null
        ? []
        : [{ kind: holder.round ? 'oval' : 'frame', box: holder.box, weight: FINE, dashed: false } as const]),
      { kind: round ? 'oval' : 'frame', box, weight: FIRM, dashed: false },
      textMark(faceWords.short(face, shown.piece), box.left + box.width / 2, box.top + box.height / 2 + 1, NOTE, {
        anchor: 'middle',
        face: 'sans',
      }),
    ]),
    frame(labelBox),
    ...(isOnKey
      ? textMarks(label.lines, left + CARD_MARGIN, top + CARD_MARGIN, label.points, { above: label.above })
      : note.slice(0, most).map((line, index) => {
          const baseline = top + CARD_MARGIN + (index + BASELINE) * lineHeight(NOTE);
          return textMark(line, left + CARD_MARGIN, baseline, NOTE, { face: 'sans' });
        })),
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
      return [
        ...smallHeading(
          group.title,
          small({ ...headingBox, width: Math.max(headingBox.width, text?.box.width ?? 0) }),
          scale,
        ),
        ...(text === null ? [] : [card(small(text.box))]),
        ...cells.flatMap(({ shown: { key }, labelBox, faces }): readonly Mark[] => {
          const label = small(labelBox);
          const points = Math.min(KEY.most, Math.max(KEY.least, (label.height / MILLIMETRES_PER_POINT) * KEY.share));
          const baseline = label.top + label.height / 2 + points * MILLIMETRES_PER_POINT * HALF_FIGURE;
          return [
            ...faces.flatMap(({ box, round, holder }): readonly Mark[] => [
              ...(holder === null ? [] : [outline(small(holder.box), holder.round, 'holder')]),
              outline(small(box), round, 'piece'),
            ]),
            card(label),
            textMark(String(key), label.left + label.width / 2, baseline, points, { anchor: 'middle', face: 'sans' }),
          ];
        }),
      ];
    }),
  ];
}

/** Points of a group's name in a small drawing: as the heading is reduced, but never too small to read. */
const NAME = { asLarge: 24, least: 7 } as const;

/** The name stands on the foot of its place; where it wants more lines they grow upwards, into the space between groups. */
function smallHeading(title: string, { left, top, width, height }: Box, scale: number): readonly Mark[] {
  const points = Math.max(NAME.least, NAME.asLarge / scale);
  const lines = setText(title, width, points);
  // A line's letters begin a little above it: at the rim of the case they stay within it.
  const least = points * MILLIMETRES_PER_POINT - BASELINE * lineHeight(points);
  return textMarks(lines, left, Math.max(least, top + height - lines.length * lineHeight(points)), points, { width });
}

/** Points of the number of a piece in a small drawing: as large as its label is high, within reason. */
const KEY = { least: 5, most: 11, share: 0.75 } as const;
/** From the middle of a figure to its foot, as a part of the type size. */
const HALF_FIGURE = 0.33;

function outline(box: Box, round: boolean, name: string): Mark {
  return { kind: round ? 'oval' : 'frame', box, weight: FINE, dashed: false, name };
}

function card(box: Box): Mark {
  return { kind: 'frame', box, weight: FINE, dashed: true, name: 'card' };
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
