/**
 * Official notices of German commemorative coins, in the figures and words of the gazette (public domain), with the same in
 * thousandths, millimetres and grams as a copyist read them.
 */
export const commemoratives = [
  {
    gazette: 'BGBl. I 2001, 4270',
    alloy: '925 Tausendteilen',
    fineness: 0.925,
    diameter: '32,5 mm',
    millimetres: 32.5,
    weight: '18 g',
    grams: 18,
  },
  {
    gazette: 'BGBl. I 1994, 88',
    alloy: '625 Tausendteilen',
    fineness: 0.625,
    diameter: '32,5 mm',
    millimetres: 32.5,
    weight: '15,5 g',
    grams: 15.5,
  },
  {
    gazette: 'BGBl. I 2014, 250',
    alloy: '625 Tausendteilen',
    fineness: 0.625,
    diameter: '32,5 mm',
    millimetres: 32.5,
    weight: '16 g',
    grams: 16,
  },
  {
    gazette: 'BGBl. I 2017, 3628',
    alloy: '999,9 Tausendteilen',
    fineness: 0.9999,
    diameter: '17,5 mm',
    millimetres: 17.5,
    weight: '3,89 g',
    grams: 3.89,
  },
  {
    gazette: 'BGBl. I 2019, 1378',
    alloy: '999,9 Tausendteilen',
    fineness: 0.9999,
    diameter: '28 mm',
    millimetres: 28,
    weight: '15,55 g',
    grams: 15.55,
  },
  {
    gazette: 'BGBl. I 1999, 1722',
    alloy: '925 Tausendteilen',
    fineness: 0.925,
    diameter: '32,5 mm',
    millimetres: 32.5,
    weight: '15,5 g',
    grams: 15.5,
  },
  {
    gazette: 'BGBl. I 1957, 1792',
    alloy: '625 Tausendteilen',
    fineness: 0.625,
    diameter: '29 mm',
    millimetres: 29,
    weight: '11,2 g',
    grams: 11.2,
  },
] as const;
