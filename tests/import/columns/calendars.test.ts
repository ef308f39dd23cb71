import { describe, expect, test } from 'vitest';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { parseMapping } from '../../../src/import/columns/parse-mapping.ts';
import { suggestMapping } from '../../../src/import/columns/suggest-mapping.ts';
import { readRows } from '../../../src/import/cells/read-rows.ts';
import { sheetOf } from './sheet-of.ts';

const MAPPING = `read: { years: AD, unnumbered: row }
calendars:
  - { column: Realm, is: "*caliphate", years: AH }
  - { column: Realm, is: Ottoman, years: AH }
  - { column: Realm, is: Nepal, years: VS }
columns: { Realm: realm, Year: date, Bought: ledger acquired }
`;
const sheet = (rows: readonly (readonly string[])[]) => sheetOf(['Realm', 'Year', 'Bought'], rows);

// Years of the Hijra by the tables of Freeman-Grenville, from memory: AH 150 = 767/8, AH 294 = 906/7, AH 1255 year 15 = AH 1269 = 1852/3
// (the sultan's accession, then the year of his reign; the latter in the reference values of this project). Vikrama 1875 = 1818/9.
describe('years counted in one calendar or another, row by row', () => {
  test.for([
    ['Rome', '150', 150, 150],
    ['Abbasid Caliphate', '150', 767, 768],
    ['abbasid caliphate', 'c. 294', 906, 907],
    ['Ottoman', '1255 year 15', 1852, 1853],
    // What a cell says of its era goes before what its row does; and a year of the Hijra that is yet to come is one of ours.
    ['Ottoman', 'AD 1840', 1840, 1840],
    ['Ottoman', '1840', 1840, 1840],
    ['Nepal', '1875', 1818, 1819],
    ['Venice', '1875', 1875, 1875],
  ] as const)('%s, %s', ([realm, year, earliest, latest]) => {
    const mapping = parseMapping(MAPPING);
    const rows = mapping.ok ? readRows(sheet([[realm, year]]), mapping.value) : expect.fail(mapping.problem);
    const date = rows.drafts[0]?.facts['date'];
    const read = typeof date === 'string' ? parseDate(date) : expect.fail(rows.drafts[0]?.unread[0]?.because ?? '');
    expect(read).toMatchObject({ ok: true, value: { earliest, latest } });
  });

  test('a stroke before a year of reign asks where the realm does not settle it: in India both numbers name one year', () => {
    const mapping = parseMapping(MAPPING);
    const rows = mapping.ok
      ? readRows(sheet([['Abbasid Caliphate', '1255/15']]), mapping.value)
      : expect.fail(mapping.problem);
    expect(rows.drafts[0]?.facts['date']).toBeUndefined();
  });

  test('the day of a purchase is in ours', () => {
    const mapping = parseMapping(MAPPING);
    const rows = mapping.ok
      ? readRows(sheet([['Nepal', '1875', '1998']]), mapping.value)
      : expect.fail(mapping.problem);
    expect(rows.drafts[0]?.ledger).toEqual({ acquired: '1998' });
  });

  test('a rule that is written otherwise is told with how to write it', () => {
    const read = parseMapping('calendars:\n  - { column: Realm, is: Rome, years: Roman }\n');
    expect(read.ok ? '' : read.problem).toContain('{ column: Country, is: "Abbasid*", years: AH }');
  });

  test('the question about the era shows the rule for a row of this sheet', () => {
    const { questions } = suggestMapping(sheetOf(['Country', 'Year'], [['Rome', 'AD 14'], ['Samanid', '294']]), { rulers: [], mints: [], denominations: [], works: [] }); // prettier-ignore
    expect(questions.find(({ id }) => id === 'years')?.otherwise).toContain(
      'calendars: [{ column: Country, is: Samanid, years: AH }]',
    );
  });
});
