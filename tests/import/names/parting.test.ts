import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { joinNames } from '../../../src/import/names/join-names.ts';
import type { KnownName, NameUse } from '../../../src/import/names/name.ts';
import { formatYears, parseYears } from '../../../src/import/names/spans.ts';
import { bring, draft, textOf } from '../plan/bring.ts';

type Row = readonly [name: string, realm: string | null, made: number | null];
const usesOf = (rows: readonly Row[]): readonly NameUse[] =>
  rows.map(([name, realm, made], at) => ({
    name,
    ...(realm === null ? {} : { realm }),
    row: at + 2,
    made: made === null ? null : { low: made, high: made },
  }));

function join(rows: readonly Row[], known: readonly KnownName[] = [], said = {}) {
  const uses = usesOf(rows);
  const { created, questions, idOf } = joinNames('rulers', uses, known, said);
  const ids = uses.map((use) => {
    const found = idOf(use);
    return 'id' in found ? found.id : null;
  });
  return { created, asked: Object.fromEntries(questions.map(({ id, spelled }) => [id, spelled])), ids };
}

// Reigns of England and Scotland: Handbook of British Chronology, 3rd edition (1986). The others from memory: Ferdinand I of
// Naples 1458-1494, Bohemia 1526-1564, the Two Sicilies 1816-1825, Austria 1835-1848; Philip II of Macedon 359-336 BC, Burgundy
// 1363-1404, Spain 1556-1598; George V 1910-1936 in every realm of his.
const SCOTLAND: KnownName = { id: 'james-i-of-scots', names: ['James I'], realm: 'Scotland', reigns: [{ low: 1406, high: 1437 }] }; // prettier-ignore

describe('kings who are called alike', () => {
  test('are parted by the realm beside them, and asked about', () => {
    const rows: readonly Row[] = [
      ['James I', 'England', 1605],
      ['James I', 'Scotland', 1424],
      ['Ferdinand I', 'Naples', 1462],
      ['Ferdinand I.', 'Bohemia', 1533],
      ['Ferdinand I', 'Two Sicilies', 1818],
      ['Ferdinand I', 'Austria', 1840],
      ['Ferdinando I', 'Naples', 1470],
    ];
    const { created, asked, ids } = join(rows);
    expect(ids).toEqual([
      'james-i-england',
      'james-i-scotland',
      'ferdinand-i-naples',
      'ferdinand-i-bohemia',
      'ferdinand-i-two-sicilies',
      'ferdinand-i-austria',
      'ferdinando-i',
    ]);
    expect(created.find(({ id }) => id === 'james-i-scotland')).toMatchObject({ name: 'James I', realm: 'Scotland' });
    expect(asked['james-i-scotland']).toEqual(['James I [Scotland]']);
  });

  test('in one realm centuries apart are parted by their dates as well', () => {
    const rows: readonly Row[] = [['Ferdinand I.', 'Austria', 1547], ['Ferdinand I.', 'Austria', 1845], ['Ferdinand I.', 'Naples', 1818]]; // prettier-ignore
    expect(join(rows).ids).toEqual(['ferdinand-i-austria-1547', 'ferdinand-i-austria-1845', 'ferdinand-i-naples']);
  });

  test('with one lifetime in several realms are one for now, and asked about', () => {
    const rows: readonly Row[] = [
      ['George V', 'Canada', 1912],
      ['George V', 'India', 1919],
      ['George V', 'Australia', 1927],
      ['Charles I', 'England', 1639],
      ['Charles I', 'Scotland', 1637],
    ];
    expect(join(rows)).toMatchObject({
      ids: ['george-v', 'george-v', 'george-v', 'charles-i', 'charles-i'],
      asked: { 'george-v': ['George V [Canada]', 'George V [India]', 'George V [Australia]'] },
    });
  });

  test('are parted by their dates where these lie further apart than anybody reigned', () => {
    const rows: readonly Row[] = [
      ['Philip II', null, 1590],
      ['Philip II', null, 1384],
      ['Philip II.', null, -348],
      ['Philip II', null, 1571],
      ['Philip II', null, null],
    ];
    const { ids, asked } = join(rows);
    expect(ids).toEqual(['philip-ii-1571', 'philip-ii-1384', 'philip-ii-349', 'philip-ii-1571', null]);
    expect(asked).toMatchObject({
      'philip-ii-1571': ['Philip II [1571-1590]'],
      'philip-ii-349': ['Philip II. [349 BC]'],
    });
  });

  test('stay one where one may have reigned as long', () => {
    // Louis XIV reigned from 1643 to 1715.
    expect(join([['Louis XIV', null, 1643], ['Louis XIV', null, 1715]])).toMatchObject({ ids: ['louis-xiv', 'louis-xiv'], asked: {} }); // prettier-ignore
  });

  test('go to the file whose realm or reign is theirs, and to a new one where neither is', () => {
    const rows: readonly Row[] = [
      ['James I', 'Scotland', 1424],
      ['James I', 'Kingdom of Scotland', null],
      ['James I', 'England', 1605],
    ];
    expect(join(rows, [SCOTLAND]).ids).toEqual(['james-i-of-scots', 'james-i-of-scots', 'james-i-england']);
    expect(join([['James I', null, 1424], ['James I', null, 1605]], [SCOTLAND])).toMatchObject({
      ids: ['james-i-of-scots', 'james-i-1605'],
      asked: { 'james-i-1605': ['James I [1605]'] },
    }); // prettier-ignore
  });

  test('are what the keeper says, by the years nearest, or by the name alone', () => {
    const rows: readonly Row[] = [['James I', null, 1603], ['James I', null, 1437]]; // prettier-ignore
    const said = { jacobus: ['James I [1605-1610]'], scot: ['James I [1424]'] };
    expect(join(rows, [], said)).toMatchObject({ ids: ['jacobus', 'scot'], asked: {} });
    expect(join(rows, [], { both: ['James I'] })).toMatchObject({ ids: ['both', 'both'], asked: {} });
  });

  test('what is no name of a person is not parted by its dates', () => {
    expect(join([['Republic', null, 1797], ['Republic', null, 1990]]).ids).toEqual(['republic', 'republic']); // prettier-ignore
  });
});

