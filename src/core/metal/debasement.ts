import { writeAmount } from '../measures/amount.ts';
import type { Interval } from '../measures/units.ts';
import { ALLOYS, densityOf } from './specific-gravity.ts';
import type { Standard } from './standards.ts';

/** How one standard differs from the one before it. */
export type Way = 'lighter' | 'heavier' | 'smaller' | 'larger' | 'thinner' | 'thicker' | 'alloyed' | 'finer';

export type SeriesRow = {
  readonly standard: Standard;
  /** Grams of fine metal in one piece; null when weight or fineness is not known. */
  readonly fineGrams: Interval | null;
  /** Mean thickness in millimetres, were the piece a flat disc of its alloy; null when it cannot be had. */
  readonly thickness: Interval | null;
  /** Null in the first row. */
  readonly change: {
    readonly ways: readonly Way[];
    readonly fineMetal: Interval | null;
    readonly because: string;
  } | null;
};

/** Differences under this are the rounding of the books. */
const SAME = 0.002;

/** A coinage through time, oldest first: what a piece weighed, held, and which way it was debased or restored. */
export function debasement(standards: readonly Standard[]): readonly SeriesRow[] {
  const ordered = standards.toSorted((a, b) => a.years.low - b.years.low || a.years.high - b.years.high);
  const rows = ordered.map((standard) => ({
    standard,
    fineGrams: product(standard.grams, standard.fineness),
    thickness: thicknessOf(standard),
  }));
  return rows.map((row, at) => {
    const before = rows[at - 1];
    return { ...row, change: before === undefined ? null : changeFrom(before, row) };
  });
}

type Measured = Omit<SeriesRow, 'change'>;

function changeFrom(before: Measured, after: Measured): NonNullable<SeriesRow['change']> {
  const weight = ratio(after.standard.grams, before.standard.grams);
  const fineness = ratio(after.standard.fineness, before.standard.fineness);
  const diameter = ratio(after.standard.diameter, before.standard.diameter);
  const thickness = ratio(after.thickness, before.thickness);
  const ways = [
    way(weight, 'lighter', 'heavier'),
    way(diameter, 'smaller', 'larger'),
    way(thickness, 'thinner', 'thicker'),
    way(fineness, 'alloyed', 'finer'),
  ].filter((each) => each !== null);
  const fineMetal = ratio(after.fineGrams, before.fineGrams);
  const parts = [
    said(weight, 'lighter', 'heavier'),
    diameter === null && way(weight, 'lighter', 'heavier') === 'lighter'
      ? 'whether smaller or thinner is not told, for want of a diameter'
      : null,
    said(diameter, 'smaller across', 'larger across'),
    said(thickness, 'thinner', 'thicker'),
    fineness === null || way(fineness, 'alloyed', 'finer') !== 'finer'
      ? said(fineness, 'baser', 'finer')
      : finerBy(before, after),
  ].filter((part) => part !== null);
  const held =
    fineMetal === null
      ? 'the fine metal is not known'
      : fineMetal.low >= 2
        ? `${timesAs(fineMetal)} as much fine metal`
        : (said(fineMetal, 'less fine metal', 'more fine metal') ??
          (isSame(fineMetal) ? 'as much fine metal as before' : 'about as much fine metal as before'));
  const all = [weight, diameter, thickness, fineness].every((each) => each === null || isSame(each));
  const because = `${[...(parts.length > 0 ? parts : [all ? 'unchanged' : 'no change beyond doubt']), held].join('; ')}.`;
  return { ways, fineMetal, because: because.charAt(0).toUpperCase() + because.slice(1) };
}

function product(a: Interval | null, b: Interval | null): Interval | null {
  return a === null || b === null ? null : { low: a.low * b.low, high: a.high * b.high };
}

function ratio(after: Interval | null, before: Interval | null): Interval | null {
  if (after === null || before === null || !(before.low > 0)) return null;
  return { low: after.low / before.high, high: after.high / before.low };
}

/** Only what holds from end to end of the interval is said to have changed. */
function way<T extends Way>(change: Interval | null, less: T, more: T): T | null {
  if (change === null) return null;
  if (change.high < 1 - SAME) return less;
  return change.low > 1 + SAME ? more : null;
}

function said(change: Interval | null, less: string, more: string): string | null {
  if (change === null) return null;
  if (change.high < 1 - SAME) return `${less} by ${perCent(1 - change.high, 1 - change.low)}`;
  return change.low > 1 + SAME ? `${more} by ${perCent(change.low - 1, change.high - 1)}` : null;
}

/** `finer: 925/1000 instead of 333/1000`: nobody speaks of silver as finer by 177 per cent. */
function finerBy(before: Measured, after: Measured): string | null {
  const [from, to] = [before.standard.fineness, after.standard.fineness];
  return from === null || to === null ? null : `finer: ${inThousand(to)} instead of ${inThousand(from)}`;
}

function inThousand({ low, high }: Interval): string {
  const [a, b] = [writeAmount(1000 * low, 1), writeAmount(1000 * high, 1)];
  return a === b ? `${a}/1000` : `${a} to ${b}/1000`;
}

function timesAs({ low, high }: Interval): string {
  const [a, b] = [writeAmount(low, 1), writeAmount(high, 1)];
  return a === b ? `${a} times` : `${a} to ${b} times`;
}

function isSame({ low, high }: Interval): boolean {
  return low >= 1 - SAME && high <= 1 + SAME;
}

function perCent(low: number, high: number): string {
  const [a, b] = [writeAmount(100 * low, 1), writeAmount(100 * high, 1)];
  return a === b ? `${a} %` : `${a} to ${b} %`;
}

/** Thickness = mass / (density × area). Gold and silver are taken as alloyed with copper; other metals give none. */
function thicknessOf({ grams, diameter, fineness, metal }: Standard): Interval | null {
  const alloy = ALLOYS.find(({ id }) => id === `${metal ?? ''}-copper`);
  if (grams === null || diameter === null || fineness === null || alloy === undefined) return null;
  const deep = (mass: number, across: number, fine: number) =>
    (1000 * mass) / (densityOf(alloy, fine) * (Math.PI / 4) * across * across);
  return { low: deep(grams.low, diameter.high, fineness.high), high: deep(grams.high, diameter.low, fineness.low) };
}
