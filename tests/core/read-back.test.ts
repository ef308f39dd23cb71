import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatDate } from '../../src/core/dating/format-date.ts';
import { parseDate } from '../../src/core/dating/parse-date.ts';
import { formatGrade } from '../../src/core/grade/grade.ts';
import { parseGrade } from '../../src/core/grade/parse-grade.ts';
import { isScaleId } from '../../src/core/grade/scales.ts';
import { formatAxis, parseAxis } from '../../src/core/measures/parse-axis.ts';
import { formatLength, parseLength } from '../../src/core/measures/parse-length.ts';
import { formatSize, parseSize } from '../../src/core/measures/parse-size.ts';
import { formatWeight, parseWeight, weightIn, weightSpan } from '../../src/core/measures/parse-weight.ts';
import { WEIGHT_UNITS } from '../../src/core/measures/units.ts';
import { formatFineness, parseFineness } from '../../src/core/metal/parse-fineness.ts';
import { formatMoney, parseMoney } from '../../src/core/money/money.ts';
import type { Outcome } from '../../src/core/outcome.ts';
import { formatRarity, parseRarity } from '../../src/core/rarity/parse-rarity.ts';
import { parseReference, parseReferences } from '../../src/core/references/parse-reference.ts';
import { formatReference } from '../../src/core/references/reference.ts';
import { DATE_CONVENTIONS } from '../published/date-conventions.ts';
import { DATE_WORDINGS } from '../published/date-wordings.ts';
import { gradeMappings, risingInBritain, sameLine } from '../published/grade-tables.ts';
import {
  AXIS_WORDINGS,
  FINENESS_WORDINGS,
  LENGTH_WORDINGS,
  MONEY_WORDINGS,
  WEIGHT_WORDINGS,
} from '../published/measure-wordings.ts';
import { CATALOGUE_DATES, FIELD_RECORDS, LIBRARY_DATES } from '../published/outside-dates.ts';
import { RARITY_CLASSES } from '../published/rarity-scales.ts';
import { REFERENCE_WORDINGS } from '../published/reference-wordings.ts';
import { AXES, FINENESSES, SUMS, WEIGHTS } from '../published/unit-questions.ts';
import { tries } from '../tries.ts';

/*
 * Whatever is printed is read again as what it was: each form of the published tables is read, printed and read once more. What
 * a printed form leaves out on purpose (the words as written) is no part of the comparison.
 */
interface Printed {
  readonly name: string;
  readonly written: readonly string[];
  /** What was meant, once as read and once as read back from print; null for what is asked about. */
  readonly twice: (text: string) => readonly [read: unknown, printed: string, again: unknown] | null;
}

function back<T>(
  parse: (text: string) => Outcome<T>,
  format: (value: T) => string,
  meant: (value: T) => unknown,
  parseAgain: (text: string, value: T) => Outcome<T> = parse,
): Printed['twice'] {
  return (text) => {
    const outcome = parse(text);
    if (!outcome.ok) return null;
    const printed = format(outcome.value);
    const again = parseAgain(printed, outcome.value);
    return [meant(outcome.value), printed, again.ok ? meant(again.value) : again.problem];
  };
}

const rowsOf = (rows: readonly { readonly write: string }[]) => rows.map(({ write }) => write);
const first = (rows: readonly (readonly [string, ...unknown[]])[]) => rows.map(([write]) => write);
/** Six figures: what a printed weight keeps of a vulgar fraction. */
const six = (value: number) => Number(value.toPrecision(6));
const withoutText = <T extends object>(value: T) => ({ ...value, text: '' });

const onScale = (text: string) => {
  const [scale = '', ...words] = text.split(' ');
  return parseGrade(words.join(' '), { scale: isScaleId(scale) ? scale : 'uk' });
};

