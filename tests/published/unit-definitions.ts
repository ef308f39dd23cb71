/** Units against their definitions. Exact, so they are compared to the last figure that the source prints. */
const AGREEMENT = 'international yard and pound agreement, 1959';
const SCHEDULE = 'Coinage Act 1870, First Schedule, as printed in Encyclopaedia Britannica, 9th ed., vol. 16, p. 483';

export const weightDefinitions: readonly { write: string; grams: number; source: string }[] = [
  { write: '1 grain', grams: 0.06479891, source: AGREEMENT },
  { write: '1 dwt', grams: 1.55517384, source: AGREEMENT },
  { write: '1 oz t', grams: 31.1034768, source: AGREEMENT },
  { write: '12 oz t', grams: 373.2417216, source: `${AGREEMENT}: the troy pound` },
  { write: '1 oz av', grams: 28.349523125, source: AGREEMENT },
  { write: '16 oz av', grams: 453.59237, source: `${AGREEMENT}: the pound` },
  { write: '7000 grains', grams: 453.59237, source: `${AGREEMENT}: the pound` },
  { write: '5400 grains', grams: 349.914114, source: 'the Tower pound of 5400 grains' },
  { write: '437 1/2 grains', grams: 28.349523125, source: AGREEMENT },
];

export const lengthDefinitions: readonly { write: string; millimetres: number; source: string }[] = [
  { write: '1 in', millimetres: 25.4, source: AGREEMENT },
  { write: '12 lines', millimetres: 25.4, source: 'a line is the twelfth of an inch; common practice' },
  { write: '443.296 Paris lines', millimetres: 1000, source: 'law of 19 Frimaire VIII, from memory' },
  { write: '144 Paris lines', millimetres: 324.84, source: 'the Paris foot; from memory' },
];

/**
 * Imperial and metric columns of one statute. The grain was a little lighter before 1959 (0.06479895 g), and the printed
 * figures are cut off as often as rounded, so they are compared within a ten-thousandth of a gram.
 */
export const schedule1870: readonly { coin: string; grains: number; grams: number; source: string }[] = [
  { coin: 'five pounds', grains: 616.37239, grams: 39.94028, source: SCHEDULE },
  { coin: 'two pounds', grains: 246.54895, grams: 15.97611, source: SCHEDULE },
  { coin: 'sovereign', grains: 123.27447, grams: 7.98805, source: SCHEDULE },
  { coin: 'half sovereign', grains: 61.63723, grams: 3.99402, source: SCHEDULE },
  { coin: 'crown', grains: 436.36363, grams: 28.2759, source: SCHEDULE },
  { coin: 'half crown', grains: 218.18181, grams: 14.13795, source: SCHEDULE },
  { coin: 'florin', grains: 174.54545, grams: 11.31036, source: SCHEDULE },
  { coin: 'shilling', grains: 87.27272, grams: 5.65518, source: SCHEDULE },
  { coin: 'sixpence', grains: 43.63636, grams: 2.82759, source: SCHEDULE },
  { coin: 'groat', grains: 29.0909, grams: 1.88506, source: SCHEDULE },
  { coin: 'threepence', grains: 21.81818, grams: 1.41379, source: SCHEDULE },
  { coin: 'twopence', grains: 14.54545, grams: 0.94253, source: SCHEDULE },
  { coin: 'silver penny', grains: 7.27272, grams: 0.47126, source: SCHEDULE },
  { coin: 'bronze penny', grains: 145.83333, grams: 9.44984, source: SCHEDULE },
  { coin: 'bronze halfpenny', grains: 87.5, grams: 5.6699, source: SCHEDULE },
  { coin: 'farthing', grains: 43.75, grams: 2.83495, source: SCHEDULE },
  { coin: 'five pounds, least current', grains: 612.5, grams: 39.68935, source: SCHEDULE },
  { coin: 'two pounds, least current', grains: 245, grams: 15.87574, source: SCHEDULE },
  { coin: 'sovereign, least current', grains: 122.5, grams: 7.93787, source: SCHEDULE },
  { coin: 'half sovereign, least current', grains: 61.125, grams: 3.96083, source: SCHEDULE },
];

const CODE = '31 U.S.C. 5112';
const MINT = 'millimetres as the mint prints them, from memory';

/** Diameters in inches from the United States Code, with the millimetres of the mint, printed to a hundredth. */
export const inches5112: readonly { coin: string; write: string; millimetres: number; source: string }[] = [
  { coin: 'half dollar', write: '1.205 inch', millimetres: 30.61, source: `${CODE}(a)(2); ${MINT}` },
  { coin: 'quarter dollar', write: '0.955 inch', millimetres: 24.26, source: `${CODE}(a)(3); ${MINT}` },
  { coin: 'dime', write: '0.705 inch', millimetres: 17.91, source: `${CODE}(a)(4); ${MINT}` },
  { coin: 'five cents', write: '0.835 inch', millimetres: 21.21, source: `${CODE}(a)(5); ${MINT}` },
  { coin: 'cent', write: '0.75 inch', millimetres: 19.05, source: `${CODE}(a)(6); ${MINT}` },
];
