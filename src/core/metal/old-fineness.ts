import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import { AMOUNT, quoted, readAmount, writeAmount } from '../measures/amount.ts';
import { FINENESS_SCALES } from './fineness.ts';
import type { FinenessScale } from './fineness.ts';

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