const PRINTED: readonly Printed[] = [
  {
    name: 'date',
    written: rowsOf([...DATE_WORDINGS, ...DATE_CONVENTIONS, ...FIELD_RECORDS, ...LIBRARY_DATES, ...CATALOGUE_DATES]),
    twice: back(parseDate, formatDate, ({ earliest, latest, about, doubtful, from, to }) => [earliest, latest, about, doubtful, from, to]),
  },
  {
    name: 'weight',
    written: [...rowsOf(WEIGHT_WORDINGS), ...first(WEIGHTS)],
    twice: back(parseWeight, formatWeight, (weight) => [six(weightSpan(weight).low), six(weightSpan(weight).high), weight.unit]),
  },
  { name: 'length', written: rowsOf(LENGTH_WORDINGS), twice: back(parseLength, formatLength, ({ low, high }) => [low.toFixed(3), high.toFixed(3)]) },
  { name: 'size', written: rowsOf(LENGTH_WORDINGS).flatMap((one) => [one, `9 x ${one}`]), twice: back(parseSize, formatSize, (size) => JSON.stringify(withoutText(size), (_, value: unknown) => (typeof value === 'number' ? value.toFixed(3) : value))) },
  { name: 'axis', written: [...rowsOf(AXIS_WORDINGS), ...first(AXES)], twice: back(parseAxis, formatAxis, ({ hours }) => hours) },
  { name: 'fineness', written: [...rowsOf(FINENESS_WORDINGS), ...first(FINENESSES)], twice: back(parseFineness, formatFineness, ({ low, high }) => [low, high]) },
  { name: 'money', written: [...rowsOf(MONEY_WORDINGS), ...first(SUMS)], twice: back(parseMoney, formatMoney, ({ minor, currency }) => [minor, currency]) },
  {
    name: 'grade',
    // Each on its own scale: a word may be at home on several.
    written: [...gradeMappings.map(([write, scale]) => `${scale} ${write}`), ...sameLine.flatMap(({ line }) => line.map(([write, scale]) => `${scale} ${write}`)), ...risingInBritain.flatMap(({ rising }) => rising.map((write) => `uk ${write}`))],
    twice: back(onScale, (grade) => `${grade.scale} ${formatGrade(grade)}`, ({ low, high, scale, problem }) => [low, high, scale, problem]),
  },
  { name: 'rarity', written: RARITY_CLASSES.map(([scale, , name]) => `${scale} ${name}`), twice: back((text) => parseRarity(text), formatRarity, withoutText) },
  {
    name: 'reference',
    written: REFERENCE_WORDINGS.map(({ text }) => text).filter((text) => parseReference(text, []).ok),
    twice: back((text) => parseReference(text, []), (one) => formatReference(one, one.named), ({ text: _text, named: _named, ...meant }) => meant),
  },
]; // prettier-ignore

describe.for(PRINTED)('$name', ({ name, written, twice }) => {
  const read = [...new Set(written)].flatMap((text) => {
    const found = twice(text);
    return found === null ? [] : [[text, ...found] as const];
  });

  test(`${String(read.length)} printed forms read back`, () => {
    const lost = read.filter(([, meant, , again]) => JSON.stringify(meant) !== JSON.stringify(again));
    expect(lost).toEqual([]);
    expect(read.length, name).toBeGreaterThan(8);
  });
});

test('several references in one text, printed with a semicolon, are the same several', () => {
  const meant = (text: string) => {
    const all = parseReferences(text);
    return all.ok ? all.value : [];
  };
  const short = (text: string) => meant(text).map(({ work, volume, number, to }) => [work, volume, number, to]);
  for (const { text } of REFERENCE_WORDINGS) {
    const printed = meant(text).map((one) => formatReference(one, one.named));
    expect(short(printed.join('; ')), text).toEqual(short(text));
  }
});

test('a weight as a page shows it, in grams and in grains, reads back within its last figure', () => {
  const units = Object.values(WEIGHT_UNITS);
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 99_999 }),
      fc.constantFrom(...units),
      fc.constantFrom('g' as const, 'gr' as const),
      (hundredths, { sign, perUnit }, shown) => {
        const outcome = parseWeight(`${String(hundredths / 100)} ${sign}`);
        if (!outcome.ok) throw new Error(outcome.problem);
        const page = `${weightIn(outcome.value, shown)} ${shown === 'g' ? 'g' : 'grains'}`;
        if (/^0(?:\.0+)? /.test(page)) return;
        const again = parseWeight(page);
        expect(again.ok ? '' : `${page}: ${again.problem}`).toBe('');
        // Half a step of what is printed: a tenth of a grain at most, or a hundredth of a gram.
        if (again.ok) expect(Math.abs(again.value.grams - (hundredths / 100) * perUnit)).toBeLessThanOrEqual(0.033);
      },
    ),
    { numRuns: tries(300) },
  );
});
