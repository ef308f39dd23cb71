const SIGNS = ['M', 'CM', 'D', 'CD', 'C', 'XC', 'L', 'XL', 'X', 'IX', 'V', 'IV', 'I'];
const WORTH = [1000, 900, 500, 400, 100, 90, 50, 40, 10, 9, 5, 4, 1];
const VALUES = new Map(SIGNS.map((sign, index) => [sign, WORTH[index] ?? 0]));

/** Each sign in order, up to four times where coins write it so: MDCCCCX and MCMX are both 1910. */
const NUMERAL = /^M{0,4}(?:CM|CD|D?C{0,4})(?:XC|XL|L?X{0,4})(?:IX|IV|V?I{0,4})$/;

/** The reversed C of early printers and medallists: CIƆ is 1000, IƆ is 500; ↀ and ↁ are the same run together. */
const APOSTROPHUS = [
  [/C[I|][ƆↃↄ]|ↀ/g, 'M'],
  [/[I|][ƆↃↄ]|ↁ/g, 'D'],
] as const;

/** The number that Roman capitals stand for, with points or spaces between them if need be; undefined if none. */
export function readRoman(text: string): number | undefined {
  const plain = APOSTROPHUS.reduce((written, [sign, letter]) => written.replace(sign, letter), text);
  const letters = plain.replace(/[.·• ]+(?=[MDCLXVI])|\.$/g, '').replace(/J$/, 'I');
  if (letters === '' || !NUMERAL.test(letters)) return undefined;
  let total = 0;
  for (const [sign] of letters.matchAll(/CM|CD|XC|XL|IX|IV|[MDCLXVI]/g)) total += VALUES.get(sign) ?? 0;
  return total;
}

/** A number from 1 to 4999 in Roman capitals, in the form of modern books. */
export function formatRoman(number: number): string {
  let left = number;
  let written = '';
  for (const [sign, value] of VALUES) {
    while (left >= value) {
      written += sign;
      left -= value;
    }
  }
  return written;
}

/** The letters of the Cyrillic numerals in the order of their values: 1–9, 10–90, 100–900. */
const UNITS = 'АВГДЕЅЗИѲ';
const TENS = 'ІКЛМНѮОПЧ';
const HUNDREDS = 'РСТУФХѰѠЦ';

/** Latin letters typed for the Cyrillic ones they look like. */
const LATIN_LIKE = 'ABEKMHOPCTXSI';
const CYRILLIC_LIKE = 'АВЕКМНОРСТХЅІ';

/** Signs to pass over, and forms of one letter that coins put for another. */
const LIKENESSES: readonly (readonly [RegExp, string])[] = [
  [/[\u0483\u0484\u0487.·\s]/g, ''],
  [/[ꙀꙂ]/g, 'З'],
  [/[ѾѺ]/g, 'Ѡ'],
  [/[ѸꙊѴ]/g, 'У'],
  [/Ҁ/g, 'Ч'],
  [/Ї/g, 'І'],
];

const THOUSANDS = `(?:҂?(?<thousands>[${UNITS}]))??`;
const LAST_TWO = `(?:(?<teen>[${UNITS}])І|(?<tens>[${TENS}])?(?<units>[${UNITS}])?)`;
const CYRILLIC_NUMERAL = new RegExp(`^${THOUSANDS}(?<hundreds>[${HUNDREDS}])?${LAST_TWO}$`);

/**
 * The number that Cyrillic letters stand for, as on the coins of Peter I: ҂АѰА is 1701, ҂АѰГІ is 1713. The sign of
 * thousands is often left off and the place of the letter tells. Undefined when the letters are no number.
 */
