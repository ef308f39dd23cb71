import { expect, test } from 'vitest';
import { matchMask } from '../../../src/core/legends/match-mask.ts';
import { parseLegend } from '../../../src/core/legends/parse-legend.ts';
import { LEGEND_EXAMPLES, MASK_EXAMPLES } from '../../../src/core/legends/legend-examples.ts';

/** What each row of the visitors' table says, as kinds of stretch that must be found in it. */
const SAYS: readonly (readonly [words: RegExp, kind: string])[] = [
  [/four parts/, 'break'],
  [/begins at a cross/, 'mark'],
  [/cut short/, 'stop'],
  [/a stop between/, 'stop'],
  [/are supplied/, 'restored'],
  [/never stood there/, 'expanded'],
  [/is lost/, 'lost'],
  [/second legend/, 'break'],
  [/right to left/, 'cut'],
];

test.for(LEGEND_EXAMPLES)('$write: $means', ({ write, means }) => {
  const outcome = parseLegend(write);
  const kind = SAYS.find(([words]) => words.test(means))?.[1];
  expect(outcome.ok ? outcome.value.parts.map((part) => part.kind) : outcome.problem).toContain(kind);
  expect(outcome.ok && outcome.value.direction === 'rtl').toBe(means.includes('right to left'));
});

test.for(MASK_EXAMPLES)('$write: $means', ({ write }) => {
  expect(matchMask(write, 'CIVI TAS EBO RACI').matches).toBe(true);
});
