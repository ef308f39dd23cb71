import { setText } from '../../../core/cases/typeset-text.ts';
import { hasPublicAddress, inFull, urls } from '../../urls.ts';
import { faceWords } from '../../words/faces.ts';
import { paperWords } from '../../words/paper.ts';
import type { ShownExhibit, ShownPiece } from '../exhibit/shown-exhibit.ts';
import type { Anonymous } from './anonymous.ts';
import type { Mark } from './marks.ts';
import { FIRM, moved, textMark, textMarks } from './marks.ts';
import type { Paper, PaperSheet } from './paper.ts';
import { MARGIN, roomOn } from './paper.ts';
import { qrCode } from './qr-code.ts';

const CODE = 20;
const ROW = 24;
const COLUMNS = 2;
const BOX = 4;
const POINTS = 10;

/**
 * A box to tick for everything that is done, in the order of the work: the plan, the cards, every piece with a code that leads to its page, the labels. On a form without a name it leads
 * to the exhibit's set-up page, which names nobody; unless the address of the site does. A cabinet without a public address has
 * no codes.
 */
export function setUpSheets(exhibit: ShownExhibit, paper: Paper, anonymous: Anonymous | null): readonly PaperSheet[] {
  const room = roomOn(paper);
  const wide = room.width / COLUMNS;
  const address = ({ key, piece }: ShownPiece): string =>
    inFull(anonymous === null ? urls.piece(piece.id) : urls.exhibitSetUp(exhibit.id, key));
  const isNaming = anonymous !== null && saysName(inFull(urls.exhibitSetUp(exhibit.id)), anonymous);
  const says = !hasPublicAddress() ? paperWords.noAddress : isNaming ? paperWords.namingAddress : null;
  const entries = exhibit.cases.flatMap(({ number, groups }) => [
    step(paperWords.layPlan(number), wide),
    step(
      paperWords.layCards(number, groups.flatMap(({ text }) => (text === null ? [1] : [1, 1])).length, number === 1),
      wide,
    ),
    ...groups.flatMap(({ title, pieces }) =>
      pieces.map((shown) =>
        entry(shown, paperWords.inCase(number, title), wide, says === null ? address(shown) : null),
      ),
    ),
    step(paperWords.close(number, groups.flatMap(({ pieces }) => pieces).length), wide),
  ]);
  const rows = Math.floor((room.height - 6) / ROW);
  const sheets = Math.ceil(entries.length / (rows * COLUMNS));
  return Array.from({ length: sheets }, (_, sheet) => ({
    name: paperWords.setUp,
    marks: [
      ...(says === null ? [] : [textMark(says, MARGIN.side, MARGIN.top + 3, POINTS)]),
      ...entries.slice(sheet * rows * COLUMNS, (sheet + 1) * rows * COLUMNS).flatMap((marks, at) => {
        const [column, row] = [Math.floor(at / rows), at % rows];
        return moved(marks, MARGIN.side + column * wide, MARGIN.top + 6 + row * ROW);
      }),
    ],
  }));
}

function saysName(address: string, { clear }: Anonymous): boolean {
  return [address, decodeURI(address)].some((text) => clear(text) !== text);
}

const TICK: Mark = {
  kind: 'frame',
  box: { left: 0, top: 1, width: BOX, height: BOX },
  weight: FIRM,
  dashed: false,
  name: 'tick',
};

function step(says: string, wide: number): readonly Mark[] {
  return [TICK, ...textMarks(setText(says, wide - BOX - 6, POINTS), BOX + 3, 0.4, POINTS)];
}

function entry(
  { key, piece, faces }: ShownPiece,
  where: string,
  wide: number,
  address: string | null,
): readonly Mark[] {
  const textFrom = BOX + 3 + (address === null ? 0 : CODE + 2);
  const says = [`${key}. ${piece.title}`, `${piece.number}, ${faceWords.shown(faces, piece)}`, where];
  const lines = says.flatMap((line) => setText(line, wide - textFrom - 3, POINTS));
  return [
    TICK,
    ...(address === null ? [] : [codeMark(address, piece.title)]),
    ...textMarks(lines, textFrom, 0.4, POINTS),
  ];
}

function codeMark(address: string, title: string): Mark {
  const { modules, path } = qrCode(address);
  return { kind: 'shape', x: BOX + 2, y: 0, scale: CODE / modules, path, says: paperWords.codeOf(title) };
}
