import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalLegend } from '../../../src/core/legends/normal-legend.ts';
import { parseLegend } from '../../../src/core/legends/parse-legend.ts';
import { suggestReading } from '../../../src/core/legends/suggest-reading.ts';
import { MIXED_LETTERS, NO_READINGS, PUBLISHED_READINGS } from '../../published/legend-abbreviations.ts';
import { DIFFERENT_LEGENDS, SAME_LEGENDS } from '../../published/legend-pairs.ts';

test.for(SAME_LEGENDS)('$one and $other are one legend ($source)', ({ one, other }) => {
  expect(normalLegend(one)).toBe(normalLegend(other));
  expect(normalLegend(one)).not.toBe('');
});

test.for(DIFFERENT_LEGENDS)('$one and $other are two legends ($source)', ({ one, other }) => {
  expect(normalLegend(one)).not.toBe(normalLegend(other));
});

test.for([
  ["+EDW R' ANGL' DNS hYB'", 'EDVVRANGLDNSHYB'],
  ['IMP CAESAR T[RAIANVS HA]DRIANVS AVG(ustus)', 'IMPCAESARTRAIANVSHADRIANVSAVG'],
  ['OSBCHE[…]RE', 'OSBCHE…RE'],
  ['AИGL', 'ANGL'],
  ['EOFERÞIC', 'EOFERÞIC'],
] as const)('%s is compared as %s: the rules of the design, letter by letter', ([legend, normal]) => {
  expect(normalLegend(legend)).toBe(normal);
});

test('the normal form of a normal form is itself, in every script', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom(...Array.from('UVWJIÆŒÐǷÞabzΣςΩאךאéÅ12٣Ємحى')), maxLength: 20 }),
      (text) => {
        const normal = normalLegend(text);
        expect(normalLegend(normal)).toBe(normal);
      },
    ),
  );
});

test.for(PUBLISHED_READINGS)('$legend is read $reading ($source)', ({ legend, reading }) => {
  const outcome = parseLegend(legend);
  expect(outcome.ok ? suggestReading(outcome.value)?.text : outcome.problem).toBe(reading);
});

test.for(NO_READINGS)('of $legend no reading is proposed: $because', ({ legend }) => {
  const outcome = parseLegend(legend);
  expect(outcome.ok ? suggestReading(outcome.value) : outcome.problem).toBeNull();
});

test.for(MIXED_LETTERS)('%s is in the letters called %s', ([legend, script]) => {
  const outcome = parseLegend(legend);
  expect(outcome.ok ? outcome.value.script : outcome.problem).toBe(script);
});

test('BRIT is Britannicus on a Roman coin and Britanniae on a king’s (Stevenson 1889; Jewitt and Head 1886)', () => {
  const read = (text: string) => {
    const outcome = parseLegend(text);
    return outcome.ok ? suggestReading(outcome.value)?.text : outcome.problem;
  };
  expect(read('SEVERVS PIVS AVG BRIT')).toBe('Severus Pius Augustus Britannicus');
  expect(read('MAG BRIT REX')).toBe('Magnae Britanniae rex');
  expect(read('محمد')).toBeUndefined();
  // Libertas Augusti, Victoriae Britannicae: the case is another, so nothing is proposed.
  expect(read('LIBERTAS AVG')).toBeUndefined();
  expect(read('VICTORIAE BRIT')).toBeUndefined();
  // Rex Anglorum, not Angliae.
  expect(read('+HAROLD REX ANG')).toBeUndefined();
});
