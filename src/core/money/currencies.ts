/**
 * The currencies of ISO 4217, list one, with those that gave way to the euro, which old bills are in; funds, metals and
 * test codes left out.
 */
const CODES = (
  'AED AFN ALL AMD ANG AOA ARS ATS AUD AWG AZN BAM BBD BDT BEF BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF ' +
  'CLP CNY COP CRC CUP CVE CYP CZK DEM DJF DKK DOP DZD EEK EGP ERN ESP ETB EUR FIM FJD FKP FRF GBP GEL GHS GIP GMD GNF GRD GTQ ' +
  'GYD HKD HNL HRK HTG HUF IDR IEP ILS INR IQD IRR ISK ITL JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD ' +
  'LSL LTL LUF LVL LYD MAD MDL MGA MKD MMK MNT MOP MRU MTL MUR MVR MWK MXN MYR MZN NAD NGN NIO NLG NOK NPR NZD OMR PAB PEN PGK ' +
  'PHP PKR PLN PTE PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SIT SKK SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT ' +
  'TND TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VES VND VUV WST XAF XCD XOF XPF YER ZAR ZMW'
).split(' ');

/** How many places follow the point, where it is not two (ISO 4217). */
const PLACES: Readonly<Record<string, number>> = {
  BHD: 3, IQD: 3, JOD: 3, KWD: 3, LYD: 3, OMR: 3, TND: 3,
  BIF: 0, CLP: 0, DJF: 0, GNF: 0, ISK: 0, JPY: 0, KMF: 0, KRW: 0, PYG: 0, RWF: 0, UGX: 0, VND: 0, VUV: 0, XAF: 0, XOF: 0, XPF: 0,
  ESP: 0, ITL: 0, BEF: 0, LUF: 0,
}; // prettier-ignore

/** The signs that stand for one currency, in capitals; the short forms of lists and bills are common practice. A bare `$` stands for many, and asks. */
export const SIGNS: Readonly<Record<string, string>> = {
  '£': 'GBP', '€': 'EUR', 'EURO': 'EUR', 'EUROS': 'EUR', 'DM': 'DEM', 'US$': 'USD', 'C$': 'CAD', 'CA$': 'CAD', 'A$': 'AUD', 'AU$': 'AUD', 'NZ$': 'NZD', 'HK$': 'HKD', '₹': 'INR', '₺': 'TRY', '₽': 'RUB', '₩': 'KRW',
  'ÖS': 'ATS', 'ÖS.': 'ATS', 'SFR': 'CHF', 'SFR.': 'CHF', 'SFRS': 'CHF', 'SFRS.': 'CHF', 'HFL': 'NLG', 'HFL.': 'NLG', 'DFL': 'NLG', 'DFL.': 'NLG',
  'FF': 'FRF', 'BFR': 'BEF', 'BFR.': 'BEF', 'LFR': 'LUF', 'LFR.': 'LUF', 'PTAS': 'ESP', 'PTAS.': 'ESP', 'PTS': 'ESP',
  'DKR': 'DKK', 'DKR.': 'DKK', 'SKR': 'SEK', 'SKR.': 'SEK', 'NKR': 'NOK', 'NKR.': 'NOK', 'KČ': 'CZK', 'ZŁ': 'PLN', 'FT': 'HUF', 'FT.': 'HUF', 'FMK': 'FIM', 'FIM.': 'FIM',
}; // prettier-ignore

/** The currencies of lands that write a comma before cents, so that one before three figures may be either. Unicode CLDR, from memory. */
const WRITES_COMMA = (
  'EUR ATS BEF DEM EEK ESP FIM FRF GRD ITL LTL LUF LVL NLG PTE SIT SKK ALL ANG AOA ARS AWG BAM BGN BOB BRL BYN CHF CLP COP CRC ' +
  'CUP CZK DKK DZD GEL HNL HRK HUF IDR ISK MAD MKD MZN NOK PLN PYG RON RSD RUB SEK TND TRY UAH UYU VES VND XAF XOF XPF ZAR'
).split(' ');

/** Whether a comma before three figures may be the sign before the cents: `12,500 EUR`. */
export function writesComma(currency: string): boolean {
  return WRITES_COMMA.includes(currency);
}

/** The currencies that are called dollars and written with its sign. */
const DOLLARS = [
  'USD',
  'CAD',
  'AUD',
  'NZD',
  'HKD',
  'SGD',
  'BBD',
  'BMD',
  'BND',
  'BSD',
  'BZD',
  'FJD',
  'GYD',
  'JMD',
  'KYD',
  'LRD',
  'NAD',
  'SBD',
  'SRD',
  'TTD',
  'TWD',
  'XCD',
];

export function isDollar(code: string | undefined): code is string {
  return code !== undefined && DOLLARS.includes(code);
}

export function isCurrency(code: string): boolean {
  return CODES.includes(code);
}

/** Decimal places of a currency's amounts: 2 for the pound, 0 for the yen, 3 for the Kuwaiti dinar. */
export function placesOf(currency: string): number {
  return PLACES[currency] ?? 2;
}
