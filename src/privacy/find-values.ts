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
  /** By the word of a value that the fewest of them have, and where it is in the value. */
  readonly byWord: ReadonlyMap<string, readonly { readonly found: PrivateValue; readonly before: number }[]>;
  /** Which digests of words are among them: a text has thousands of words, and hardly one of them is looked for. */
  readonly digests: Uint8Array;
  readonly wordless: readonly PrivateValue[];
};

export type FoundValue = PrivateValue & { readonly at: number };

/** Letters and figures. Said by what they are not, because a text of a site is looked through several times faster so. */
const WORD = /[^\0-/:-@[-`{-\u00bf\u00d7\u00f7\u2000-\u2bff\u2e00-\u2e7f\u3000-\u303f\ufe30-\ufe6f\ud800-\udfff]+/g;

/** Makes values ready for `privateIn`. */
export function searchFor(values: readonly PrivateValue[]): PrivateSearch {
  const counts = new Map<string, number>();
  const words = values.map(({ value }) => wordsOf(value));
  for (const some of words) for (const { word } of some) counts.set(word, (counts.get(word) ?? 0) + 1);
  const byWord = new Map<string, { found: PrivateValue; before: number }[]>();
  const wordless: PrivateValue[] = [];
  for (const [index, found] of values.entries()) {
    let rarest: Word | null = null;
    let fewest = Infinity;
    for (const one of words[index] ?? []) {
      const many = counts.get(one.word) ?? 0;
      if (many >= fewest) continue;
      rarest = one;
      fewest = many;
    }
    if (rarest === null) wordless.push(found);
    else {
      const held = byWord.get(rarest.word);
      const entry = { found, before: rarest.before };
      if (held === undefined) byWord.set(rarest.word, [entry]);
      else held.push(entry);
    }
  }
  const digests = new Uint8Array(DIGESTS);
  for (const word of byWord.keys()) {
    let digest = 0;
    for (let at = 0; at < word.length; at += 1) digest = nextDigest(digest, word.charCodeAt(at));
    digests[digest & (DIGESTS - 1)] = 1;
  }
  return { byWord, digests, wordless };
}

/** A word of a value, and how many signs of the value are before it. */
type Word = { readonly word: string; readonly before: number };

function wordsOf(value: string): readonly Word[] {
  const words: Word[] = [];
  for (let at = 0; at < value.length; at += 1) {
    const before = at;
    while (OF_WORD[value.charCodeAt(at)] === 1) at += 1;
    if (at > before) words.push({ word: value.slice(before, at), before });
  }
  return words;
}

/** A power of two. */
const DIGESTS = 1 << 16;

/** The digest of a word with one more letter. */
function nextDigest(digest: number, code: number): number {
  return (Math.imul(digest, 31) + code) >>> 0;
}

/** Whether a code unit is of a word, as `WORD` has it. */
const OF_WORD = Uint8Array.from({ length: 1 << 16 }, (_, code) =>
  String.fromCharCode(code).search(WORD) === 0 ? 1 : 0,
);

/** Where the words of a text stand whose digests are among these: begin and end of each in turn. */
function likelyWords(text: string, digests: Uint8Array): readonly number[] {
  const found: number[] = [];
  let from = -1;
  let digest = 0;
  for (let at = 0; at <= text.length; at += 1) {
    const code = at < text.length ? text.charCodeAt(at) : 0;
    if (OF_WORD[code] === 1) {
      if (from === -1) {
        from = at;
        digest = 0;
      }
      digest = nextDigest(digest, code);
    } else if (from !== -1) {
      if (digests[digest & (DIGESTS - 1)] === 1) found.push(from, at);
      from = -1;
    }
  }
  return found;
}

/**
 * The values that are in a text of small letters, each with its first place there: the same as `whereStands` says of each, at
 * the cost of reading the text once.
 */
export function privateIn(small: string, { byWord, digests, wordless }: PrivateSearch): readonly FoundValue[] {
  const first = new Map<string, FoundValue>();
  const likely = byWord.size > 0 ? likelyWords(small, digests) : [];
  for (let next = 0; next < likely.length; next += 2) {
    const index = likely[next] ?? 0;
    const values = byWord.get(small.slice(index, likely[next + 1]));
    if (values !== undefined)
      for (const { found, before } of values) {
        const at = index - before;
        if (first.has(found.value) || !small.startsWith(found.value, at)) continue;
        const from = Math.max(0, at - 1);
        const around = small.slice(from, at + found.value.length + 2);
        if (whereStands(around, found.value) === at - from) first.set(found.value, { ...found, at });
      }
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
