import { expect, test } from 'vitest';
import { disagreements } from '../../../src/core/eras/disagreements.ts';
import type { Interval } from '../../../src/core/eras/era-scheme.ts';
import { placeInScheme } from '../../../src/core/eras/place-in-scheme.ts';
import { eraScheme } from '../../published/era-schemes.ts';

function over(intervals: Readonly<Record<string, Interval | null>>, ...ids: readonly string[]) {
  const schemes = ids.map(eraScheme);
  const pieces = Object.entries(intervals).map(([id, interval]) => ({
    id,
    eras: Object.fromEntries(schemes.map((scheme) => [scheme.id, placeInScheme(interval, scheme)])),
  }));
  return disagreements(pieces, schemes);
}

// Years of groats of Henry VIII's second coinage (J. J. North, English Hammered Coinage 2, from memory); bounds as published.
const groat = { low: 1526, high: 1544 };

test('three schemes that end the Middle Ages in different years disagree once about each name, with the years of each', () => {
  const found = over({ groat, 'another-groat': groat }, 'heritage-ages', 'arena-denmark', 'arena-norway');
  expect(found).toEqual([
    {
      name: 'Medieval',
      pieces: ['groat', 'another-groat'],
      claims: [
        { scheme: 'heritage-ages', says: '1066–1540' },
        { scheme: 'arena-denmark', says: '1050–1536' },
        { scheme: 'arena-norway', says: '1050–1537' },
      ],
    },
    {
      name: 'Post Medieval',
      pieces: ['groat', 'another-groat'],
      claims: [
        { scheme: 'heritage-ages', says: '1540–1901' },
        { scheme: 'arena-denmark', says: '1536–1660' },
        { scheme: 'arena-norway', says: 'after 1536' },
      ],
    },
  ]);
});

test('“Post-Medieval” and “Post Medieval” are one name', () => {
  const found = over({ groat }, 'finds-database', 'heritage-ages');
  expect(found.at(-1)).toEqual({
    name: 'Post-Medieval',
    pieces: ['groat'],
    claims: [
      { scheme: 'finds-database', says: '1500–1900' },
      { scheme: 'heritage-ages', says: '1540–1901' },
    ],
  });
});

test('schemes that know no common name disagree when one cuts through what the other holds whole', () => {
  expect(over({ groat }, 'heritage-ages', 'heritage-dynasties')).toEqual([
    {
      name: null,
      pieces: ['groat'],
      claims: [
        {
          scheme: 'heritage-ages',
          says: 'splits them between “Medieval” (1066–1540) and “Post Medieval” (1540–1901)',
        },
        { scheme: 'heritage-dynasties', says: 'places them in “Tudor” (1485–1603)' },
      ],
    },
  ]);
});

test('schemes that hold a piece whole under different names, and an undated piece, are no disagreement', () => {
  expect(over({ penny: { low: 1550, high: 1553 }, undated: null }, 'heritage-ages', 'netherlands')).toEqual([]);
});

test('a scheme that does not apply to a piece disagrees with none', () => {
  const [ages, denmark] = [eraScheme('heritage-ages'), eraScheme('arena-denmark')];
  const eras = {
    [ages.id]: placeInScheme(groat, ages),
    [denmark.id]: { state: 'not applicable' as const, periods: [] },
  };
  expect(disagreements([{ id: 'groat', eras }], [ages, denmark])).toEqual([]);
});

test('schemes that give a name the same years say how they count the years at its ends', () => {
  const found = over({ 'penny-of-1066': { low: 1066, high: 1066 } }, 'finds-database', 'heritage-ages');
  expect(found[0]).toEqual({
    name: 'Early Medieval',
    pieces: ['penny-of-1066'],
    claims: [
      { scheme: 'finds-database', says: 'AD 410–1066, its first and last year wholly in it' },
      { scheme: 'heritage-ages', says: 'AD 410–1066, each of its end years shared with the next period' },
    ],
  });
});

test('two schemes against a third over the same pieces are told once', () => {
  const found = over({ groat }, 'heritage-dynasties', 'netherlands', 'arena-denmark');
  expect(found.map(({ claims }) => claims.map(({ scheme }) => scheme))).toEqual([
    ['heritage-dynasties', 'netherlands', 'arena-denmark'],
  ]);
});
