import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatRarity, parseRarity, rarityOf } from '../../../src/core/rarity/parse-rarity.ts';
import { RARITY_SCALES } from '../../../src/core/rarity/scales.ts';
import { RARITY_CLASSES } from '../../published/rarity-scales.ts';

test.for(RARITY_CLASSES)('%s: of %s pieces the class is %s (%s)', ([scale, known, name]) => {
  expect(rarityOf(known, scale)).toMatchObject({ ok: true, value: { scale, class: name } });
});

test.for([
  ['American R-7', 'american', 'R-7'],
  ['R7 (American)', 'american', 'R-7'],
  ['URS 5', 'universal', null],
  ['R4 (RIC I)', 'ric-1', 'R4'],
  ['RIC II.1 R2', 'ric-2-1', 'R2'],
  ['letters RR', 'letters', 'RR'],
] as const)('%s names its scale', ([text, scale, name]) => {
  const outcome = parseRarity(text);
  if (name === null) expect(outcome.ok ? '' : outcome.problem).toContain('URS-5');
  else expect(outcome).toMatchObject({ ok: true, value: { scale, class: name } });
});

test('a class without a scale means nothing: R5 is unique in RIC I (1984) and 31 to 75 on the scale of 1949', () => {
  expect(parseRarity('R5')).toMatchObject({ ok: false });
  expect(parseRarity('R5', 'ric-1')).toMatchObject({ ok: true, value: { low: 1, high: 1 } });
  expect(parseRarity('R5', 'american')).toMatchObject({ ok: true, value: { low: 31, high: 75 } });
});

test.for([
  [() => rarityOf(0, 'american'), 'whole number from 1'],
  [() => rarityOf(2.5, 'american'), 'whole number from 1'],
  [() => rarityOf(5, 'brunetti'), 'No rarity scale'],
  [() => rarityOf(5, 'letters'), 'gives no class'],
  [() => rarityOf(500, 'ric-1'), 'gives no class'],
  [() => parseRarity('american R-9'), 'has no class'],
] as const)('refused %#: %s', ([ask, says]) => {
  const outcome = ask();
  expect(outcome.ok ? 'read' : outcome.problem).toContain(says);
});

test('every class goes there and back', () => {
  for (const { id, classes } of RARITY_SCALES)
    for (const { name, low, high } of classes)
      expect(parseRarity(formatRarity({ scale: id, class: name }))).toMatchObject({
        ok: true,
        value: { scale: id, class: name, low, high },
      });
});

test('the classes of a counted scale leave no number out and claim none twice, and fewer is never commoner', () => {
  for (const scale of ['american', 'universal', 'fuld']) {
    const classes = RARITY_SCALES.find(({ id }) => id === scale)?.classes ?? [];
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500_000 }), (known) => {
        const holding = classes.filter(
          ({ low, high }) => low !== null && low <= known && (high === null || known <= high),
        );
        expect(holding.length).toBe(1);
      }),
    );
  }
});
