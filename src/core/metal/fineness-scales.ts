import { AMOUNT, quoted, readAmount, writeAmount } from '../measures/amount.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';

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

const PARTS = new RegExp(`^(${AMOUNT}) ?([^\\d½¼¾]+?)(?:[ ,]+(${AMOUNT}) ?([^\\d½¼¾]+))?$`, 'i');

/** Reads the old counts, `23 ct 3½ gr`, `11 oz 2 dwt`, `13 loth 6 Grän`; null when it is none of them. */
export function readOldFineness(words: string): Outcome<number> | null {
  const [, number = '', name = '', smallNumber, smallName = ''] = PARTS.exec(words) ?? [];
  const whole = readAmount(number);
  if (whole === null || whole === 'two ways') return null;
  const scale = FINENESS_SCALES.find(
    ({ names, smaller }) =>
      names.includes(bare(name)) && (smallNumber === undefined || smaller.includes(bare(smallName))),
  );
  if (scale === undefined) return null;
  const small = smallNumber === undefined ? { value: 0 } : readAmount(smallNumber);
  if (small === null || small === 'two ways') return null;
  return count(scale, whole.value, small.value, words);
}

function count(scale: FinenessScale, whole: number, small: number, words: string): Outcome<number> {
  const { parts, perPart, called, write } = scale;
  if (small >= perPart) {
    const instead = `${whole + Math.floor(small / perPart)} ${write}`;
    return refuse(
      `${quoted(words)} has ${perPart} or more of the smaller part, which make a whole one. Write ${instead}.`,
    );
  }
  if (whole + small / perPart > parts) {
    return refuse(
      `${quoted(words)} is finer than fine: there are ${parts} ${called}. Write at most ${writeAmount(parts)} ${write}.`,
    );
  }
  return good((whole * perPart + small) / (parts * perPart));
}

function bare(name: string): string {
  return name.toLowerCase().replace(/\./g, '').trim();
}
