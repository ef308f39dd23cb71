import { asksAlone, splitRange } from './ranges.ts';
import type { Lettering, Numbering } from './ranges.ts';

/**
 * How a piece stands to the entry cited: it is a specimen of it, is like it, a variety of it, corrects it, is the very
 * coin described there, or is not in the book.
 */
export type Relation = 'is' | 'cf.' | 'var.' | 'corr.' | 'this coin' | 'unlisted';

/** A reference to one entry of one book. What is left out was not said. */
export type Reference = {
  readonly text: string;
  /** The key of the book. */
  readonly work: string;
  /** The name of the book as the text has it: `North`, `H & L`. */
  readonly named: string;
  /** The edition, where the key of the book does not say it. */
  readonly edition?: number;
  /** The volume as printed, where the key of the book does not say it: `II.1`. */
  readonly volume?: string;
  /** The number as printed there, with a heading that belongs to it: `1018`, `London 121a`, `class 3b`; it may be empty. */
  readonly number: string;
  /** The last number of a range, written out in full: `223-5` runs from `223` to `225`. */
  readonly to?: string;
  readonly relation: Relation;
  /** Whether the text doubts it: `North 1018?`. */
  readonly doubtful?: true;
  /** A class, where there is a number too. */
  readonly class?: string;
  readonly page?: string;
  readonly plate?: string;
  /** A degree of rarity that stood beside the number: `R2`. */
  readonly rarity?: string;
  /** What else was said, in words: `bust left`. */
  readonly note?: string;
  /** How the book numbers, where its file says so. */
  readonly numbers?: Numbering;
  readonly letters?: Lettering;
};

/** A book that may be cited, by its key and by the names lists use for it. */
export type CitedWork = {
  readonly id: string;
  readonly names?: readonly string[];
  /** How it numbers, where its file says so. */
  readonly numbers?: Numbering;
  readonly letters?: Lettering;
};

type Cited = Omit<Reference, 'text' | 'named'> & { readonly named?: string };

/**
 * Writes a reference, under the title given or the key of its work: `cf. North 176`, `North 1018? var.`,
 * `RIC (2nd ed.) II.1 123, p. 45, pl. 5, 3 (this coin)`, `RIC – (cf. 123)`.
 */
export function formatReference(reference: Cited, title: string = reference.work): string {
  const { number, relation, to, edition, volume } = reference;
  const last = to === undefined ? number : `${number}–${to}`;
  const literal =
    to === undefined && !isPlainIn(reference) && [title, reference.work].every((named) => asksAlone(number, named));
  const printed = literal ? `no. ${last}` : last;
  const cited = [
    title,
    edition === undefined ? '' : `(${ordinal(edition)} ed.)`,
    volume === undefined ? '' : /^\d/u.test(volume) ? `vol. ${volume}` : volume,
    relation === 'unlisted' && last !== '' ? `– (cf. ${printed})` : printed,
  ];
  const beside = [
    reference.class === undefined ? '' : `, class ${reference.class}`,
    reference.page === undefined ? '' : `, p. ${reference.page}`,
    reference.plate === undefined ? '' : `, pl. ${reference.plate}`,
  ];
  const after = [
    relation === 'var.' || relation === 'corr.' || (relation === 'unlisted' && last === '') ? ` ${relation}` : '',
    reference.doubtful === true ? ' (?)' : '',
    ...beside,
    reference.rarity === undefined ? '' : ` (${reference.rarity})`,
    reference.note === undefined ? '' : ` (${reference.note})`,
    relation === 'this coin' ? ' (this coin)' : '',
  ];
  const entry = cited.filter((part) => part !== '').join(' ') + after.join('');
  return relation === 'cf.' ? `cf. ${entry}` : entry;
}

/** Whether its own book reads a number with a stroke or a hyphen in it as one. */
function isPlainIn({ number, numbers }: Cited): boolean {
  const byStroke = numbers === 'with-strokes' && number.includes('/') && splitRange(number).to === undefined;
  return byStroke || numbers === 'with-hyphens';
}

function ordinal(edition: number): string {
  return `${String(edition)}${['th', 'st', 'nd', 'rd'][edition] ?? 'th'}`;
}

const RELATIONS: readonly Relation[] = ['this coin', 'is', 'corr.', 'var.', 'cf.', 'unlisted'];
const ROMAN: Readonly<Record<string, number>> = { I: 1, V: 5, X: 10 };

/** The value of a Roman numeral up to the thirties, as volumes are numbered; else null. */
export function volumeNumber(word: string): number | null {
  if (!/^(?=.)X{0,3}(?:IX|IV|V?I{0,3})$/u.test(word)) return null;
  const values = Array.from(word, (letter) => ROMAN[letter] ?? 0);
  return values.reduce((sum, value, i) => sum + (value < (values[i + 1] ?? 0) ? -value : value), 0);
}

