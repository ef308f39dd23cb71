/**
 * Words a collector or a programmer would have to translate, each with what is written instead. Stories, titles and notes of a
 * keeper may use any word; labels, messages, comments and names may not.
 */
export const PLAIN_WORDS: readonly (readonly [word: RegExp, instead: string])[] = [
  [/\bamiss\b/i, 'wrong'],
  [/\bmend(?:s|ed|ing)?\b/i, 'fix, fixed'],
  [/\bquarrel/i, 'disagreement'],
  [/\breckons?\b|\breckoned\b|\b(?:a|the|way of|of) reckoning\b/i, 'count, calculate; calendar'],
  [/\bsets? aside\b|\bsetting aside\b/i, 'skipped'],
  [/\b(?:brought|bring|brings|bringing) in\b/i, 'imported, import'],
  [/\bcheapen/i, 'debased, debasement'],
  [/\bkin\b/i, 'related'],
  [/\b(?:lay|lays|laid) (?:it |them )?beside\b/i, 'compare with, put next to'],
  [/\b(?:told|tell|tells|telling) apart\b/i, 'distinguished'],
  [/\bstands? in\b|\bstood in\b/i, 'is in, appears in'],
  [/\bbeneath\b/i, 'below, under'],
  [/\bthereby\b|\bwhereof\b|\bof whom\b/, '(another sentence)'],
  [/\bparted by\b|\bis parted\b|\bare parted\b/i, 'split, separated'],
  [/\bwished for\b|\bis wished\b|\bwished piece/i, 'asked for, incoming'],
];

/** The words of the list in a text, each with its line and what to write instead. */
export function wordsToReplace(text: string): readonly string[] {
  return text.split('\n').flatMap((line, at) =>
    PLAIN_WORDS.flatMap(([word, instead]) => {
      const found = word.exec(line);
      return found === null ? [] : [`${String(at + 1)}: “${found[0]}”: write ${instead}`];
    }),
  );
}
