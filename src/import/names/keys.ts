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
    const [words, bare] = [remembered(wordsOf), remembered((name) => withoutNumeral(same(name)))];
    const unbracketed = remembered((name) => inEnglish(withoutBrackets(name)));
    return {
      same,
      isNear: (one, other) =>
        same(one) !== same(other) &&
        (inEnglish(one) === inEnglish(other) ||
          isLetterApart(plain(one), plain(other)) ||
          isShortened(words(one), words(other)) ||
          isShortened(words(other), words(one)) ||
          bare(one) === same(other) ||
          bare(other) === same(one) ||
          unbracketed(one) === unbracketed(other)),
    };
  }
  if (kind === 'works') return booksAlike([...labels.map(({ name }) => name), ...known.flatMap(({ names }) => names)]);
  if (kind === 'denominations') {
    const count = remembered(counted);
    return {
      same: plain,
      isNear: (one, other) =>
        plain(one) !== plain(other) && (isLetterApart(plain(one), plain(other)) || count(one) === count(other)),
    };
  }
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

type Words = {
  readonly isShort: boolean;
  readonly words: readonly { readonly plain: string; readonly isShort: boolean }[];
};

function wordsOf(name: string): Words {
  const words = name
    .replace(/\.(?=\p{L})/gu, '. ')
    .split(/\s+/)
    .map((word) => ({ plain: spelledAlike(word), isShort: word.endsWith('.') && /\p{L}/u.test(word) }));
  return { isShort: words.length > 1 && words.some(({ isShort }) => isShort), words };
}

/** `Vitt. Em. II` may be `Vittorio Emanuele II`: each word the same, or the beginning of the other's and a point. */
function isShortened(short: Words, long: Words): boolean {
  if (!short.isShort || short.words.length !== long.words.length) return false;
  return short.words.every(({ plain, isShort }, at) => {
    const other = long.words[at]?.plain ?? '';
    return plain === other || (isShort && other.length > plain.length && other.startsWith(plain));
  });
}

/** Of a key with a numeral behind it what is before that; null for another. `Constantine` may be `Constantine I`. */
function withoutNumeral(key: string): string | null {
  return /^(.+) \d{1,2}$/.exec(key)?.[1] ?? null;
}

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

function remembered<Key>(keyOf: (name: string) => Key): (name: string) => Key {
  const keys = new Map<string, { readonly key: Key }>();
  return (name) => {
    let known = keys.get(name);
    if (known === undefined) keys.set(name, (known = { key: keyOf(name) }));
    return known.key;
  };
}
