import { describe, expect, test } from 'vitest';
import { pieceSchema } from '../../src/catalogue/schema/piece.ts';
import type { PieceFields } from '../../src/catalogue/schema/piece.ts';
import { parseDate } from '../../src/core/dating/parse-date.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { datesOutsideReigns } from '../../src/catalogue/rules/dates.ts';
import { changed, markedCabinet, problemsOf } from './small-cabinet.ts';

/*
 * A piece may carry three dates: the one that stands on it (`dated`), the one it was made (`date`), the one it was altered
 * (`altered`). None of them is ever taken for another.
 */
function fieldsOf(written: Record<string, unknown>): PieceFields {
  return pieceSchema().parse({ number: '0001', title: 'A piece', kind: 'coin', ...written });
}

const years = (date: PieceFields['date']) =>
  typeof date === 'object' && 'earliest' in date ? [date.earliest, date.latest] : date;

/** Coins whose dies kept a date, with the years in which they were made. */
const FROZEN = [
  {
    what: 'a taler of Maria Theresa, struck in London',
    dated: '1780',
    date: '1936/1961',
    made: [1936, 1961],
    source: 'Royal Mint, annual reports; from memory',
  },
  {
    what: 'an Ottoman coin of AH 1255, year 15',
    dated: '١٢٥٥, ١٥',
    date: 'AH 1255, year 15',
    made: [1852, 1853],
    source: 'AH 1269, 15 October 1852 to 3 October 1853: tables of Hijri years',
  },
  {
    what: 'an Ottoman coin of AH 1327, year 4',
    dated: '١٣٢٧, ٤',
    date: 'AH 1327, year 4',
    made: [1911, 1912],
    source: 'AH 1330: common practice',
  },
  {
    what: 'a penny of the old-style year 1641',
    dated: '1641',
    date: '1641/2 OS',
    made: [1642, 1642],
    source: 'the year began on 25 March: Calendar (New Style) Act 1750',
  },
] as const;

describe('the date on the piece and the date it was made', () => {
  test.for(FROZEN)('$what ($source)', ({ dated, date, made }) => {
    const fields = fieldsOf({ dated, date });
    expect(fields.dated).toBe(dated);
    expect(years(fields.date)).toEqual(made);
  });

  test('what stands on a piece is kept as it stands, even where it is no date that can be read', () => {
    for (const dated of ['178', '١٢٥٥, ١٥', 'FEB 2 1829', '17?0', 'ANNO REGNI VII'])
      expect(fieldsOf({ dated }).dated).toBe(dated);
    expect(fieldsOf({ dated: '1780' }).date).toBeUndefined();
  });

  test('a piece without a date on it may still be dated, and a date on it says nothing of the making', () => {
    expect(years(fieldsOf({ date: 'n.d. (1489-95)' }).date)).toEqual([1489, 1495]);
    expect(years(fieldsOf({ date: 'unknown', dated: '1780' }).date)).toBe('unknown');
  });

  test('both in one field are refused with the two fields to write', () => {
    const outcome = parseDate('1780 (struck 1936/1961)');
    expect(outcome).toMatchObject({ ok: false });
    if (outcome.ok) return;
    expect(outcome.problem).toContain('write date: 1936/1961 and, on a line of its own, dated: "1780".');
    expect(years(fieldsOf({ date: '1936/1961', dated: '1780' }).date)).toEqual([1936, 1961]);
  });
});

describe('the date of an alteration', () => {
  const altered = {
    host: 'Penny of George III, 1797',
    done: [
      { what: 'smoothed', on: 'obverse' },
      { what: 'engraved', on: 'obverse', date: '1810~' },
      { what: 'pierced', date: 'after 1850' },
    ],
  };

  test('each thing done has its own, and the date of the making stays', () => {
    const fields = fieldsOf({ date: '1797', dated: '1797', altered });
    expect(years(fields.date)).toEqual([1797, 1797]);
    expect(fields.altered?.done.map(({ date }) => years(date))).toEqual([undefined, [1810, 1810], [1851, null]]);
    expect(fields.altered?.done[1]?.date?.about).toBe(true);
  });

  test('it must be a date that can be read, like the others', () => {
    const done = [{ what: 'engraved', date: 'some time ago' }];
    const read = pieceSchema().safeParse({ number: '1', title: 't', kind: 'coin', altered: { host: 'h', done } });
    expect(read.success).toBe(false);
  });
});

test('a coin struck after the reign that it names is right where it says for whom, and else remarked on', async () => {
  const marked = await markedCabinet();
  const restrike = (more: string) => {
    const folder = changed(marked, {
      'pieces/restrike/piece.md': `---\nnumber: "0009"\ntitle: A restrike\nkind: coin\nruler: plain-king\n${more}dated: "1300"\ndate: 1936/1961\n---\n`,
    });
    const outside = datesOutsideReigns(readCabinet(folder).records).map(({ id, says }) => `${id}: ${says}`);
    return { problems: problemsOf(folder), outside };
  };
  expect(restrike('')).toEqual({
    problems: [],
    outside: [expect.stringMatching(/^restrike: .* ruled 1272 to 1307; this piece is dated 1936\/1961\./)],
  });
  expect(restrike('struck-for: hidden-king\n')).toEqual({ problems: [], outside: [] });
});
