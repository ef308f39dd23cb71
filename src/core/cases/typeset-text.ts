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

// Set by hand from the font files of src/site/fonts (EB Garamond 12, version 0.016): the advance width of each letter in
// thousandths of its size, figures lining and proportional. Kerning and ligatures are left out; they make lines shorter.
type Widths = Readonly<Record<number, string>>;

// prettier-ignore
const REGULAR: Widths = {
  50: '⁄', 178: '\'′', 200: ' \u00a0·', 212: 'j', 228: ',;', 230: '.', 240: 'l‘’', 242: '‚', 245: 'iı', 248: ':', 260: '|',
  270: '•', 274: '-', 278: 'ł', 279: '`', 285: '!', 290: '°', 300: 'J²³', 309: '"', 314: 't', 315: '(', 316: ')″',
  318: 'f', 323: 's', 334: 'r', 340: '*I', 362: '1', 373: '[]{}', 377: 'cz', 387: '?', 390: 'e', 391: 'ȝ', 399: '/\\a',
  400: '§', 420: '“”„', 430: 'x', 435: 'g', 438: 'vy', 440: '†', 452: '8', 458: '$', 460: '35', 464: '‹›67', 465: 'S',
  466: '9', 468: '#', 469: 'k', 480: '4', 485: 'ø2', 486: '0', 487: 'ð', 490: '£', 495: 'o', 497: 'ħ', 499: 'ƿ',
  500: '^_~', 505: 'ßþ', 506: 'd', 507: 'Ȝ', 512: 'F', 513: 'ŋ', 515: 'bh', 519: 'p', 522: 'q', 527: 'u', 528: 'n',
  535: 'E', 544: 'æ', 550: '–', 552: 'P', 559: 'ÞǷ', 578: 'BY', 584: 'L', 586: 'Ł', 590: '+<=>±÷', 600: '×−', 603: 'Z',
  640: 'C', 641: '¼¾', 665: '©€', 670: 'T', 672: 'V', 676: '«»', 681: 'K', 684: '…', 685: 'w', 691: '%', 692: 'A',
  699: '½', 707: 'X', 713: 'R', 729: 'G', 738: 'U', 749: '@', 754: 'DÐ', 755: 'œ', 763: 'O', 770: 'NŊ', 773: 'Ø',
  778: 'm', 788: '&', 806: 'Q', 810: 'HĦ', 866: 'Æ', 901: 'M', 916: 'W', 933: 'Œ', 950: '—',
};

// prettier-ignore
const ITALIC: Widths = {
  55: '⁄', 178: '\'′', 182: '\u00a0', 184: '·', 210: ';‚', 212: '’', 215: '.', 238: '‘', 248: '!', 250: ' ,', 252: 'l',
  255: 'j', 257: '`', 258: ':', 260: '|', 264: 'ł', 274: '-iı', 276: 's', 277: '³', 278: '²', 285: '"t', 286: '•',
  290: '°', 291: '(', 292: ')', 297: 'f', 300: '\\', 316: '?', 318: 'c', 335: 'J1', 339: '*', 341: ']', 343: '[',
  345: '{}', 365: 'eg', 370: '/§', 371: 'I', 377: '”„', 381: 'z', 383: 'r', 390: '″', 395: 'v', 399: '“', 400: 'oðø',
  407: '†', 418: '8', 420: 'y', 424: '$', 425: '5', 426: '3', 427: '‹›', 430: '6', 431: '7', 432: '9', 438: 'x',
  445: 'pþ', 446: '4', 450: '02', 451: 'a', 452: 'b', 464: 'S', 465: '_q', 468: '#', 469: 'k', 472: 'æ', 484: 'ß',
  490: '£ŋ', 498: 'u', 500: '^~', 504: 'hħ', 508: 'n', 509: '–', 513: 'd', 536: 'F', 570: 'P', 590: '+<=>±÷', 592: 'B',
  594: '¾', 595: 'Y¼', 600: '×−', 604: 'wœ', 614: 'Þ', 619: 'LŁ', 621: 'E', 622: 'C€', 635: 'T', 636: 'Z', 639: 'R',
  644: 'V', 648: '½', 651: '»', 657: '«', 665: 'Q©', 684: '…', 685: 'K', 687: 'G', 707: 'X', 712: 'OØŒ', 735: '%',
  737: 'U', 754: 'Ð', 755: 'm', 772: 'A', 773: 'D', 788: 'H', 799: 'Ħ', 805: 'Æ', 819: 'NŊ', 876: '&', 880: '@',
  881: '—', 976: 'W', 1004: 'M',
};

const UPRIGHT = byLetter(REGULAR);
const SLANTED = byLetter(ITALIC);

/** The width taken for a letter that is not in the table: that of a broad capital, and a square for scripts that fill one. */
const UNKNOWN = 700;
const SQUARE = 1000;

/** How wide a letter of the reading face is, in thousandths of the type size. An accent takes no room. */
export function letterWidth(letter: string, italic: boolean): number {
  const table = italic ? SLANTED : UPRIGHT;
  const listed = table.get(letter);
  if (listed !== undefined) return listed;
  const plain = letter.normalize('NFD').replace(/\p{M}+/gu, '');
  if (plain === '') return 0;
  return table.get(plain) ?? (/[\u2E80-\uFFEF]/.test(letter) ? SQUARE : UNKNOWN);
}

function byLetter(widths: Widths): ReadonlyMap<string, number> {
  return new Map(
    Object.entries(widths).flatMap(([width, letters]) =>
      Array.from(letters).map((letter) => [letter, Number(width)] as const),
    ),
  );
}
