import { expect, test } from 'vitest';
import { formatImprovement, improvementsOf } from '../../src/catalogue/improvements.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { changed, markedCabinet } from './small-cabinet.ts';

const PIECE = 'pieces/plain-penny/piece.md';
const wantsOf = async (write: (text: string) => string): Promise<readonly string[]> => {
  const { records } = readCabinet(changed(await markedCabinet(), { [PIECE]: write }));
  return improvementsOf(records)
    .filter(({ pieces }) => pieces.includes('plain-penny'))
    .map(({ wanted }) => wanted);
};

test.for([
  ['weight', /^weight:.*\n/m],
  ['diameter', /^diameter:.*\n/m],
  ['grade', /^grade:.*\n/m],
  ['reference', /^references:.*\n/m],
  ['die axis', /^axis:.*\n/m],
  ['date', /^date:.*\n/m],
] as const)('a piece that loses its %s wants it', async ([wanted, line]) => {
  expect(await wantsOf((text) => text)).not.toContain(wanted);
  expect(await wantsOf((text) => text.replace(line, ''))).toContain(wanted);
});

test('what was looked for and is not known is not asked for again', async () => {
  expect(await wantsOf((text) => text.replace(/^weight:.*$/m, 'weight: unknown'))).not.toContain('weight');
});

test('what a sheet said and could not be read is asked for, once it is there', async () => {
  const wanted = 'reading yet of what stands under as-written';
  expect(await wantsOf((text) => text)).not.toContain(wanted);
  expect(await wantsOf((text) => text.replace(/^kind:/m, 'as-written: { weight: "about 1,4" }\nkind:'))).toContain(
    wanted,
  );
});

test('an ingot is not asked for a grade or a die axis', async () => {
  const ingot = (text: string) => text.replace(/^kind:.*$/m, 'kind: ingot').replace(/^(grade|axis).*\n/gm, '');
  const wants = await wantsOf(ingot);
  expect(wants).not.toContain('grade');
  expect(wants).not.toContain('die axis');
});

test('what would be gained most comes first, and the sentence counts', async () => {
  const { records } = readCabinet(await markedCabinet());
  const [first] = improvementsOf(records);
  expect(first?.wanted).toBe('photograph');
  expect(formatImprovement({ wanted: 'weight', why: 'why', pieces: ['a', 'b', 'c'], of: 7 }, 2)).toBe(
    '3 of 7 pieces have no weight: why.\n  a, b and 1 more',
  );
});
