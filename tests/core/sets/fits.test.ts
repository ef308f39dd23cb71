import { describe, expect, test } from 'vitest';
import { fits } from '../../../src/core/sets/fits.ts';
import type { SetPiece } from '../../../src/core/sets/set-piece.ts';
import type { SetPlace } from '../../../src/core/sets/places.ts';
import type { SetRule, Where } from '../../../src/core/sets/set-rule.ts';
import { LISTS, penny, rule } from './pieces.ts';

const YORK: Where = { mint: ['york'] };

function fitOf(facts: Partial<SetPiece>, where: Where, of: Partial<SetRule> = {}) {
  const place: SetPlace = { id: 'place', label: 'Place', where };
  return fits(penny('piece', facts), place, rule(of), LISTS);
}

/** The rules of DESIGN, a row for each: what the piece is, what the place asks, how the piece fits. */
const rows: readonly { says: string; facts: Partial<SetPiece>; where?: Where; of?: Partial<SetRule>; level: string }[] = [
  { says: 'a plain piece fits its mint', facts: { mint: 'york' }, level: 'certain' },
  { says: 'a piece of another mint does not', facts: { mint: 'london' }, level: 'no' },
  { says: 'one of several values will do', facts: { mint: 'york' }, where: { mint: ['london', 'york'] }, level: 'certain' },
  { says: 'a probable mint is possible', facts: { mint: 'york', sure: { mint: 'probable' } }, level: 'possible' },
  { says: 'a probable mint is nothing where only certain pieces count', facts: { mint: 'york', sure: { mint: 'probable' } }, of: { accept: { uncertain: 'no' } }, level: 'no' },
  { says: 'doubt about another statement changes nothing', facts: { mint: 'york', sure: { metal: 'possible' } }, level: 'certain' },
  { says: 'a piece of doubtful kind is possible', facts: { mint: 'york', sure: { kind: 'probable' } }, level: 'possible' },
  { says: 'a mint not recorded is no fit', facts: {}, level: 'no' },
  { says: 'a date wholly inside fits', facts: { interval: { low: 1279, high: 1281 } }, where: { date: { low: 1279, high: 1307 } }, level: 'certain' },
  { says: 'a date partly inside is possible', facts: { interval: { low: 1275, high: 1280 } }, where: { date: { low: 1279, high: 1307 } }, level: 'possible' },
  { says: 'a date outside is none', facts: { interval: { low: 1272, high: 1278 } }, where: { date: { low: 1279, high: 1307 } }, level: 'no' },
  { says: 'a date without an end is possible', facts: { interval: { low: 1280, high: Infinity } }, where: { date: { low: 1279, high: 1307 } }, level: 'possible' },
  { says: 'one of two years, neither inside, is none, though the years between are', facts: { interval: { low: 1270, high: 1310, alternatives: [{ low: 1270, high: 1270 }, { low: 1310, high: 1310 }] } }, where: { date: { low: 1279, high: 1307 } }, level: 'no' },
  { says: 'a piece whose kind nobody has said is in no set of coins', facts: { kind: 'unknown' }, where: { kind: ['coin'] }, level: 'no' },
  { says: 'a piece whose kind nobody has said may be genuine', facts: { mint: 'york', kind: 'unknown' }, level: 'possible' },
  { says: 'not: shuts out what it names', facts: { mint: 'york', issuer: 'Archbishop of York' }, where: { ...YORK, not: { issuer: ['Archbishop of York'] } }, level: 'no' },
  { says: 'not: lets the rest in', facts: { mint: 'york', issuer: 'The king' }, where: { ...YORK, not: { issuer: ['Archbishop of York'] } }, level: 'certain' },
  { says: 'not: cannot be sure of a mint that nobody wrote down', facts: {}, where: { not: { mint: ['london'] } }, level: 'possible' },
  { says: 'not: cannot be sure of a doubtful mint', facts: { mint: 'york', sure: { mint: 'possible' } }, where: { not: { mint: ['london'] } }, level: 'possible' },
  { says: 'not: a tag that is absent is absent', facts: {}, where: { not: { tag: ['holed'] } }, level: 'certain' },
  { says: 'words in capitals and small letters are one value', facts: { metal: 'Silver' }, where: { metal: ['silver'] }, level: 'certain' },
  { says: 'a realm is that of the ruler', facts: {}, where: { realm: ['england'] }, level: 'certain' },
  { says: 'another realm is another', facts: {}, where: { realm: ['Scotland'] }, level: 'no' },
  { says: 'an area is that of the mint', facts: { mint: 'york' }, where: { area: ['yorkshire'] }, level: 'certain' },
  { says: 'an area is written from the narrow to the wide', facts: { area: 'Yorkshire, England' }, where: { area: ['England'] }, level: 'certain' },
  { says: 'an area that was renamed has both names', facts: { area: 'Northumberland, now Tyne and Wear, England' }, where: { area: ['tyne-and-wear'] }, level: 'certain' },
  { says: 'and lies in no other', facts: { area: 'Yorkshire, England' }, where: { area: ['Scotland'] }, level: 'no' },
  { says: 'an area is as doubtful as the mint', facts: { mint: 'york', sure: { mint: 'probable' } }, where: { area: ['Yorkshire'] }, level: 'possible' },
  { says: 'a reference is work and number', facts: { references: [{ work: 'north', number: '1018/1', relation: 'is' }] }, where: { references: ['north 1018/1'] }, level: 'certain' },
  { says: 'a near reference is possible', facts: { references: [{ work: 'north', number: '1018', relation: 'cf.' }] }, where: { references: ['north 1018'] }, level: 'possible' },
  { says: 'an unlisted piece has no number', facts: { references: [{ work: 'north', number: '1018', relation: 'unlisted' }] }, where: { references: ['north 1018'] }, level: 'no' },
  { says: 'a die is either face', facts: { dies: { obverse: 'A1', reverse: 'b3' } }, where: { die: ['reverse-b3'] }, level: 'certain' },
  { says: 'a pair of dies is both faces', facts: { dies: { obverse: 'A1', reverse: 'b3' } }, where: { die: ['a1-b3'] }, level: 'certain' },
  { says: 'struck for somebody else does not count for him by the name on it', facts: { rulers: ['henry-ii'], struckFor: ['john'] }, where: { ruler: ['john'] }, level: 'no' },
  { says: 'struck for somebody else counts for him by struck-for', facts: { rulers: ['henry-ii'], struckFor: ['john'] }, where: { 'struck-for': ['john'] }, level: 'certain' },
  { says: 'struck for nobody else counts for the ruler named', facts: {}, where: { 'struck-for': ['edward-i'] }, level: 'certain' },
  { says: 'a lent piece fills', facts: { mint: 'york', status: 'lent' }, level: 'certain' },
  { says: 'a sold piece does not', facts: { mint: 'york', status: 'sold' }, level: 'no' },
  { says: 'a given piece does not', facts: { mint: 'york', status: 'given' }, level: 'no' },
  { says: 'an exchanged piece does not', facts: { mint: 'york', status: 'exchanged' }, level: 'no' },
  { says: 'a lost piece does not', facts: { mint: 'york', status: 'lost' }, level: 'no' },
  { says: 'a counterfeit does not', facts: { mint: 'york', kind: 'counterfeit' }, level: 'no' },
  { says: 'a replica does not', facts: { mint: 'york', kind: 'replica' }, level: 'no' },
  { says: 'a counterfeit does in a set of them', facts: { mint: 'york', kind: 'counterfeit' }, of: { where: { kind: ['counterfeit'] } }, level: 'certain' },
  { says: 'an altered piece does not fill its host’s place', facts: { rulers: [], altered: true, host: 'edward-i' }, where: { ruler: ['edward-i'] }, level: 'no' },
  { says: 'an altered piece does where the rule says so', facts: { rulers: [], altered: true, host: 'edward-i' }, where: { ruler: ['edward-i'] }, of: { accept: { altered: 'yes' } }, level: 'certain' },
  { says: 'a problem piece stands in', facts: { mint: 'york', details: true }, level: 'filler' },
  { says: 'a problem piece fills where the rule says so', facts: { mint: 'york', details: true }, of: { accept: { details: 'yes' } }, level: 'certain' },
  { says: 'a problem piece is nothing where the rule says so', facts: { mint: 'york', details: true }, of: { accept: { details: 'no' } }, level: 'no' },
]; // prettier-ignore

