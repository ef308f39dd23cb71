/** Old counts of fineness beside the thousandths that print gives them. `figures` is how many decimals the source prints. */
export type PublishedFineness = { write: string; fineness: number; figures: number; source: string };

const HALLMARKS = 'Hallmarking Act 1973, schedule 2; from memory';
const RUSSIA = 'Russian assay marks; common practice';
const SAXONY = 'table of Saxon gold coins in a printed manual of the Meissen and Saxon mints (Saxon State Library)';
const SPAIN = 'Spanish pragmatics on the coinage, from memory';

export const finenessStandards: readonly PublishedFineness[] = [
  { write: '9 ct', fineness: 0.375, figures: 3, source: HALLMARKS },
  { write: '18 ct', fineness: 0.75, figures: 3, source: HALLMARKS },
  { write: '22 ct', fineness: 0.9166, figures: 3, source: HALLMARKS },
  { write: '925', fineness: 0.925, figures: 3, source: HALLMARKS },
  { write: '958.4', fineness: 0.9584, figures: 4, source: HALLMARKS },
  { write: 'Britannia silver', fineness: 0.9584, figures: 3, source: HALLMARKS },
  { write: '11 ct', fineness: 0.458333, figures: 6, source: 'common practice' },
  { write: '11/12', fineness: 0.91666, figures: 4, source: 'Coinage Act 1870, First Schedule' },
  { write: '37/40', fineness: 0.925, figures: 3, source: 'Coinage Act 1870, First Schedule' },
  { write: '11 oz 2 dwt', fineness: 0.925, figures: 3, source: 'sterling; common practice' },
  {
    write: '11 oz 1 dwt',
    fineness: 0.920833,
    figures: 6,
    source: 'Coinage standards of 1542 to 1601; common practice',
  },
  { write: '11 oz 10 dwt', fineness: 0.958333, figures: 6, source: 'Act of 1696, 8 & 9 Will. III c. 8; from memory' },
  {
    write: '23 ct 3½ gr',
    fineness: 0.9948,
    figures: 4,
    source: 'the old gold standard of 1343, 994.8 thousandths: Rose, The Metallurgy of Gold',
  },
  { write: '191/192', fineness: 0.9948, figures: 4, source: 'the same, as a fraction' },
  { write: '23 Karat 8 Grän', fineness: 0.986111, figures: 6, source: `the ducat; ${SAXONY}` },
  { write: '71/72', fineness: 0.986111, figures: 6, source: `the ducat; ${SAXONY}` },
  { write: '21 Karat 8 Grän', fineness: 0.902778, figures: 6, source: `the Augustdor; ${SAXONY}` },
  { write: '18 Karat 6 Grän', fineness: 0.771, figures: 3, source: `the gulden; ${SAXONY}` },
  {
    write: '14 1/4 loth',
    fineness: 0.890625,
    figures: 6,
    source: 'a Tyrolese taler of 1632, in an Austrian encyclopaedia',
  },
  { write: '13 1/3 loth', fineness: 0.83333, figures: 5, source: 'Bavarian talers to 1837, ten to the fine mark' },
  { write: '13 loth 6 Grän', fineness: 0.83333, figures: 5, source: 'the same, in Grän, 288 to the mark' },
  { write: '14.4 loth', fineness: 0.9, figures: 3, source: 'the double talers of the coinage treaty of 1837' },
  { write: '12 loth', fineness: 0.75, figures: 3, source: 'n/16; common practice' },
  { write: '15 loth', fineness: 0.9375, figures: 4, source: 'n/16; common practice' },
  { write: '16 loth', fineness: 1, figures: 3, source: 'n/16; common practice' },
  { write: '84 zolotnik', fineness: 0.875, figures: 3, source: RUSSIA },
  { write: '88 zolotnik', fineness: 0.916, figures: 2, source: RUSSIA },
  { write: '56 zolotnik', fineness: 0.583, figures: 3, source: RUSSIA },
  { write: '72 zolotnik', fineness: 0.75, figures: 3, source: RUSSIA },
  { write: '94 zolotnik', fineness: 0.979, figures: 3, source: RUSSIA },
  { write: '83 1/3 zolotnik', fineness: 0.86806, figures: 5, source: "the silver rouble, Statesman's Year-Book 1899" },
  { write: '11 dineros 4 granos', fineness: 0.93055, figures: 4, source: SPAIN },
  { write: '11 dineros', fineness: 0.91666, figures: 4, source: SPAIN },
  { write: '10 dineros 20 granos', fineness: 0.90277, figures: 4, source: SPAIN },
  { write: '22 quilates', fineness: 0.91666, figures: 4, source: SPAIN },
  { write: '21 quilates', fineness: 0.875, figures: 3, source: SPAIN },
  { write: '1485/1664', fineness: 0.8924, figures: 4, source: 'United States silver standard, Act of 2 April 1792' },
];
