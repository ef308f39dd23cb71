const SMALL = 'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' '); // prettier-ignore
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const VALUES: ReadonlyMap<string, number> = new Map([
  ...SMALL.map((word, index) => [word, index + 1] as const),
  ...TENS.map((word, index) => [word, (index + 2) * 10] as const),
  ['hundred', 100],
  ['thousand', 1000],
]);
const WORD = [...VALUES.keys()].join('|');
// "A hundred" is one: a multiplier without a number before it counts once.
const RUN = new RegExp(`\\b(?:a )?(?:${WORD})(?:,? (?:and )?(?:${WORD}))*\\b`, 'g');

/** The numbers spelled in English words in a text of plain letters: "twelve hundred and fifty", from ten on. */
export function spelledNumbers(
  letters: string,
): readonly { readonly at: number; readonly end: number; readonly value: number }[] {
  const found = [];
  for (const match of letters.matchAll(RUN)) {
    const value = valueOf(match[0].split(/[ ,]+/));
    if (value >= 10) found.push({ at: match.index, end: match.index + match[0].length, value });
  }
  return found;
}

function valueOf(words: readonly string[]): number {
  let [thousands, rest] = [0, 0];
  let isNext = true;
  for (const word of words) {
    const value = VALUES.get(word) ?? 0;
    if (value === 1000) [thousands, rest] = [thousands + Math.max(rest, 1) * 1000, 0];
    else if (value === 100) rest = Math.max(rest, 1) * 100;
    // "Eleven fifty" is eleven hundred and fifty, "three eighty" three hundred and eighty; "three and twenty" is not.
    else rest = isNext && rest > 0 && rest < 100 && value >= 10 ? rest * 100 + value : rest + value;
    isNext = word !== 'and';
  }
  return thousands + rest;
}