/** One writing of a volume for comparing: `II.1`, `II/1` and `2.1` are `2.1`. */
export function plainVolume(volume: string): string {
  const words = volume.match(/\d+|\p{L}+/gu) ?? [];
  return words.map((word) => String(volumeNumber(word.toUpperCase()) ?? word.toLowerCase())).join('.');
}

/** The runs of figures and of letters in a number; a Roman numeral that opens it is a volume. */
function runs(number: string): readonly (bigint | string)[] {
  const words = number.match(/\d+|\p{L}+/gu) ?? [];
  return words.map((word, i) => {
    if (/^\d/u.test(word)) return BigInt(word);
    const roman = i === 0 ? volumeNumber(word) : null;
    return roman === null ? word.toLowerCase() : BigInt(roman);
  });
}

function compare<T extends bigint | string | number>(one: T, other: T): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

function compareRuns(one: bigint | string | undefined, other: bigint | string | undefined): number {
  if (one === undefined || other === undefined) return Number(one !== undefined) - Number(other !== undefined);
  if (typeof one === 'bigint') return typeof other === 'bigint' ? compare(one, other) : -1;
  return typeof other === 'bigint' ? 1 : compare(one, other);
}

/** The order of the book: 2, 2a, 10; figures before letters; IV before IX. For `sort`. */
export function compareNumbers(one: string, other: string): number {
  return compareInBook(one, other) || compare(one, other);
}

function compareInBook(one: string, other: string): number {
  const [first, second] = [runs(one), runs(other)];
  for (let i = 0; i < Math.max(first.length, second.length); i += 1) {
    const order = compareRuns(first[i], second[i]);
    if (order !== 0) return order;
  }
  return 0;
}

/** Work by work, then in the order of the book; on the same number, the piece that is it before those near it. */
export function compareReferences(one: Cited, other: Cited): number {
  return (
    compare(one.work, other.work) ||
    (one.edition ?? 0) - (other.edition ?? 0) ||
    compareNumbers(one.volume ?? '', other.volume ?? '') ||
    Number(one.number === '') - Number(other.number === '') ||
    compareNumbers(one.number, other.number) ||
    compareNumbers(one.to ?? '', other.to ?? '') ||
    RELATIONS.indexOf(one.relation) - RELATIONS.indexOf(other.relation)
  );
}

/**
 * One writing of a number: no blanks, and its own points and strokes, for `10.18` is not `10/18`. Words are in small letters; a
 * letter at a figure keeps its size, for in many books `8a` and `8A` are two numbers.
 */
export function plainNumber(number: string): string {
  return number
    .replace(/(?<![\p{L}\d]|\d\s)\p{L}+(?![\p{L}\d])/gu, (word) => word.toLowerCase())
    .replace(/[‐‑–—]/gu, '-')
    .replace(/(?<=\p{L})\s+(?=\p{L})|(?<=\d)\s+(?=\d)/gu, '~')
    .replace(/\s+/gu, '');
}

/** Whether one entry of a book is another: `no`; or `maybe`, when a range, a doubt or a relation leaves it open. */
export function isEntry(stated: Cited, asked: Cited): 'yes' | 'maybe' | 'no' {
  if (stated.relation === 'unlisted' || stated.work !== asked.work || stated.number === '') return 'no';
  const volumes = [stated.volume, asked.volume].map((volume) => plainVolume(volume ?? ''));
  if (volumes[0] !== volumes[1]) return 'no';
  if (stated.edition !== undefined && asked.edition !== undefined && stated.edition !== asked.edition) return 'no';
  const inside = insideOf(stated, asked);
  if (inside === 'no') return 'no';
  const sure = stated.relation === 'is' || stated.relation === 'corr.' || stated.relation === 'this coin';
  return inside === 'yes' && sure && stated.doubtful !== true && stated.edition === asked.edition ? 'yes' : 'maybe';
}

/** Whether the numbers of one reference lie wholly (`yes`) or partly (`maybe`) in those of another. */
function insideOf(stated: Cited, asked: Cited): 'yes' | 'maybe' | 'no' {
  if (stated.to === undefined && asked.to === undefined) {
    if (plainNumber(stated.number) === plainNumber(asked.number)) return 'yes';
    if (!isOtherCase(stated, asked)) return 'no';
    const letters = stated.letters ?? asked.letters;
    return letters === undefined ? 'maybe' : letters === 'alike' ? 'yes' : 'no';
  }
  const [low, high] = [stated.number, stated.to ?? stated.number];
  const [from, to] = [asked.number, asked.to ?? asked.number];
  if (compareInBook(high, from) < 0 || compareInBook(to, low) < 0) return 'no';
  return compareInBook(low, from) >= 0 && compareInBook(high, to) <= 0 ? 'yes' : 'maybe';
}

/** Whether two numbers differ in the size of a letter alone: `8a` and `8A`. */
export function isOtherCase(one: Pick<Cited, 'number'>, other: Pick<Cited, 'number'>): boolean {
  const [first, second] = [plainNumber(one.number), plainNumber(other.number)];
  return first !== second && first.toLowerCase() === second.toLowerCase();
}
