import type { Box, CaseGroup, Cell, Misfit, PlacedGroup } from '../../../core/cases/case-plan.ts';
import { SPACING } from '../../../core/cases/case-plan.ts';
import { layOutCase } from '../../../core/cases/lay-out-case.ts';
import type { SetLine } from '../../../core/cases/set-text.ts';
import { lineHeight, setText, widthOfText } from '../../../core/cases/set-text.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { extentOf, isRound, UNMEASURED } from '../sizes.ts';
import type { ShownCase, ShownFace, ShownGroup, ShownPiece } from './shown-exhibit.ts';

/** A card as it is printed and lies in the case: its size in millimetres, its type in points, its lines. */
export type Card = {
  readonly width: number;
  readonly height: number;
  readonly points: number;
  readonly lines: readonly SetLine[];
};

export type SetCell = {
  readonly shown: ShownPiece;
  readonly label: Card;
  readonly labelBox: Box;
  readonly faces: readonly { readonly face: ShownFace; readonly box: Box; readonly round: boolean }[];
};
export type SetGroup = {
  readonly group: ShownGroup;
  readonly heading: Card;
  readonly headingBox: Box;
  /** Null when the group has no text. */
  readonly text: { readonly card: Card; readonly box: Box } | null;
  readonly cells: readonly SetCell[];
};
export type SetCase = {
  readonly shown: ShownCase;
  readonly groups: readonly SetGroup[];
  readonly misfits: readonly Misfit[];
};

/** From the edge of a card to its text, in millimetres. */
export const CARD_MARGIN = 3;
/** A heading against a label. */
const HEADING_LARGER = 4 / 3;
/** Letters in a line that are followed with ease. Source: Smithsonian Institution, Guidelines for Accessible Exhibition Design. */
const LETTERS_IN_LINE = 55;

/** Sets a text on a card of this width; the card is as high as the text needs. */
export function setCard(text: string | readonly SetLine[number][], width: number, points: number): Card {
  const lines = setText(text, width - 2 * CARD_MARGIN, points);
  return { width, points, lines, height: lines.length * lineHeight(points) + 2 * CARD_MARGIN };
}

/** The same card no wider than its longest line needs. */
function trimmed(card: Card): Card {
  const widths = card.lines.map((line) =>
    line.reduce((sum, { text, italic }) => sum + widthOfText(text, card.points, italic), 0),
  );
  return { ...card, width: Math.min(card.width, Math.ceil(Math.max(0, ...widths)) + 2 * CARD_MARGIN) };
}

/** A case with every label, heading and text set, and all of it laid out at true size. */
export function setCase(shown: ShownCase, label: { readonly width: number; readonly points: number }): SetCase {
  const room = shown.inside.width - 2 * SPACING.edge;
  const set = shown.groups.map((group) => setGroup(group, label, room));
  const plan = layOutCase(
    shown.inside,
    set.map(({ laid }) => laid),
  );
  return {
    shown,
    misfits: plan.misfits.map((misfit) => named(misfit, shown)),
    groups: plan.groups.map((placed, index): SetGroup => {
      const { group, heading, text, labels } = set[index] ?? fail();
      return {
        group,
        heading,
        headingBox: { ...startOf(placed.heading, heading, text), width: heading.width, height: heading.height },
        text: text === null ? null : { card: text, box: boxOfText(placed, heading, text) },
        cells: placed.cells.map((cell, at): SetCell => {
          const piece = group.pieces[at] ?? fail();
          return {
            shown: piece,
            label: labels[at] ?? fail(),
            labelBox: cell.label,
            faces: cell.faces.map((box, side) => ({
              face: piece.faces[side] ?? 'obverse',
              box,
              round: isRound(piece.piece),
            })),
          };
        }),
      };
    }),
  };
}

type Set = {
  readonly group: ShownGroup;
  readonly heading: Card;
  readonly text: Card | null;
  readonly labels: readonly Card[];
  readonly laid: CaseGroup;
};

/** The heading stands at the left and the text beside it at the right; in a narrow case, beneath it. */
function setGroup(group: ShownGroup, label: { width: number; points: number }, room: number): Set {
  const points = label.points * HEADING_LARGER;
  const heading = trimmed(setCard(group.title, room, points));
  const readable = widthOfText('n'.repeat(LETTERS_IN_LINE), label.points) * 0.8;
  const beside = room - heading.width - SPACING.cells;
  const isBeside = beside >= readable / 2;
  const text =
    group.text === null
      ? null
      : trimmed(setCard(group.text, Math.min(isBeside ? beside : room, readable), label.points));
  const labels = group.pieces.map(({ label: says }) => setCard(says, label.width, label.points));
  const laid: CaseGroup = {
    title: group.title,
    heading: Math.max(heading.height, isBeside ? (text?.height ?? 0) : 0),
    text: isBeside ? 0 : (text?.height ?? 0),
    cells: group.pieces.map((piece, index) => cellOf(piece, labels[index] ?? fail())),
  };
  return { group, heading, text, labels, laid };
}

/** Heading and text stand side by side in the middle of the case, or one under the other. */
function startOf(room: Box, heading: Card, text: Card | null): { readonly left: number; readonly top: number } {
  const isBeside = text !== null && heading.width + SPACING.cells + text.width <= room.width + 1e-9;
  const used = isBeside ? heading.width + SPACING.cells + text.width : heading.width;
  return { left: room.left + (room.width - used) / 2, top: room.top };
}

function boxOfText({ heading: room, text: beneath }: PlacedGroup, heading: Card, text: Card): Box {
  const { left, top } = startOf(room, heading, text);
  const size = { width: text.width, height: text.height };
  if (beneath !== null) return { left: room.left + (room.width - text.width) / 2, top: beneath.top, ...size };
  return { left: left + heading.width + SPACING.cells, top, ...size };
}

function cellOf({ piece, faces }: ShownPiece, { width, height }: Card): Cell {
  const face = extentOf(piece) ?? UNMEASURED;
  return { piece: piece.id, faces: faces.map(() => face), label: { width, height } };
}

/** The core knows pieces by their ids; a reader knows them by their titles. */
function named(misfit: Misfit, shown: ShownCase): Misfit {
  const piece = shown.groups.flatMap(({ pieces }) => pieces).find((one) => one.piece.id === misfit.piece)?.piece;
  if (piece === undefined) return misfit;
  return { ...misfit, says: exhibitWords.tooWide(piece.title, `${Math.ceil(misfit.over * 10) / 10} mm`) };
}

function fail(): never {
  throw new Error('A plan has not as many groups or cells as its case.');
}
