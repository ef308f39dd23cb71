import { tidy } from '../measures/amount.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { SIGNS, isCurrency, isDollar, placesOf, writesComma } from './currencies.ts';

/**
 * New pence in a farthing. The old pound had 240 pence (until 15 February 1971), 2.4 to a new penny (Decimal Currency Act
 * 1969), and four farthings to the penny.
 */
const NEW_PENCE_IN_FARTHING = { above: 5, below: 48 };
/** A guinea has been 21 shillings since 1717 (proclamation of 22 December), and prices were named in them until 1971. */
const FARTHINGS_IN_A_GUINEA = 21 * 48;
const QUARTERS: Readonly<Record<string, number>> = { '¼': 1, '1/4': 1, '½': 2, '1/2': 2, '¾': 3, '3/4': 3 };

const QUARTER = String.raw`(¼|½|¾|(?<!\d)[13]\/4|(?<!\d)1\/2)`;
const POUNDS = String.raw`£\s*(\d{1,3}(?:,\d{3})+|\d+)`;
const PENCE = String.raw`(\d*)\s*${QUARTER}?\s*d\.?`;
const AFTER = String.raw`(?:[\s,.-]*${PENCE})?`;
/** Pounds, shillings, pence and quarters of a penny, each a group that may be empty. */
const FORMS = [
  new RegExp(String.raw`^${POUNDS}[\s.,-]+(\d+)\s*s\.?${AFTER}$`, 'iu'),
  new RegExp(String.raw`^${POUNDS}[\s.,-]+()${PENCE}$`, 'iu'),
  new RegExp(String.raw`^${POUNDS}\s*[/-]\s*(\d+|-)\s*[/-]\s*(?:(\d+)\s*(¼|½|¾)?|-)$`, 'u'),
  new RegExp(String.raw`^()(\d+)\s*s\.?${AFTER}$`, 'iu'),
  /^()(\d+)\/(?:(\d+)\s*(¼|½|¾)?\s*(?:d\.?)?|-)$/iu,
  new RegExp(String.raw`^()()${PENCE}$`, 'iu'),
];
const GUINEAS = new RegExp(String.raw`^(\d+)?\s*${QUARTER}?\s*(?:guineas?|gns?\.?)$`, 'iu');

/** `1/2d`: a halfpenny, or one shilling and twopence. */
const HALF_OR_SHILLING = /^(?<above>[13])\/(?<below>[24])\s*d\.?$/iu;

function signOf(above: string, below: string): string {
  return below === '2' ? '½' : above === '1' ? '¼' : '¾';
}

type Sterling = { readonly minor: number; readonly currency: 'GBP' };

/**
 * Reads `£1 2s 6d`, `£1/2/6`, `12s 6d`, `2/6`, `10/-`, `½d`, `12½ gns` and `50p` into new pence, exactly. Null when the text
 * is not of that form.
 */
export function parseSterling(text: string): Outcome<Sterling> | null {
  const newPence = /^(\d{1,9})\s*p\.?$/iu.exec(text)?.[1];
  if (newPence !== undefined) return good({ minor: Number(newPence), currency: 'GBP' });
  const half = HALF_OR_SHILLING.exec(text)?.groups;
  if (half) {
    const { above = '', below = '' } = half;
    return refuse(
      `"${text}" may be a part of a penny or shillings and pence. Write ${signOf(above, below)}d, or ${above}s ${below}d.`,
    );
  }
  const [guineas, whole, part] = GUINEAS.exec(text) ?? [];
  if (guineas !== undefined && (whole ?? part) !== undefined)
    return ofFarthings(number(whole) * FARTHINGS_IN_A_GUINEA + (quarters(part) * FARTHINGS_IN_A_GUINEA) / 4, text);
  const found = FORMS.map((form) => form.exec(text)).find((match) => match !== null);
  if (found === undefined) return null;
  const [, pounds, shillings, pence, quarter] = found;
  // A "d" with no number before it is no sum.
  if (/^\D*$/u.test(text) && quarter === undefined) return null;
  const [l, s, d] = [number(pounds), number(shillings), number(pence)];
  if (s > 19 && l > 0)
    return refuse(
      `There are twenty shillings in a pound; "${text}" has ${s}. Write £${l + Math.floor(s / 20)} ${s % 20}s ${d}d.`,
    );
  if (d > 11 && (l > 0 || s > 0))
    return refuse(
      `There are twelve pence in a shilling; "${text}" has ${d}. Write ${s + Math.floor(d / 12)}s ${d % 12}d.`,
    );
  return ofFarthings((l * 240 + s * 12 + d) * 4 + quarters(quarter), text);
}

function number(figures = ''): number {
  return figures === '' || figures === '-' ? 0 : Number(figures.replaceAll(',', ''));
}

function quarters(written = ''): number {
  return QUARTERS[written] ?? 0;
}

function ofFarthings(farthings: number, text: string): Outcome<Sterling> {
  const { above, below } = NEW_PENCE_IN_FARTHING;
  if (!Number.isSafeInteger(farthings * above * below))
    return refuse(`"${text}" is more money than there is. Write £1 2s 6d.`);
  return good({ minor: (farthings * above) / below, currency: 'GBP' });
}

