import { weightSpan } from '../measures/parse-weight.ts';
import { TROY_OUNCE } from '../measures/units.ts';
import type { Interval } from '../measures/units.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';

/** The precious metal in a piece. */
export type FineMetal = {
  readonly grams: Interval;
  readonly troyOunces: Interval;
  /** What was taken for granted, a sentence each, to be printed with the figure. */
  readonly assumed: readonly string[];
};

/** Whose weight it is: this piece's, or that which the law gave its kind. */
export type WeightBasis = 'measured' | 'statutory';

/** Fine weight = weight × fineness, carried through from end to end. */
export function fineMetal(
  weight: { readonly grams: number; readonly plusMinus: number | null },
  fineness: Interval & { readonly isEither?: true },
  basis: WeightBasis = 'measured',
): FineMetal {
  const span = weightSpan(weight);
  const grams = { low: span.low * fineness.low, high: span.high * fineness.high };
  const assumed = [
    basis === 'statutory' ? 'The weight is the one the law gave its kind, not that of this piece.' : null,
    weight.plusMinus === null ? 'No precision is stated for the weight, so it is taken as written.' : null,
    fineness.low === fineness.high ? 'The fineness is taken as written; it was not assayed here.' : null,
    fineness.isEither === true
      ? 'The fineness is one of two: the figures are those of the one and of the other.'
      : null,
  ].filter((sentence) => sentence !== null);
  return { grams, troyOunces: { low: grams.low / TROY_OUNCE, high: grams.high / TROY_OUNCE }, assumed };
}

/** The figures of a legal fineness in carats or ounces: a mint was allowed a few thousandths either way. */
const LEGAL_FIGURES = 3;

/**
 * To how many figures a product of a weight and a fineness is known: as many as the one of them that was written with fewer. A
 * fineness in thousandths or as a decimal has those of its digits, any other three; a precision after a weight is none of it.
 */
export function figuresOf(weight: string, fineness: string): number {
  const [said = ''] = weight.split(/±|\+\/?-/u);
  const isInFigures = /^[\d.,\s–/-]+(?:%|‰)?$/u.test(fineness);
  return Math.min(
    ...digitsIn(said),
    ...(isInFigures ? digitsIn(fineness.replace(/\/\s*1000?$/u, '')) : [LEGAL_FIGURES]),
  );
}

/** Digits of each number in a text, without the noughts before the first other digit. */
function digitsIn(text: string): readonly number[] {
  const numbers = text.match(/\d[\d.,]*/gu) ?? [];
  return numbers.map((number) => number.replace(/^[0.,]+|[.,]/gu, '').length).filter((digits) => digits > 0);
}

/** A range to so many figures, both ends with as many decimals as its high end has room for: `24`, `23.7 to 24.8`. */
export function toFigures({ low, high }: Interval, figures: number): readonly [string, string] {
  const decimals = Math.max(0, figures - 1 - Math.floor(Math.log10(high)));
  return [low.toFixed(decimals), high.toFixed(decimals)];
}

/** What the owner says a troy ounce of fine metal is worth, on which day, and who says so. */
export type MetalPrice = {
  /** Minor units of the currency (pence, cents) for one troy ounce, fine. */
  readonly minorPerTroyOunce: number;
  readonly currency: string;
  readonly date: string;
  readonly source: string;
};

export type Meltable = {
  /** Null when weight or fineness is not known. */
  readonly fine: FineMetal | null;
  readonly price: MetalPrice | null;
  readonly plated: boolean;
  readonly mounted: boolean;
  readonly altered: boolean;
};

export type MetalValue = Interval & {
  /** `low` and `high` are whole minor units: the low end rounded down, the high end up. */
  readonly currency: string;
  readonly date: string;
  readonly source: string;
  readonly caution: string;
};

/** What the fine metal would come to, as an interval; refused, with the reason, where it would mislead. */
export function metalValue({ fine, price, plated, mounted, altered }: Meltable): Outcome<MetalValue> {
  if (plated) return refuse('No metal value: the piece is plated, so its weight is not that of one metal.');
  if (mounted) return refuse('No metal value: the piece is mounted, and the mount was weighed with it.');
  if (altered) return refuse('No metal value: the piece has been altered, and is not what was struck.');
  if (fine === null) return refuse('No metal value: the weight or the fineness is not known. Write both.');
  if (price === null)
    return refuse(
      'No metal value: the cabinet has no price for this metal. Add one under metal-prices, with its date and source.',
    );
  const { minorPerTroyOunce, currency, date, source } = price;
  if (date.trim() === '' || source.trim() === '')
    return refuse('No metal value: the price has no date or no source. Write both.');
  if (!(minorPerTroyOunce > 0))
    return refuse('No metal value: the price is nothing. Write a price for a troy ounce, like 24.10 GBP.');
  return good({
    low: Math.floor(fine.troyOunces.low * minorPerTroyOunce),
    high: Math.ceil(fine.troyOunces.high * minorPerTroyOunce),
    currency,
    date,
    source,
    caution: `Fine metal alone, at the price of ${date} (${source}). Not an offer, not an appraisal.`,
  });
}

/** What a keeper says of a piece that bears on what its weight means. */
export type ToldOfMetal = {
  readonly metal?: string | null | undefined;
  /** How it was made: what was plated from the start was made so, and not treated later. */
  readonly made?: string | null | undefined;
  readonly problem?: string | null | undefined;
  readonly shape?: string | null | undefined;
  readonly treatments?: readonly string[] | undefined;
};

/** Why the weight of a piece is not that of one metal as it was struck. */
export type NotAsStruck = {
  /** Metal over another metal, so that the weight is of both. */
  readonly plated: boolean;
  /** In a mount that was weighed with it. */
  readonly mounted: boolean;
  /** Metal was taken off, or put in a hole. */
  readonly lost: boolean;
};

/* The words of lists, English first; common practice. */
const PLATED = /plated|plating|gilt|gilded|silvered|\bwash(?:ed)?\b|coated|\bclad\b|fourr|subaerat|suberat/i;
const MOUNTED = /mount|brooch|\bloop|jewel|pendant|bezel|\bset in\b/i;
const MOUNT_GONE = anyOf(
  [
    String.raw`\bex-? ?(?:mount|loop|brooch|jewel)\w*`,
    String.raw`(?:mount|loop|brooch)\w*(?: mark)?s? (?:removed|off|traces?)`,
    String.raw`traces? of (?:a )?(?:mount|loop)\w*`,
  ],
  'gi',
);
const LOST = anyOf(
  [
    String.raw`(?<!un)clip`, 'pierc', String.raw`\b(?:test-?)?cut\b`, 'halved', 'quartered', String.raw`\bhol(?:e|low)`, 'drill',
    'broken', 'plug', 'chip', String.raw`\bfil(?:ed|ing)`, 'shaved', 'fragment', 'melted',
  ],
  'i',
); // prettier-ignore

function anyOf(patterns: readonly string[], flags: string): RegExp {
  return new RegExp(patterns.join('|'), flags);
}

/** Whether a piece is plated, mounted, or short of metal, by what is said of its metal, making, shape, treatments and problem. */
export function notAsStruck({ metal, made, problem, shape, treatments = [] }: ToldOfMetal): NotAsStruck {
  const said = [metal, made, problem, shape, ...treatments].filter((words) => words !== null && words !== undefined);
  const told = said.join('; ');
  // A mount that came off is no longer weighed, and took metal with it or left solder.
  const present = told.replace(MOUNT_GONE, '');
  return { plated: PLATED.test(told), mounted: MOUNTED.test(present), lost: LOST.test(told) || present !== told };
}
