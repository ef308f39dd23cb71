import { AVOIRDUPOIS_OUNCE, GRAIN, PENNYWEIGHT, TROY_OUNCE } from './units.ts';

export type WeightUnit = 'g' | 'mg' | 'kg' | 'gr' | 'dwt' | 'oz t' | 'oz av';

type UnitRow = { readonly perUnit: number; readonly sign: string; readonly names: readonly string[] };

/** Grams in each unit, the sign it is printed with, and the ways people write it. */
export const WEIGHT_UNITS: Readonly<Record<WeightUnit, UnitRow>> = {
  g: {
    perUnit: 1,
    sign: 'g',
    names: ['g', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes', 'gramm', 'grammi', 'gramos', 'г', 'грамм'],
  },
  mg: { perUnit: 0.001, sign: 'mg', names: ['mg', 'milligram', 'milligrams'] },
  kg: { perUnit: 1000, sign: 'kg', names: ['kg', 'kgs', 'kilo', 'kilogram', 'kilograms'] },
  gr: { perUnit: GRAIN, sign: 'grains', names: ['gr', 'grs', 'gn', 'gns', 'grain', 'grains'] },
  dwt: { perUnit: PENNYWEIGHT, sign: 'dwt', names: ['dwt', 'dwts', 'pennyweight', 'pennyweights'] },
  'oz t': {
    perUnit: TROY_OUNCE,
    sign: 'oz t',
    names: [
      'oz t',
      'ozt',
      'oz tr',
      'oz troy',
      'troy oz',
      'troy ounce',
      'troy ounces',
      't oz',
      'ounce troy',
      'ounces troy',
    ],
  },
  'oz av': {
    perUnit: AVOIRDUPOIS_OUNCE,
    sign: 'oz av',
    names: [
      'oz av',
      'oz avdp',
      'oz avoir',
      'oz avoirdupois',
      'av oz',
      'avdp oz',
      'avoirdupois oz',
      'avoirdupois ounce',
      'avoirdupois ounces',
      'ounce avoirdupois',
      'ounces avoirdupois',
    ],
  },
};

const BY_NAME: ReadonlyMap<string, WeightUnit> = new Map(
  (['g', 'mg', 'kg', 'gr', 'dwt', 'oz t', 'oz av'] as const).flatMap((unit) =>
    WEIGHT_UNITS[unit].names.map((name) => [name, unit] as const),
  ),
);

/** `gr` and `grs`: grains in Britain and America, grams to many on the Continent. */
export function isGr(text: string): boolean {
  return /^grs?\.?$/i.test(text.trim());
}

/** The unit meant; `'ounce'` when an ounce is named and not which; null when it is none we know. */
export function readWeightUnit(text: string): WeightUnit | 'ounce' | null {
  const name = text.toLowerCase().replace(/\./g, ' ').replace(/ +/g, ' ').trim();
  if (name === 'oz' || name === 'ounce' || name === 'ounces' || name === 'ozs') return 'ounce';
  return BY_NAME.get(name) ?? null;
}
