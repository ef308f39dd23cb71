import { letterWidth } from './letter-widths.ts';
import { LEADING, MILLIMETRES_PER_POINT } from './type-size.ts';

/** Words of one style. */
export type Run = { readonly text: string; readonly italic?: boolean };
/** One line as it will be printed; nothing breaks it further. */
export type SetLine = readonly Run[];

/** How wide a text is in the reading face, in millimetres. */
export function widthOfText(text: string, points: number, italic = false): number {
  const thousandths = Array.from(text).reduce((sum, letter) => sum + letterWidth(letter, italic), 0);
  return (thousandths / 1000) * points * MILLIMETRES_PER_POINT;
}

/** From line to line, in millimetres. */
export function lineHeight(points: number): number {
  return points * MILLIMETRES_PER_POINT * LEADING;
}

/**
 * Breaks a text into lines no wider than `width` millimetres, by the widths of the letters of the reading face. A word that
 * is wider than a line is broken between letters. A text without words has no lines.
 */
export function setText(runs: readonly Run[] | string, width: number, points: number): readonly SetLine[] {
  const lines: Run[][] = [];
  let used = Infinity;
  for (const word of wordsOf(typeof runs === 'string' ? [{ text: runs }] : runs, width, points)) {
    const wide = word.reduce((sum, { text, italic }) => sum + widthOfText(text, points, italic), 0);
    const space = widthOfText(' ', points);
    if (used + space + wide <= width) {
      lines.at(-1)?.push({ text: ' ' }, ...word);
      used += space + wide;
    } else {
      lines.push([...word]);
      used = wide;
    }
  }
  return lines.map(joined);
}

/** A line as plain text. */
export function lineText(line: SetLine): string {
  return line.map(({ text }) => text).join('');
}

/** Words with their styles; a word may hold two of them, like an italic title and its full stop. */
function wordsOf(runs: readonly Run[], width: number, points: number): readonly (readonly Run[])[] {
  const words: Run[][] = [[]];
  for (const { text, italic = false } of runs) {
    const parts = text.split(/[^\S\u00a0\u202f]+/);
    parts.forEach((part, index) => {
      if (index > 0 && words.at(-1)?.length !== 0) words.push([]);
      for (const fitting of cutToWidth(part, width, points, italic)) {
        if ((words.at(-1)?.length ?? 0) > 0 && fitting !== part) words.push([]);
        words.at(-1)?.push({ text: fitting, italic });
      }
    });
  }
  return words.filter((word) => word.length > 0);
}

function cutToWidth(word: string, width: number, points: number, italic: boolean): readonly string[] {
  if (word === '') return [];
  if (widthOfText(word, points, italic) <= width) return [word];
  const cut: string[] = [''];
  for (const letter of Array.from(word)) {
    const longer = `${cut.at(-1) ?? ''}${letter}`;
    if (cut.at(-1) !== '' && widthOfText(longer, points, italic) > width) cut.push(letter);
    else cut[cut.length - 1] = longer;
  }
  return cut;
}

/** Neighbours of one style made into one run; a space between words takes the style of the word before it. */
function joined(line: readonly Run[]): SetLine {
  const runs: { text: string; italic: boolean }[] = [];
  for (const { text, italic = false } of line) {
    const last = runs.at(-1);
    if (last !== undefined && (last.italic === italic || text === ' ')) last.text += text;
    else runs.push({ text, italic });
  }
  return runs.map(({ text, italic }) => (italic ? { text, italic } : { text }));
}
