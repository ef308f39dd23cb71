import type { Reference, Relation } from './reference.ts';

const RELATIONS: readonly Relation[] = ['is', 'var.', 'cf.', 'unlisted'];
const ROMAN: Readonly<Record<string, number>> = { I: 1, V: 5, X: 10 };

/** The value of a Roman numeral up to the thirties, as volumes are numbered; else null. */
function volume(word: string): number | null {
  if (!/^(?=.)X{0,3}(?:IX|IV|V?I{0,3})$/u.test(word)) return null;
  const values = Array.from(word, (letter) => ROMAN[letter] ?? 0);
  return values.reduce((sum, value, i) => sum + (value < (values[i + 1] ?? 0) ? -value : value), 0);
}

/** The runs of figures and of letters in a number; a Roman numeral that opens it is a volume. */
function runs(number: string): readonly (bigint | string)[] {
  const words = number.match(/\d+|\p{L}+/gu) ?? [];
  return words.map((word, i) => {
    if (/^\d/u.test(word)) return BigInt(word);
    const roman = i === 0 ? volume(word) : null;
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
  const [first, second] = [runs(one), runs(other)];
  for (let i = 0; i < Math.max(first.length, second.length); i += 1) {
    const order = compareRuns(first[i], second[i]);
    if (order !== 0) return order;
  }
  return compare(one, other);
}

/** Work by work, then in the order of the book; on the same number, the piece that is it before those near it. */
export function compareReferences(one: Omit<Reference, 'text'>, other: Omit<Reference, 'text'>): number {
  return (
    compare(one.work, other.work) ||
    Number(one.number === '') - Number(other.number === '') ||
    compareNumbers(one.number, other.number) ||
    compareNumbers(one.to ?? '', other.to ?? '') ||
    RELATIONS.indexOf(one.relation) - RELATIONS.indexOf(other.relation)
  );
}
