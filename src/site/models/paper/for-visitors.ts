import { lineHeight, setText } from '../../../core/cases/typeset-text.ts';
import type { Run } from '../../../core/cases/typeset-text.ts';
import { hasPublicAddress, inFull, urls } from '../../urls.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { paperWords } from '../../words/paper.ts';
import type { ShownExhibit } from '../exhibit/shown-exhibit.ts';
import { textMarks } from './marks.ts';
import type { CutOut } from './paper.ts';
import { qrCode } from './qr-code.ts';
import { paragraphCards, plainParagraphs } from './text-cards.ts';

/** Type of a reader in large print. Guides for readers of low vision ask for 16 to 18 points at least; from memory. */
const LARGE = 24;
const CODE = { size: 34, width: 86, points: 14, margin: 5 } as const;

/** Every text of the exhibit in the order of its cases, to be held in the hand. */
export function largePrint(shown: ShownExhibit, most: number): readonly CutOut[] {
  const plain = (text: string | null): readonly (readonly Run[])[] => (text === null ? [] : [[{ text }]]);
  const paragraphs = [
    ...plain(shown.title),
    ...plain(shown.scope),
    ...plainParagraphs(shown.statement),
    ...shown.cases.flatMap(({ number, title, groups }) => [
      ...plain(exhibitWords.caseName(number, title)),
      ...groups.flatMap((group) => [
        [{ text: group.title, italic: true }],
        ...plain(group.text),
        ...group.pieces.map(({ key, piece, label }) => [
          { text: `${String(key)}. ` },
          { text: piece.title, italic: true },
          { text: `. ${label}` },
        ]),
      ]),
    ]),
  ];
  return paragraphCards(paragraphs, LARGE, most);
}

/** A card for each case with the code of its page; none for a cabinet without a public address. */
export function caseCodes(shown: ShownExhibit): readonly CutOut[] {
  if (!hasPublicAddress()) return [];
  return shown.cases.map(({ number, title }): CutOut => {
    const name = exhibitWords.caseName(number, title);
    const { modules, path } = qrCode(inFull(urls.exhibitCase(shown.id, number)));
    const left = CODE.margin + CODE.size;
    const lines = [name, paperWords.codeSays].flatMap((text) =>
      setText(text, CODE.width - left - CODE.margin, CODE.points),
    );
    return {
      name,
      width: CODE.width,
      height: Math.max(CODE.size, lines.length * lineHeight(CODE.points)) + 2 * CODE.margin,
      marks: [
        {
          kind: 'shape',
          x: CODE.margin,
          y: CODE.margin,
          scale: CODE.size / modules,
          path,
          says: paperWords.codeOf(name),
        },
        ...textMarks(lines, left, CODE.margin, CODE.points),
      ],
    };
  });
}
