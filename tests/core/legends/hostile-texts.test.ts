import fc from 'fast-check';
import { expect, test } from 'vitest';
import { matchMask } from '../../../src/core/legends/match-mask.ts';
import { normalLegend } from '../../../src/core/legends/normal-legend.ts';
import { parseLegend } from '../../../src/core/legends/parse-legend.ts';
import { suggestReading } from '../../../src/core/legends/suggest-reading.ts';
import { parseMoney } from '../../../src/core/money/money.ts';
import { parseRarity } from '../../../src/core/rarity/parse-rarity.ts';
import { parseReference } from '../../../src/core/references/parse-reference.ts';
import { processorMilliseconds } from '../cost-of.ts';
import { tries } from '../../tries.ts';

const SEEDS = [
  "+EDW R' ANGL' DNS hYB'",
  'T[RAIANVS HA]D(rianus)',
  'cf. north 223-5 var.',
  'American R-7',
  '£1,234.50',
  '5/6',
  'محمد … ٢٩٤',
];
const SPLICES = [
  '\u0000',
  '\u202E',
  '\uD800',
  '𝕬',
  '[[',
  ')(',
  '…'.repeat(9),
  '٣',
  '-',
  '9'.repeat(30),
  '__proto__',
  'ﷺ',
  '\n',
  '*',
  '?',
  '̂'.repeat(9),
  'constructor',
];

const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc
    .tuple(fc.constantFrom(...SEEDS), fc.nat(20), fc.nat(6), fc.constantFrom(...SPLICES))
    .map(([seed, at, gone, splice]) => seed.slice(0, at) + splice + seed.slice(at + gone)),
);

test('100,000 random and broken texts: no exception, and a refusal is always a sentence', () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const legend = parseLegend(text);
      if (legend.ok) suggestReading(legend.value);
      const outcomes = [
        legend,
        parseReference(text, []),
        parseReference(text, [{ id: text }]),
        parseRarity(text),
        parseMoney(text),
      ];
      for (const outcome of outcomes)
        if (!outcome.ok && !/^.{10,}\.$/su.test(outcome.problem)) expect.unreachable(outcome.problem);
      const { score } = matchMask(text.slice(0, 12), text);
      if (!(score >= 0 && score <= 1)) expect.unreachable(String(score));
      normalLegend(text);
    }),
    { numRuns: tries(100_000) },
  );
}, 120_000);

test.for([
  'A'.repeat(100_000),
  '['.repeat(100_000),
  ' '.repeat(100_000),
  '1,'.repeat(50_000),
  '…'.repeat(100_000),
  '£' + '1'.repeat(100_000),
  'a '.repeat(50_000),
  "'".repeat(100_000),
  'x 1'.repeat(30_000),
])('a text of 100,000 characters (%#) takes less than 50 milliseconds of processor', (text) => {
  // What grows with the square of the length would take seconds.
  for (const parse of [
    parseLegend,
    parseMoney,
    (long: string) => parseReference(long, []),
    (long: string) => parseRarity(long),
  ]) {
    expect(processorMilliseconds(() => void parse(text))).toBeLessThan(50);
  }
});
