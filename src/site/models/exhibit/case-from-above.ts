import type { Box } from '../../../core/cases/boxes.ts';
import { CARD_MARGIN } from '../../../core/cases/card.ts';
import type { Card } from '../../../core/cases/card.ts';
import { setText, widthOfText } from '../../../core/cases/typeset-text.ts';
import type { PhotographManifest } from '../../../photographs/cache/manifest.ts';
import { urls } from '../../urls.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { tied } from '../../words/no-break.ts';
import type { Mark } from '../paper/marks.ts';
import { textMarks } from '../paper/marks.ts';
import { widthClass } from '../shared/sizes.ts';
import type { FaceView, Metal } from '../shared/face.ts';
import { faceOf } from '../shared/face.ts';
import type { LaidFace, SetCase, SetCell, SetGroup } from './planned-case.ts';

/** A card as it lies in the case: its place, and its lines of text. */
export type CardInCase = { readonly box: Box; readonly marks: readonly Mark[] };
/** A face where it lies: its photograph with what margin that has, or a plain shape of its size and metal. */
export type FaceInCase = {
  readonly box: Box;
  readonly round: boolean;
  readonly metal: Metal;
  /** The part of its picture that a plain shape of the metal takes under it. */
  readonly under: number | null;
  readonly picture: { readonly src: string; readonly box: Box } | null;
  /** What it lies in, if anything. */
  readonly holder: { readonly box: Box; readonly round: boolean } | null;
};
export type PieceInCase = {
  readonly href: string;
  readonly says: string;
  readonly faces: readonly FaceInCase[];
  readonly label: CardInCase;
  /** The words that name it, and the room that its label leaves for them in larger letters; both faces of a piece are over it. */
  readonly name: Box & { readonly says: string };
};

/** A group: its place, its name, and the room that its heading and text leave for the name in large letters of `size` millimetres. */
export type GroupInCase = Box & {
  readonly title: string;
  readonly room: (Box & { readonly size: number }) | null;
  /** Where its pieces begin, and the first line of them. */
  readonly row: { readonly left: number; readonly top: number };
};

/** A case as it is seen from above, in millimetres from its upper left corner, inside its frame. */
export type CaseFromAbove = {
  readonly name: string;
  readonly says: string;
  readonly width: number;
  readonly height: number;
  /** The headings, and the texts under them. */
  readonly headings: readonly CardInCase[];
  readonly texts: readonly CardInCase[];
  readonly pieces: readonly PieceInCase[];
  /** The size classes of how many hundredths of its width, frame and all, lie before its first pieces. */
  readonly before: string;
  /** Where each group lies, heading and all, in the order of the groups. */
  readonly groups: readonly GroupInCase[];
  /** For whoever lays the case, and for no visitor. */
  readonly misfits: readonly string[];
  /** What labels on a key say, where the plan has put them there; empty when they lie by their pieces. */
  readonly key: readonly string[];
};

export function caseFromAbove(set: SetCase, photographs: PhotographManifest): CaseFromAbove {
  const { inside, kind, number, title } = set.shown;
  return {
    name: exhibitWords.caseName(number, title),
    says: [
      exhibitWords.caseSays(kind, tied(sizeInWords(inside))),
      ...(set.stand === 'key' ? [exhibitWords.labelsOnKey] : []),
    ].join(' '),
    width: inside.width,
    height: inside.height,
    headings: set.groups.map(({ heading, headingBox }) => cardIn(heading, headingBox)),
    texts: set.groups.flatMap(({ text }) => (text === null ? [] : [cardIn(text.card, text.box)])),
    groups: set.groups.map((group) => ({
      ...placeOf(group),
      title: tied(group.group.title),
      room: roomOf(group, inside.width),
      row: rowOf(group),
    })),
    before: widthClass((100 * Math.max(0, Math.min(...set.groups.map((group) => rowOf(group).left)))) / inside.width),
    pieces: set.groups.flatMap(({ cells }) => cells.map((cell) => pieceIn(cell, photographs))),
    misfits: set.misfits.map(({ says }) => says),
    key: set.key.map(({ key, says }) => `${key}. ${says}`),
  };
}

/** As the keeper measured it and in millimetres, in which everything else on the page is: `610 × 406 × 51 mm (24 × 16 × 2 in)`. */
function sizeInWords({ width, height, depth, unit, text }: SetCase['shown']['inside']): string {
  if (unit !== 'in') return text;
  const sides = [width, height, ...(depth === null ? [] : [depth])].map((side) => String(Math.round(side)));
  return `${sides.join(' × ')} mm (${text})`;
}

