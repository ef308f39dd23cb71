const VALUES = new Map(
  Object.entries({
    M: 1000,
    CM: 900,
    D: 500,
    CD: 400,
    C: 100,
    XC: 90,
    L: 50,
    XL: 40,
    X: 10,
    IX: 9,
    V: 5,
    IV: 4,
    I: 1,
  }),
);

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
