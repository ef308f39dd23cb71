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
          inEnglish(withoutBrackets(one)) === inEnglish(withoutBrackets(other))),
    };
  }
  if (kind === 'works') return booksAlike([...labels.map(({ name }) => name), ...known.flatMap(({ names }) => names)]);
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
