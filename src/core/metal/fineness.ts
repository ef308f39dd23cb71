import type { Interval } from '../measures/units.ts';

/** How fine a metal is: parts of the precious metal in one part of the alloy, from nothing to 1. */
export type Fineness = Interval & { readonly text: string };

/** A way to count fineness: so many parts make it wholly fine, and each part holds so many smaller ones. */
export type FinenessScale = {
  readonly parts: number;
  readonly perPart: number;
  readonly names: readonly string[];
  readonly smaller: readonly string[];
  readonly called: string;
  /** What a single part is called in a refusal, and the sign to write. */
  readonly write: string;
  readonly source: string;
};

const MEMORY = 'standard metrological handbooks; from memory';

/** The ways of counting that the books use. A smaller part is named only where the scale has one. */
export const FINENESS_SCALES: readonly FinenessScale[] = [
  {
    parts: 24,
    perPart: 4,
    called: 'carats',
    write: 'ct',
    source: 'common practice',
    names: ['ct', 'cts', 'carat', 'carats', 'karat', 'karats', 'kt', 'k', 'c'],
    smaller: ['gr', 'grs', 'grain', 'grains', 'carat grain', 'carat grains'],
  },
  {
    parts: 24,
    perPart: 12,
    called: 'Karat',
    write: 'Karat',
    source: MEMORY,
    names: ['karat', 'kar'],
    smaller: ['grän', 'graen', 'grn'],
  },
  {
    parts: 12,
    perPart: 20,
    called: 'ounces in the pound',
    write: 'oz',
    source: 'common practice',
    names: ['oz', 'ozs', 'ounce', 'ounces'],
    smaller: ['dwt', 'dwts', 'pennyweight', 'pennyweights'],
  },
  {
    parts: 16,
    perPart: 18,
    called: 'loth',
    write: 'loth',
    source: 'common practice for the loth; the Grän from memory',
    names: ['loth', 'lot', 'lötig', 'loetig', 'löthig'],
    smaller: ['grän', 'graen', 'grn'],
  },
  {
    parts: 96,
    perPart: 96,
    called: 'zolotniks',
    write: 'zolotnik',
    source: 'common practice',
    names: ['zolotnik', 'zolotniks', 'zol', 'золотник', 'золотника', 'золотников'],
    smaller: ['dolya', 'doli', 'dolyas'],
  },
  {
    parts: 12,
    perPart: 24,
    called: 'deniers',
    write: 'deniers',
    source: MEMORY,
    names: ['denier', 'deniers', 'dinero', 'dineros'],
    smaller: ['grain', 'grains', 'grano', 'granos', 'gr'],
  },
  {
    parts: 24,
    perPart: 4,
    called: 'quilates',
    write: 'quilates',
    source: MEMORY,
    names: ['quilate', 'quilates'],
    smaller: ['grano', 'granos'],
  },
];

/** Standards that have a name of their own. */
export const NAMED_FINENESS: readonly { readonly name: string; readonly fineness: number; readonly source: string }[] =
  [
    { name: 'sterling', fineness: 222 / 240, source: '11 oz 2 dwt in the pound; common practice' },
    {
      name: 'britannia silver',
      fineness: 230 / 240,
      source: '11 oz 10 dwt in the pound; Act of 1696 (8 & 9 Will. III c. 8)',
    },
    { name: 'crown gold', fineness: 22 / 24, source: '22 carats; common practice' },
    { name: 'angel gold', fineness: 191 / 192, source: '23 carats 3½ grains; common practice' },
    {
      name: 'ducat gold',
      fineness: 71 / 72,
      source: '67 ducats of 71/72 from the Cologne mark, imperial ordinance of 1559; from memory',
    },
  ];

/** Denominators a fineness is written over; other figures under a thousand could be the end of a range. */
export const FINENESS_DENOMINATORS: ReadonlySet<number> = new Set([
  2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 40, 48, 72, 96, 100, 144, 192, 240, 288, 384, 1000, 10000,
]);
