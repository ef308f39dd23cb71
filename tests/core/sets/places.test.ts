import { describe, expect, test } from 'vitest';
import { countSet } from '../../../src/core/sets/count-set.ts';
import { fits } from '../../../src/core/sets/fits.ts';
import { placesOf } from '../../../src/core/sets/places.ts';
import type { Lists, SetRule } from '../../../src/core/sets/set-rule.ts';
import { ENGLISH_RULERS } from '../../published/english-rulers.ts';
import { ADDED_BY_1301, MINTS_OF_1279, OPEN_BY_1281 } from '../../published/recoinage-of-1279-mints.ts';
import { LISTS, penny, rule } from './pieces.ts';

const PUBLISHED: Lists = {
  rulers: ENGLISH_RULERS.map((ruler) => ({
    id: ruler.id,
    name: ruler.name,
    realm: 'England',
    reigns: ruler.reigns.map(([low, high]) => ({ low, high, coins: !('coins' in ruler) })),
  })),
  mints: MINTS_OF_1279.map(({ id, name, struck }) => ({
    id,
    name,
    struck: struck.map(([low, high]) => ({ low, high })),
  })),
};

function idsOf(of: Partial<SetRule>, lists: Lists = PUBLISHED): readonly string[] {
  const places = placesOf(rule(of), lists);
  return places.ok ? places.value.map(({ id }) => id) : [places.problem];
}

describe('places that the rule yields from the list files', () => {
  test('every mint that struck from 1279 to 1281, and with the second wave from 1279 to 1307', () => {
    expect(idsOf({ where: { date: { low: 1279, high: 1281 } } })).toEqual(OPEN_BY_1281);
    expect(idsOf({ where: { date: { low: 1279, high: 1307 } } })).toEqual([...OPEN_BY_1281, ...ADDED_BY_1301].sort());
  });
  test('every ruler of England with coins from 1461 to 1485, each once though two of them returned', () => {
    expect(idsOf({ 'one-per': 'ruler', where: { realm: ['England'], date: { low: 1462, high: 1484 } } })).toEqual([
      'henry-vi', 'edward-iv', 'edward-v', 'richard-iii',
    ]); // prettier-ignore
  });
  test('joint rulers have a place each, and a reign without coins none', () => {
    const of = { 'one-per': 'ruler', where: { date: { low: 1553, high: 1558 } } } as const;
    expect(idsOf(of)).toEqual(['edward-vi', 'mary-i', 'philip-of-spain', 'elizabeth-i']);
  });
  test('every year, and there is no year 0', () => {
    expect(idsOf({ 'one-per': 'date', where: { date: { low: -1, high: 2 } } })).toEqual(['2-bc', '1-bc', '1', '2']);
  });
  test('every area of the mints, once', () => {
    expect(idsOf({ 'one-per': 'area' }, LISTS)).toEqual(['england', 'yorkshire']);
  });
  test('not: keeps a ruler or a mint out', () => {
    expect(idsOf({ where: { date: { low: 1279, high: 1281 }, not: { mint: OPEN_BY_1281.slice(1) } } })).toEqual([
      'bristol',
    ]);
  });
});

