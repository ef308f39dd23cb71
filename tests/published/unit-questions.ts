/*
 * Measures, fineness and money in forms that indentures, Continental lists and old sale catalogues have; null where a specialist
 * would ask. Each row names where the form stands. A grain is 0.06479891 g (international yard and pound agreement, 1959).
 */
type Row<T> = readonly [write: string, reads: T | null, source: string];

const BRITISH = 'British and American lists write grains out, or gr; common practice';
const CONTINENT = 'Continental lists write gr for grams; common practice';
const TROY = 'troy weight: 24 grains to the pennyweight, 20 pennyweights to the ounce';
const INDENTURE = 'mint indentures in C. E. Challis (ed.), A New History of the Royal Mint (1992), from memory';
const HALLMARK = 'German hallmark law of 16 July 1884: Feingehalt in thousandths';
const ACT = 'Coinage Act 1870, First Schedule: millesimal fineness 916⅔ for gold';
const CLOCK = 'die axes in museum catalogues, from memory';
const DECIMAL = 'Decimal Currency Act 1969, s. 1: a new penny is 2.4 old ones';
const GUINEA = 'the guinea of 21 shillings (proclamation of 22 December 1717)';

/** Grams. */
export const WEIGHTS: readonly Row<number>[] = [
  ['21.3 gr', null, CONTINENT],
  ['21.3gr.', null, CONTINENT],
  ['21,3 gr', null, CONTINENT],
  ['22 grs', null, CONTINENT],
  ['1.38 gr', null, CONTINENT],
  ['21.3-22 gr', null, CONTINENT],
  ['21.3 gr ± 0.1', null, CONTINENT],
  ['21.3 grain', 1.380217, BRITISH],
  ['21.3 grains', 1.380217, BRITISH],
  ['22½ grains', 1.457975, BRITISH],
  ['1 dwt 6 gr', 1.943967, TROY],
  ['1 dwt. 6 grs.', 1.943967, TROY],
  ['2 dwt 3 grains', 3.304744, TROY],
  ['1 oz t 12 gr', 31.881064, TROY],
  ['1.38 g (21.3 gr)', 1.38, 'the two agree'],
  ['21.3 gr (1.38 g)', 1.380217, 'the two agree'],
  ['21.3 gr, 1.38 g', 1.380217, 'the two agree'],
  ['1.38 g (25 gr)', null, 'the two do not agree'],
];

/** The fineness as a share of 1. */
export const FINENESSES: readonly Row<number>[] = [
  ['Feingehalt 750/1000', 0.75, HALLMARK],
  ['Feingehalt: 800', 0.8, HALLMARK],
  ['925er', 0.925, HALLMARK],
  ['925er Silber', 0.925, HALLMARK],
  ['900er Gold', 0.9, HALLMARK],
  ['835er-Silber', 0.835, HALLMARK],
  ['XI ounces', 11 / 12, INDENTURE],
  ['XI ounces II dwt', 0.925, INDENTURE],
  ['XI oz. II dwt.', 0.925, INDENTURE],
  ['X ounces', 10 / 12, INDENTURE],
  ['IV oz', 4 / 12, INDENTURE],
  ['XXII carats', 22 / 24, INDENTURE],
  ['916 2/3', 11 / 12, ACT],
  ['916⅔', 11 / 12, ACT],
  ['916⅔ ‰', 11 / 12, ACT],
  ['0.900/1000', null, 'nine tenths written twice, or a slip'],
  ['.925/1000', null, 'nine tenths written twice, or a slip'],
  ['titre 900', 0.9, 'French lists; common practice'],
  ['titolo 835/1000', 0.835, 'Italian lists; common practice'],
  ['ley 0.900', 0.9, 'Spanish lists; common practice'],
];

/** Hours. */
export const AXES: readonly Row<number>[] = [
  ['VI', 6, CLOCK],
  ['XII', 12, CLOCK],
  ['III h', 3, CLOCK],
  ['ix', 9, CLOCK],
  ['6:00', 6, CLOCK],
  ['12:00', 12, CLOCK],
  ['6.00', 6, CLOCK],
  ['⇅', 6, CLOCK],
  ['↑↓', 6, CLOCK],
  ['⇈', 12, CLOCK],
  ['6:30', null, 'between two hours'],
  ['45°', null, 'between two hours'],
  ['100°', null, 'between two hours'],
  ['XIII', null, 'a clock has twelve hours'],
];

/** Smallest units of the currency. */
export const SUMS: readonly Row<readonly [minor: number, currency: string]>[] = [
  ['$25', null, 'many countries have dollars'],
  ['$ 19.99', null, 'many countries have dollars'],
  ['25 $', null, 'many countries have dollars'],
  ['US$25', [2500, 'USD'], 'ISO 4217'],
  ['USD 25', [2500, 'USD'], 'ISO 4217'],
  ['$25 CAD', [2500, 'CAD'], 'ISO 4217'],
  ['CA$25', [2500, 'CAD'], 'ISO 4217'],
  ['£1/2/0', [110, 'GBP'], DECIMAL],
  ['15s.', [75, 'GBP'], DECIMAL],
  ['10 gns', [1050, 'GBP'], GUINEA],
  ['1 guinea', [105, 'GBP'], GUINEA],
  ['2½ gns.', null, `262½ new pence: ${GUINEA}`],
  ['12½ gns', null, `1312½ new pence: ${GUINEA}`],
  ['2/6', null, `12½ new pence: ${DECIMAL}`],
  ['15s. 6d.', null, `77½ new pence: ${DECIMAL}`],
];
