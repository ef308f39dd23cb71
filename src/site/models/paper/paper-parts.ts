import type { Exhibit } from '../../../catalogue/catalogue.ts';
import type { Cabinet } from '../../cabinet.ts';
import { paperWords } from '../../words/paper.ts';
import { setCase } from '../exhibit/planned-case.ts';
import type { ShownExhibit } from '../exhibit/shown-exhibit.ts';
import { piecesShown, shownExhibit } from '../exhibit/shown-exhibit.ts';
import { withoutName } from './anonymous.ts';
import { casePlanSheets } from './case-sheets.ts';
import type { CellGrid } from './cells.ts';
import { gridFor, layInCells } from './cells.ts';
import type { CutOut, Paper, PaperSheet } from './paper.ts';
import { layOnSheets, roomOn } from './paper.ts';
import { caseCodes, largePrint } from './for-visitors.ts';
import { setUpSheets } from './set-up-sheets.ts';
import { cardCutOut, closingCards, keyCards, labelCutOut, statementCards, titleCard } from './text-cards.ts';
import { TICKET_SIZES, ticketChoice } from './tickets.ts';

/** One way to print a part; the first is taken until another is chosen. */
export type Choice = {
  readonly id: string;
  readonly name: string;
  readonly sheets: readonly PaperSheet[];
  /** Null where the first cell cannot be chosen. */
  readonly grid: CellGrid | null;
  /** How many cut-outs lie in the grid. */
  readonly count: number;
  /** What was cut off or left out, for the keeper's screen. */
  readonly reports: readonly string[];
};

/** What goes on one kind of paper and is printed at one time. */
export type PaperPart = {
  readonly id: string;
  readonly name: string;
  readonly stock: 'plain' | 'card';
  readonly choices: readonly Choice[];
  /** Printed only where it is ticked. */
  readonly onlyIfAsked?: boolean;
};

export type PaperParts = {
  readonly title: string;
  readonly parts: readonly PaperPart[];
  /** What a form without a name has withheld. */
  readonly withheld: readonly string[];
};

/** From label to label in their cells: the cut marks of both, and the note below. */
const LABELS_APART = 9;
/** At least so many rows of labels on a sheet; a longer label is laid apart. */
const ROWS = 3;

/** Everything printed for an exhibit, in the order in which it is set up. */
export function paperParts(cabinet: Cabinet, exhibit: Exhibit, paper: Paper, isAnonymous: boolean): PaperParts {
  const named = shownExhibit(cabinet, exhibit);
  const anonymous = isAnonymous ? withoutName(named, cabinet) : null;
  const shown = anonymous?.shown ?? named;
  const most = roomOn(paper).height - 4;
  const cases = shown.cases.map((one) => setCase(one, shown.label));
  const groups = cases.flatMap((one) => one.groups);
  const cards = (id: string, cutOuts: readonly CutOut[], name: string): PaperPart => ({
    id,
    name,
    stock: 'card',
    choices: [flowing(id, name, cutOuts, paper)],
  });
  const parts: readonly PaperPart[] = [
    plain('plans', paperWords.plans, cases.flatMap((one) => casePlanSheets(one, paper))),
    plain('set-up', paperWords.setUp, setUpSheets(shown, paper, anonymous)),
    cards('title', [titleCard(shown), ...statementCards(shown, most)], paperWords.titleCard),
    cards('headings', groups.flatMap(({ heading, text }) => [heading, ...(text === null ? [] : [text.card])]).map(cardCutOut), paperWords.groupCards),
    labelsPart(groups.flatMap(({ cells }) => cells.map(labelCutOut)), paper),
    cards('key', cases.flatMap((one) => keyCards(one, shown, most)), paperWords.key),
    ticketsPart(shown, paper),
    cards('books', closingCards(shown, most), paperWords.bibliography),
    { ...cards('codes', anonymous === null ? caseCodes(shown) : [], paperWords.codes), onlyIfAsked: true },
    { ...cards('large-print', largePrint(shown, most), paperWords.largePrint), stock: 'plain', onlyIfAsked: true },
  ]; // prettier-ignore
  return {
    title: shown.title,
    parts: parts.filter(({ choices }) => choices.some(({ sheets }) => sheets.length > 0)),
    withheld: anonymous?.reports ?? [],
  };
}

function plain(id: string, name: string, sheets: readonly PaperSheet[]): PaperPart {
  return { id, name, stock: 'plain', choices: [{ id, name, sheets, grid: null, count: 0, reports: [] }] };
}

function flowing(id: string, name: string, cutOuts: readonly CutOut[], paper: Paper): Choice {
  return {
    id,
    name,
    sheets: layOnSheets(cutOuts, paper, name),
    grid: null,
    count: 0,
    reports: cutOff(cutOuts, paper),
  };
}

/** Labels in equal cells, as high as the highest; those that would leave too few on a sheet follow apart. */
function labelsPart(cutOuts: readonly CutOut[], paper: Paper): PaperPart {
  const room = roomOn(paper);
  const isLong = ({ width, height }: CutOut): boolean =>
    height + LABELS_APART > room.height / ROWS || width > room.width;
  const even = cutOuts.filter((label) => !isLong(label));
  const cell = {
    width: Math.max(0, ...even.map(({ width }) => width)),
    height: Math.max(0, ...even.map(({ height }) => height)),
  };
  const grid = even.length === 0 ? null : gridFor(cell, LABELS_APART, even.length, paper);
  const apart = layOnSheets(cutOuts.filter(isLong), paper, paperWords.longLabels, LABELS_APART);
  const name = paperWords.labels;
  const inCells = grid === null ? [] : layInCells(even, grid, paper, { name, id: 'label' });
  return {
    id: 'labels',
    name,
    stock: 'card',
    choices: [
      { id: 'labels', name, sheets: [...inCells, ...apart], grid, count: even.length, reports: cutOff(cutOuts, paper) },
    ],
  };
}

function ticketsPart(shown: ShownExhibit, paper: Paper): PaperPart {
  const pieces = piecesShown(shown).map(({ piece }) => piece);
  return {
    id: 'tickets',
    name: paperWords.tickets,
    stock: 'card',
    choices: TICKET_SIZES.map((holder) => {
      const { sheets, grid, count, reports } = ticketChoice(pieces, holder, paper);
      return { id: holder.id, name: paperWords.ticketsFor(holder.shape, holder.across), sheets, grid, count, reports };
    }),
  };
}

function cutOff(cutOuts: readonly CutOut[], paper: Paper): readonly string[] {
  const room = roomOn(paper);
  return cutOuts
    .filter(({ width, height }) => width > room.width || height > room.height)
    .map(({ name, width, height }) => paperWords.cutOff(name ?? paperWords.aCard, width, height));
}