/** The smallest box that holds a group. */
function placeOf({ headingBox, text, cells }: SetGroup): Box {
  const boxes = [headingBox, ...(text === null ? [] : [text.box]), ...cells.flatMap(({ labelBox, faces }) => [labelBox, ...faces.map(({ box }) => box)])]; // prettier-ignore
  const left = Math.min(...boxes.map((box) => box.left));
  const top = Math.min(...boxes.map((box) => box.top));
  const right = Math.max(...boxes.map((box) => box.left + box.width));
  const foot = Math.max(...boxes.map((box) => box.top + box.height));
  return { left, top, width: right - left, height: foot - top };
}

/** The upper left corner of what lies in a group besides its heading. */
function rowOf({ cells }: SetGroup): GroupInCase['row'] {
  const faces = cells.flatMap((cell) => cell.faces.map(({ box }) => box));
  const left = Math.min(...cells.map(({ labelBox }) => labelBox.left), ...faces.map((box) => box.left));
  return { left, top: Math.min(...faces.map(({ top }) => top)) };
}

/** Height of the letters of a group's name on a case drawn small, in widths of the case. */
const NAME_SIZE = 0.036;

/** Letters of a name that would not fit are smaller, down to this part of their size. */
const SMALLER = [1, 0.93, 0.86, 0.8, 0.7] as const;

/** The place of a group's heading and text, where its name in large letters fits there; null where it would lie on pieces. */
function roomOf({ group: { title }, headingBox, text }: SetGroup, across: number): GroupInCase['room'] {
  const foot = text === null ? headingBox.top + headingBox.height : text.box.top + text.box.height;
  const width = Math.max(headingBox.width, text?.box.width ?? 0);
  const box = { left: headingBox.left, top: headingBox.top, width, height: foot - headingBox.top };
  const size = SMALLER.map((part) => NAME_SIZE * across * part).find(
    (letters) => linesOf(title, width, letters) * letters <= box.height,
  );
  return size === undefined ? null : { ...box, size };
}

/** How many lines a text takes in letters of so many millimetres; none are enough where a word is wider than a line. */
function linesOf(text: string, width: number, size: number): number {
  const points = (size * 72) / 25.4;
  const isTooWide = text.split(/\s/).some((word) => widthOfText(word, points) > width);
  return isTooWide ? Infinity : setText(text, width, points).length;
}

function pieceIn({ shown, faces, label, labelBox }: SetCell, photographs: PhotographManifest): PieceInCase {
  return {
    href: urls.piece(shown.piece.id),
    says: shown.piece.title,
    faces: faces.map((laid) => faceIn(faceOf(shown.piece, laid.face, photographs), laid)),
    label: cardIn(label, labelBox),
    name: { ...labelBox, says: nameIn(tied(shown.label)) },
  };
}

/** Where the words of a label that name the piece end: at a comma, or at a stop behind a word that is no short form. */
const NAME_ENDS = /[,;:](?=\s)|(?<=[\p{L}\d]{3,})\.(?=\s|$)/u;

/** The words of a label that name the piece. */
export function nameIn(label: string): string {
  const end = label.search(NAME_ENDS);
  return end < 0 ? label : label.slice(0, end);
}

function faceIn(face: FaceView, { box, round, holder }: LaidFace): FaceInCase {
  if (face.shown !== 'photograph') return { box, round, holder, metal: face.metal, under: null, picture: null };
  const [width, height] = [face.millimetres, (face.millimetres * face.height) / face.width];
  const [left, top] = [box.left + (box.width - width) / 2, box.top + (box.height - height) / 2];
  const picture = { src: face.tiny, box: { left, top, width, height } };
  return { box, round, holder, metal: face.metal, under: face.under, picture };
}

function cardIn({ lines, points, above }: Card, box: Box): CardInCase {
  const [left, top] = [box.left + CARD_MARGIN, box.top + CARD_MARGIN];
  // Seen on a screen with the apostrophes of a book; broken into lines as it is printed.
  const printed = lines.map((line) => line.map((run) => ({ ...run, text: tied(run.text) })));
  return { box, marks: textMarks(printed, left, top, points, { width: box.width - 2 * CARD_MARGIN, above }) };
}