describe('what cannot be a set is refused in a sentence', () => {
  const refused: readonly (readonly [Partial<SetRule>, RegExp])[] = [
    [{ 'one-per': 'ruler', where: { realm: ['Atlantis'] } }, /yields no place: no ruler in rulers\/ answers it\. Widen where:/],
    [{ where: { date: { low: 1900, high: 1910 } } }, /yields no place: no mint in mints\//],
    [{ 'one-per': 'reference' }, /one per reference, which no list file can yield\. Write its places out/],
    [{ 'one-per': 'listed' }, /Write its places out under places:/],
    [{ 'one-per': 'date' }, /Say from when to when: where: \{ date: 1838\/1901 \}/],
    [{ 'one-per': 'date', where: { date: { low: 0, high: 1999 } } }, /would have 2000 places/],
    [{ places: [] }, /has no place/],
    [{ places: [{ is: 'york' }, { is: 'york' }] }, /names the place york twice/],
    [{ places: [{ is: 'jorvik' }] }, /there is no mints\/jorvik\.yaml\. Add the file, or write \{ is: jorvik/],
    [{ 'one-per': 'ruler', places: [{ is: 'offa' }] }, /there is no rulers\/offa\.yaml/],
    [{ 'one-per': 'date', places: [{ is: 'first-year' }] }, /is no year\. Write 1887 or 44-bc/],
    [{ 'one-per': 'listed', places: [{ is: 'oddity' }] }, /does not say what fills the place oddity/],
    [{ where: { mint: ['york'] }, places: [{ is: 'l', where: { mint: ['london'] } }] }, /the mint is to be london, and the whole set asks for york/],
    [{ where: { mint: ['york'] }, places: [{ is: 'london' }] }, /Nothing can fill the place london of “Set”: the mint is to be london, and the whole set asks for york\. Change one/],
    [{ 'one-per': 'date', where: { date: { low: 1696, high: 1698 } }, places: [{ is: '1850' }] }, /place 1850 of “Set”: the date is 1850, and the whole set asks for 1696–1698/],
    [{ places: [{ is: 'l', where: { mint: ['york'], not: { mint: ['york'] } } }] }, /which the place itself shuts out under not:/],
    [{ where: { mint: ['york'] }, places: [{ is: 'l', where: { not: { mint: ['york', 'london'] } } }] }, /the mint is to be york, which the place shuts out under not:/],
    [{ where: { ruler: ['edward-i'], not: { ruler: ['Edward I'] } } }, /Nothing can be in “Set”: the ruler is to be edward-i, which the same rule shuts out under not:\. Change one/],
    [{ where: { not: { issuer: ['Abbot'] } }, places: [{ is: 'l', where: { issuer: ['abbot'] } }] }, /shuts out under not:/],
    [{ where: { date: { low: 1279, high: 1281 } }, places: [{ is: 'l', where: { date: { low: 1300, high: 1301 } } }] }, /the date is 1300–1301, and the whole set asks for 1279–1281/],
  ]; // prettier-ignore
  test.for(refused)('%o', ([of, problem]) => {
    const state = countSet(rule(of), [penny('piece')], PUBLISHED);
    expect(state.ok ? 'counted' : state.problem).toMatch(problem);
  });
  test('a mint whose file does not say when it struck, where the rule must know', () => {
    const mints = ['a', 'b', 'c', 'd'].map((id) => ({ id, name: id }));
    const problem = idsOf({ where: { date: { low: 1279, high: 1281 } } }, { rulers: [], mints });
    expect(problem).toEqual([
      expect.stringMatching(
        /4 of 4 mints have no time of striking \(a, b, c and 1 more\), .* Add struck: to their files/,
      ),
    ]);
  });
  test('a ruler whose file gives no reign or no realm, where the rule must know: how many, and which', () => {
    const named = (id: string) => ({ id, name: id, realm: 'England', reigns: [] });
    const rulers = [...['a', 'b', 'c', 'd'].map(named), { ...named('e'), reigns: [{ low: 1279, high: 1300 }] }];
    const dated = { 'one-per': 'ruler', where: { date: { low: 1279, high: 1281 } } } as const;
    expect(idsOf(dated, { rulers, mints: [] })).toEqual([
      expect.stringMatching(/4 of 5 rulers have no reign \(a, b, c and 1 more\), .* or write the places out/),
    ]);
    // Without a date there is nothing to know: each has a place.
    expect(idsOf({ 'one-per': 'ruler' }, { rulers, mints: [] })).toEqual(['e', 'a', 'b', 'c', 'd']);
    const stateless = [{ id: 'x', name: 'x', reigns: [{ low: 1279, high: 1300 }] }];
    expect(idsOf({ 'one-per': 'ruler', where: { realm: ['England'] } }, { rulers: stateless, mints: [] })).toEqual([
      expect.stringMatching(/1 of 1 rulers has no realm \(x\)/),
    ]);
  });
  test('a mint without an area, where the rule must know', () => {
    const mints = [
      { id: 'york', name: 'York', area: 'Yorkshire' },
      { id: 'b', name: 'b' },
    ];
    expect(idsOf({ 'one-per': 'area' }, { rulers: [], mints })).toEqual([
      expect.stringMatching(/1 of 2 mints has no area \(b\)/),
    ]);
  });
  test('a die without its face', () => {
    const state = countSet(rule({ 'one-per': 'die', places: [{ is: 'a1' }] }), [], LISTS);
    expect(state.ok ? 'counted' : state.problem).toContain('Write obverse a1, or reverse a1');
  });
});

describe('areas and realms lie within wider ones, and change their names', () => {
  const lists: Lists = {
    rulers: [
      { id: 'offa', name: 'Offa', realm: 'Mercia', reigns: [{ low: 757, high: 796 }] },
      {
        id: 'george-iii', name: 'George III', realm: 'Great Britain',
        // Union with Ireland Act 1800: from 1 January 1801 the United Kingdom of Great Britain and Ireland.
        reigns: [{ low: 1760, high: 1800 }, { low: 1801, high: 1820, realm: 'United Kingdom' }],
      },
    ],
    mints: [{ id: 'durham', name: 'Durham', area: 'County Durham' }, { id: 'berwick', name: 'Berwick', area: 'Scotland' }],
    areas: [{ name: 'County Durham', in: 'England' }, { name: 'England', in: 'Great Britain' }],
    realms: [{ name: 'Mercia', in: 'England' }],
  }; // prettier-ignore
  test('a rule draws places from all that lie within', () => {
    expect(idsOf({ where: { area: ['England'] } }, lists)).toEqual(['durham']);
    expect(idsOf({ where: { area: ['great britain'] } }, lists)).toEqual(['durham']);
    expect(idsOf({ 'one-per': 'ruler', where: { realm: ['England'] } }, lists)).toEqual(['offa']);
  });
  test('a realm is that of its time', () => {
    const of = (realm: string, low: number, high: number) =>
      idsOf({ 'one-per': 'ruler', where: { realm: [realm], date: { low, high } } }, lists);
    expect(of('United Kingdom', 1801, 1837)).toEqual(['george-iii']);
    expect(of('Great Britain', 1780, 1790)).toEqual(['george-iii']);
    expect(of('United Kingdom', 1780, 1790)).toEqual([expect.stringContaining('yields no place')]);
  });
  test.for([
    [{ mint: 'durham', rulers: [] }, { area: ['England'] }, 'certain'],
    [{ mint: 'berwick', rulers: [] }, { area: ['England'] }, 'no'],
    [{ mint: 'durham', rulers: [] }, { not: { area: ['England'] } }, 'no'],
    [{ rulers: ['offa'] }, { realm: ['England'] }, 'certain'],
    [{ rulers: ['george-iii'], interval: { low: 1790, high: 1790 } }, { realm: ['United Kingdom'] }, 'no'],
    [{ rulers: ['george-iii'], interval: { low: 1810, high: 1810 } }, { realm: ['United Kingdom'] }, 'certain'],
    [{ rulers: ['george-iii'], interval: { low: 1799, high: 1805 } }, { realm: ['United Kingdom'] }, 'possible'],
  ] as const)('%o against %o: %s', ([facts, where, level]) => {
    const place = { id: 'place', label: 'Place', where };
    expect(fits(penny('piece', facts), place, rule({ 'one-per': 'listed' }), lists).level).toBe(level);
  });
});

test('an excused place needs no file, keeps its reason, and is not among those to fill', () => {
  const state = countSet(
    rule({ places: [{ is: 'london' }, { is: 'nowhere', label: 'Nowhere', excused: 'never opened' }] }),
    [],
    LISTS,
  );
  expect(state).toMatchObject({ ok: true, value: { of: 1, excused: 1, filled: { low: 0, high: 0 } } });
  expect(state.ok && state.value.places[1]).toEqual({
    id: 'nowhere',
    label: 'Nowhere',
    state: 'excused',
    because: 'never opened',
  });
});
