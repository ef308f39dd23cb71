/** How a currency is written: signs on either side of an amount, and words, of which `pounds` may be a weight. */
type Written = { readonly signs: string; readonly words?: string };

/** In letters as `lettersOf` gives them. Signs as Unicode CLDR has them, narrow and wide; words are common usage. */
const WRITTEN: Readonly<Record<string, Written>> = {
  GBP: { signs: '£|uk[£p]|stg|quid|nicker|sterling', words: 'smackers|pounds?(?! (?:of|in) (?:silver|gold|copper|metal|weight)| (?:weight|troy|tower))' },
  EUR: { signs: '€|euro(?:s|nen)?|euri', words: 'mause|balles|pavos' },
  USD: { signs: '\\$|us\\$', words: 'dollars?|bucks' },
  CAD: { signs: '\\$|ca?\\$', words: 'dollars?' },
  AUD: { signs: '\\$|au?\\$', words: 'dollars?' },
  NZD: { signs: '\\$|nz\\$', words: 'dollars?' },
  HKD: { signs: '\\$|hk\\$', words: 'dollars?' },
  CHF: { signs: 'sfrs?|fr', words: 'francs?|franken|franchi' },
  DEM: { signs: 'dm|d mark', words: 'marks?' },
  FRF: { signs: 'ff', words: 'francs?' },
  JPY: { signs: '¥|円', words: 'yen' },
  CNY: { signs: '¥|rmb|元', words: 'yuan' },
  SEK: { signs: 's?kr', words: 'kronor' },
  DKK: { signs: 'd?kr', words: 'kroner' },
  NOK: { signs: 'n?kr', words: 'kroner' },
  INR: { signs: '₹|rs', words: 'rupees' },
  PLN: { signs: 'zl', words: 'zlot(?:ys?|ych)' },
  CZK: { signs: 'kc', words: 'korun' },
  HUF: { signs: 'ft', words: 'forint' },
  NLG: { signs: 'h?fl', words: 'guilders?|gulden' },
}; // prettier-ignore

type Currency = { readonly isSigned: Sides; readonly isNamed: Sides };
/** Whether what stands before an amount, and what stands behind it, is this currency. */
type Sides = (before: string, behind: string) => boolean;

const known = new Map<string, Currency>();

/** How to tell an amount in this currency, by its ISO 4217 code. */
export function currencyOf(code: string): Currency {
  const held = known.get(code);
  if (held !== undefined) return held;
  const { signs, words } = WRITTEN[code] ?? {};
  const made = {
    isSigned: sides([code.toLowerCase(), ...(signs === undefined ? [] : [signs])].join('|'), '[.: ]{0,2}'),
    // "The troy pound. 16 grains" is no amount of pounds.
    isNamed: words === undefined ? () => false : sides(words, '[: ]{0,2}'),
  };
  known.set(code, made);
  return made;
}

function sides(either: string, between: string): Sides {
  const before = new RegExp(`(?<![\\p{L}\\d])(?:${either})${between}$`, 'u');
  // "€uros" and "50€VB": letters may follow a sign that is none.
  const goOn = either
    .split('|')
    .filter((one) => /^\\?[£€$¥₹]$/.test(one))
    .map((sign) => `|${sign}(?!\\d)`);
  const behind = new RegExp(`^(?:[.,]?¤? ?/? ?[([]?)(?:(?:${either})(?![\\p{L}\\d])${goOn.join('')})`, 'u');
  return (left, right) => before.test(left) || behind.test(right);
}
