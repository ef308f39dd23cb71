import type { Exhibit } from '../../../catalogue/catalogue.ts';
import type { Cabinet } from '../../cabinet.ts';
import { paperWords } from '../../words/paper.ts';
import { setCase } from '../exhibit/set-case.ts';
import type { ShownExhibit } from '../exhibit/shown-exhibit.ts';
import { piecesShown, shownExhibit } from '../exhibit/shown-exhibit.ts';
import { overviewSheet, trueSizeSheets } from './case-sheets.ts';
import type { Paper, PaperSheet } from './paper.ts';
import { furniture, layOnSheets, roomOn } from './paper.ts';
import { setUpSheets } from './set-up-sheets.ts';
import { cardCutOut, closingCards, labelCutOut, statementCards, titleCard } from './text-cards.ts';
import { ticketOfPiece } from './tickets.ts';

/** Every sheet of an exhibit, in the order in which it is set up. */
export function printForms(
  cabinet: Cabinet,
  exhibit: Exhibit,
  paper: Paper,
  anonymous: boolean,
): readonly PaperSheet[] {
  const named = shownExhibit(cabinet, exhibit);
  const shown = anonymous ? withoutName(named, cabinet.lists.cabinet.keeper) : named;
  const most = roomOn(paper).height - 4;
  const cases = shown.cases.map((one) => setCase(one, shown.label));
  const groups = cases.flatMap((one) => one.groups);
  const sheets = [
    ...layOnSheets([titleCard(shown), ...statementCards(shown, most)], paper, paperWords.titleCard),
    ...cases.flatMap((one) => [overviewSheet(one, paper), ...trueSizeSheets(one, paper)]),
    ...layOnSheets(
      groups.flatMap(({ heading, text }) => [heading, ...(text === null ? [] : [text.card])].map(cardCutOut)),
      paper,
      paperWords.groupCards,
    ),
    ...layOnSheets(
      groups.flatMap(({ cells }) => cells.map(labelCutOut)),
      paper,
      paperWords.labels,
    ),
    ...layOnSheets(
      piecesShown(shown).map(({ piece }) => ticketOfPiece(piece)),
      paper,
      paperWords.tickets,
    ),
    ...layOnSheets(closingCards(shown, most), paper, paperWords.bibliography),
    ...setUpSheets(shown, paper, anonymous),
  ];
  return sheets.map(({ name, marks }, index) => ({
    name,
    marks: [
      ...furniture(paper, paperWords.onSheet(shown.title, name), paperWords.sheet(index + 1, sheets.length)),
      ...marks,
    ],
  }));
}

/** The exhibit with the keeper's name nowhere: not shown, and where a text says it, put in other words. */
export function withoutName(exhibit: ShownExhibit, keeper: string): ShownExhibit {
  const clear = (text: string): string => nameless(text, keeper);
  const clearIfAny = (text: string | null): string | null => (text === null ? null : clear(text));
  return {
    ...exhibit,
    keeper: null,
    title: clear(exhibit.title),
    scope: clearIfAny(exhibit.scope),
    statement: clear(exhibit.statement),
    acknowledgements: clearIfAny(exhibit.acknowledgements),
    cases: exhibit.cases.map((one) => ({
      ...one,
      title: clearIfAny(one.title),
      groups: one.groups.map((group) => ({
        title: clear(group.title),
        text: clearIfAny(group.text),
        pieces: group.pieces.map((shown) => ({
          ...shown,
          label: clear(shown.label),
          piece: { ...shown.piece, title: clear(shown.piece.title) },
        })),
      })),
    })),
  };
}

/** A text in which the keeper is called the exhibitor. */
export function nameless(text: string, keeper: string): string {
  if (keeper.trim() === '') return text;
  const pattern = keeper
    .trim()
    .split(/\s+/)
    .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('\\s+');
  return text.replace(new RegExp(pattern, 'gi'), paperWords.theExhibitor);
}
