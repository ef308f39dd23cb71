import type { RarityClass, RarityScale } from './rarity.ts';

function rows(
  ...classes: readonly (readonly [name: string, words: string, low: number | null, high: number | null])[]
): readonly RarityClass[] {
  return classes.map(([name, words, low, high]) => ({ name, words, low, high }));
}

/** The doubling scale is printed with rounded bounds: 65–125 after 33–64, 126–250 after that. */
const DOUBLING = [
  1, 2, 4, 8, 16, 32, 64, 125, 250, 500, 1000, 2000, 4000, 8000, 16_000, 32_000, 65_000, 125_000, 250_000, 500_000,
];

/** The scales whose classes can be distinguished here. Where a scale gives words only, no number is made up for it. */
export const RARITY_SCALES: readonly RarityScale[] = [
  {
    id: 'american',
    title: 'American 1949',
    names: ['american', 'american 1949'],
    counts: 'pieces thought to survive',
    source: 'the scale printed in 1949, as set out in W. Breen, Complete Encyclopedia (1988), under "rarity scale"',
    classes: rows(
      ['R-1', 'common', 1251, null],
      ['R-2', 'uncommon', 501, 1250],
      ['R-3', 'scarce', 201, 500],
      ['R-4', 'very scarce', 76, 200],
      ['R-5', 'rare', 31, 75],
      ['R-6', 'very rare', 13, 30],
      ['R-7', 'extremely rare', 4, 12],
      ['R-8', 'unique or nearly unique', 1, 3],
    ),
  },
  {
    id: 'universal',
    title: 'Universal Rarity Scale 1992',
    names: ['universal', 'urs', 'universal rarity scale'],
    counts: 'pieces known',
    source: 'The Numismatist, June 1992 (class limits as often reprinted)',
    classes: DOUBLING.map((high, i) => ({
      name: `URS-${i + 1}`,
      words: i === 0 ? 'unique' : 'known',
      low: (DOUBLING[i - 1] ?? 0) + 1,
      high,
    })).reverse(),
  },
  {
    id: 'ric-1',
    title: 'RIC I, second edition',
    names: ['ric-1', 'ric 1', 'ric i', 'ric1'],
    counts: 'specimens in the collections examined',
    source: 'C. H. V. Sutherland, The Roman Imperial Coinage I (1984), p. xxii',
    classes: rows(
      ['C', 'common', null, null],
      ['S', 'scarce', null, null],
      ['R', 'rare', 16, 20],
      ['R2', 'rare', 11, 15],
      ['R3', 'rare', 6, 10],
      ['R4', 'rare', 2, 5],
      ['R5', 'unique', 1, 1],
    ),
  },
  {
    id: 'ric-2-1',
    title: 'RIC II.1, second edition',
    names: ['ric-2-1', 'ric 2.1', 'ric ii.1', 'ric ii part 1'],
    counts: 'frequency in collections, hoards and site finds',
    source: 'I. A. Carradice and T. V. Buttrey, The Roman Imperial Coinage II.1 (2007), p. xxii',
    classes: rows(
      ['C3', 'extremely common', null, null],
      ['C2', 'very common', null, null],
      ['C', 'common', null, null],
      ['R', 'rare', null, null],
      ['R2', 'very few known', null, null],
      ['R3', 'one specimen known', 1, 1],
    ),
  },
  {
    id: 'fuld',
    title: 'Fuld (tokens)',
    names: ['fuld'],
    counts: 'pieces thought to survive',
    source: 'G. and M. Fuld, Patriotic Civil War Tokens (from memory)',
    classes: rows(
      ['R-1', 'common', 5001, null],
      ['R-2', 'less common', 2001, 5000],
      ['R-3', 'scarce', 501, 2000],
      ['R-4', 'very scarce', 201, 500],
      ['R-5', 'rare', 76, 200],
      ['R-6', 'very rare', 21, 75],
      ['R-7', 'extremely rare', 11, 20],
      ['R-8', 'nearly unique', 5, 10],
      ['R-9', 'nearly unique', 2, 4],
      ['R-10', 'unique', 1, 1],
    ),
  },
  {
    id: 'letters',
    title: 'Letters of rarity',
    names: ['letters', 'european', 'rr'],
    counts: 'no count: an impression',
    source: 'common practice of European catalogues in the nineteenth and twentieth centuries',
    classes: rows(
      ['C', 'common', null, null],
      ['S', 'scarce', null, null],
      ['R', 'rare', null, null],
      ['RR', 'very rare', null, null],
      ['RRR', 'extremely rare', null, null],
      ['RRRR', 'of the highest rarity', null, null],
    ),
  },
];

/** The scale of this id or name, whatever the capitals. */
export function rarityScale(name: string): RarityScale | null {
  const plain = name.trim().toLowerCase();
  return RARITY_SCALES.find((scale) => scale.id === plain || scale.names.includes(plain)) ?? null;
}
