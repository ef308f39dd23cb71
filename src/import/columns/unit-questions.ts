import { GRAIN } from '../../core/measures/units.ts';
import type { Field } from './targets.ts';
import type { Choice, Question } from './question.ts';
import type { ReadColumn } from './setting-questions.ts';
import { blankIn } from '../cells/blank.ts';

type Measured = 'weight' | 'diameter' | 'thickness' | 'height' | 'width';
type Unit = { readonly unit: string; readonly called: string; readonly settings?: { readonly gr: 'grains' } };

const UNITS_OF: Readonly<Record<Measured, readonly Unit[]>> = {
  weight: [{ unit: 'g', called: 'grams' }, { unit: 'gr', called: 'grains', settings: { gr: 'grains' } }, { unit: 'dwt', called: 'pennyweights' }],
  diameter: lengths(),
  thickness: lengths(),
  height: lengths(),
  width: lengths(),
}; // prettier-ignore

function lengths(): readonly Unit[] {
  return [
    { unit: 'mm', called: 'millimetres' },
    { unit: 'cm', called: 'centimetres' },
    { unit: 'in', called: 'inches' },
  ];
}

/** A column of bare figures whose heading names no unit, and the figures. */
type Unitless = {
  readonly heading: string;
  readonly field: Measured;
  readonly figures: readonly (number | null)[];
};

/** The columns of weights and lengths in which most cells are bare figures, and no unit is said. */
function unitless(columns: readonly ReadColumn[]): readonly Unitless[] {
  return columns.flatMap(({ heading, readings, cells }) => {
    const field = readings.flatMap((reading) =>
      reading.kind === 'field' && reading.unit === undefined && isMeasured(reading.field) ? [reading.field] : [],
    )[0];
    if (field === undefined) return [];
    const figures = cells.map(({ text, value }) => figureOf(value?.kind === 'number' ? value.figure : text));
    const bare = figures.filter((figure) => figure !== null).length;
    const said = cells.filter(({ text }) => blankIn(text, {}) === null).length;
    return bare === 0 || bare * 2 < said ? [] : [{ heading, field, figures }];
  });
}

/** One question for each column that names no unit, with what its figures make likely; the answer is a line of the mapping. */
export function unitQuestions(columns: readonly ReadColumn[]): readonly Question[] {
  const found = unitless(columns);
  const across = found.find(({ field }) => field === 'diameter') ?? columnInMillimetres(columns);
  return found.map((one) => ({
    id: `unit ${one.heading}`,
    asks: `In which unit are the figures under "${one.heading}"? ${guessInWords(one, across?.figures ?? [])}`,
    choices: UNITS_OF[one.field].map(({ unit, called, settings }): Choice => ({
      answer: called,
      change: {
        columns: [{ heading: one.heading, readings: [{ kind: 'field', field: one.field, unit }] }],
        ...(settings === undefined ? {} : { settings }),
      },
    })),
    example: '',
    otherwise: 'Figures without a unit are not read.',
  }));
}

/** What the figures make likely, with the figure that says so: shown to the keeper, and taken for nothing. */
function guessInWords({ field, figures }: Unitless, across: readonly (number | null)[]): string {
  const known = figures.flatMap((figure) => figure ?? []);
  const middle = middleOf(known);
  if (middle === null) return '';
  const stands = `The middle one of ${known.length} is ${middle}`;
  if (field !== 'weight') {
    const fits = [['millimetres', 1], ['centimetres', 10], ['inches', 25.4]] as const; // prettier-ignore
    const likely = fits.filter(([, scale]) => couldMeasure(field, middle * scale)).map(([called]) => called);
    return likely.length === 0
      ? `${stands}, which is usual in no unit.`
      : `${stands}, which is usual in ${likely.join(' or ')}.`;
  }
  const grains = middle * GRAIN;
  const pairs = figures.flatMap((figure, at) => {
    const width = across[at] ?? null;
    return figure === null || width === null ? [] : [{ figure, width }];
  });
  const thick = (scale: number): boolean =>
    pairs.length === 0 ||
    isThickAsACoin(middleOf(pairs.map(({ figure, width }) => (figure * scale) / width ** 2)) ?? 0);
  const asGrams = couldWeigh(middle) && thick(1);
  const asGrains = couldWeigh(grains) && thick(GRAIN);
  const both = `${stands}, which is ${grains.toPrecision(2)} g if it is grains`;
  if (asGrams === asGrains) return `${both}; either ${asGrams ? 'is usual' : 'would be odd'}.`;
  const odd = pairs.length === 0 ? 'odd for coins' : 'odd for pieces of the diameters beside them';
  return asGrams
    ? `${both}. Likely they are grams: as grains they would be ${odd}.`
    : `${both}. Likely they are grains: as grams they would be ${odd}.`;
}

/** A column of diameters whose heading says millimetres. */
function columnInMillimetres(
  columns: readonly ReadColumn[],
): { readonly figures: readonly (number | null)[] } | undefined {
  const found = columns.find(({ readings }) =>
    readings.some((reading) => reading.kind === 'field' && reading.field === 'diameter' && reading.unit === 'mm'),
  );
  return found === undefined
    ? undefined
    : { figures: found.cells.map(({ text, value }) => figureOf(value?.kind === 'number' ? value.figure : text)) };
}

function isMeasured(field: Field): field is Measured {
  return field in UNITS_OF;
}

function figureOf(text: string): number | null {
  const plain = text.trim();
  return /^\d+(?:[.,]\d+)?$/.test(plain) ? Number(plain.replace(',', '.')) : null;
}

/**
 * Whether the middle piece of a collection may weigh this many grams: from a farthing of Edward III (0.3 g) to a crown or dollar (31 g),
 * and what lies between a little either way. Judged from the standards in the demo's list; a guess is shown, never taken.
 */
function couldWeigh(grams: number): boolean {
  return grams >= 0.3 && grams <= 45;
}

/** Whether the middle piece may be this many millimetres across, or thick: coins lie between 8 and 50, medals go to 80; common practice. */
function couldMeasure(field: string, millimetres: number): boolean {
  return field === 'thickness' ? millimetres >= 0.3 && millimetres <= 8 : millimetres >= 8 && millimetres <= 80;
}

/**
 * Whether grams over square millimetres make the thickness of a coin. A round of silver (10.49 g/cm³) 0.3 mm thick has 0.0025 g/mm², one of
 * 4 mm 0.033; aluminium (2.7) and gold (19.3) widen this. Densities: CRC Handbook.
 */
function isThickAsACoin(gramsPerSquare: number): boolean {
  return gramsPerSquare >= 0.0015 && gramsPerSquare <= 0.06;
}

/** The middle one in order; null for none. */
export function middleOf(figures: readonly number[]): number | null {
  return figures.toSorted((a, b) => a - b)[Math.floor(figures.length / 2)] ?? null;
}
