import { parseMoney } from '../core/money/parse-money.ts';

/** The columns that hold sums. */
export const MONEY = ['cost', 'value', 'insured'];
/** Single words that say where, from whom or how in any cabinet, and so give nobody's away. */
const COMMON = new Set(
  (
    'album auction aunt bank boxes brother cabinet damaged dealer drawer envelope exchange fair father field folder found friend ' +
    'garden grandfather house inherited library market mother office online postal private river shelf shop sleeve small stored ' +
    'study tray uncle unknown vault woods'
  ).split(' '),
);

/** A cell as a whole, where that is long enough to be told from others. A sum is no text. */
export function wholesOf(column: string, cell: string): readonly string[] {
  const value = cell.trim();
  return value.length >= 5 && !(MONEY.includes(column) && parseMoney(value).ok) ? [value] : [];
}

/** The parts of a cell that give a place or a person away as well as the whole of it does. */
export function partsOf(column: string, cell: string): readonly string[] {
  const parts = cell.split(/[,;]/).map((part) => part.trim());
  if (column === 'storage') return parts.filter((part) => part.length >= 8);
  if (column === 'find-spot') return parts.filter((part) => part.length >= 8 || /^\p{Lu}\p{L}{4,}$/u.test(part));
  if (column === 'seller') return parts.filter((part) => part.length >= 8 && part.includes(' '));
  return [];
}

/** A number of six figures or more, with the letters that belong to it, in the ways it may be parted. */
export function certificatesIn(cell: string): readonly string[] {
  return [...cell.matchAll(/[\p{L}\d]+(?:[-/. ]?[\p{L}\d]+)*/gu)].flatMap(([run]) => {
    const number = run.split(' ').filter((word) => /\d/.test(word)).join(' '); // prettier-ignore
    const plain = number.replace(/[^\p{L}\d]/gu, '');
    if ((plain.match(/\d/g) ?? []).length < 6 && !(plain.length >= 6 && /\p{L}/u.test(plain) && /\d{3}/.test(plain)))
      return [];
    if (!/^\d+$/.test(plain)) return [number, plain];
    const byThree = plain.replace(/\B(?=(?:\d{3})+$)/g, ' ');
    const byFour = plain.replace(/\d{4}(?=\d)/g, '$& ');
    // Two groups of four may be the years from and to.
    return [
      number,
      plain,
      byThree,
      byThree.replaceAll(' ', ','),
      ...(/^[12]\d{3} [12]\d{3}$/.test(byFour) ? [] : [byFour]),
    ];
  });
}

/** A note as a whole, and each of its sentences that says something by itself. */
export function sentencesOf(cell: string): readonly string[] {
  const whole = cell.trim();
  const sentences = whole.split(/(?<=[.;!?])\s+|\n/).map((one) => one.replace(/[.;!?]+$/, '').trim());
  return [...new Set([whole, ...sentences.filter((one) => one.split(/\s+/).length >= 3)])];
}

/** A figure, a name, or three words: less is what any note may say. */
export function saysMuch(value: string): boolean {
  return tells(value) && (/\d|.\p{Lu}/u.test(value) || value.split(/\s+/).length >= 3);
}

/** Without an article and the stop at its end. */
function bare(value: string): string {
  return value.toLowerCase().replace(/^(?:an?|the|my|in|at) |[.!]+$/g, '');
}

/** Whether a value can be told from others: no bare figure or day, and no single common word. */
export function tells(value: string): boolean {
  return !/^[\d\s.,/-]+$/.test(value) && !COMMON.has(bare(value));
}
