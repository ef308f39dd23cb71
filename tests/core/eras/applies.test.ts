import { expect, test } from 'vitest';
import { schemeApplies, placePiece } from '../../../src/core/eras/place-in-scheme.ts';
import type { Whereabouts } from '../../../src/core/eras/place-in-scheme.ts';
import { namesInArea } from '../../../src/core/sets/facts.ts';
import { eraScheme } from '../../published/era-schemes.ts';

// Which place lies in which is geography; that a scheme for finds covers what was found and not what was struck elsewhere is common practice.
const within = [
  { name: 'North Riding', in: 'Yorkshire' },
  { name: 'Yorkshire', in: 'England' },
];
const made = (mint: string, area: string | null, sure: 'certain' | 'probable' | 'possible' = 'certain') => ({
  mint,
  area,
  sure,
});

test.for([
  { of: 'a penny of York', made: made('york', 'Yorkshire, England'), found: null, applies: 'yes' },
  {
    of: 'an as of Rome found in Yorkshire',
    made: made('rome', 'Latium, Italy'),
    found: 'North Riding',
    applies: 'yes',
  },
  { of: 'a denarius of Rome without a find', made: made('rome', 'Latium, Italy'), found: null, applies: 'no' },
  { of: 'a dirham of Baghdad', made: made('baghdad', 'Mesopotamia, now Iraq'), found: null, applies: 'no' },
  { of: 'a dirham of Baghdad found in Gotland', made: made('baghdad', 'Iraq'), found: 'Gotland', applies: 'no' },
  { of: 'a penny perhaps of York', made: made('york', 'England', 'possible'), found: null, applies: 'perhaps' },
  { of: 'a piece perhaps of Dublin', made: made('dublin', 'Ireland', 'possible'), found: null, applies: 'perhaps' },
  { of: 'a penny probably of York', made: made('york', 'England', 'probable'), found: null, applies: 'yes' },
  { of: 'a mint without an area', made: made('nowhere', null), found: null, applies: 'perhaps' },
  { of: 'a token of no known mint', made: null, found: null, applies: 'perhaps' },
  { of: 'a token of no known mint found in England', made: null, found: 'Yorkshire', applies: 'yes' },
] as const)('a scheme for England and $of: $applies', ({ made: from, found, applies }) => {
  expect(schemeApplies(['England'], { made: from, found }, within)).toBe(applies);
});

test('a scheme may name a mint, whatever country its area is in', () => {
  const calais = { made: made('calais', 'Pas-de-Calais, France; English from 1347 to 1558'), found: null };
  expect(schemeApplies(['England'], calais)).toBe('no');
  expect(schemeApplies(['England', 'calais'], calais)).toBe('yes');
});

test('an area is read from the narrow to the wide', () => {
  expect(namesInArea('Northumberland, now Tyne and Wear, England')).toEqual([
    'Northumberland, now Tyne and Wear, England',
    'Northumberland',
    'Tyne and Wear',
    'England',
  ]);
});

test('a piece has no period in a scheme that does not apply, and may have one where that is not known', () => {
  const scheme = { ...eraScheme('finds-database'), appliesTo: ['England'] };
  const years = { low: 810, high: 811 };
  expect(placePiece(years, { made: made('baghdad', 'Iraq'), found: null }, scheme)).toEqual({
    state: 'not applicable',
    periods: [],
  });
  expect(placePiece(years, { made: null, found: null }, scheme)).toMatchObject({ state: 'within', applies: 'perhaps' });
  expect(placePiece(null, { made: null, found: null }, scheme)).toEqual({ state: 'unknown', periods: [] });
  expect(placePiece(years, { made: made('baghdad', 'Iraq'), found: null }, eraScheme('finds-database')).state).toBe(
    'within',
  );
});

test('a mint that is only possible is no doubt about a coin of a ruler whom the scheme names', () => {
  const { periods, ...rest } = eraScheme('finds-database');
  const scheme = {
    ...rest,
    appliesTo: ['England'],
    periods: periods.map((one) => (one.id === 'early-medieval' ? { ...one, rulers: ['aldfrith'] } : one)),
  };
  const of = (from: Whereabouts['made']) =>
    placePiece({ low: 685, high: 704 }, { made: from, found: null, rulers: ['aldfrith'] }, scheme);
  expect(of(made('york', 'England', 'possible'))).toMatchObject({ by: 'ruler' });
  expect(of(made('york', 'England', 'possible')).applies).toBeUndefined();
  expect(of(null).applies).toBe('perhaps');
});
