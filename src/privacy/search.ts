import type { PrivateValue } from './private-values.ts';

/** Private values ready to be looked for all at once, however many they are. */
export type PrivateSearch = {
  /** By the word of a value that the fewest of them have, and where it stands in the value. */
  readonly byWord: ReadonlyMap<string, readonly { readonly found: PrivateValue; readonly before: number }[]>;
  readonly wordless: readonly PrivateValue[];
};

export type FoundValue = PrivateValue & { readonly at: number };

/** Letters and figures. Said by what they are not, because a text of a site is looked through several times faster so. */
const WORD = /[^\0-/:-@[-`{-\u00bf\u00d7\u00f7\u2000-\u2bff\u2e00-\u2e7f\u3000-\u303f\ufe30-\ufe6f\ud800-\udfff]+/g;

/** Makes values ready for `privateIn`. */
export function searchFor(values: readonly PrivateValue[]): PrivateSearch {
  const counts = new Map<string, number>();
  const words = values.map(({ value }) => [...value.matchAll(WORD)]);
  for (const [word] of words.flat()) counts.set(word, (counts.get(word) ?? 0) + 1);
  const byWord = new Map<string, { found: PrivateValue; before: number }[]>();
  const wordless: PrivateValue[] = [];
  for (const [index, found] of values.entries()) {
    const own = words[index] ?? [];
    const rarest = own.toSorted((a, b) => (counts.get(a[0]) ?? 0) - (counts.get(b[0]) ?? 0))[0];
    if (rarest === undefined) wordless.push(found);
    else {
      const held = byWord.get(rarest[0]);
      const entry = { found, before: rarest.index };
      if (held === undefined) byWord.set(rarest[0], [entry]);
      else held.push(entry);
    }
  }
  return { byWord, wordless };
}

/**
 * The values that stand in a text of small letters, each with its first place there: the same as `whereStands` says of each, at
 * the cost of reading the text once.
 */
export function privateIn(small: string, { byWord, wordless }: PrivateSearch): readonly FoundValue[] {
  const first = new Map<string, FoundValue>();
  if (byWord.size > 0)
    for (const match of small.matchAll(WORD))
      for (const { found, before } of byWord.get(match[0]) ?? []) {
        const at = match.index - before;
        if (first.has(found.value) || !small.startsWith(found.value, at)) continue;
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

/** Where a value stands in a text of small letters, as itself and not within a longer word or number; -1 when it does not. */
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