test('Joined again with the files it has made and what was asked, a sheet with realms comes to the same', () => {
  const name = fc.constantFrom('James I', 'Jacques Ier', 'Philip II', 'Republic', 'Charles');
  const realm = fc.constantFrom(null, 'England', 'Scotland', 'Kingdom of Scotland', 'Spain');
  const made = fc.constantFrom(null, -348, 1384, 1424, 1590, 1605, 1639);
  fc.assert(
    fc.property(fc.array(fc.tuple(name, realm, made), { maxLength: 8 }), (rows) => {
      const first = join(rows);
      const known = first.created.map(
        (one): KnownName => ({ id: one.id, names: [one.name, ...one.otherNames], reigns: [], ...(one.realm === undefined ? {} : { realm: one.realm }) }),
      ); // prettier-ignore
      expect(join(rows, known, first.asked)).toMatchObject({ created: [], ids: first.ids });
      expect(join(rows, [], first.asked).ids).toEqual(first.ids);
    }),
  );
});

test('Years written behind a name are read back', () => {
  fc.assert(
    fc.property(fc.integer({ min: -2000, max: 2500 }), fc.nat(500), (low, length) => {
      expect(parseYears(formatYears({ low, high: low + length }))).toEqual({ low, high: low + length });
    }),
  );
});

describe('in a cabinet', () => {
  const row = (at: number, realm: string | null, date: string, name = 'James I') =>
    draft(at, { date }, { names: { ruler: [{ name }], ...(realm === null ? {} : { realm }) } });

  test('the realm stands in the file of the ruler, or beside the piece where no ruler tells it', () => {
    const { folder } = bring([
      row(2, 'England', '1605'),
      row(3, 'Scotland', '1424'),
      draft(4, { date: '1921' }, { names: { realm: 'Ruritania' } }),
    ]);
    expect(textOf(folder, 'rulers/james-i-scotland.yaml')).toBe('name: James I\nrealm: Scotland\n');
    expect(textOf(folder, 'pieces/a-3/piece.md')).toContain('ruler: james-i-scotland\n');
    expect(textOf(folder, 'pieces/a-3/piece.md')).not.toContain('issuer');
    expect(textOf(folder, 'pieces/a-4/piece.md')).toContain('issuer: Ruritania\n');
  });

  test('one name that stands for pieces centuries apart is told of', () => {
    const { plan } = bring([row(2, null, '1797', 'Republic'), row(3, null, '1990', 'Republic'), row(4, null, '1605')]);
    expect(plan.remarks).toEqual([
      'Republic stands for pieces a century and more apart: row 2 (1797) and row 3 (1990). If these are two, write the reign beside the name in the sheet, as in Republic (1406-1437).',
    ]);
    const said = { rulers: { james: ['James I'] }, mints: {}, denominations: {}, works: {} };
    const two = bring([row(2, null, '44 BC'), row(3, null, '1605')], undefined, { said });
    expect(two.plan.remarks.join()).toContain('16 centuries and more apart: row 2 (44 BC) and row 3 (1605)');
  });
});
