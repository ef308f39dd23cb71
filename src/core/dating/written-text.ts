/**
 * Brings the many ways of typing one thing to one: composed letters, plain spaces and digits, hyphens for minus signs.
 * A dash is not a hyphen: `1801-05` is May 1801 in EDTF, `1801–05` five years, so a dash becomes a hyphen between spaces.
 */
export function plainText(text: string): string {
  return text
    .normalize('NFKC')
    .replace(/[\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\u00AD\uFEFF]/g, '')
    .replace(/[٠-٩]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
    .replace(/[۰-۹]/g, (digit) => String(digit.charCodeAt(0) - 0x6f0))
    .replace(/[‐‑−]/g, '-')
    .replace(/\s+/g, ' ')
    .replace(/ ?[–—‒―] ?/g, ' - ')
    .replace(/[‘’ʼʻ`´]/g, "'")
    .replace(/ {2,}/g, ' ')
    .trim();
}

/** Letters without their accents, in lower case: for finding a name however it was typed. */
export function foldedText(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0300-\u036F]/g, '')
    .replace(/['\-. ]/g, '')
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
