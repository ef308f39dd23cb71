import { yearsOf } from '../core/dating/interval.ts';
import type { Dating } from '../core/dating/dating.ts';
import { sizeSpan } from '../core/measures/parse-size.ts';
import type { Size } from '../core/measures/parse-size.ts';
import { weightSpan } from '../core/measures/parse-weight.ts';
import type { Weight } from '../core/measures/parse-weight.ts';
import { notAsStruck } from '../core/metal/fine-metal.ts';
import { isOfMetal, LIKELY_PERCENT } from '../core/metal/standards.ts';
import type { Standard } from '../core/metal/standards.ts';
import type { Filed } from './records.ts';
import type { DenominationFields } from './schema/lists.ts';
import type { PieceFields } from './schema/piece.ts';
import { known } from './schema/fields.ts';
import { standardsOf } from './for-core/standards.ts';

/** What is asked about: a piece by its measures, the standards of its denomination, and what it is. */
export type Measured = Pick<
  PieceFields,
  'kind' | 'metal' | 'weight' | 'diameter' | 'date' | 'made' | 'shape' | 'denomination' | 'problem' | 'treatments'
>;

/** A measure that is hardly right, and why, in a sentence. */
export type OddMeasure = { readonly field: 'weight' | 'diameter'; readonly says: string };

/** Half a coin weighs half, a cut quarter a quarter, and what lost metal may weigh less than is likely of a whole one. */
const BROKEN_TIMES = 5;
/** A name may have gone over from silver to copper, as the penny did in 1797, and weigh twenty times as much; so much is right where no metal is said. */
const TIMES_IN_ANY_METAL = { weight: 40, width: 4 } as const;
/** A clipped flan keeps more than half its width, and a broad one is not twice as wide; centimetres for millimetres are ten times off. */
const WIDTH_TIMES = 2;

/**
 * Grams over square millimetres, which is thickness by another name. Foil of silver a twentieth of a millimetre thick has 0.0005; the
 * dumpiest coins stay below 0.1 (a cast as of 320 g and 66 mm has 0.094), and 0.2 would be silver 19 mm thick (10.49 g/cm³, CRC Handbook).
 */
const DENSE: readonly [number, number] = [0.0005, 0.2];

/**
 * Bounds where no standard is known. Tiny fractions of silver go down to 0.05 g (a hemitetartemorion of Athens, a twelfth of a gram); what
 * is struck for use stays below 100 g (the twopence of 1797 was to weigh two ounces, 56.7 g; the heaviest Ptolemaic bronze comes near 100).
 * Widths from 4 to 100 mm by the same pieces. A medal may be much more.
 */
const COIN = { grams: [0.05, 100], millimetres: [4, 100] } as const;
const MEDAL = { grams: [0.3, 3000], millimetres: [8, 300] } as const;

const JUDGED: ReadonlySet<string> = new Set(['coin', 'token', 'jeton', 'medal', 'pattern', 'counterfeit', 'replica']);