/** `£1 2s 6d`, `1s 1½d`, `¾d`. */
export function formatSterling(farthings: number): string {
  const [l, s, d] = [Math.floor(farthings / 960), Math.floor(farthings / 48) % 20, Math.floor(farthings / 4) % 12];
  const quarter = ['', '¼', '½', '¾'][farthings % 4] ?? '';
  const pence = d > 0 || quarter !== '' ? `${d > 0 ? String(d) : ''}${quarter}d` : '';
  return [l > 0 ? `£${String(l)}` : '', s > 0 ? `${String(s)}s` : '', pence].filter((part) => part !== '').join(' ');
}

/**
 * An amount in the smallest unit of its currency (pence, cents), with the ISO 4217 code and the text as written. It is a
 * whole number but in old British money, where it is exact in forty-eighths: a farthing is 5/48 of a new penny. Amounts
 * are added by `addMinor`, so that equal sums are equal numbers.
 */
export type Money = { readonly minor: number; readonly currency: string; readonly text: string };

/** Into how many parts a smallest unit is divided, so that a farthing is a whole number of them. */
const PARTS = 48;

/** The sum of two amounts in smallest units, exact to the forty-eighth. */
export function addMinor(one: number, other: number): number {
  return (Math.round(one * PARTS) + Math.round(other * PARTS)) / PARTS;
}

/**
 * The code and the amount, with the places its currency has: `GBP 1234.50`, `JPY 500`. What is no whole number of new pence
 * is written in old money, `£1 2s 6d`; a sum of both as `GBP 4.01 and 3½d`. It reads back to the same amount.
 */
export function formatMoney({ minor, currency }: Pick<Money, 'minor' | 'currency'>): string {
  if (minor < 0) return `-${formatMoney({ minor: -minor, currency })}`;
  const parts = Math.round(minor * PARTS);
  if (parts % PARTS === 0) return formatWhole(parts / PARTS, currency);
  if (parts % 5 === 0) return formatSterling(parts / 5);
  // The fewest farthings that leave whole new pence: 29 is the inverse of 5 among 48.
  const farthings = (parts * 29) % PARTS;
  return `${formatWhole((parts - farthings * 5) / PARTS, currency)} and ${formatSterling(farthings)}`;
}

function formatWhole(minor: number, currency: string): string {
  const places = placesOf(currency);
  const digits = String(minor).padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  return places === 0 ? `${currency} ${whole}` : `${currency} ${whole}.${digits.slice(-places)}`;
}

const HOW = 'Write the amount with its currency: £5.00, GBP 5.00 or EUR 1234.50';

/** Coins that lists and laws count in; a price in them is a fact of history. */
const COIN_NAMES = [
  'reale?s?', 'escudos?', 'maraved[ií]s?', 'solid[ui]s?', 'denarii', 'denar(?:ius)?', 'drachm(?:s|ae?)?', 'ducats?', 'dukaten',
  'florins?', 'thalers?', 'taler', 'groschen', 'kreuzer', 'pfennige?', 'livres?', 'sols?', 'sous?', 'deniers?', 'scudi',
  'testoons?', 'crowns?', 'sovereigns?', 'nobles?', 'dinars?', 'dirhams?', 'mohurs?', 'rupees?', 'pagodas?', 'cash', 'talents?',
]; // prettier-ignore
const COINS = new RegExp(`^(?:${COIN_NAMES.join('|')})\\.?$`, 'iu');

/** `45,- €`: no cents. */
const NOTHING_AFTER = /(?<=\d)[.,] ?-{1,2}(?=\D*$)/u;

