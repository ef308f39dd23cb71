import { isCurrency, SIGNS } from '../../../core/money/currencies.ts';
import type { FormatSection } from './format-code.ts';

/** Signs that stand for one currency wherever they stand, beside those of the core. */
const SURE: Readonly<Record<string, string>> = {
  'zł': 'PLN', 'Kč': 'CZK', 'Ft': 'HUF', 'лв': 'BGN', 'лв.': 'BGN', '₪': 'ILS', '₴': 'UAH', '₫': 'VND', '฿': 'THB',
  'NT$': 'TWD', 'R$': 'BRL', 'SFr.': 'CHF', 'sFr.': 'CHF', 'руб.': 'RUB', 'р.': 'RUB', 'DM': 'DEM',
}; // prettier-ignore

/** Currencies of locales whose sign is used elsewhere too: `$`, `kr`, `¥`, `Fr.` (MS-LCID 2.2 with ISO 4217). */
const BY_LOCALE: Readonly<Record<string, string>> = {
  '409': 'USD', '540a': 'USD', '1009': 'CAD', 'c0c': 'CAD', 'c09': 'AUD', '1409': 'NZD', 'c04': 'HKD', '1004': 'SGD', '80a': 'MXN',
  '414': 'NOK', '814': 'NOK', '406': 'DKK', '41d': 'SEK', '40f': 'ISK', '411': 'JPY', '804': 'CNY', '807': 'CHF', '100c': 'CHF',
  '810': 'CHF', '415': 'PLN', '405': 'CZK', '40e': 'HUF', '419': 'RUB', '1c09': 'ZAR', '418': 'RON', '436': 'ZAR',
}; // prettier-ignore

/**
 * The currency a number format shows; null where it shows none or one of several. `$` without a locale is the dollar of
 * a dozen countries, and `kr` the crown of four.
 */
export function currencyOf({ currency, tokens }: FormatSection): string | null {
  if (currency !== null) {
    const named = currencyNamed(currency.sign);
    return named ?? BY_LOCALE[currency.locale.replace(/^0+/, '')] ?? null;
  }
  for (const token of tokens) {
    const named = token.kind === 'literal' ? currencyNamed(token.text) : null;
    if (named !== null) return named;
  }
  return null;
}

function currencyNamed(sign: string): string | null {
  const trimmed = sign.trim();
  if (/^[A-Z]{3}$/.test(trimmed) && isCurrency(trimmed)) return trimmed;
  return trimmed === '$' ? null : (SURE[trimmed] ?? SIGNS[trimmed] ?? null);
}
