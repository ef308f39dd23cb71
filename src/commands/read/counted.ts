import { dieEstimate, formatDieEstimate } from '../../core/dies/estimate.ts';
import { formatMoney, parseMoney } from '../../core/money/money.ts';
import { parseRarity, rarityOf } from '../../core/rarity/parse-rarity.ts';
import { rarityScale } from '../../core/rarity/scales.ts';
import { answer, ofOneText } from './kind.ts';
import type { Kind } from './kind.ts';

/** A whole number as people write it; NaN for anything else, which the core then refuses in its own words. */
function count(text: string): number {
  return /^\d{1,9}$/u.test(text.trim()) ? Number(text) : Number.NaN;
}

function range(low: number | null, high: number | null): string {
  if (low === null) return 'no number is given for it';
  if (high === null) return `${low} or more`;
  return low === high ? String(low) : `${low} to ${high}`;
}

/** `american 5`: five pieces are known. `american R-7`: the class itself. */
const rarity: Kind = {
  name: 'rarity',
  args: ['scale', 'number known'],
  optional: 1,
  examples: [['american', '5'], ['RIC I R4']],
  read: (words, { scale }) => {
    const asked = scale === undefined ? words : [scale, ...words];
    const known = asked.at(-1) ?? '';
    const named = asked.slice(0, -1).join(' ');
    const counted = asked.length > 1 && /^-?[\d.]+$/u.test(known);
    return answer(counted ? rarityOf(count(known), named) : parseRarity(asked.join(' ')), (read) => ({
      sentence: `${read.class} on the scale ${rarityScale(read.scale)?.title ?? read.scale}: ${range(read.low, read.high)} (${rarityScale(read.scale)?.counts ?? 'known'}).`,
      fields: { scale: read.scale, class: read.class },
    }));
  },
};

const dies: Kind = {
  name: 'dies',
  args: ['coins', 'dies', 'dies known from one coin'],
  examples: [['318', '69', '12']],
  read: (words) => {
    const [n = Number.NaN, d = Number.NaN, d1 = Number.NaN] = words.map(count);
    return answer(dieEstimate({ n, d, d1 }), (read) => ({
      sentence: [formatDieEstimate({ n, d, d1 }, read), ...read.cautions].join(' '),
      fields: { coverage: read.coverage, good: read.good, singleton: read.singleton, geometric: read.geometric },
    }));
  },
};

const money = ofOneText('money', ['£5.00', 'EUR 1234.50', '5.00'], (text) =>
  answer(parseMoney(text), (read) => ({
    sentence: `${formatMoney(read)}.`,
    fields: { minor: read.minor, currency: read.currency },
  })),
);

/** What is counted. */
export const COUNTED: readonly Kind[] = [rarity, dies, money];
