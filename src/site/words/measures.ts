import type { Interval } from '../../core/measures/units.ts';
import type { Way } from '../../core/metal/debasement.ts';

const span = ({ low, high }: Interval): string => (low === high ? String(low) : `${String(low)}–${String(high)}`);
const isSame = (one: Interval, other: Interval): boolean => one.low === other.low && one.high === other.high;

export const measuresWords = {
  title: 'Measures',
  description: 'Grades by scale, weights against the standards, and how the standards of a coin changed.',
  lead: 'What can be counted and weighed. Uncertainty is shown: a range is a bar from its low end to its high, and nothing is averaged.',
  grades: {
    title: 'Grades, scale by scale',
    lead: 'How many pieces have each grade, as it was given. The bar shows where the table published for that scale puts the grade on the numeric scale from 1 to 70; the pale line goes as far as all tables do, for they disagree. A hollow bar is of pieces with a problem. Each grade leads to its pieces.',
    details: (scale: string): string => `${scale}, pieces with a problem`,
    detailsLead: 'The grade of a piece with a problem describes wear only.',
    notGraded: 'Not graded',
    notGradedLead: 'Not graded does not mean a poor grade. The reasons:',
    reasons: (all: readonly { readonly reason: string; readonly count: number }[]): string =>
      `${all.map(({ reason, count }) => (count === 1 ? reason : `${reason} (${String(count)})`)).join(', ')}.`,
    unrecorded: (count: number): string => `No grade is recorded for ${String(count)} more.`,
    span: (own: Interval, all: Interval): string => (isSame(own, all) ? span(own) : `${span(own)} (${span(all)})`),
    says: (count: number, own: Interval, all: Interval): string =>
      `${count === 1 ? '1 piece' : `${String(count)} pieces`}, ${own.low === own.high ? `at ${String(own.low)}` : `from ${String(own.low)} to ${String(own.high)}`} on the numeric scale${isSame(own, all) ? '' : `, by all tables from ${String(all.low)} to ${String(all.high)}`}`,
    listOf: (scale: string): string => `Grades: ${scale}`,
    none: 'No piece has a grade yet.',
  },
  weights: {
    title: 'Weights against the standard',
    lead: 'Each piece at its weight, in the row of the standard in force when it was made.',
    key: {
      piece: 'a piece, which the dot leads to',
      hollow: 'one that may belong under more than one standard, or has lost metal: clipped, pierced, cut',
      standard: 'the standard; broad where authorities differ or it changed, as the row says',
    },
    noStandard: 'No standard is entered for them in this cabinet',
    noNote: 'Whether a book gives a standard for those years is not said in this cabinet.',
    lightest: 'The lightest',
    heaviest: 'The heaviest',
    says: (name: string, count: number): string =>
      `The weights of ${String(count)} ${name}, in grams from left to right.`,
    row: (years: string, grams: string): string => `${years}: ${grams} g`,
    columns: ['Piece', 'Weight, g', 'Standard', 'Of the standard, %'],
    columnsOfRows: ['Standard', 'Pieces', 'Lightest to heaviest, g', 'Of the standard, %'],
    none: 'Too few pieces have been weighed.',
    unweighed: 'not known',
  },
  series: {
    title: 'Weight and fineness through time',
    lead: 'The standards of a denomination, one after another. A coin can be made cheaper in two ways: lighter, so that it is smaller or thinner, or with less fine metal in the alloy, which alone is debasement. The panels show which.',
    says: (name: string, below: readonly string[]): string =>
      `The standards of the ${name} through time: the whole column is the weight of one piece, the solid part of it the fine metal${below.length === 0 ? '' : `; below it ${below.join(', and ')}`}. A hollow part is a range, or disputed between books.`,
    below: {
      diameter: 'the diameter',
      thickness:
        'the thickness of a flat disc of that weight, diameter and alloy, which is less than that of a coin, whose relief stands above it',
    },
    key: { bar: 'fine metal, or a size', soft: 'the other metal', hollow: 'a range, or disputed between books' },
    panels: {
      weight: 'Grams: weight, and fine metal in it',
      diameter: 'Diameter, mm',
      thickness: 'Thickness, mm, as a flat disc',
    },
    columns: ['Years', 'Weight, g', 'Fine metal, g', 'Fineness', 'Diameter, mm', 'What changed', 'Source'],
    first: 'the first listed here',
    unknown: 'not known',
    steps: 'Step by step',
    ways: {
      lighter: 'lighter', heavier: 'heavier', smaller: 'smaller', larger: 'larger', thinner: 'thinner', thicker: 'thicker',
      alloyed: 'alloyed', finer: 'finer',
    } satisfies Record<Way, string>, // prettier-ignore
    none: 'No denomination has two standards to compare.',
  },
  fine: {
    title: 'Fine metal',
    lead: 'The gold and the silver in the pieces that are here, as far as weight and fineness are recorded; weight times fineness, from the least it may be to the most. It does not say what any piece is worth.',
    metal: { gold: 'Gold', silver: 'Silver' },
    total: (grams: string, ounces: string): string => `${grams} g, which is ${ounces} troy ounces`,
    counted: (count: number): string => `in ${count === 1 ? '1 piece' : `${String(count)} pieces`}`,
    left: (count: number): string =>
      count === 0
        ? ''
        : `${count === 1 ? '1 more piece' : `${String(count)} more pieces`} of this metal ${count === 1 ? 'is' : 'are'} left out, because weight or fineness is not recorded.`,
    none: 'No piece of gold or silver has both weight and fineness recorded.',
  },
} as const;
