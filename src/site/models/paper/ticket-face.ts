import { lineHeight, widthOfText } from '../../../core/cases/typeset-text.ts';
import type { Mark } from './marks.ts';
import { FINE, textMarks } from './marks.ts';

/** What a ticket is cut to. */
export type TicketShape = 'round' | 'square';

const POINTS = { small: 7, middle: 8, large: 9, middleFrom: 34, largeFrom: 44 } as const;
/** Clear of the cut, in millimetres. */
const EDGE = 1.2;
const CUT_OFF = '…';

/** One side of a ticket: its marks, and the facts for which it has no room. */
export type TicketFace = { readonly marks: readonly Mark[]; readonly leftOut: readonly string[] };

/**
 * Each fact begins a line of its own, or where room is scarce denomination and mint share one; lines are as long as the shape lets them be, and the whole is in the middle. Type is
 * never made smaller: facts that do not fit are left out from the end, and three points stand where they would be.
 */
export function ticketFace(told: readonly string[], across: number, shape: TicketShape): TicketFace {
  const points = across >= POINTS.largeFrom ? POINTS.large : across >= POINTS.middleFrom ? POINTS.middle : POINTS.small;
  const edge = shape === 'round' ? EDGE : 2 * EDGE;
  const most = Math.floor((across - 2 * edge) / lineHeight(points));
  const tries = [
    { facts: told, leftOut: [] },
    ...(told.length < 5 ? [] : [{ facts: besideOneAnother(told), leftOut: [] }]),
    ...told.map((_fact, at) => {
      const kept = told.length - 1 - at;
      return { facts: [...told.slice(0, kept), CUT_OFF], leftOut: told.slice(kept) };
    }),
  ];
  for (const { facts, leftOut } of tries)
    for (let rows = facts.length; rows <= most; rows += 1) {
      const room = (row: number): number => (shape === 'round' ? chord(row, rows, across, points) : across - 2 * edge);
      const lines = fill(facts, rows, room, points);
      if (lines === null) continue;
      const marks = textMarks(
        lines.map((text) => [{ text }]),
        across / 2,
        (across - rows * lineHeight(points)) / 2,
        points,
        { anchor: 'middle' },
      );
      return { marks: [...marks, outline(across, shape)], leftOut };
    }
  return { marks: [outline(across, shape)], leftOut: told };
}

/** The third fact and the fourth on one line: denomination and mint. */
function besideOneAnother(told: readonly string[]): readonly string[] {
  return [...told.slice(0, 2), told.slice(2, 4).join(', '), ...told.slice(4)];
}

/** The line to cut along. */
function outline(across: number, shape: TicketShape): Mark {
  const box = { left: 0, top: 0, width: across, height: across };
  return { kind: shape === 'round' ? 'oval' : 'frame', box, weight: FINE, dashed: false, name: 'ticket' };
}

/** The facts broken over exactly so many lines; null when they need more, or a word is longer than its line. */
function fill(
  told: readonly string[],
  rows: number,
  room: (row: number) => number,
  points: number,
): readonly string[] | null {
  const lines: string[] = [];
  for (const fact of told) {
    let isFirst = true;
    for (const word of fact.split(/[^\S\u00a0]+/)) {
      const longer = `${lines.at(-1) ?? ''} ${word}`;
      if (!isFirst && widthOfText(longer, points) <= room(lines.length - 1)) lines[lines.length - 1] = longer;
      else if (widthOfText(word, points) <= room(lines.length)) lines.push(word);
      else return null;
      isFirst = false;
    }
  }
  return lines.length === rows ? lines : null;
}

/** How long a line may be at that row of so many in a circle, in millimetres. */
function chord(row: number, rows: number, across: number, points: number): number {
  const high = lineHeight(points);
  const radius = across / 2 - EDGE;
  const from = Math.max(Math.abs((row - rows / 2) * high), Math.abs((row + 1 - rows / 2) * high)) - high * 0.18;
  return from >= radius ? 0 : 2 * Math.sqrt(radius ** 2 - from ** 2);
}
