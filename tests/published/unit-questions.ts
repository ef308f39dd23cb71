/*
 * Measures, fineness and money in forms that indentures, Continental lists and old sale catalogues have; null where a specialist
 * would ask. Each row names where the form stands. A grain is 0.06479891 g (international yard and pound agreement, 1959).
 */
type Row<T> = readonly [write: string, reads: T | null, source: string];

const POUNDS = 'Weights and Measures Act 1878; the Tower pound of 5400 grains until 1527';
const METROLOGY = 'handbooks of metrology, from memory';
const APOTHECARIES = 'apothecaries’ weight: 20 grains to the scruple, 3 scruples to the drachm';
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
  ['1 lb', null, POUNDS],
  ['2 lbs.', null, POUNDS],
  ['1 lb troy', 373.2417216, POUNDS],
  ['1 lb (troy)', 373.2417216, POUNDS],
  ['1 troy pound', 373.2417216, POUNDS],
  ['1 lb av', 453.59237, POUNDS],
  ['1 lb avoirdupois', 453.59237, POUNDS],
  ['1 Tower pound', 349.914114, POUNDS],
  ['1 lb 2 oz 3 dwt', 440.1141967, TROY],
  ['1 mark', null, METROLOGY],
  ['1 Cologne mark', 233.855, 'coinage treaty of Dresden, 30 July 1838, from memory'],
  ['1 mark of Cologne', 233.855, 'coinage treaty of Dresden, 30 July 1838, from memory'],
  ['1 Kölner Mark', 233.855, 'coinage treaty of Dresden, 30 July 1838, from memory'],
  ['1 marc de Paris', 244.752923, 'law of 19 Frimaire VIII: 18827.15 grains a kilogram; from memory'],
  ['1 Vienna mark', 280.668, METROLOGY],
  ['1 marco de Castilla', 230.0465, METROLOGY],
  ['1 tola', 11.6638038, 'Regulation VII of 1833, Bengal: the tola of 180 grains; from memory'],
  ['½ tola', 5.8319019, 'Regulation VII of 1833, Bengal: the tola of 180 grains; from memory'],
  ['1 drachm', null, APOTHECARIES],
  ['2 drams', null, APOTHECARIES],
  ['2 drachms ap', 7.7758692, APOTHECARIES],
  ["2 drachms apothecaries'", 7.7758692, APOTHECARIES],
  ['1 scruple', 1.2959782, APOTHECARIES],
  ['16 drams avoirdupois', 28.349523125, POUNDS],
  ['1 Attic drachm', null, 'weights of antiquity are averages of coins; common practice'],
  ['1 drachm (Aeginetan)', null, 'weights of antiquity are averages of coins; common practice'],
  ['1 zolotnik', 4.265754, 'Russian law of 4 June 1899: the pound of 409.51241 g, from memory'],
  ['96 dolya', 4.265754, 'Russian law of 4 June 1899: the pound of 409.51241 g, from memory'],
  ['2 momme', 7.5, 'Japanese law of weights and measures, 1891, from memory'],
  ['1 tael', null, METROLOGY],
  ['1 Kuping tael', 37.301, METROLOGY],
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
  ['2½ gns.', [262.5, 'GBP'], GUINEA],
  ['12½ gns', [1312.5, 'GBP'], GUINEA],
  ['2/6', [12.5, 'GBP'], DECIMAL],
  ['15s. 6d.', [77.5, 'GBP'], DECIMAL],
];
