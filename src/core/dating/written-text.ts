/**
 * Brings the many ways of typing one thing to one: composed letters, plain spaces and digits, hyphens for minus signs.
 * A dash is not a hyphen: `1801-05` may be May 1801, `1801–05` is five years, so a dash becomes a hyphen between spaces.
 */
export function plainText(text: string): string {
  return text
    .normalize('NFKC')
    .replace(/[\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\u00AD\uFEFF]/g, '')
    .replace(/[٠-٩۰-۹๐-๙०-९]/g, (digit) => String(digit.charCodeAt(0) - noughtOf(digit)))
    .replace(/[‐‑−]/g, '-')
    .replace(/\s+/g, ' ')
    .replace(/ ?[–—‒―] ?/g, ' - ')
    .replace(/[‘’ʼʻ`´]/g, "'")
    .replace(/ {2,}/g, ' ')
    .trim();
}

/** The code of nought among the digits of a script: Arabic, Persian, Devanagari or Thai. */
function noughtOf(digit: string): number {
  const code = digit.charCodeAt(0);
  return [0xe50, 0x966, 0x6f0, 0x660].find((nought) => code >= nought) ?? 0;
}

/** Letters without their accents, in lower case: for finding a name however it was typed. */
export function foldedText(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0300-\u036F]/g, '')
    .replace(/['ʾʿ\-. ]/g, '')
    .toLowerCase();
}

/** A pattern for any of some words: longest first, their spaces optional after a full stop. */
export function anyOf(words: readonly string[]): string {
  const longestFirst = words.toSorted((a, b) => b.length - a.length);
  return `(?:${longestFirst.map(patternOf).join('|')})`;
}

function patternOf(word: string): string {
  return word
    .replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')
    .replaceAll('\\. ', '\\. ?')
    .replaceAll(' ', ' ?');
}

/** A pattern for any of some words before a date. A word of letters must not run on into more letters. */
export function wordBefore(words: readonly string[], joint = ' ?'): RegExp {
  return new RegExp(`^${anyOf(words)}(?:(?<=[^\\p{L}])|(?=[^\\p{L}]))${joint}(?=.)`, 'iu');
}

/** Signs of an era as they are printed, with points and spaces, and the short form that the grammar goes on with. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/(?<![\p{L}\d.])B\. ?C\. ?E\.?(?![\p{L}\d])|(?<=\d)B\. ?C\. ?E\.?(?!\p{L})/giu, 'BCE'],
  [/(?<![\p{L}.])B\. ?C\.?(?![\p{L}.]| ?E\b)/giu, 'BC'],
  [/(?<![\p{L}.])A\. ?D\.?(?![\p{L}.])/giu, 'AD'],
  [/(?<![\p{L}.])C\. ?E\.?(?![\p{L}.])/gu, 'CE'],
  [/(?<![\p{L}.])A\. ?H\.?(?![\p{L}.])/gu, 'AH'],
  // `50/49 v.`, `2 av. - 4 n.`: nothing else follows a year of so few figures.
  [/(?<=(?<!\d)\d{1,3}) ?(?:v|av)\.(?=$| ?[-/])/gu, ' BC'],
  [/(?<=(?<!\d)\d{1,3}) ?n\.(?=$| ?[-/])/gu, ' AD'],
];

/** `1279 AD.`, `AD. 134` */
const POINT_AFTER = /(?<!\p{L})(AD|BCE?|CE|AH)\.(?!\p{L})/giu;

/** A sign run together with its figures: `AD134`, `27BC`. */
const RUN_ON_BEFORE = /(?<!\p{L})(AD|BC|AH|CE|BCE)(?=\d)/giu;
const RUN_ON_AFTER = /(?<=\d)(?=(?:AD|BCE?|CE|AH)(?!\p{L}))/giu;

/** `A.D. 134-138`, `AD134`, `27 B. C.` with the signs of the era in their short form, apart from the figures. */
export function withPlainEras(text: string): string {
  return SIGNS.reduce((words, [printed, short]) => words.replace(printed, short), text)
    .replace(POINT_AFTER, '$1')
    .replace(RUN_ON_BEFORE, '$1 ')
    .replace(RUN_ON_AFTER, ' ');
}

/** Brackets of an editor round the whole, a full stop behind it, and his years behind those on the piece: `MDLXI [1561].` */
/** `1546 r.`, `1533-1584 гг.`: Slavic lists put the word for *year* behind. */
const YEAR_AFTER = /(?<=\d\d) ?(?:rr?\.|roku?|гг?\.|год[ыау]?|годов)$/u;
const STOP_AFTER = /(?<=\d|[\])?])\.$/;
const ROUND_ALL = /^\[([^[\]]*)\]$/;
const TWICE_ROUND = /^\[(\[[^[\]]*\])\]$/;
const YEARS_BEHIND = /(?<=[^\s[(]) \[((?:[^[\]]*\D)?\d{3,4}(?:\D[^[\]]*)?)\]$/;

/** A date without what an editor or a cataloguer put round it: `[[1790]]`, `[n.d.]`, `1583.`, `MDLXI [1561]`. */
export function withoutEdition(text: string): string {
  const words = text
    .replace(YEAR_AFTER, '')
    .replace(STOP_AFTER, '')
    .replace(TWICE_ROUND, '$1')
    .replace(YEARS_BEHIND, ' ($1)');
  const inner = ROUND_ALL.exec(words)?.[1] ?? '';
  return inner !== '' && !/\d/.test(inner) ? inner.trim() : words;
}

/** Figures in brackets next to figures: `(15)91` left out on the piece, `[1]794` and `17[94]` restored by an editor. */
const BRACKETS_FIRST = /(?<![\d)\]-])[([](\d{1,3})[)\]](?=\d)/g;
const BRACKETS_LAST = /(?<!\d)(\d{1,3})[([](\d{1,3})[)\]](?!\d)/g;

/** Figures that are lost, as librarians write them (AACR2, rule 1.4F7): `17--`, `[179-]`, `[18--?]`; and lists: `18??`. */
const LOST: readonly (readonly [RegExp, string])[] = [
  [/^\[?(\d\d)(?:--|__|\.\.|\*\*)(\??)\]?$/, '$1XX$2'],
  [/^\[?(\d\d)\?\?\]?$/, '$1XX'],
  [/^(\d)\?(\d\d)$/, '$1X$2'],
  [/^(\d\d)\?(\d)$/, '$1X$2'],
  [/^\[(\d{3})-(\??)\]$/, '$1X$2'],
  [/^(\d\d)--(\??) ?(?:-|to|bis|tot) ?(\d\d)--(\??)$/i, '$1XX$2/$3XX$4'],
  [/^\[?(?<one>\d\d)-- ?(?:\/|or|oder|ou|of|o) ?(?<two>\d\d)--\]?$/i, '$<one>00-$<one>99 or $<two>00-$<two>99'],
];

/** Centuries as archaeologists list them: `C16-C18`. */
const CENTURIES = /^C(\d{1,2}) ?[-/] ?C(\d{1,2})$/;

/** `mid-to-late 12th century` */
const PART_TO_PART = /(?<=\b(?:early|mid|late))-to-(?=(?:mid|late)\b)/gi;

/** A spreadsheet's whole number: `1279.0`. */
const POINT_NOUGHT = /(?<=^-?\d{1,4})\.0$/;

/** A date whose figures are given whole: brackets round some of them taken off, lost ones marked as EDTF marks them. */
export function withWholeFigures(text: string): string {
  return LOST.reduce((words, [found, whole]) => words.replace(found, whole), text)
    .replace(PART_TO_PART, ' to ')
    .replace(CENTURIES, '$1th-$2th century')
    .replace(BRACKETS_FIRST, '$1')
    .replace(BRACKETS_LAST, (all, known: string, restored: string) =>
      known.length + restored.length === 4 ? known + restored : all,
    )
    .replace(POINT_NOUGHT, '');
}
