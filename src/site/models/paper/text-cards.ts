import type { Run, SetLine } from '../../../core/cases/typeset-text.ts';
import { lineHeight, setText } from '../../../core/cases/typeset-text.ts';
import { paperWords } from '../../words/paper.ts';
import { CARD_MARGIN } from '../../../core/cases/card.ts';
import type { Card } from '../../../core/cases/card.ts';
import type { SetCase, SetCell } from '../exhibit/planned-case.ts';
import type { ShownExhibit } from '../exhibit/shown-exhibit.ts';
import { workLine } from '../exhibit/work-line.ts';
import type { Mark } from './marks.ts';
import { moved, textMark, textMarks } from './marks.ts';
import type { CutOut } from './paper.ts';

/** The width of the cards that introduce and end an exhibit, in millimetres: it fits A4 and Letter. */
const WIDTH = 180;
const MARGIN = 8;
const TITLE = 36;
/** A list of books against a label. */
const LIST_SMALLER = 2 / 3;

/** A label, heading or text as it lies in the case. */
export function cardCutOut({ width, height, points, lines, above }: Card): CutOut {
  const wide = width - 2 * CARD_MARGIN;
  return { width, height, marks: textMarks(lines, CARD_MARGIN, CARD_MARGIN, points, { width: wide, above }) };
}

/** A label, with a note below the cut that tells which piece it belongs to. */
export function labelCutOut({ shown: { key, piece }, label }: SetCell): CutOut {
  const says = paperWords.labelNote(key, piece.number);
  const note = textMark(says, MARGIN, label.height + 3.6, 7, { face: 'sans', isLeftward: false });
  const cutOut = cardCutOut(label);
  return { ...cutOut, name: says, marks: [...cutOut.marks, note] };
}

/** Title, scope and, unless it is to be shown without a name, the keeper. */
export function titleCard({ title, scope, keeper, label, titleCard: more }: ShownExhibit): CutOut {
  const wide = WIDTH - 2 * MARGIN;
  const parts = [
    { lines: setText(title, wide, TITLE), points: TITLE },
    { lines: setText(scope ?? '', wide, label.points), points: label.points },
    ...more.map((line) => ({ lines: setText(line, wide, label.points), points: label.points })),
    { lines: setText(keeper === null ? '' : paperWords.shownBy(keeper), wide, label.points), points: label.points },
  ].filter(({ lines }) => lines.length > 0);
  const marks: Mark[] = [];
  let top = MARGIN;
  for (const { lines, points } of parts) {
    marks.push(...textMarks(lines, WIDTH / 2, top, points, { anchor: 'middle' }));
    top += lines.length * lineHeight(points) + MARGIN;
  }
  return { width: WIDTH, height: top, marks };
}

/** Paragraphs on as many cards as they need, none higher than `most`. */
export function paragraphCards(
  paragraphs: readonly (readonly Run[])[],
  points: number,
  most: number,
): readonly CutOut[] {
  const gap: SetLine = [];
  const lines = paragraphs.flatMap((paragraph, index) => [
    ...(index === 0 ? [] : [gap]),
    ...setText(paragraph, WIDTH - 2 * MARGIN, points),
  ]);
  const rows = Math.floor((most - 2 * MARGIN) / lineHeight(points));
  return chunks(lines, rows).map((part) => ({
    width: WIDTH,
    height: part.length * lineHeight(points) + 2 * MARGIN,
    marks: textMarks(part, MARGIN, MARGIN, points, { width: WIDTH - 2 * MARGIN }),
  }));
}

/** The statement without the marks of Markdown, paragraph by paragraph. */
export function statementCards({ statement, label }: ShownExhibit, most: number): readonly CutOut[] {
  return paragraphCards(plainParagraphs(statement), label.points, most);
}

/** What the numbers by the pieces of a case stand for, where its labels do not are next to them. */
export function keyCards({ shown, key }: SetCase, { label }: ShownExhibit, most: number): readonly CutOut[] {
  if (key.length === 0) return [];
  const entries = key.map((one) => [{ text: `${one.key}. ${one.says}` }]);
  return headedCards(paperWords.keyTo(shown.number), entries, label.points * LIST_SMALLER, label.points, most);
}

/** Books, books to read further, what is shortened, and thanks, each under its heading. */
export function closingCards(exhibit: ShownExhibit, most: number): readonly CutOut[] {
  const points = exhibit.label.points * LIST_SMALLER;
  const { research, bibliography, furtherReading, acknowledgements, abbreviations } = exhibit;
  const parts: readonly (readonly [string, readonly (readonly Run[])[]])[] = [
    [paperWords.research, research === null ? [] : [[{ text: research }]]],
    [paperWords.bibliography, bibliography.map(workLine)],
    [paperWords.furtherReading, furtherReading.map(workLine)],
    [paperWords.abbreviations, abbreviations.map(({ short, means }) => [{ text: `${short}: ${means}` }])],
    [paperWords.acknowledgements, acknowledgements === null ? [] : [[{ text: acknowledgements }]]],
  ];
  return parts.flatMap(([heading, entries]) => headedCards(heading, entries, points, exhibit.label.points, most));
}

/** A list under its heading, again on every card it needs. */
function headedCards(
  heading: string,
  entries: readonly (readonly Run[])[],
  points: number,
  larger: number,
  most: number,
): readonly CutOut[] {
  if (entries.length === 0) return [];
  const high = lineHeight(larger);
  return paragraphCards(entries, points, most - high).map((card) => ({
    ...card,
    name: heading,
    height: card.height + high,
    marks: [...textMarks([[{ text: heading }]], MARGIN, MARGIN, larger), ...moved(card.marks, 0, high)],
  }));
}

/** Paragraphs of Markdown as runs: emphasis in italics, links as their words, nothing else kept. */
export function plainParagraphs(markdown: string): readonly (readonly Run[])[] {
  return markdown
    .split(/\n\s*\n/)
    .map((paragraph) =>
      paragraph
        .replace(/^#+\s*|^>\s?|^[-*]\s+/gm, '')
        .replace(/!?\[([^\]]*)\]\([^)]*\)/g, '$1')
        .replace(/\s+/g, ' ')
        .trim(),
    )
    .filter((paragraph) => paragraph !== '')
    .map((paragraph) =>
      paragraph
        .split(/(\*\*[^*]+\*\*|\*[^*]+\*|_[^_]+_)/)
        .filter((part) => part !== '')
        .map((part) =>
          /^[*_].*[*_]$/.test(part) ? { text: part.replace(/^[*_]+|[*_]+$/g, ''), italic: true } : { text: part },
        ),
    );
}

function chunks<T>(all: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, at) => all.slice(at * size, (at + 1) * size));
}
