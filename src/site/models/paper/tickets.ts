import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Certainty } from '../../../catalogue/schema/fields.ts';
import { paperWords } from '../../words/paper.ts';
import { ticketWords } from '../../words/ticket.ts';
import { alteredWhen } from '../shared/ticket.ts';
import { extentOf, UNMEASURED } from '../shared/sizes.ts';
import { gridFor, layInCells } from './cells.ts';
import type { CellGrid } from './cells.ts';
import { FINE, moved } from './marks.ts';
import { layOnSheets } from './paper.ts';
import type { CutOut, Paper, PaperSheet } from './paper.ts';
import { ticketFace } from './ticket-face.ts';
import type { TicketShape } from './ticket-face.ts';
import { dateOf, weightOf } from '../../../catalogue/exhibits/label-text.ts';
import { formatReference } from '../../../core/references/reference.ts';

/** What tickets are cut for; `across` in millimetres, null for each as wide as its own piece needs. */
export type TicketSize = { readonly id: string; readonly shape: TicketShape; readonly across: number | null };

/** Round tickets lie under a piece in the well of its tray. Common practice: 24 to 45 mm. */
const WELLS = [24, 28, 32, 36, 40, 45] as const;
/** Clear of the piece, both sides together. */
const ROOM = 2;

/** The holders that tickets are printed for: wells of trays, and the square pockets that are sold. Common practice. */
export const TICKET_SIZES: readonly TicketSize[] = [
  { id: 'fit', shape: 'round', across: null },
  ...WELLS.map((across): TicketSize => ({ id: `round-${across}`, shape: 'round', across })),
  ...[38, 45, 50.8].map((across): TicketSize => ({ id: `square-${Math.floor(across)}`, shape: 'square', across })),
];

/** The tickets for one kind of holder, laid on sheets; in equal cells when they are all of one size. */
export type TicketChoice = {
  readonly holder: TicketSize;
  readonly sheets: readonly PaperSheet[];
  readonly grid: CellGrid | null;
  readonly count: number;
  readonly reports: readonly string[];
};

/** From one ticket to the next, and between the two sides of a round one: they touch at no point of the cut. */
const BETWEEN = 4;
const GAP = 3;

export function ticketChoice(pieces: readonly PublicPiece[], holder: TicketSize, paper: Paper): TicketChoice {
  const tickets = pieces.map((piece) => ticketFor(piece, holder));
  const cutOuts = tickets.map(({ cutOut }) => cutOut);
  const [first] = cutOuts;
  const even = holder.across === null || first === undefined ? null : first;
  const grid = even === null ? null : gridFor(even, BETWEEN, pieces.length, paper);
  const name = paperWords.ticketsFor(holder.shape, holder.across);
  return {
    holder,
    grid,
    count: pieces.length,
    sheets:
      grid === null
        ? layOnSheets(cutOuts, paper, name, BETWEEN)
        : layInCells(cutOuts, grid, paper, { name, id: holder.id }),
    reports: tickets.flatMap(({ leftOut }, index) =>
      leftOut.length === 0 ? [] : [paperWords.leftOut(pieces[index]?.number ?? '', leftOut)],
    ),
  };
}

/**
 * The smallest well that holds the piece with a little room, and one wider where the ticket of that well would leave a fact
 * out; the widest for what is wider than all.
 */
function wellFor(piece: PublicPiece): number {
  const { width, height } = extentOf(piece) ?? UNMEASURED;
  const needed = Math.max(width, height) + ROOM;
  const [fits = WELLS.at(-1) ?? needed, wider] = WELLS.filter((well) => well >= needed);
  const isWhole = (well: number): boolean =>
    [frontFacts(piece), backFacts(piece)].every((said) => ticketFace(said, well, 'round').leftOut.length === 0);
  return wider !== undefined && !isWhole(fits) && isWhole(wider) ? wider : fits;
}

/**
 * Front and back side by side, with the line between them to fold along: folded and pasted, the back lies behind the front
 * whatever the printer does, and one cut round the front is the cut of both.
 */
