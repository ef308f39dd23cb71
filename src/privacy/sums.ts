import { placesOf } from '../core/money/currencies.ts';
import { parseMoney } from '../core/money/money.ts';
import type { Money } from '../core/money/money.ts';
import { spelledNumbers } from './spelled-numbers.ts';
import { currencyOf } from './written-currencies.ts';

/** A sum of the ledger that must be found in nothing published. */
export type PrivateSum = {
  readonly money: Money;
  readonly from: string;
  readonly column: string;
  readonly line: number;
};
/** Sums ready to be looked for all at once. */
export type SumSearch = {
  readonly sums: readonly PrivateSum[];
  /** By their figures alone: `125000` and `1250` both lead to a sum of 1,250.00. */
  readonly byFigures: ReadonlyMap<string, readonly PrivateSum[]>;
  /** Which figures are among them, by the last bits of their number: hardly one of a text is. */
  readonly likely: Uint8Array;
  /** Those in pounds by their worth in pence, of which one is in old money where another is. */
  readonly byPence: ReadonlyMap<number, PrivateSum>;
};
type Amount = {
  readonly at: number;
  readonly end: number;
  readonly units: readonly number[];
  readonly figures: string;
};

const either = (patterns: string): string => `(?:${patterns.split(/\s*,\s*/).join('|')})`;
/** Words that a price follows, and what may stand between. */
const PAID = either(
  'paid, pay, costs?, costing, price[sd]?, gave, giving, fetched, reali[sz]ed, it made, went for, came to, worth, ' +
    'kostete, kosten(?:punkt)?, bezahlt, gezahlt, preis, zuschlag, aufgeld, prix, payee?s?, coutee?, adjugee?s?, ' +
    'betaald, kostte, prijs, precio, pague, pagado, prezzo, pagat[oa], costat[oa]',
);
const DEALT = either('bought, sold, purchased, insured, covered, valued?, valuation, estimated?, hammer');
const BEFORE_PRICE = either(
  `me, us, him, her, them, it, only, about, just, some, over, under, around, roughly, nearly, almost, the sum of,
  a, was, were, of, at, then`,
);
const PRICED = new RegExp(`(?:\\b${PAID}|\\b${DEALT}(?: \\w+)? (?:for|at|of|price))(?: ${BEFORE_PRICE})*[ :="]*$`);
/** Words after which an amount of money is a fine, a wage or a weight of the time, and no price. */
const OF_THE_TIME = either(
  `fine[ds]?, penalt(?:y|ies), forfeit\\w*, rewards?, wages?, salary, tax(?:es)?, ransoms?, weigh(?:s|ed|ing|t)?, coined,
  struck, into, by tale`,
);
const BEFORE_AMOUNT = either(
  'of, up to, at, about, some, not, more, less, than, from, in, a, the, was, were, over, under, only, just, for',
);
const NO_PRICE = new RegExp(`\\b${OF_THE_TIME}(?: ${BEFORE_AMOUNT}){0,4} $`);
/** Where an amount without a currency ends, with no measure or noun behind it. */
const ENDS =
  /^(?:"|\)| ?[;:!?]|[.,](?!\d)| ?$| (?:for|in|at|to|from|when|then|and|plus|on|by|the|including|all|inkl|auf|en|sur|op)\b)/;

/** What `lettersOf` makes of the dash of "385,-". */
const DASHED = /^,¤/;

/** A sum under this, in whole units, is looked for only where it is written in full: a face value, a fine, a fare. */
const SMALL = 10;
/** A bare figure under this, after a word such as "paid", is a number like any other. */
const LARGE = 100;

/** A power of two. */
const LIKELY = 1 << 16;

/** Makes sums ready to be looked for all at once. */
export function sumsFor(sums: readonly PrivateSum[]): SumSearch {
  const byFigures = new Map<string, PrivateSum[]>();
  const likely = new Uint8Array(LIKELY);
  for (const sum of sums)
    for (const figures of figuresOf(sum.money)) {
      const others = byFigures.get(figures);
      if (others === undefined) byFigures.set(figures, [sum]);
      else others.push(sum);
      let number = 0;
      for (let at = 0; at < figures.length; at += 1) number = withDigit(number, figures.charCodeAt(at));
      likely[number & (LIKELY - 1)] = 1;
    }
  const pounds = sums.filter(({ money }) => money.currency === 'GBP');
  return { sums, byFigures, likely, byPence: new Map(pounds.map((sum) => [sum.money.minor, sum])) };
}

/** A number with one more figure, as far as 32 bits hold it. */
function withDigit(number: number, code: number): number {
  return (Math.imul(number, 10) + code - ZERO) | 0;
}

const ZERO = 48;

function figuresOf({ minor, currency }: Money): readonly string[] {
  const places = placesOf(currency);
  // Old money that is no whole number of new pence: £1 2s 6d is £1.125.
  if (!Number.isInteger(minor)) return [String(Number((minor / 10 ** places).toFixed(5))).replace('.', '')];
  const all = String(minor).padStart(places + 1, '0');
  const part = all.slice(all.length - places);
  const isWhole = /^0+$/.test(part);
  return [all, ...(isWhole ? [all.slice(0, -places)] : []), ...(part.endsWith('0') ? [all.slice(0, -1)] : [])];
}

/** The sums that are in a text, each with about its first place there. The text is what `lettersOf` gives. */
export function sumsIn(text: string, search: SumSearch): readonly { readonly sum: PrivateSum; readonly at: number }[] {
  if (search.sums.length === 0) return [];
  const letters = asOneFigure(text);
  const found = new Map<PrivateSum, number>();
  for (const amount of amountsIn(letters, search))
    for (const sum of search.byFigures.get(amount.figures) ?? []) {
      const value = sum.money.minor / 10 ** placesOf(sum.money.currency);
      if (found.has(sum) || !amount.units.some((one) => Math.abs(one - value) < 1e-6)) continue;
      if (isPriced(letters, amount, sum.money.currency, value)) found.set(sum, amount.at);
    }
  if (search.byPence.size > 0)
    for (const { at, minor, isSure } of oldMoneyIn(letters)) {
      const sum = search.byPence.get(minor);
      if (sum === undefined || found.has(sum)) continue;
      if (isSure || PRICED.test(letters.slice(Math.max(0, at - 60), at))) found.set(sum, at);
    }
  return [...found].map(([sum, at]) => ({ sum, at }));
}

const UNIT = '£|€|\\$|quid|pounds?|euros?|dollars?|bucks|francs?|mark';
/** A unit in the place of the point: `42 quid 50`, `85€50`; and signs before two or three groups: `£42 50`, `£36 15 0`, `£36/15/`. */
const INSTEAD_OF_POINT = new RegExp(`(\\d) ?(${UNIT}) ?(\\d\\d)(?!\\d|[.,]\\d)`, 'g');
const IN_GROUPS = /([£€$]) ?(\d+)[ /](\d{1,2})(?:[ /](\d{1,2}))?(?!\d|[.,/]\d)(\/ )?/g;

/** A text of letters with amounts that are written in two or three parts as figures in one. */
function asOneFigure(text: string): string {
  if (!/[£€$]|quid|pound|euro|dollar|bucks|franc|mark/.test(text)) return text;
  return text
    .replace(INSTEAD_OF_POINT, '$1.$3 $2')
    .replace(IN_GROUPS, (whole, sign: string, first: string, second: string, third?: string, ends?: string) =>
      third !== undefined || ends !== undefined
        ? `${sign}${first}/${second}/${third ?? '0'} `
        : second.length === 2
          ? `${sign}${first}.${second}`
          : whole,
    );
}

/** Pounds, shillings and pence, or guineas: `£1 2s 6d`, `£1/2/6`, `12 1/2 gns`, `2/6`. */
const OLD_MONEY = /(?:£ ?)?\d(?:[\d ,/¼½¾-]|(?<=[\d ¼½¾])(?:s|d|gns?|guineas?)\b\.?)*/y;
const QUARTERS: Readonly<Record<string, string>> = { '1⁄4': ' ¼ ', '1⁄2': ' ½ ', '3⁄4': ' ¾ ' };

/** Where the next figure is in a text; -1 when there is none. */
function digitFrom(text: string, from: number): number {
  for (let at = from; at < text.length; at += 1) if (isDigit(text.charCodeAt(at))) return at;
  return -1;
}

function figuresEnd(text: string, from: number): number {
  let at = from;
  while (isDigit(text.charCodeAt(at))) at += 1;
  return at;
}

function isDigit(code: number): boolean {
  return code >= ZERO && code < ZERO + 10;
}

/** Whether figures that end here are followed by what makes them old money, as far as a look at single letters can say. */
function goesOnAsOldMoney(text: string, end: number): boolean {
  let at = end;
  while (GOES_ON[text.charCodeAt(at)] === 1) at += 1;
  return at < text.length && '/sdg'.includes(text.charAt(at));
}

/** By code: figures, and what may be between them in an amount of old money. */
const GOES_ON = Uint8Array.from({ length: 256 }, (_, code) =>
  '0123456789 ,-¼½¾'.includes(String.fromCharCode(code)) ? 1 : 0,
);

/** What is in old money in a text; a bare `2/6` may be a reference, and is sure only with the sign of a pound. */
function* oldMoneyIn(
  letters: string,
): Generator<{ readonly at: number; readonly minor: number; readonly isSure: boolean }> {
  const text = letters.includes('⁄')
    ? letters.replace(/[13]⁄[24]/g, (quarter) => QUARTERS[quarter] ?? quarter)
    : letters;
  for (let from = digitFrom(text, 0), end; from !== -1; from = digitFrom(text, Math.max(end, from + 1))) {
    end = figuresEnd(text, from);
    if (!goesOnAsOldMoney(text, end)) continue;
    OLD_MONEY.lastIndex = text[from - 1] === '£' ? from - 1 : text.endsWith('£ ', from) ? from - 2 : from;
    const at = OLD_MONEY.lastIndex;
    const run = OLD_MONEY.exec(text)?.[0] ?? '';
    end = at + run.length;
    const written = run.replace(/[ ,/-]+$/, '');
    if (!/[£sdg/]/.test(written)) continue;
    const money = parseMoney(written);
    if (!money.ok || money.value.currency !== 'GBP') continue;
    // "The 860s" and "the 30s" are years, unless the words before them speak of a price.
    const isDecade = /^\d{0,3}0s$/.test(run.replace(/\W+$/, ''));
    yield { at, minor: money.value.minor, isSure: /[£sdg]/.test(run) && !isDecade };
  }
}

/** Figures, with what stands between them, as far as they may be one number. */
const FIGURES = /\d+(?:[.,']\d+)*(?: \d{3}(?!\d)(?:[.,]\d{1,2}(?!\d))?)*/y;
const ONLY_FIGURES = /^\d+$/;
const THOUSANDS = /(\d+(?:[.,]\d+)?) ?(?:k|thousand|grand|tsd|mille)\b/g;

/** What begins a word for thousands behind a number. */
const THOUSANDS_BEGIN = /^ ?(?:k|th|gr|ts|mi)/;

/** Every amount in a text whose figures are those of a sum. */
function* amountsIn(letters: string, { byFigures, likely }: SumSearch): Generator<Amount> {
  let mayBeThousands = false;
  for (let at = digitFrom(letters, 0), end; at !== -1; at = digitFrom(letters, end)) {
    let number = 0;
    for (end = at; isDigit(letters.charCodeAt(end)); end += 1) number = withDigit(number, letters.charCodeAt(end));
    const goesOn = end < letters.length && ".,' ".includes(letters.charAt(end)) && isDigit(letters.charCodeAt(end + 1));
    if (goesOn) {
      FIGURES.lastIndex = at;
      end = at + (FIGURES.exec(letters)?.[0] ?? '').length;
    }
    const unit = letters.charAt(end) === ' ' ? end + 1 : end;
    mayBeThousands ||=
      unit < letters.length &&
      'ktgm'.includes(letters.charAt(unit)) &&
      THOUSANDS_BEGIN.test(letters.slice(end, end + 3));
    if (!goesOn && likely[number & (LIKELY - 1)] === 0) continue;
    for (const { from, written } of readingsOf(letters.slice(at, end))) {
      const figures = ONLY_FIGURES.test(written) ? written : written.replace(/\D/g, '');
      const begins = at + from;
      if (byFigures.has(figures)) yield { at: begins, end: begins + written.length, units: unitsOf(written), figures };
    }
  }
  if (mayBeThousands)
    for (const { 0: whole, 1: part = '', index: at } of letters.matchAll(THOUSANDS)) {
      const units = Number(part.replace(',', '.')) * 1000;
      yield { at, end: at + whole.length, units: [units], figures: String(Math.round(units)) };
    }
  const spelled = spelledNumbers(letters);
  for (const [index, { at, end, value }] of spelled.entries()) {
    yield { at, end, units: [value], figures: String(value) };
    // "Forty-two pounds fifty."
    const next = spelled[index + 1];
    if (
      next !== undefined &&
      next.value < 100 &&
      /^ (?:pounds?|quid|euros?|dollars?|bucks)(?: and)? $/.test(letters.slice(end, next.at))
    )
      yield { at, end, units: [value + next.value / 100], figures: String(value * 100 + next.value) };
  }
}

/** The amounts a run of figures may be: the whole of it, or what stands before or behind one of its blanks. */
function readingsOf(run: string): readonly { readonly from: number; readonly written: string }[] {
  const readings = [{ from: 0, written: run }];
  for (let blank = run.indexOf(' '); blank !== -1; blank = run.indexOf(' ', blank + 1))
    readings.push({ from: 0, written: run.slice(0, blank) }, { from: blank + 1, written: run.slice(blank + 1) });
  return readings;
}

/** What figures may mean: one sign with three figures behind it parts thousands or a fraction. */
function unitsOf(written: string): readonly number[] {
  const plain = Number(written.replace(/\D/g, ''));
  const part = /[.,](\d{1,3})$/.exec(written)?.[1];
  if (part === undefined) return [plain];
  const whole = written.slice(0, -part.length - 1).replace(/\D/g, '');
  const parted = Number(`${whole}.${part}`);
  return part.length === 3 ? [plain, parted] : [parted];
}

/** Whether an amount is one of money: its currency beside it, or a word of buying before it. */
function isPriced(letters: string, { at, end, figures }: Amount, currency: string, value: number): boolean {
  const before = letters.slice(Math.max(0, at - 60), at);
  const behind = letters.slice(end, end + 30);
  if (value >= SMALL && DASHED.test(behind)) return true;
  const { isSigned, isNamed } = currencyOf(currency);
  const isInFull = figures.length > String(Math.trunc(value)).length;
  if (value < SMALL) return isInFull && isSigned(before, behind);
  if (isSigned(before, behind)) return true;
  if (isNamed(before, behind)) return PRICED.test(before) || !NO_PRICE.test(before);
  return value >= LARGE && PRICED.test(before) && ENDS.test(behind);
}
