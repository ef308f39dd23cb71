import { describe, expect, test } from 'vitest';
import { parseAxis } from '../../../src/core/measures/parse-axis.ts';
import { parseLength } from '../../../src/core/measures/parse-length.ts';
import { parseWeight } from '../../../src/core/measures/parse-weight.ts';
import { NOMISMA_COIN, NOMISMA_REIGNS } from '../../published/nomisma.ts';
import { readAs, readStrictly } from './read-as.ts';

/** A year before Christ is named by its own number in XML Schema 1.0, and by one less where there is a year 0. */
const astronomical = (gYear: string) => (gYear.startsWith('-') ? Number(gYear) + 1 : Number(gYear));

describe('the conventions of Nomisma.org', () => {
  test.for(NOMISMA_REIGNS)('$id: $printed in print is $start to $end there', ({ start, end, printed }) => {
    expect(readAs(printed)).toMatchObject({ earliest: astronomical(start), latest: astronomical(end) });
  });

  test('the same figures in EDTF are another year, so its years are not to be pasted into a date', () => {
    const before = NOMISMA_REIGNS.filter(({ start }) => start.startsWith('-'));
    expect(before.length).toBeGreaterThan(8);
    for (const { start } of before) expect(readStrictly(start).earliest).toBe(astronomical(start) - 1);
  });

  test('its axis is our clock hour, its weight our grams, its diameter our millimetres', () => {
    const { hasAxis, hasWeight, hasDiameter } = NOMISMA_COIN;
    expect(parseAxis(hasAxis)).toEqual({ ok: true, value: { hours: 6 } });
    for (let hours = 1; hours <= 12; hours += 1)
      expect(parseAxis(String(hours))).toEqual({ ok: true, value: { hours } });
    expect(parseWeight(`${hasWeight} g`)).toMatchObject({ ok: true, value: { grams: 2.86 } });
    expect(parseLength(`${hasDiameter} mm`)).toMatchObject({ ok: true, value: { low: 22, high: 22 } });
  });

  test('its bare decimals name no unit, and a bare number is asked about here', () => {
    expect(parseWeight(NOMISMA_COIN.hasWeight)).toMatchObject({ ok: false });
    expect(parseLength(NOMISMA_COIN.hasDiameter)).toMatchObject({ ok: false });
  });
});
