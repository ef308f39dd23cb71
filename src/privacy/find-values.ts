/** A value of `private/` that must be found in nothing published, in small letters. */
export type PrivateValue = {
  readonly value: string;
  readonly from: string;
  readonly column: string;
  /** The line of the table, counted from 1. */
  readonly line: number;
  /** A single name within a longer value: looked for in the keeper's texts alone. */
  readonly isName?: true;
};

/** Private values ready to be looked for all at once, however many they are. */
export type PrivateSearch = {
  readonly values: readonly PrivateValue[];
  /**
   * By the digest of the only word of a value, or of the two words next to each other that the fewest values have: single words,
   * such as the number of a drawer, are in every text.
   */
  readonly byDigest: ReadonlyMap<number, readonly ValueAt[]>;
  /** Which digests are among them, a bit each by their last bits: a text has thousands of words, and hardly one is looked for. */
  readonly likely: Int32Array;
  readonly wordless: readonly PrivateValue[];
};

/** A value, and how many signs of it are before the words it is looked for by. */
type ValueAt = { readonly found: PrivateValue; readonly before: number };

export type FoundValue = PrivateValue & { readonly at: number };

/** Makes values ready for `privateIn`. */
export function searchFor(values: readonly PrivateValue[]): PrivateSearch {
  const counts = new Map<number, number>();
  const keys = values.map(({ value }) => keysOf(value));
  for (const some of keys) for (const { digest } of some) counts.set(digest, (counts.get(digest) ?? 0) + 1);
  const byDigest = new Map<number, ValueAt[]>();
  const likely = new Int32Array(LIKELY);
  const wordless: PrivateValue[] = [];
  for (const [index, found] of values.entries()) {
    let rarest: Key | null = null;
    let fewest = Infinity;
    for (const one of keys[index] ?? []) {
      const many = counts.get(one.digest) ?? 0;
      if (many >= fewest) continue;
      rarest = one;
      fewest = many;
    }
    if (rarest === null) {
      wordless.push(found);
      continue;
    }
    const entry = { found, before: rarest.before };
    const others = byDigest.get(rarest.digest);
    if (others === undefined) byDigest.set(rarest.digest, [entry]);
    else others.push(entry);
    const place = placeOf(rarest.digest);
    likely[place] = (likely[place] ?? 0) | (1 << rarest.digest);
  }
  return { values, byDigest, likely, wordless };
}

/** The digest of a word or of two, and how many signs of the value are before them. */
type Key = { readonly digest: number; readonly before: number };

/** What a value can be looked for by. */
function keysOf(value: string): readonly Key[] {
  const words: Key[] = [];
  for (let at = 0; at < value.length; at += 1) {
    const before = at;
    let digest = 0;
    for (; OF_WORD[value.charCodeAt(at)] === 1; at += 1) digest = nextDigest(digest, value.charCodeAt(at));
    if (at > before) words.push({ digest, before });
  }
  if (words.length < 2) return words;
  return words.slice(1).map(({ digest }, index) => {
    const { digest: first, before } = words[index] as Key;
    return { digest: ofBoth(first, digest), before };
  });
}

/** A power of two: so many times 32 bits, few enough to stay at hand. */
const LIKELY = 1 << 14;

function placeOf(digest: number): number {
  return (digest >>> 5) & (LIKELY - 1);
}

function isLikely(likely: Int32Array, digest: number): boolean {
  return (((likely[placeOf(digest)] ?? 0) >>> digest) & 1) === 1;
}

/** The digest of a word with one more letter. */
function nextDigest(digest: number, code: number): number {
  return (Math.imul(digest, 31) + code) | 0;
}

/** The digest of two words next to each other. */
function ofBoth(first: number, second: number): number {
  return (Math.imul(first, 0x9e3779b1) ^ second) | 0;
}

/** Whether a code unit is of a word, as `whereStands` has it: a letter or a figure. */
const OF_WORD = Uint8Array.from({ length: 1 << 16 }, (_, code) =>
  /[\p{L}\p{N}]/u.test(String.fromCharCode(code)) ? 1 : 0,
);

/** Where words of a text stand whose digests are likely to be looked for: the place and the digest of each in turn. */
function likelyWords(text: string, likely: Int32Array): readonly number[] {
  const found: number[] = [];
  let [fromBefore, before] = [-1, 0];
  for (let at = 0; at < text.length; at += 1) {
    const from = at;
    let digest = 0;
    for (let code = text.charCodeAt(at); OF_WORD[code] === 1; code = at < text.length ? text.charCodeAt(at) : 0) {
      digest = nextDigest(digest, code);
      at += 1;
    }
    if (at === from) continue;
    const both = ofBoth(before, digest);
    if (isLikely(likely, digest)) found.push(from, digest);
    if (fromBefore !== -1 && isLikely(likely, both)) found.push(fromBefore, both);
    fromBefore = from;
    before = digest;
  }
  return found;
}

/**
 * The values that are in a text of small letters, each with its first place there: the same as `whereStands` says of each, at
 * the cost of reading the text once.
 */
export function privateIn(small: string, { byDigest, likely, wordless }: PrivateSearch): readonly FoundValue[] {
  const first = new Map<string, FoundValue>();
  const words = byDigest.size > 0 ? likelyWords(small, likely) : [];
  for (let next = 0; next < words.length; next += 2)
    for (const { found, before } of byDigest.get(words[next + 1] ?? 0) ?? []) {
      const at = (words[next] ?? 0) - before;
      if (!small.startsWith(found.value, at) || first.has(found.value)) continue;
      const from = Math.max(0, at - 1);
      const around = small.slice(from, at + found.value.length + 2);
      if (whereStands(around, found.value) === at - from) first.set(found.value, { ...found, at });
    }
  for (const found of wordless) {
    const at = whereStands(small, found.value);
    if (at !== -1) first.set(found.value, { ...found, at });
  }
  return [...first.values()];
}

/** Where a value is in a text of small letters, as itself and not within a longer word or number; -1 when it is not. */
export function whereStands(text: string, value: string): number {
  for (let at = text.indexOf(value); at !== -1; at = text.indexOf(value, at + 1)) {
    const before = text[at - 1] ?? ' ';
    const after = text.slice(at + value.length, at + value.length + 2);
    const within = /^[\p{L}\p{N}]/u.test(value) && /[\p{L}\p{N}]/u.test(before);
    const goesOn = /[\p{L}\p{N}]$/u.test(value) && /^(?:[\p{L}\p{N}]|[.,]\d)/u.test(after);
    if (!within && !goesOn) return at;
  }
  return -1;
}
