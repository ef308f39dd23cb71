const SPELLED_OUT: Readonly<Record<string, string>> = {
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ð: 'th',
  þ: 'th',
  ß: 'ss',
  ł: 'l',
  ı: 'i',
};

/** Text as it is compared: small letters without accents, Æ as ae, Þ and Ð as th. Other scripts stay as they are. */
export function fold(text: string): string {
  return text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[æœøðþßłı]/g, (letter) => SPELLED_OUT[letter] ?? letter);
}

/** The words of a folded text. A number of a book such as 70.16 is one. */
export function partsOf(folded: string): readonly string[] {
  return folded.match(/\d+(?:\.\d+)+\p{L}?|[\p{L}\p{N}]+/gu) ?? [];
}

/** The words of a text, folded, each once, in the order they come. */
export function wordsOf(text: string): readonly string[] {
  return [...new Set(partsOf(fold(text)))];
}

/** Whether a date, a weight or a size may be in what is asked: each has a figure in it, or names a century. */
export function mayMeasure(text: string): boolean {
  return /\d|century|centuries/i.test(text);
}
