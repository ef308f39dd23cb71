/** No-break space. */
const TIE = '\u00a0';

/** A name and the numeral of its bearer; a count and its unit; a short form of the trade and what it belongs to. */
const TOGETHER = [
  /(?<=\p{Lu}\p{L}+) (?=[IVX]{1,5}(?![\p{L}\p{N}-]))/gu,
  /(?<=\d) (?=(?:mm|g|gr|dwt|kg)(?![\p{L}\p{N}]))/gu,
  / (?=± ?\d)|(?<=±) (?=\d)/gu,
  /(?<=[\d¼½¾⅛⅜⅝⅞]) (?=[×x] ?\d)|(?<=\d ?[×x]) (?=\d)|(?<=[\d¼½¾⅛⅜⅝⅞]) (?=(?:cm|in)\))/gu,
  /(?<=\b[Cc]lass|\b[Gg]ood|\b[Aa]bout|\b[Nn]ear) (?=\d|(?!A[DH]|BC)\p{Lu}{1,3}(?!\p{L}))/gu,
  /(?<=(?:^|[\s(])(?:c\.|AD|AH|no\.|St)) (?=[\p{Lu}\d])/gu,
  /(?<=(?<!\d)\d{1,2}) (?=(?:January|February|March|April|May|June|July|August|September|October|November|December)\b)/gu,
] as const;

/** The mark of a genitive or of what is left out, as a keyboard has it: `king's`, `RIC's`, `Edward I's`, `won't`. The sign of a legend, `R'`, is another. */
const APOSTROPHE = /(?<=\p{Ll})'(?=(?:s|t|d|m|ll|re|ve)(?!\p{L}))|(?<=\p{Lu}{2}|(?<!\p{L})[IVX])'(?=s(?!\p{L}))/gu;

/** The same of several: `few kings' coins`; unless single marks may quote something in the text. */
const OF_SEVERAL = /(?<=\p{Ll}s)'(?= \p{Ll})/gu;
const QUOTES = /(?:^|[\s(])'/u;

/** A text with the apostrophes of a book. */
export function withApostrophes(text: string): string {
  const all = text.replace(APOSTROPHE, '’');
  return QUOTES.test(all) ? all : all.replace(OF_SEVERAL, '’');
}

/** A text of page numbers with the dashes of a book: `281–287` for `281-287`. Not for dates, in which hyphens separate a year and its month. */
export function withDashes(text: string): string {
  return text.replace(/(?<=\d)-(?=\d)/g, '–');
}

/** After the dash or stroke of a range of figures: `1280–81`, `928/39`. A line may end there, unless a joiner of no width forbids it. */
const IN_RANGE = /(?<=\d[–/])(?=\d)/gu;
/** After the hyphen of a short word: `arm-ring`, `al-Shash`. */
const IN_WORD = /(?<=(?<![\p{L}\p{N}-])\p{L}\p{Ll}{0,4}-)(?=\p{L}{1,5}(?![\p{L}\p{N}-]))/gu;
const JOINER = '\u2060';

/**
 * A text in which a line does not end between a king's name and his numeral, within a range of figures or within a short word, with the apostrophes
 * of a book. For what is shown only, never for files of data.
 */
export function tied(text: string): string {
  return withApostrophes(TOGETHER.reduce((whole, gap) => whole.replace(gap, TIE), text))
    .replace(IN_RANGE, JOINER)
    .replace(IN_WORD, JOINER);
}
