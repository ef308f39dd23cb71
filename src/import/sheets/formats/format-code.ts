/** A piece of a number format: a sign that stands as it is, a place for a digit, or a part of a date. */
export type FormatToken =
  | { readonly kind: 'literal'; readonly text: string }
  | { readonly kind: 'digit'; readonly sign: '0' | '#' | '?' }
  | { readonly kind: 'point' }
  | { readonly kind: 'comma' }
  | { readonly kind: 'percent' }
  | { readonly kind: 'slash' }
  | { readonly kind: 'power'; readonly text: string }
  | { readonly kind: 'general' }
  | { readonly kind: 'text' }
  /** `y`, `m`, `d`, `h`, `s` so many times, `[h]`, `AM/PM`, and fractions of a second (`f`). */
  | { readonly kind: 'date'; readonly letter: string; readonly count: number; readonly isElapsed: boolean };

/** One of the up to four sections of a format code. */
export type FormatSection = {
  readonly tokens: readonly FormatToken[];
  readonly isDate: boolean;
  /** The currency sign of `[$£-809]` and the locale it names, in hexadecimal; null where there is none. */
  readonly currency: { readonly sign: string; readonly locale: string } | null;
  /** The locale of `[$-407]`, for the names of months. */
  readonly locale: string | null;
  readonly condition: { readonly sign: string; readonly than: number } | null;
};

/** A format code taken apart (ECMA-376 part 1, 18.8.31): sections for positive, negative, zero and text. */
export function parseFormatCode(code: string): readonly FormatSection[] {
  return splitSections(code).map(parseSection);
}

/** The section of a code that shows this number, and whether the section itself says that it is negative. */
export function sectionFor(
  sections: readonly FormatSection[],
  number: number,
): { readonly section: FormatSection; readonly hasOwnSign: boolean } | null {
  const [first, second, third] = sections;
  if (first === undefined) return null;
  if (first.condition !== null || second?.condition) {
    const met = sections.slice(0, 3).find(({ condition }) => condition !== null && isMet(condition, number));
    const other = sections.slice(0, 3).find(({ condition }) => condition === null);
    const section = met ?? other ?? first;
    return { section, hasOwnSign: isOfNegatives(section.condition) };
  }
  if (number < 0 && second !== undefined) return { section: second, hasOwnSign: true };
  if (number === 0 && third !== undefined) return { section: third, hasOwnSign: false };
  return { section: first, hasOwnSign: false };
}

/** A section for numbers below nought alone writes their sign itself, or leaves it out. */
function isOfNegatives(condition: FormatSection['condition']): boolean {
  return condition !== null && condition.sign.startsWith('<') && condition.than <= 0;
}

function isMet({ sign, than }: { readonly sign: string; readonly than: number }, number: number): boolean {
  if (sign === '<') return number < than;
  if (sign === '<=') return number <= than;
  if (sign === '>') return number > than;
  if (sign === '>=') return number >= than;
  return sign === '=' ? number === than : number !== than;
}

/** Sections part at semicolons that are in no quotes, brackets or after a backslash; four at the most. */
function splitSections(code: string): readonly string[] {
  const sections = [''];
  for (const [part] of code.matchAll(/"[^"]*"?|[\\_*].|\[[^\]]*\]?|./gsu)) {
    if (part === ';') sections.push('');
    else sections.push(`${sections.pop() ?? ''}${part}`);
  }
  return sections.slice(0, 4);
}

const PARTS = {
  quoted: '"(?<quoted>[^"]*)"?',
  escaped: String.raw`\\(?<escaped>.)`,
  bracket: String.raw`\[(?<bracket>[^\]]*)\]`,
  blank: '_(?<blank>.)',
  fill: String.raw`\*(?<fill>.)`,
  general: '(?<general>general)',
  noon: String.raw`(?<noon>am\/pm|a\/p)`,
  power: '(?<power>e[+-])',
  date: '(?<date>y+|m+|d+|h+|s+|b+|e+|g+)',
  digit: '(?<digit>[0#?])',
  other: '(?<other>.)',
};
const PART = new RegExp(Object.values(PARTS).join('|'), 'gisu');

function parseSection(text: string): FormatSection {
  const tokens: FormatToken[] = [];
  let currency: FormatSection['currency'] = null;
  let locale: string | null = null;
  let condition: FormatSection['condition'] = null;
  for (const { groups } of text.matchAll(PART)) {
    const part = groups ?? {};
    if (part['quoted'] !== undefined || part['escaped'] !== undefined) {
      tokens.push({ kind: 'literal', text: part['quoted'] ?? part['escaped'] ?? '' });
    } else if (part['bracket'] !== undefined) {
      const bracket = part['bracket'];
      const money = /^\$([^-]*)(?:-([0-9a-z-]+))?$/is.exec(bracket);
      const test = /^([<>=]+)\s*(-?[\d.]+)$/.exec(bracket);
      if (money !== null) {
        locale = money[2]?.toLowerCase() ?? locale;
        if (money[1] !== undefined && money[1] !== '') {
          currency = { sign: money[1], locale: money[2]?.toLowerCase() ?? '' };
          tokens.push({ kind: 'literal', text: money[1] });
        }
      } else if (test !== null) condition = { sign: test[1] ?? '=', than: Number(test[2]) };
      else if (/^(h+|m+|s+)$/i.test(bracket)) {
        tokens.push({ kind: 'date', letter: bracket[0]?.toLowerCase() ?? 'h', count: bracket.length, isElapsed: true });
      }
    } else if (part['blank'] !== undefined) tokens.push({ kind: 'literal', text: ' ' });
    else if (part['general'] !== undefined) tokens.push({ kind: 'general' });
    else if (part['noon'] !== undefined) {
      tokens.push({ kind: 'date', letter: 'noon', count: part['noon'].length, isElapsed: false });
    } else if (part['power'] !== undefined) tokens.push({ kind: 'power', text: part['power'] });
    else if (part['date'] !== undefined) {
      const letter = part['date'][0]?.toLowerCase() ?? '';
      tokens.push({
        kind: 'date',
        letter: letter === 'e' ? 'y' : letter,
        count: part['date'].length,
        isElapsed: false,
      });
    } else if (part['digit'] !== undefined) {
      tokens.push({ kind: 'digit', sign: part['digit'] === '0' ? '0' : part['digit'] === '#' ? '#' : '?' });
    } else if (part['other'] !== undefined) tokens.push(otherToken(part['other']));
  }
  const isDate = tokens.some(({ kind }) => kind === 'date');
  return { tokens: isDate ? withFractionsOfSeconds(tokens) : tokens, isDate, currency, locale, condition };
}

function otherToken(sign: string): FormatToken {
  if (sign === '.') return { kind: 'point' };
  if (sign === ',') return { kind: 'comma' };
  if (sign === '%') return { kind: 'percent' };
  if (sign === '/') return { kind: 'slash' };
  if (sign === '@') return { kind: 'text' };
  return { kind: 'literal', text: sign };
}

/** In a date, `.00` after seconds is a fraction of them, and any other sign of a number stands as it is. */
function withFractionsOfSeconds(tokens: readonly FormatToken[]): readonly FormatToken[] {
  const parts: FormatToken[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at];
    if (token?.kind === 'point' && tokens[at + 1]?.kind === 'digit') {
      let count = 0;
      while (tokens[at + 1 + count]?.kind === 'digit') count += 1;
      parts.push({ kind: 'date', letter: 'f', count, isElapsed: false });
      at += count;
    } else if (token !== undefined) parts.push(token);
  }
  return parts;
}
