import type { Script } from './legend.ts';

const SCRIPTS: readonly (readonly [Script, RegExp])[] = [
  ['latin', /\p{Script=Latin}/u],
  ['greek', /[\p{Script=Greek}\p{Script=Coptic}]/u],
  ['cyrillic', /\p{Script=Cyrillic}/u],
  ['arabic', /\p{Script=Arabic}/u],
  ['hebrew', /\p{Script=Hebrew}/u],
  ['runic', /\p{Script=Runic}/u],
];

const WRITTEN_FROM_THE_RIGHT = [
  'Arabic', 'Hebrew', 'Syriac', 'Phoenician', 'Inscriptional_Pahlavi', 'Imperial_Aramaic', 'Kharoshthi',
]; // prettier-ignore
const RIGHT_TO_LEFT = new RegExp(`[${WRITTEN_FROM_THE_RIGHT.map((script) => `\\p{Script=${script}}`).join('')}]`, 'u');

function scriptOfLetter(letter: string): Script {
  return SCRIPTS.find(([, pattern]) => pattern.test(letter))?.[0] ?? 'other';
}

/** Greek letters that no Latin one looks like. Λ and Σ are left out: they stand for A and S on Latin coins too. */
const ONLY_GREEK = /[ΓΔΘΞΠΦΨΩγδθξπφψω]/gu;
/** Latin letters that no Greek one looks like. R is typed for Ρ, S for Σ, V for Υ and W for Ω. */
const ONLY_LATIN = /[DFGLQ]/iu;
/** Cyrillic letters are typed for those of either: Є for E, И for a reversed N. */
const LATIN_OR_GREEK = /^[\p{Script=Latin}\p{Script=Greek}АВСЕНІКМОРЅТХИЯЄ\P{L}]*$/iu;
/** Titles of Greek legends in letters that both scripts have: emperor Caesar, Augustus. Common practice. */
const GREEK_TITLES = /(?:^|[^\p{L}])(?:A[VY]T(?:OK)? K|KAI(?:C|CAP|CAPOC)?|CEB(?:AC|ACT|ACTOC|ACTH)?)(?=$|[^\p{L}])/u;
/** One alpha and omega beside a Latin legend do not make it Greek; one such letter among eight does. */
const AMONG = 8;

/** Whether some letters are of Greek alone, or the words are, so that Latin abbreviations tell nothing. */
export function isGreekInPart(text: string): boolean {
  return text.search(ONLY_GREEK) >= 0 || GREEK_TITLES.test(text);
}

/** Greek typed in letters that look Latin: `BAΣIΛEΩΣ`, `AVT K ANTΩNINOC`. */
function isGreekInDisguise(text: string): boolean {
  if (!LATIN_OR_GREEK.test(text) || ONLY_LATIN.test(text)) return false;
  const own = text.match(ONLY_GREEK)?.length ?? 0;
  if (own === 0) return /Σ.*Λ|Λ.*Σ/u.test(text);
  return GREEK_TITLES.test(text) || own * AMONG >= (text.match(/\p{L}/gu)?.length ?? 0);
}

/**
 * The script most of the letters are in; at a tie, the one that comes first in the text. No letters: latin. Greek typed in
 * letters that look Latin is Greek.
 */
export function scriptOf(text: string): Script {
  if (isGreekInDisguise(text)) return 'greek';
  const counts = new Map<Script, number>();
  for (const letter of text.match(/\p{L}/gu) ?? []) {
    const script = scriptOfLetter(letter);
    counts.set(script, (counts.get(script) ?? 0) + 1);
  }
  let most: Script = 'latin';
  for (const [script, count] of counts) if (count > (counts.get(most) ?? 0)) most = script;
  return most;
}

/** Which way the letters run: right to left when more of them are of a script that does. */
export function directionOf(text: string): 'ltr' | 'rtl' {
  const letters = text.match(/\p{L}/gu) ?? [];
  const leftward = letters.filter((letter) => RIGHT_TO_LEFT.test(letter)).length;
  return leftward * 2 > letters.length ? 'rtl' : 'ltr';
}
