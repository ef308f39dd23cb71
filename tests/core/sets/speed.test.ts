import process from 'node:process';
import { expect, test } from 'vitest';
import { countSet } from '../../../src/core/sets/count-set.ts';
import type { SetPiece } from '../../../src/core/sets/set-piece.ts';
import type { Lists, SetRule } from '../../../src/core/sets/set-rule.ts';
import { LISTS, penny, rule } from './pieces.ts';

/** Numbers without a pattern, the same each time (Lehmer's generator with the multiplier 48271). */
function sequence(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
}

/** Milliseconds of the processor for one count, the better of two: what else a machine is busy with is not the count's doing. */
function timeOf(of: SetRule, pieces: readonly SetPiece[], lists: Lists): number {
  const once = (): number => {
    const begun = process.cpuUsage();
    expect(countSet(of, pieces, lists).ok).toBe(true);
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1000;
  };
  return Math.min(once(), once());
}

test('2,000 pieces by 500 mints are counted within a second', () => {
  const next = sequence(7);
  const mints = Array.from({ length: 500 }, (_, at) => ({ id: `mint-${String(at)}`, name: `Mint ${String(at)}` }));
  const pieces = Array.from({ length: 2000 }, (_, at) => {
    const low = next(70) + 1;
    return penny(`piece-${String(at)}`, {
      mint: `mint-${String(next(500))}`, grade: { low, high: Math.min(70, low + next(10)) },
      sure: next(5) === 0 ? { mint: 'probable' } : {}, details: next(8) === 0, acquired: 1980 + next(45),
    }); // prettier-ignore
  });
  expect(timeOf(rule({}), pieces, { ...LISTS, mints })).toBeLessThan(1000);
});

test('2,000 pieces by 500 years, most of them of several years, are counted within a second', () => {
  const next = sequence(11);
  const pieces = Array.from({ length: 2000 }, (_, at) => {
    const low = 1400 + next(500);
    return penny(`piece-${String(at)}`, {
      interval: { low, high: low + next(4) },
      grade: { low: next(70), high: 70 },
      acquired: 1980 + next(45),
    });
  });
  expect(timeOf(rule({ 'one-per': 'date', where: { date: { low: 1400, high: 1899 } } }), pieces, LISTS)).toBeLessThan(
    1000,
  );
});
