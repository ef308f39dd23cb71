import { good, refuse, type Outcome } from '../outcome.ts';
import type { DateContext } from './dating.ts';
import { LAST_BARE_YEAR } from './format-years.ts';
import { meaningIn, meaningsOf, meaningsOfBare, type Meaning } from './eras.ts';

/** A sign next to a number, either first; the number may have lost its last figures. */
const SIGN_FIRST = /^(?<sign>\D*[^\d\s]) ?(?<number>\d{1,4}X{0,3})$/;
const SIGN_LAST = /^(?<number>\d{1,4}X{0,3}) ?(?<sign>[^\dX]\D*)$/;
/** `year 7 of the Republic` */
const OF_REPUBLIC = /^(?:the )?(?:year|yr\.?) (?<number>\d{1,3}) of the Republic$/i;

/** A year under a sign that several eras share, in the unmistakable forms it may stand for; undefined for other words. */
export function meaningsOfYear(
  text: string,
): readonly { readonly words: string; readonly meaning: Meaning }[] | undefined {
  const republic = OF_REPUBLIC.exec(text)?.groups?.['number'];
  const groups = (SIGN_FIRST.exec(text) ?? SIGN_LAST.exec(text))?.groups;
  const sign = republic === undefined ? groups?.['sign'] : 'Republic year';
  const number = republic ?? groups?.['number'];
  if (sign === undefined || number === undefined) return undefined;
  const means = meaningsOf(sign, Number(number.replaceAll('X', '9')));
  return means?.map((meaning) => ({ words: `${meaning.sign} ${number}`, meaning }));
}

/** Signs that are other words, or the beginnings of some, when they are not in capitals: `ap.`, `ms.`, `Rs`, `be`. */
const SMALL_SIGN = /^(?<sign>[A-Za-z]\.?[a-z]\.?) ?(?<date>\d{2,4})$/;
const SMALL_SIGN_LAST = /^(?<date>\d{2,4}) ?(?<sign>[A-Za-z]\.?[a-z]\.?)$/;
const MAY_BE_SMALL = ['am', 'vs', 'sv', 'se'];

function askForSign(
  text: string,
  { sign = '', date = '' }: Record<string, string>,
  forms: readonly string[],
): string | undefined {
  const letters = sign.replaceAll('.', '');
  if (MAY_BE_SMALL.includes(letters.toLowerCase())) return undefined;
  const other = /^ap/i.test(letters) ? `after ${date}` : `AD ${date}`;
  const years = forms.length > 1 ? forms.join(', ') : `${letters.toUpperCase()} ${date}`;
  return `"${text}" may be a year of an era or another word before one; write ${years} or ${other}.`;
}

/**
 * A year under a sign of several eras in the words of the one that is meant, by its number or by the realm. Refused
 * with all of them when neither decides.
 */
export function settledEra(text: string, { realm }: DateContext): Outcome<string> | undefined {
  const ways = meaningsOfYear(text);
  if (ways === undefined) return undefined;
  const forms = ways.map((way) => way.words);
  const sign = (SMALL_SIGN.exec(text) ?? SMALL_SIGN_LAST.exec(text))?.groups;
  const small = askForSign(text, sign ?? { sign: 'am' }, forms);
  if (small !== undefined) return refuse(small);
  const thousands = /^a\.? ?m\.? ?(?<left>\d{3})$/i.exec(text)?.groups?.['left'];
  if (thousands !== undefined) return refuse(withoutThousands(thousands));
  if (ways.length === 0) return undefined;
  const here = meaningIn(
    realm,
    ways.map(({ meaning }) => meaning),
  );
  const only = here === undefined && ways.length > 1 ? undefined : (here ?? ways[0]?.meaning);
  const words = ways.find(({ meaning }) => meaning === only)?.words;
  if (words !== undefined) return good(words);
  return refuse(`"${text}" may be counted from more than one era; write ${forms.join(' or ')}.`);
}

/** Coins leave out the thousands of the Hebrew year. */
function withoutThousands(number: string): string {
  return `AM ${number} lies before any coin; if the thousands were left out, write AM 5${number}.`;
}

/** A bare year that may be of another era: far in the future as one of ours, or in a realm that counts otherwise. */
export function ambiguousYear(year: string, isFar: boolean, { realm }: DateContext): Outcome<string> | undefined {
  const means = meaningsOfBare(Number(year));
  const here = meaningIn(realm, means);
  if (!isFar) {
    if (here === undefined) return undefined;
    return refuse(
      `"${year}" may be a year of ours or of the era of the realm; write AD ${year} or ${here.sign} ${year}.`,
    );
  }
  if (here) return good(`${here.sign} ${year}`);
  const ways = means.map(({ sign }) => `${sign} ${year}`);
  const offer = ways.length > 0 ? ways.join(' or ') : 'the year with its era, such as Buddhist 2505';
  return refuse(`${year} is far in the future as a year of ours; write ${offer}.`);
}

/** What a bare year far in the future may stand for, as `7205 (1697)` has it. */
export function meaningsOfFarYear(text: string): readonly string[] {
  const year = /^\d{4}$/.test(text) && Number(text) > LAST_BARE_YEAR ? Number(text) : undefined;
  return year === undefined ? [] : meaningsOfBare(year).map(({ sign }) => `${sign} ${text}`);
}
