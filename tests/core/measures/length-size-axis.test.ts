import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatAxis, parseAxis } from '../../../src/core/measures/parse-axis.ts';
import { formatLength, parseLength } from '../../../src/core/measures/parse-length.ts';
import { formatSize, parseSize, sizeSpan } from '../../../src/core/measures/parse-size.ts';
import type { Outcome } from '../../../src/core/outcome.ts';
import { commemoratives } from '../../published/metal-commemoratives.ts';
import { inches5112, lengthDefinitions } from '../../published/unit-definitions.ts';

function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

const problemOf = (outcome: Outcome<unknown>) => (outcome.ok ? '' : outcome.problem);

describe('lengths agree with the law', () => {
  test.for(lengthDefinitions)('$write is $millimetres mm ($source)', ({ write, millimetres }) => {
    expect(valueOf(parseLength(write)).low).toBeCloseTo(millimetres, 2);
  });

  test.for(inches5112)('$coin, $write, is $millimetres mm ($source)', ({ write, millimetres }) => {
    expect(Math.abs(valueOf(parseLength(write)).high - millimetres)).toBeLessThanOrEqual(0.005);
  });

  test.for(commemoratives)('$diameter is $millimetres mm ($gazette)', ({ diameter, millimetres }) => {
    expect(valueOf(parseSize(diameter))).toMatchObject({ shape: 'round', low: millimetres, high: millimetres });
  });
});

describe('lengths', () => {
  test('a precision becomes two ends', () => {
    expect(valueOf(parseLength('18.6 mm ± 0.1'))).toMatchObject({
      low: expect.closeTo(18.5, 9) as number,
      high: expect.closeTo(18.7, 9) as number,
    });
  });

  test.for([
    ['18.6', 'no unit'],
    ['19-18 mm', 'long to short'],
    ['1,205 mm', 'two ways'],
    ['0 mm', 'no length'],
    ['wide', 'not a length'],
  ] as const)('%s: %s', ([text, because]) => expect(problemOf(parseLength(text))).toContain(because));

  test('there and back, to a thousandth of a millimetre', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400_000 }), fc.integer({ min: 0, max: 20_000 }), (low, wider) => {
        const length = { low: low / 1000, high: (low + wider) / 1000 };
        const again = valueOf(parseLength(formatLength(length)));
        expect(again.low).toBeCloseTo(length.low, 6);
        expect(again.high).toBeCloseTo(length.high, 6);
      }),
    );
  });
});

test('an inch is twelve lines and 25.4 mm, whichever of them a length is written in', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4000 }), (thousandths) => {
      const inches = thousandths / 1000;
      const inInches = valueOf(parseLength(`${inches} in`)).low;
      expect(Math.abs(inInches - inches * 25.4)).toBeLessThanOrEqual(4 * Number.EPSILON * inInches);
      const inLines = valueOf(parseLength(`${(12 * thousandths) / 1000} lines`)).low;
      expect(Math.abs(inLines - inInches)).toBeLessThanOrEqual(8 * Number.EPSILON * inInches);
    }),
  );
});

describe('sizes', () => {
  test.for([
    ['18.2-19.4 mm', { width: 19.4, height: 19.4 }],
    ['9 x 24 mm', { width: 24, height: 9 }],
    ['9 mm × 24 mm', { width: 24, height: 9 }],
    ['diam. 18.6 mm', { width: 18.6, height: 18.6 }],
  ] as const)('%s takes the room of %o when drawn', ([text, room]) =>
    expect(sizeSpan(valueOf(parseSize(text)))).toEqual(room),
  );

  test('three measures ask for the thickness elsewhere', () => {
    expect(problemOf(parseSize('9 x 24 x 2 mm'))).toContain('thickness');
  });

  test('there and back', () => {
    const side = fc.integer({ min: 1, max: 99_999 }).map((thousandths) => thousandths / 1000);
    fc.assert(
      fc.property(side, side, (height, width) => {
        const size = { shape: 'rectangle', height, width, text: '' } as const;
        expect({ ...valueOf(parseSize(formatSize(size))), text: '' }).toEqual(size);
      }),
    );
  });
});

describe('die axes', () => {
  // Nomisma's axis is a whole number from 1 to 12.
  test('every hour comes back as itself', () => {
    for (let hours = 1; hours <= 12; hours++)
      expect(parseAxis(formatAxis({ hours }))).toEqual({ ok: true, value: { hours } });
    expect(parseAxis(formatAxis({ hours: null }))).toEqual({ ok: true, value: { hours: null } });
  });

  test.for([
    ['6', 6],
    ["6 o'clock", 6],
    ['180°', 6],
    ['0°', 12],
    ['90 deg', 3],
    ['↑↓', 6],
    ['↑ ↑', 12],
    ['coin alignment', 6],
    ['medal', 12],
  ] as const)('%s is %sh', ([text, hours]) => expect(valueOf(parseAxis(text)).hours).toBe(hours));

  test.for([
    ['13h', 'A die axis is a clock hour from 1h to 12h; this says "13h". Write 1h.'],
    ['0h', 'A die axis is a clock hour from 1h to 12h; this says "0h". Write 12h.'],
    ['200°', 'A die axis is kept to the hour of 30 degrees; "200°" lies between 6h and 7h. Write 7h.'],
  ] as const)('%s: %s', ([text, problem]) => expect(problemOf(parseAxis(text))).toBe(problem));
});