export function readCyrillic(text: string): number | undefined {
  if (!/[\u0400-\u04FF]/.test(text)) return undefined;
  const cyrillic = text
    .toUpperCase()
    .replace(/[A-Z]/g, (letter) => CYRILLIC_LIKE[LATIN_LIKE.indexOf(letter)] ?? letter);
  const letters = LIKENESSES.reduce((written, [sign, letter]) => written.replace(sign, letter), cyrillic);
  const groups = CYRILLIC_NUMERAL.exec(letters)?.groups;
  if (!groups || letters === '') return undefined;
  const place = (order: string, letter: string | undefined) => (letter === undefined ? 0 : order.indexOf(letter) + 1);
  const tens = groups['teen'] === undefined ? place(TENS, groups['tens']) : 1;
  const units = place(UNITS, groups['teen'] ?? groups['units']);
  return 1000 * place(UNITS, groups['thousands']) + 100 * place(HUNDREDS, groups['hundreds']) + 10 * tens + units;
}

const HAN_FIGURES = '〇一二三四五六七八九';
const ONLY_FIGURES = /^[〇一二三四五六七八九]{1,4}$/;
const FIGURE = '[一二三四五六七八九]';
const HAN_TENS = `(?:(?<tens>${FIGURE}?)十|(?<score>[廿卅]))`;
const HAN_NUMBER = new RegExp(`^(?:(?<hundreds>${FIGURE}?)百)?${HAN_TENS}?(?:零?(?<unit>${FIGURE}))?$`);

/** The number that Chinese characters stand for, to 999; 元, "first", is 1. Undefined when they are no number. */
export function readHanNumber(text: string): number | undefined {
  if (text === '元') return 1;
  const groups = text === '' ? undefined : HAN_NUMBER.exec(text)?.groups;
  if (!groups) return readFigures(text);
  // "Ten" and "hundred" without a figure before them are one ten and one hundred.
  const times = (figure: string | undefined) => (figure === '' ? 1 : HAN_FIGURES.indexOf(figure ?? '〇'));
  const score = groups['score'] === undefined ? 0 : groups['score'] === '廿' ? 20 : 30;
  return 100 * times(groups['hundreds']) + 10 * times(groups['tens']) + score + times(groups['unit']);
}

/** Characters used figure by figure, as in 一九一四. */
function readFigures(text: string): number | undefined {
  if (!ONLY_FIGURES.test(text)) return undefined;
  return Number(text.replace(/./g, (sign) => String(HAN_FIGURES.indexOf(sign))));
}

/** Letters in the order of their values: 1–9, 10–90, 100–400. */
const HEBREW_LETTERS = 'אבגדהוזחטיכלמנסעפצקרשת';
const FINAL_FORMS = new Map(Object.entries({ ך: 'כ', ם: 'מ', ן: 'נ', ף: 'פ', ץ: 'צ' }));

function valueOfHebrew(letter: string): number {
  const place = HEBREW_LETTERS.indexOf(FINAL_FORMS.get(letter) ?? letter);
  if (place < 9) return place + 1;
  return place < 18 ? 10 * (place - 8) : 100 * (place - 17);
}

/**
 * The Hebrew year that letters stand for: תש״ח and התש״ח are both 5708, since the thousands are left out as a rule.
 * Undefined when they are not a year: letters must fall in value, save for 15 and 16, which are written 9+6 and 9+7.
 */
export function readHebrewNumber(text: string): number | undefined {
  const letters = Array.from(text.replace(/["'״׳]/g, '')).map((letter) => FINAL_FORMS.get(letter) ?? letter);
  if (letters.length < 2 || letters.some((letter) => !HEBREW_LETTERS.includes(letter))) return undefined;
  const [first, second] = letters;
  const thousands = first === 'ה' && second !== undefined && valueOfHebrew(second) >= 100 ? letters.shift() : undefined;
  const values = letters.map(valueOfHebrew);
  const falling = values.every((value, index) => index === 0 || value <= (values[index - 1] ?? 0));
  const total = values.reduce((sum, value) => sum + value, 0);
  if (!falling || total < 300) return undefined;
  return (thousands === undefined ? 5000 : valueOfHebrew('ה') * 1000) + total;
}