test.for(rows)('$says: $level', ({ facts, where = YORK, of = {}, level }) => {
  expect(fitOf(facts, where, of).level).toBe(level);
});

describe('what a piece kept out by one thing is told', () => {
  const told: readonly (readonly [Partial<SetPiece>, Partial<SetRule>, string])[] = [
    [{ mint: 'york', status: 'sold' }, {}, 'Sold: only pieces kept or lent count.'],
    [{ mint: 'york', kind: 'replica' }, {}, 'A replica, and this set is not of them.'],
    [{ mint: 'york', altered: true }, {}, 'Made over from another piece; this set wants pieces as struck.'],
    [{ mint: 'york', sure: { mint: 'possible' } }, { accept: { uncertain: 'no' } }, 'The mint is only possible. This set counts certain pieces only.'],
    [{}, { where: { ruler: ['edward-i'] } }, 'The mint is not recorded.'],
  ]; // prettier-ignore
  test.for(told)('%o: %o', ([facts, of, because]) => {
    expect(fitOf(facts, YORK, of)).toMatchObject({ level: 'no', barred: true, because });
  });
  test('and a piece that would not fit in any case is told nothing', () => {
    expect(fitOf({ mint: 'london', status: 'sold' }, YORK)).toMatchObject({ level: 'no', barred: false, because: '' });
    expect(fitOf({}, YORK)).toMatchObject({ barred: false });
    expect(fitOf({}, YORK, { where: { kind: ['coin'] } })).toMatchObject({ barred: false });
  });
});

test('a possible fit says why, each reason once', () => {
  const doubtful = { mint: 'york', interval: { low: 1275, high: 1280 }, sure: { mint: 'probable' } } as const;
  expect(fitOf(doubtful, { ...YORK, date: { low: 1279, high: 1307 } }, { where: YORK }).because).toBe(
    'The mint is only probable and the date, 1275–1280, lies only partly in 1279–1307.',
  );
});
