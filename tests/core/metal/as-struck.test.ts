import { describe, expect, test } from 'vitest';
import { notAsStruck } from '../../../src/core/metal/fine-metal.ts';
import type { ToldOfMetal } from '../../../src/core/metal/fine-metal.ts';

const SOUND = { plated: false, mounted: false, lost: false };

/** What lists say of a piece whose weight is not that of one metal as struck. Common practice, every row. */
const TOLD: readonly (readonly [what: string, told: ToldOfMetal, found: Partial<typeof SOUND>])[] = [
  ['a denarius fourré', { metal: 'silver', treatments: ['fourrée'] }, { plated: true }],
  ['a forger’s plated penny', { metal: 'copper, silver-plated' }, { plated: true }],
  ['a penny plated from the start', { metal: 'copper', made: 'struck, plated' }, { plated: true }],
  ['a subaerate coin', { metal: 'silver', problem: 'subaerate' }, { plated: true }],
  ['a sixpence gilt to pass for a half sovereign', { metal: 'silver', treatments: ['gilt'] }, { plated: true }],
  ['a follis with its silver wash', { metal: 'bronze, silver wash' }, { plated: true }],
  ['a half crown in a brooch', { metal: 'silver', treatments: ['mounted as a brooch'] }, { mounted: true }],
  ['a sovereign with a loop', { metal: 'gold', problem: 'looped' }, { mounted: true }],
  ['a sovereign in a pendant', { metal: 'gold', treatments: ['set in a pendant'] }, { mounted: true }],
  ['an ex-mount penny', { metal: 'silver', problem: 'ex-mount' }, { lost: true }],
  ['traces of a mount', { metal: 'silver', problem: 'traces of mounting' }, { lost: true }],
  ['a loop that was removed', { metal: 'silver', problem: 'loop removed' }, { lost: true }],
  ['a clipped groat', { metal: 'silver', problem: 'clipped' }, { lost: true }],
  ['a love token with a hole', { metal: 'silver', treatments: ['pierced'] }, { lost: true }],
  ['a hole that was plugged', { metal: 'silver', problem: 'holed and plugged' }, { lost: true }],
  ['a cut half penny', { metal: 'silver', shape: 'cut half' }, { lost: true }],
  ['hacksilver', { metal: 'silver', treatments: ['test-cut', 'fragment'] }, { lost: true }],
  ['filed at the edge', { metal: 'gold', problem: 'edge filed' }, { lost: true }],
  ['gilt, pierced and mounted', { metal: 'silver', treatments: ['gilt', 'pierced', 'mounted'] }, { plated: true, mounted: true, lost: true }],
  ['an unclipped penny', { metal: 'silver', problem: 'cleaned', treatments: ['unclipped'] }, {}],
  ['a cleaned penny', { metal: 'silver', problem: 'cleaned' }, {}],
  ['a pecked penny: the metal is all there', { metal: 'silver', treatments: ['pecked', 'bent', 'countermarked'] }, {}],
  ['a round penny of which nothing else is said', { metal: 'silver', problem: null, shape: 'round', treatments: [] }, {}],
  ['nothing said at all', {}, {}],
]; // prettier-ignore

describe('whether a weight is that of one metal as it was struck', () => {
  test.for(TOLD)('%s', ([, told, found]) => {
    expect(notAsStruck(told)).toEqual({ ...SOUND, ...found });
  });
});