export function ticketFor(
  piece: PublicPiece,
  holder: TicketSize,
): { readonly cutOut: CutOut; readonly leftOut: readonly string[] } {
  const { shape } = holder;
  const across = holder.across ?? wellFor(piece);
  const gap = shape === 'round' ? GAP : 0;
  const [front, back] = [ticketFace(frontFacts(piece), across, shape), ticketFace(backFacts(piece), across, shape)];
  const fold = across + gap / 2;
  return {
    leftOut: [...front.leftOut, ...back.leftOut],
    cutOut: {
      name: piece.number,
      width: 2 * across + gap,
      height: across,
      cut: 'own',
      marks: [
        ...front.marks,
        ...moved(back.marks, across + gap, 0),
        { kind: 'line', x1: fold, x2: fold, y1: 0, y2: across, weight: FINE, dashed: true, name: 'fold' },
      ],
    },
  };
}

/**
 * The front of a ticket, in the order of the trade: number, ruler, denomination, mint, date. Where it was struck for another, he
 * is named with the ruler; without a ruler it goes by its issuer, and without either by its title as far as the first comma.
 * Every doubt stands with what is doubted. Common practice.
 */
function frontFacts(piece: PublicPiece): readonly string[] {
  const { sure, kind, title } = piece;
  // An altered piece is what was made of it, and not the coin that it was.
  if (piece.altered != null)
    return facts([
      piece.number,
      title.split(', ')[0] ?? title,
      ticketWords.madeFrom(piece.altered.host),
      alteredWhen(piece),
    ]);
  const who = rulerOnTicket(piece) ?? doubted(issuerOf(piece), sure.issuer);
  const what = nameOf(piece.denomination) ?? (who === null || kind === 'unknown' ? null : kind);
  const called = who ?? title.split(', ')[0] ?? title;
  const isSaid = what !== null && who === null && called.toLowerCase().includes(what.toLowerCase());
  return facts([
    piece.number,
    called,
    isSaid ? null : doubted(what, sure.denomination),
    doubted(nameOf(piece.mint), sure.mint),
    doubted(dateOf(piece), sure.date),
  ]);
}

/** The back: number again, reference, metal and weight, axis, and who was responsible where that is not the ruler. */
function backFacts(piece: PublicPiece): readonly string[] {
  const { axis, metal, sure } = piece;
  const hours = axis?.hours ?? null;
  return facts([
    piece.number,
    ...piece.references
      .slice(0, 2)
      .map((reference) => doubted(formatReference(reference, reference.cited), sure.references)),
    facts([metal === 'none' || metal === 'unknown' ? null : doubted(metal, sure.metal), weightOf(piece)]).join(', ') ||
      null,
    hours === null ? null : paperWords.axis(hours),
    rulerOnTicket(piece) === null || piece.altered != null ? null : doubted(issuerOf(piece), sure.issuer),
  ]);
}

/** In whose name it is, and for whom it was struck. */
function rulerOnTicket({ rulers, struckFor, sure }: PublicPiece): string | null {
  const ruler = doubted(namesOf(rulers), sure.ruler);
  const others = namesOf(struckFor);
  if (ruler === null || others === null) return ruler;
  return `${ruler} (${doubted(ticketWords.struckFor(others), sure['struck-for'])})`;
}

function issuerOf({ issuer }: PublicPiece): string | null {
  return issuer === 'unknown' || issuer === 'none' ? null : issuer;
}

/** A fact in the short form of a ticket, with its doubt. */
function doubted<T extends string | null>(fact: T, how: Certainty | undefined): T | string {
  return fact === null ? fact : ticketWords.short(fact, how);
}

function facts(all: readonly (string | null)[]): readonly string[] {
  return all.filter((fact) => fact !== null);
}

function namesOf(named: PublicPiece['rulers']): string | null {
  if (named === null || typeof named === 'string' || named.length === 0) return null;
  return named.map(({ name }) => name).join(', ');
}

function nameOf(named: { readonly name: string } | string | null): string | null {
  return named === null || typeof named === 'string' ? null : named.name;
}
