import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatCrop, parseCrop } from '../../src/catalogue/crop.ts';

describe('the box round a piece in its photograph', () => {
  test.for([
    ['120 80 900 900 px', { left: 120, top: 80, width: 900, height: 900, unit: 'px' }],
    [' 120, 80, 900, 900px ', { left: 120, top: 80, width: 900, height: 900, unit: 'px' }],
    ['10 8.5 60 60 %', { left: 10, top: 8.5, width: 60, height: 60, unit: '%' }],
  ] as const)('"%s" is read', ([text, value]) => {
    expect(parseCrop(text)).toEqual({ ok: true, value });
  });

  test.for([
    ['120 80 900 px', 'four figures'],
    ['120 80 900 900', 'px or %'],
    ['-3 80 900 900 px', 'four figures'],
    ['120 80 0 900 px', 'nothing wide'],
    ['50 8 60 60 %', 'beyond the picture'],
    ['', 'Write 120 80 900 900 px.'],
  ] as const)('"%s" is asked about', ([text, says]) => {
    const outcome = parseCrop(text);
    expect(outcome.ok ? '' : outcome.problem).toContain(says);
  });

  test('there and back', () => {
    const half = fc.integer({ min: 1, max: 500 }).map((tenths) => tenths / 10);
    const whole = fc.integer({ min: 1, max: 20_000 });
    const crops = fc.oneof(
      fc.record({ left: half, top: half, width: half, height: half, unit: fc.constant('%' as const) }),
      fc.record({ left: whole, top: whole, width: whole, height: whole, unit: fc.constant('px' as const) }),
    );
    fc.assert(
      fc.property(crops, (crop) => {
        expect(parseCrop(formatCrop(crop))).toEqual({ ok: true, value: crop });
      }),
    );
  });
});