const PLAIN = /^(\d+)(?:([.,])(\d+))?$/u;
const GROUPED = /^(\d{1,3})((?:([, '\u2019.\u00A0\u202F])\d{3})(?:\3\d{3})*)(?:([.,])(\d{1,3}))?$/u;

/**
 * The figures before and after the point, thousands signs gone; null when it cannot be told which sign is the point. A comma
 * before three figures is one of thousands in pounds and dollars, and asks where cents may stand behind it (`isComma`).
 */
function figures(
  amount: string,
  places: number,
  isComma: boolean,
): { readonly whole: string; readonly part: string } | null {
  const [, whole, sign, part = ''] = PLAIN.exec(amount) ?? [];
  // No thousands begin with a nought; and cents are two figures, so that a third which is not a nought makes thousands.
  if (whole === '0') return { whole, part };
  if (whole !== undefined && sign === ',' && isComma && places === 2 && /^\d\d0$/u.test(part)) return null;
  const [, first = '', groups, between, point, rest = ''] = GROUPED.exec(amount) ?? [];
  if (whole !== undefined && (groups === undefined || (sign === '.' && places === 3))) return { whole, part };
  // Three figures after one point are thousands on the Continent and thousandths in Britain; after one comma, thousands.
  if (whole !== undefined && ((sign === '.' && places > 0) || places === 3)) return null;
  if (groups === undefined || between === point) return null;
  return { whole: first + groups.replace(/\D/gu, ''), part: rest };
}

/** The currency a text begins or ends with, and the amount between. */
function takeCurrency(
  text: string,
  dollar: string | undefined,
): { readonly currency: string; readonly amount: string } | string {
  const [, before = '', amount = '', after = ''] = /^([^\d]*?)\s*(\d(?:.*\d)?)\s*([^\d]*)$/su.exec(text) ?? [];
  const named = [before.trim(), after.trim()].filter((word) => word !== '' && word !== '-' && word !== '.-');
  if (amount === '') return `"${text}" has no amount. ${HOW}.`;
  if (named.length === 0) return `"${text}" does not say in which currency. ${HOW}.`;
  const home = isDollar(dollar) ? dollar : undefined;
  if (named.includes('$') && home === undefined && !named.some((word) => isCurrency(word.toUpperCase())))
    return `"${text}" does not say which dollar. Write USD, CAD, AUD or another before the amount: USD ${amount}.`;
  const currencies = named
    .filter((word) => word !== '$' || home !== undefined || named.length === 1)
    .map((word) => (word === '$' ? (home ?? '') : (SIGNS[word.toUpperCase()] ?? word.toUpperCase())));
  const coin = named.find((word) => COINS.test(word));
  if (coin !== undefined)
    return `"${coin}" are coins, and no currency to keep books in. Write what was paid: £5.00, GBP 5.00 or EUR 1234.50.`;
  const unknown = currencies.find((code) => !isCurrency(code));
  if (unknown === '-' || /^-|-$/u.test(before.trim()))
    return `"${text}" is less than nothing. Write what was paid: £5.00.`;
  if (unknown !== undefined)
    return `"${unknown}" is no currency that can be told from others. Write its three letters: GBP, USD, EUR, JPY.`;
  const [currency = '', second = currency] = currencies;
  if (second !== currency) return `"${text}" names two currencies. ${HOW}.`;
  return { currency, amount };
}

/**
 * Reads `£5.00`, `GBP 5`, `1,234.50 USD`, `€ 1.234,50`, pounds, shillings and pence (`£1 2s 6d`, `2/6`) and guineas. The
 * amount is exact: no more places than the currency has. A bare `$` asks which, unless the currency of the cabinet,
 * `dollar`, is one.
 */
export function parseMoney(text: string, { dollar }: { readonly dollar?: string | undefined } = {}): Outcome<Money> {
  const written = text.trim();
  const plain = tidy(text).replace(NOTHING_AFTER, '');
  if (written.length > 60) return refuse(`An amount of money is short; this has ${written.length} characters. ${HOW}.`);
  const old = parseSterling(plain) ?? bothMoneys(plain);
  if (old !== null) return old.ok ? good({ ...old.value, text: written }) : old;
  const taken = takeCurrency(plain, dollar);
  if (typeof taken === 'string') return refuse(taken);
  const places = placesOf(taken.currency);
  const read = figures(taken.amount, places, writesComma(taken.currency));
  if (read === null) return refuse(askForPoint(written, taken));
  if (read.part.length > places && !/^0*$/u.test(read.part.slice(places))) {
    const kept = places === 0 ? read.whole : `${read.whole}.${read.part.slice(0, places)}`;
    return refuse(
      `${taken.currency} has ${places === 0 ? 'no' : places} decimal places; this has ${read.part.length}. Write ${taken.currency} ${kept}.`,
    );
  }
  const minor = Number(read.whole + read.part.slice(0, places).padEnd(places, '0'));
  if (!Number.isSafeInteger(minor)) return refuse(`"${written}" is more money than there is. ${HOW}.`);
  return good({ minor, currency: taken.currency, text: written });
}

function askForPoint(written: string, { amount, currency }: { readonly amount: string; readonly currency: string }) {
  const [, whole, sign, part = ''] = PLAIN.exec(amount) ?? [];
  if (whole === undefined || sign === undefined)
    return `It is not clear which sign in "${written}" is the decimal point. Write it without thousands: 1234.50.`;
  const cents = part.length === 3 && part.endsWith('0') ? `${currency} ${whole}.${part.slice(0, 2)}, or ` : '';
  const ways = `${cents}${currency} ${whole}${part} without a sign of thousands`;
  return `It is not clear whether the ${sign === ',' ? 'comma' : 'point'} in "${written}" is the decimal sign. Write ${ways}.`;
}

/** `GBP 4.01 and 3½d`: a sum of new money and old. */
function bothMoneys(text: string): Outcome<Omit<Money, 'text'>> | null {
  const [first, second, ...more] = text.split(' and ');
  if (first === undefined || second === undefined || more.length > 0) return null;
  const [decimal, old] = [parseMoney(first), parseSterling(second)];
  if (!decimal.ok || !old?.ok || decimal.value.currency !== old.value.currency) return null;
  return good({ minor: addMinor(decimal.value.minor, old.value.minor), currency: old.value.currency });
}