/** What of a piece's weight and diameter can hardly be right. Ingots, cut silver, paper, and what is cast or not round keep to no rule. */
export function oddMeasures(
  piece: Measured,
  denominations: readonly Filed<DenominationFields>[],
): readonly OddMeasure[] {
  if (!JUDGED.has(piece.kind)) return [];
  const [weight, size] = [known<Weight>(piece.weight), known<Size>(piece.diameter)];
  const denomination = denominations.find(({ id }) => id === piece.denomination);
  const standards = denomination === undefined ? [] : standardsFor(denomination, piece);
  const name = denomination?.fields.name ?? '';
  const isPlain = /^(?:struck)?$/.test(piece.made ?? '') && /^(?:round)?$/.test(piece.shape ?? '');
  const usual = piece.kind === 'medal' ? MEDAL : COIN;
  const across = size?.shape === 'round' ? sizeSpan(size).width : null;
  const isWhole = isPlain && (size === null || across !== null) && !notAsStruck(piece).lost;
  const weights = isMetal(piece.metal)
    ? { less: isWhole ? 100 / LIKELY_PERCENT.low : BROKEN_TIMES, more: LIKELY_PERCENT.high / 100 }
    : { less: TIMES_IN_ANY_METAL.weight, more: TIMES_IN_ANY_METAL.weight };
  const width = isMetal(piece.metal) ? WIDTH_TIMES : TIMES_IN_ANY_METAL.width;
  const odd: OddMeasure[] = [];

  const grams = weight === null ? null : weightSpan(weight);
  const byWeight = unionOf(standards.flatMap((standard) => standard.grams ?? []));
  if (weight !== null && grams !== null) {
    const says =
      byWeight !== null
        ? outside(grams, byWeight, weights, weight.text, `the standard of a ${name}`, 'g')
        : isPlain
          ? beyond(grams, usual.grams, weight.text, 'g', piece.kind)
          : null;
    if (says !== null)
      odd.push({
        field: 'weight',
        says: `${says} Look whether a point or the unit is wrong${byWeight === null ? '' : ', or the metal or denomination is another'}.`,
      });
  }
  const byWidth = unionOf(standards.flatMap((standard) => standard.diameter ?? []));
  if (size !== null && across !== null) {
    const found = { low: size.shape === 'round' ? size.low : across, high: across };
    const says =
      byWidth !== null
        ? outside(found, byWidth, { less: width, more: width }, size.text, `the usual width of a ${name}`, 'mm')
        : isPlain
          ? beyond(found, usual.millimetres, size.text, 'mm', piece.kind)
          : null;
    if (says !== null) odd.push({ field: 'diameter', says: `${says} Look whether a point or the unit is wrong.` });
  }
  if (odd.length === 0 && weight !== null && size !== null && across !== null && isPlain) {
    const dense = weight.grams / ((Math.PI / 4) * across ** 2);
    if (dense < DENSE[0] || dense > DENSE[1])
      odd.push({
        field: 'weight',
        says: `${weight.text} at ${size.text} across would be ${dense < DENSE[0] ? 'thinner than foil' : 'thicker than any coin'}. Look whether a point or the unit of one of them is wrong.`,
      });
  }
  return odd;
}

/** The standards in force when the piece was made, all of them where that is not known; of its metal, where that is. */
function standardsFor({ fields }: Filed<DenominationFields>, { date, metal }: Measured): readonly Standard[] {
  const [dating, isSaid] = [known<Dating>(date), isMetal(metal)];
  const made = dating === null ? null : yearsOf(dating);
  return standardsOf(fields).filter(
    (standard) =>
      (made === null || (standard.years.low <= made.high && made.low <= standard.years.high)) &&
      (!isSaid || isOfMetal(standard, metal) || (standard.metal === null && standard.fineness === null)),
  );
}

function isMetal(metal: string | undefined): boolean {
  return metal !== undefined && metal !== 'unknown' && metal !== 'none';
}

type Span = { readonly low: number; readonly high: number };

function unionOf(spans: readonly Span[]): Span | null {
  if (spans.length === 0) return null;
  return { low: Math.min(...spans.map(({ low }) => low)), high: Math.max(...spans.map(({ high }) => high)) };
}

type Times = { readonly less: number; readonly more: number };

function outside(found: Span, standard: Span, times: Times, text: string, what: string, unit: string): string | null {
  if (found.high * times.less >= standard.low && found.low <= standard.high * times.more) return null;
  const isLarge = found.low > standard.high;
  const share = isLarge ? found.low / standard.high : (100 * found.high) / standard.low;
  const shown = standard.low === standard.high ? plain(standard.low) : `${plain(standard.low)}-${plain(standard.high)}`;
  const ratio = isLarge
    ? share < 3
      ? share.toFixed(1)
      : Math.round(share)
    : plain(Number(share.toPrecision(share < 10 ? 1 : 2)));
  return `${text} is ${ratio} ${isLarge ? 'times' : '% of'} ${what}, ${shown} ${unit}.`;
}

function beyond(
  found: Span,
  [least, most]: readonly [number, number],
  text: string,
  unit: string,
  kind: string,
): string | null {
  if (found.high >= least && found.low <= most) return null;
  return `${text} is ${found.low > most ? 'more' : 'less'} than what nearly every struck ${kind} has: ${least} to ${most} ${unit}.`;
}

function plain(figure: number): string {
  return String(Number(figure.toPrecision(4)));
}
