import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import { weightSpan } from '../measures/parse-weight.ts';
import type { Interval } from '../measures/units.ts';
import { metalsAgree } from './metals-agree.ts';

/** The weight and fineness a denomination was struck to for a time. Null is *not known*. */
export type Standard = {
  /** The years it held, both ends included; infinite where open. */
  readonly years: Interval;
  readonly grams: Interval | null;
  readonly fineness: Interval | null;
  /** Millimetres. */
  readonly diameter: Interval | null;
  /** `silver`, `gold`, or another metal; null when not said. */
  readonly metal: string | null;
  /** Where it was law, as rulers' realms and mints' areas are written; empty where that is not said. */
  readonly realms: readonly string[];
  readonly source: string;
};

/** A piece beside one standard it may have been struck to. */
export type StandardRow = {
  readonly standard: Standard;
  /** Per cent of the standard weight. */
  readonly percent: Interval;
  /** The share, 0 to 1, of the years of the piece that fall under this standard. */
  readonly share: number;
};

export type AgainstStandard = {
  /** The standards the piece may have been struck to, the likeliest first. */
  readonly rows: readonly StandardRow[];
  /** Per cent under any of them. */
  readonly percent: Interval;
};

type Weighed = { readonly grams: number; readonly plusMinus: number | null };

/** What decides, with the years, whose standard a piece was struck to. */
export type StandardOwner = {
  readonly metal: string | null | undefined;
  /** The realms of its rulers, then the area of its mint and its issuer, as far as they are known. */
  readonly realms: readonly string[];
};

/** The metals for which a fineness is stated. */
const FINE = ['gold', 'silver', 'electrum', 'billon', 'platinum'];
/** What is less than half silver is called billon, and its laws speak of silver; common practice. */
const BILLON_BELOW = 0.5;

/** Whether a standard may be that of a piece of this metal. One that states a fineness and no metal is of silver or gold. */
export function isOfMetal({ metal, fineness }: Standard, of: string | null | undefined): boolean {
  if (of === null || of === undefined || of === 'unknown' || of === 'none') return false;
  if (metal === null) return fineness !== null && FINE.some((fine) => metalsAgree(of, fine));
  if (metalsAgree(of, metal)) return true;
  return metal === 'silver' && of === 'billon' && fineness !== null && fineness.high < BILLON_BELOW;
}

/**
 * The standards that bind a piece: of its metal, and of its realm where the standard names one. A penny of copper has nothing to do with
 * the silver penny, nor one of Scotland with the English; of a piece whose metal or realm is not known nothing can be said.
 */
export function standardsBinding(
  standards: readonly Standard[],
  { metal, realms }: StandardOwner,
): readonly Standard[] {
  return standards.filter(
    (standard) =>
      isOfMetal(standard, metal) &&
      (standard.realms.length === 0 || standard.realms.some((realm) => realms.some((one) => names(one, realm)))),
  );
}

/** Whether the words of one hold those of the other: `Great Britain, from 1801 the United Kingdom` names `the United Kingdom`. */
function names(text: string, realm: string): boolean {
  const plain = (words: string): string => ` ${words.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, ' ')} `;
  return plain(text).includes(plain(realm.replace(/^the /i, '')));
}

/**
 * Per cent of a standard that a whole piece can weigh. A worn or clipped coin loses up to half, and a heavy flan is a third over; beyond
 * this the metal, the unit or the denomination is another. Bounds of ours, wide on purpose.
 */
export const LIKELY_PERCENT = { low: 40, high: 160 } as const;

/** The weight of a piece as per cent of each standard in force in the years it may have been made; of one that lost metal no least is asked. */
export function againstStandard(
  weight: Weighed,
  standards: readonly Standard[],
  years: Interval,
  isWhole = true,
): Outcome<AgainstStandard> {
  const span = weightSpan(weight);
  const rows = standards.flatMap((standard) => {
    const { grams } = standard;
    const share = shareUnder(standard.years, years);
    if (grams === null || share === null) return [];
    return [{ standard, share, percent: { low: (100 * span.low) / grams.high, high: (100 * span.high) / grams.low } }];
  });
  const held = rows.filter(
    (row) =>
      !endsWhereAnotherHolds(row, rows, years) &&
      row.percent.low <= LIKELY_PERCENT.high &&
      (!isWhole || row.percent.high >= LIKELY_PERCENT.low),
  );
  const percent = unionOf(held.map((row) => row.percent));
  if (percent === null)
    return refuse('No standard weight is known here for a piece of this metal, realm, weight and these years.');
  return good({ rows: held.toSorted((a, b) => b.share - a.share), percent });
}

/** A standard that ends in the first year of a piece is left out when a later one covers the piece: the coinage had changed. */
function endsWhereAnotherHolds(row: StandardRow, rows: readonly StandardRow[], years: Interval): boolean {
  const { high } = row.standard.years;
  return (
    high === years.low &&
    row.share < 1 &&
    rows.some(({ share, standard }) => share === 1 && standard.years.low === high)
  );
}

/** Null when the two do not meet; a single shared year counts as meeting. */
function shareUnder(standard: Interval, piece: Interval): number | null {
  const low = Math.max(standard.low, piece.low);
  const high = Math.min(standard.high, piece.high);
  if (!(low <= high)) return null;
  const years = piece.high - piece.low + 1;
  return Number.isFinite(years) ? (high - low + 1) / years : 0;
}

function unionOf(spans: readonly Interval[]): Interval | null {
  if (spans.length === 0) return null;
  return { low: Math.min(...spans.map(({ low }) => low)), high: Math.max(...spans.map(({ high }) => high)) };
}

/** A standard as a list of denominations states it: one weight, the ends of a disputed one, or none. */
export type StatedStandard = {
  readonly weight?: Weighed | undefined;
  readonly 'weight-to'?: Weighed | undefined;
  readonly fineness?: Interval | undefined;
  readonly diameter?: Interval | undefined;
  readonly metal?: string | undefined;
  readonly source: string;
};

/** The standard a list states, for the years it held. */
export function standardOf(stated: StatedStandard, years: Interval, realms: readonly string[] = []): Standard {
  const spans = [stated.weight, stated['weight-to']].filter((each) => each !== undefined).map(weightSpan);
  return {
    years,
    grams: unionOf(spans),
    fineness: stated.fineness ?? null,
    diameter: stated.diameter ?? null,
    metal: stated.metal ?? null,
    realms,
    source: stated.source,
  };
}
