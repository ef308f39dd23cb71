/** What stands beside a year in one cell: `1931 D`, `1780 (restrike)`, `1872 (die 33)`. */
export type BesideYear =
  /** A mint's letter, or the letters of its master, as they stand on the piece beside the year. */
  | { readonly kind: 'letter'; readonly year: string; readonly asStands: string }
  /** Struck again in later years with the old date on it. */
  | { readonly kind: 'restrike'; readonly year: string; readonly word: string }
  | { readonly kind: 'more'; readonly year: string; readonly text: string };

const YEAR = '(\\d{4}(?:[-–/]\\d{1,4})?)';
const LETTERS = '\\p{Lu}{1,3}\\*?|\\p{Lu}\\.(?:\\p{Lu}\\.){0,3}|\\p{Lu}-\\p{Lu}';
const WITH_LETTER = new RegExp(`^${YEAR}(?: ?[-–] ?| ?)(?:\\(?(${LETTERS})\\)?)$`, 'u');
const IN_BRACKETS = /^(\d{4}(?:[-–/]\d{1,4})?),? ?[([]([^)\]]*\p{L}[^)\]]*)[)\]]$/u;
const AFTER_COMMA = /^(\d{4}(?:[-–/]\d{1,4})?)[,;] ?(\p{L}{3}.*)$/u;
const RESTRIKES = `(?:(?:modern|later|official|mint) )?re-?strikes?, neupr[äa]gung, nachpr[äa]gung, np\\.?, refrappe, riconio,
  reacuñaci[oó]n, naslag`;
const RESTRIKE = new RegExp(`^(?:${RESTRIKES.split(/,\s*/).join('|')})$`, 'i');

/** Letters that name an era or a calendar, and no mint. */
const ERAS = new Set('AD BC CE BCE AH AM SE VS CS BE RS ME EE NS OS SH JE FE KE BS AS SS'.split(' '));

/** The parts of such a cell; null for any other. A bracket with a year in it is no word beside one. */
export function besideYear(text: string): BesideYear | null {
  const plain = text.replace(/\s+/g, ' ').trim();
  const [, bracketed, inside] = IN_BRACKETS.exec(plain) ?? AFTER_COMMA.exec(plain) ?? [];
  if (bracketed !== undefined && inside !== undefined && RESTRIKE.test(inside))
    return { kind: 'restrike', year: bracketed, word: inside };
  const [, year, letters] = WITH_LETTER.exec(plain) ?? [];
  // In German lists NP is a Neuprägung: struck again.
  if (year !== undefined && letters === 'NP') return { kind: 'restrike', year, word: letters };
  if (year !== undefined && letters !== undefined && !ERAS.has(letters))
    return { kind: 'letter', year, asStands: plain };
  if (bracketed === undefined || inside === undefined || /\d{3}/.test(inside) || ERAS.has(inside)) return null;
  return { kind: 'more', year: bracketed, text: inside };
}
