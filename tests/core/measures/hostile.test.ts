import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseGrade } from '../../../src/core/grade/parse-grade.ts';
import { parseAxis } from '../../../src/core/measures/parse-axis.ts';
import { parseLength } from '../../../src/core/measures/parse-length.ts';
import { parseSize } from '../../../src/core/measures/parse-size.ts';
import { parseWeight } from '../../../src/core/measures/parse-weight.ts';
import { parseFineness } from '../../../src/core/metal/parse-fineness.ts';
import { parseGravity } from '../../../src/core/metal/specific-gravity.ts';
import type { Outcome } from '../../../src/core/outcome.ts';
import { processorMilliseconds } from '../cost-of.ts';
import { tries } from '../../tries.ts';

const PARSERS: readonly (readonly [string, (text: string) => Outcome<unknown>])[] = [
  ['weight', parseWeight],
  ['length', parseLength],
  ['size', parseSize],
  ['axis', parseAxis],
  ['fineness', parseFineness],
  ['grade', (text) => parseGrade(text)],
  ['grade on the Nordic scale', (text) => parseGrade(text, { scale: 'nordic' })],
  ['gravity', (text) => parseGravity(text, text.slice(1), text)],
];

const SEEDS = [
  '1.38 g ± 0.01',
  '22 2/9 grains',
  '1 dwt 4½ gr',
  '1.42/1.45 g',
  '18.2-19.4 mm',
  '9 x 24 mm',
  '23 ct 3½ gr',
  '11 oz 2 dwt',
  'good VF/F',
  'MS-63+ RD',
  'EF details, cleaned',
  'ss-vz',
];
const PIECES = [
  '±',
  '/',
  '-',
  '–',
  ' ',
  '.',
  ',',
  '½',
  '(',
  ')',
  '0',
  '9',
  '999999999',
  'gr',
  'oz',
  'mm',
  'VF',
  '+',
  '"',
  '\u0000',
  '\u202e',
  '𐍈',
  'é',
  'constructor',
  '__proto__',
  '%',
];

const mutated = fc
  .tuple(
    fc.constantFrom(...SEEDS),
    fc.array(fc.tuple(fc.nat(20), fc.nat(3), fc.constantFrom(...PIECES)), { maxLength: 4 }),
  )
  .map(([seed, edits]) =>
    edits.reduce((text, [at, drop, put]) => text.slice(0, at) + put + text.slice(at + drop), seed),
  );
const shuffled = fc.array(fc.constantFrom(...PIECES, ...SEEDS), { maxLength: 40 }).map((parts) => parts.join(''));
const hostile = fc.oneof(fc.string({ unit: 'binary', maxLength: 60 }), mutated, shuffled);

/** Every number in a value that was read is finite, nothing negative is a measure, and no low end is above a high one. */
function sound(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value) && value >= 0;
  if (typeof value !== 'object' || value === null) return true;
  const { low, high } = value as { readonly low?: unknown; readonly high?: unknown };
  if (typeof low === 'number' && typeof high === 'number' && low > high) return false;
  return Object.values(value).every(sound);
}

describe('hostile text', () => {
  test.for(PARSERS)('%s: no exception, no unsound value, one sentence of refusal', ([, parse]) => {
    fc.assert(
      fc.property(hostile, (text) => {
        const outcome = parse(text);
        if (outcome.ok) return sound(outcome.value);
        return (
          /\.$/.test(outcome.problem) &&
          !/invalid|unexpected|undefined|null|NaN|schema/.test(outcome.problem.replace(/"[^"]*"+/g, ''))
        );
      }),
      { numRuns: tries(100_000) },
    );
  });

  test.for(PARSERS)('%s: no repetition takes five milliseconds of processor', ([, parse]) => {
    for (const piece of [...PIECES, ...SEEDS]) {
      for (const length of [80, 160, 20_000]) {
        const text = piece.repeat(20_000).slice(0, length);
        expect(processorMilliseconds(() => void parse(text))).toBeLessThan(5);
      }
    }
  });
});
