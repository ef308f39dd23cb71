/** The letters of the Cyrillic numerals in the order of their values: 1–9, 10–90, 100–900. */
const UNITS = 'АВГДЕЅЗИѲ';
const TENS = 'ІКЛМНѮОПЧ';
const HUNDREDS = 'РСТУФХѰѠЦ';

/** Latin letters typed for the Cyrillic ones they look like. */
const LATIN = 'ABEKMHOPCTXSI';
const CYRILLIC = 'АВЕКМНОРСТХЅІ';

/** Signs to pass over, and forms of one letter that coins put for another. */
const LIKENESSES: readonly (readonly [RegExp, string])[] = [
  [/[\u0483\u0484\u0487.·\s]/g, ''],
  [/[ꙀꙂ]/g, 'З'],
  [/[ѾѺ]/g, 'Ѡ'],
  [/[ѸꙊѴ]/g, 'У'],
  [/Ҁ/g, 'Ч'],
  [/Ї/g, 'І'],
];

const NUMERAL = new RegExp(
  `^(?:҂?(?<thousands>[${UNITS}]))??(?<hundreds>[${HUNDREDS}])?(?:(?<teen>[${UNITS}])І|(?<tens>[${TENS}])?(?<units>[${UNITS}])?)$`,
);

/**
 * The number that Cyrillic letters stand for, as on the coins of Peter I: ҂АѰА is 1701, ҂АѰГІ is 1713. The sign of
 * thousands is often left off and the place of the letter tells. Undefined when the letters are no number.
 */
export function readCyrillic(text: string): number | undefined {
  if (!/[\u0400-\u04FF]/.test(text)) return undefined;
  const cyrillic = text.toUpperCase().replace(/[A-Z]/g, (letter) => CYRILLIC[LATIN.indexOf(letter)] ?? letter);
  const letters = LIKENESSES.reduce((written, [sign, letter]) => written.replace(sign, letter), cyrillic);
  const groups = NUMERAL.exec(letters)?.groups;
  if (!groups || letters === '') return undefined;
  const place = (order: string, letter: string | undefined) => (letter === undefined ? 0 : order.indexOf(letter) + 1);
  const tens = groups['teen'] === undefined ? place(TENS, groups['tens']) : 1;
  const units = place(UNITS, groups['teen'] ?? groups['units']);
  return 1000 * place(UNITS, groups['thousands']) + 100 * place(HUNDREDS, groups['hundreds']) + 10 * tens + units;
}
