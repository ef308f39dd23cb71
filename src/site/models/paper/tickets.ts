import { lineHeight, widthOfText } from '../../../core/cases/set-text.ts';
import { formatReference } from '../../../core/references/format-reference.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { paperWords } from '../../words/paper.ts';
import { dateOf, weightOf } from '../exhibit/label-of.ts';
import { extentOf, UNMEASURED } from '../sizes.ts';
import type { Mark } from './marks.ts';
import { FINE, moved, textMarks } from './marks.ts';
import type { CutOut } from './paper.ts';

/** Round tickets are made to lie under the piece in its tray. Common practice: 24 to 45 mm. */
export const TICKET = { least: 24, most: 45, room: 2 } as const;
const POINTS = { small: 7, large: 8, largeFrom: 34 } as const;
/** Clear of the cut, in millimetres. */
const EDGE = 1.2;
/** From the front to the back. */
const BETWEEN = 3;

/** The front and the back of a piece's ticket side by side, each as wide as the piece and a little more. */
export function ticketOfPiece(piece: PublicPiece): CutOut {
  const { width, height } = extentOf(piece) ?? UNMEASURED;
  const across = Math.min(TICKET.most, Math.max(TICKET.least, Math.ceil(Math.max(width, height) + TICKET.room)));
  const back = moved(disc(across, backFacts(piece)), across + BETWEEN, 0);
  return {
    width: 2 * across + BETWEEN,
    height: across,
    cut: 'own',
    marks: [...disc(across, frontFacts(piece)), ...back],
  };
}

/** In the order of the trade: number, ruler, denomination, mint, date; a piece without a ruler goes by its title. Common practice. */
function frontFacts(piece: PublicPiece): readonly string[] {
  const ruler = namesOf(piece.rulers);
  const what = nameOf(piece.denomination) ?? (ruler === null ? null : piece.kind);
  return facts([piece.number, ruler ?? (what === null ? piece.title : null), what, nameOf(piece.mint), dateOf(piece)]);
}

/** Number again, reference, metal and weight, axis. */
function backFacts(piece: PublicPiece): readonly string[] {
  const { axis, metal } = piece;
  const hours = axis?.hours ?? null;
  return facts([
    piece.number,
    ...piece.references.slice(0, 2).map((reference) => formatReference(reference, reference.cited)),
    facts([metal === 'none' || metal === 'unknown' ? null : metal, weightOf(piece)]).join(', ') || null,
    hours === null ? null : paperWords.axis(hours),
  ]);
}

function facts(all: readonly (string | null)[]): readonly string[] {
  return all.filter((fact) => fact !== null);
}

/** A circle to cut along, and the facts in it. */
function disc(across: number, told: readonly string[]): readonly Mark[] {
  const points = across >= POINTS.largeFrom ? POINTS.large : POINTS.small;
  const most = Math.floor((across - 2 * EDGE) / lineHeight(points));
  const box = { left: 0, top: 0, width: across, height: across };
  return [{ kind: 'oval', box, weight: FINE, dashed: false, name: 'ticket' }, ...setRound(told, across, points, most)];
}

/**
 * Each fact begins a line of its own, lines are as long as the circle lets them be, and the whole stands in the middle.
 * What does not fit is left out, from the end.
 */
function setRound(told: readonly string[], across: number, points: number, most: number): readonly Mark[] {
  for (let kept = told.length; kept > 0; kept -= 1)
    for (let rows = kept; rows <= most; rows += 1) {
      const lines = fill(told.slice(0, kept), rows, across, points);
      if (lines === null) continue;
      const top = (across - rows * lineHeight(points)) / 2;
      return textMarks(
        lines.map((text) => [{ text }]),
        across / 2,
        top,
        points,
        { anchor: 'middle' },
      );
    }
  return [];
}

/** The facts broken over exactly so many lines; null when they need more, or a word is longer than its line. */
function fill(told: readonly string[], rows: number, across: number, points: number): readonly string[] | null {
  const lines: string[] = [];
  for (const fact of told) {
    let isFirst = true;
    for (const word of fact.split(/[^\S\u00a0]+/)) {
      const longer = `${lines.at(-1) ?? ''} ${word}`;
      if (!isFirst && widthOfText(longer, points) <= chord(lines.length - 1, rows, across, points))
        lines[lines.length - 1] = longer;
      else if (widthOfText(word, points) <= chord(lines.length, rows, across, points)) lines.push(word);
      else return null;
      isFirst = false;
    }
  }
  return lines.length === rows ? lines : null;
}

/** How long a line may be at that row of so many, in millimetres. */
function chord(row: number, rows: number, across: number, points: number): number {
  const high = lineHeight(points);
  const radius = across / 2 - EDGE;
  const from = Math.max(Math.abs((row - rows / 2) * high), Math.abs((row + 1 - rows / 2) * high)) - high * 0.18;
  return from >= radius ? 0 : 2 * Math.sqrt(radius ** 2 - from ** 2);
}

function namesOf(named: PublicPiece['rulers']): string | null {
  return named === null || typeof named === 'string' ? null : named.map(({ name }) => name).join(', ');
}

function nameOf(named: { readonly name: string } | string | null): string | null {
  return named === null || typeof named === 'string' ? null : named.name;
}
