import type { Graded } from '../../../src/core/grade/compare-grades.ts';
import type { SetPiece } from '../../../src/core/sets/set-piece.ts';
import type { Lists, SetRule } from '../../../src/core/sets/set-rule.ts';

/** A sound penny of Edward I, kept, of 1280, with nothing else recorded. */
export function penny(id: string, facts: Partial<SetPiece> = {}): SetPiece {
  return {
    id,
    kind: 'coin',
    status: 'kept',
    rulers: ['edward-i'],
    struckFor: [],
    denomination: 'penny',
    interval: { low: 1280, high: 1280 },
    references: [],
    tags: [],
    altered: false,
    details: false,
    grade: null,
    sure: {},
    ...facts,
  };
}

/** A grade that is known by its steps alone. */
export function onSteps(low: number, high = low): Graded {
  return { words: '', low, high, mappings: [] };
}

export function graded(low: number, high = low): { grade: { low: number; high: number } } {
  return { grade: { low, high } };
}

export const LISTS: Lists = {
  rulers: [
    { id: 'edward-i', name: 'Edward I', realm: 'England', reigns: [{ low: 1272, high: 1307 }] },
    { id: 'edward-iv', name: 'Edward IV', realm: 'England', reigns: [{ low: 1461, high: 1470 }, { low: 1471, high: 1483 }] },
    { id: 'henry-vi', name: 'Henry VI', realm: 'England', reigns: [{ low: 1422, high: 1461 }, { low: 1470, high: 1471 }] },
    { id: 'jane', name: 'Jane', realm: 'England', reigns: [{ low: 1553, high: 1553, coins: false }] },
    { id: 'mary-i', name: 'Mary I', realm: 'England', reigns: [{ low: 1553, high: 1558 }] },
    { id: 'philip-of-spain', name: 'Philip', realm: 'England', reigns: [{ low: 1554, high: 1558 }] },
    { id: 'alexander-iii', name: 'Alexander III', realm: 'Scotland', reigns: [{ low: 1249, high: 1286 }] },
  ],
  mints: [
    { id: 'london', name: 'London', area: 'England', struck: [{ low: 1158, high: 1975 }] },
    { id: 'york', name: 'York', area: 'Yorkshire', struck: [{ low: 1279, high: 1281 }, { low: 1300, high: 1301 }] },
    { id: 'bristol', name: 'Bristol', area: 'England', struck: [{ low: 1279, high: 1281 }, { low: 1300, high: 1301 }] },
    { id: 'exeter', name: 'Exeter', area: 'England', struck: [{ low: 1300, high: 1301 }] },
    { id: 'reading', name: 'Reading', area: 'England', struck: [{ low: 1338, high: 1351 }] },
  ],
}; // prettier-ignore

export function rule(of: Partial<SetRule>): SetRule {
  return { id: 'set', title: 'Set', 'one-per': 'mint', where: {}, ...of };
}
