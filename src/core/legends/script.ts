import type { Script } from './legend.ts';

const SCRIPTS: readonly (readonly [Script, RegExp])[] = [
  ['latin', /\p{Script=Latin}/u],
  ['greek', /[\p{Script=Greek}\p{Script=Coptic}]/u],
  ['cyrillic', /\p{Script=Cyrillic}/u],
  ['arabic', /\p{Script=Arabic}/u],
  ['hebrew', /\p{Script=Hebrew}/u],
  ['runic', /\p{Script=Runic}/u],
];

const RIGHT_TO_LEFT =
  /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Phoenician}\p{Script=Inscriptional_Pahlavi}\p{Script=Imperial_Aramaic}\p{Script=Kharoshthi}]/u;

function scriptOfLetter(letter: string): Script {
  return SCRIPTS.find(([, pattern]) => pattern.test(letter))?.[0] ?? 'other';
}

/** The script most of the letters are in; at a tie, the one that comes first in the text. No letters: latin. */
export function scriptOf(text: string): Script {
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
