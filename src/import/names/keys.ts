import type { ListKind } from '../../catalogue/write/write-piece.ts';
import { booksAlike } from './book-keys.ts';
import type { Label } from './labels.ts';
import type { KnownName, Likeness } from './name.ts';
import { plainRulerKey, rulerKey, spelledAlike } from './ruler-key.ts';

/**
 * What distinguishes the names of a list. Nothing is one for being a letter, a numeral or a word apart: `Nishapur` and `Bishapur`,
 * `v.I` and `v.II`, and a ruler's name in two languages (`Friedrich II`, `Frederick II`) are two until somebody says otherwise.
 */
export function likenessOf(kind: ListKind, labels: readonly Label[], known: readonly KnownName[]): Likeness {
  // Names are compared with all others, so each is put in plain letters once.
  const plain = remembered(spelledAlike);
  if (kind === 'rulers') {
    const [same, inEnglish] = [remembered(plainRulerKey), remembered(rulerKey)];
    return {
      same,
      isNear: (one, other) =>
        same(one) !== same(other) &&
        (inEnglish(one) === inEnglish(other) ||
          isLetterApart(plain(one), plain(other)) ||
          isShortened(one, other) ||
          isShortened(other, one) ||
          isNumeralApart(same(one), same(other)) ||
          inEnglish(withoutBrackets(one)) === inEnglish(withoutBrackets(other))),
    };
  }
  if (kind === 'works') return booksAlike([...labels.map(({ name }) => name), ...known.flatMap(({ names }) => names)]);
  if (kind === 'denominations')
    return {
      same: plain,
      isNear: (one, other) =>
        plain(one) !== plain(other) && (isLetterApart(plain(one), plain(other)) || counted(one) === counted(other)),
    };
  return { same: plain, isNear: (one, other) => isLetterApart(plain(one), plain(other)) };
}

/** A slip of the pen, as it may be: one letter between two names of six letters and more, in which the same figures stand. */
function isLetterApart(a: string, b: string): boolean {
  const [short, long] = [Math.min(a.length, b.length), Math.max(a.length, b.length)];
  if (a === b || short < 6 || long - short > 1) return false;
  let [front, back] = [0, 0];
  while (front < short && a[front] === b[front]) front += 1;
  while (back < short - front && a[a.length - 1 - back] === b[b.length - 1 - back]) back += 1;
  if (front + back < long - 1) return false;
  return a.replace(/\D/g, '') === b.replace(/\D/g, '') && !NUMERAL.test(a) && !NUMERAL.test(b);
}

const NUMERAL = / [ivxl]+$/;

/** `Vitt. Em. II` may be `Vittorio Emanuele II`: each word the same, or the beginning of the other's and a point. */
function isShortened(short: string, long: string): boolean {
  const [shorts, longs] = [short, long].map((name) => name.replace(/\.(?=\p{L})/gu, '. ').split(/\s+/));
  if (shorts === undefined || shorts.length !== longs?.length || shorts.length < 2 || !short.includes('.'))
    return false;
  return shorts.every((word, at) => {
    const [one, other] = [spelledAlike(word), spelledAlike(longs[at] ?? '')];
    return one === other || (word.endsWith('.') && one !== '' && other.length > one.length && other.startsWith(one));
  });
}

/** `Constantine` may be `Constantine I`: one has a numeral behind it and the other has none. */
function isNumeralApart(one: string, other: string): boolean {
  return [[one, other], [other, one]].some(([a = '', b = '']) => b.startsWith(`${a} `) && /^\d{1,2}$/.test(b.slice(a.length + 1)));
} // prettier-ignore

/** Words for one and a half, and a number in words, as figures: `1/2 penny`, `half-penny` and `halfpenny` have one key. */
function counted(name: string): string {
  const figures = name
    .toLowerCase()
    .replace('½', '1/2')
    .replace(/^(?:half(?:[ -]?an?)?|demi|mezzo|mezza|medio|media|halve|halber|halbe)[ -]?/, '1/2')
    .replace(/^(?:one|un|une|uno|una|ein|eine|een) /, '1');
  return figures.replace(/[^\p{L}\d/]+/gu, '').replace(/^1(?![\d/])/, '');
}

/** `Octavian (Augustus)` may be the `Octavian` of other rows. */
function withoutBrackets(name: string): string {
  return name.replace(/\s*[([][^()[\]]*[)\]]$/, '');
}

function remembered(keyOf: (name: string) => string): (name: string) => string {
  const keys = new Map<string, string>();
  return (name) => {
    const known = keys.get(name) ?? keyOf(name);
    keys.set(name, known);
    return known;
  };
}
