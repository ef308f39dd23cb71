import { describe, expect, test } from 'vitest';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { dealFaults, dueBack, moneyByYear, piecesByYear } from '../../../src/core/life/money-by-year.ts';
import { courseOf, inOrderOfTime, LIFE_EVENTS, statusOf } from '../../../src/core/life/life.ts';
import type { LifeEvent, LifeEventName } from '../../../src/core/life/life.ts';
import { parseMoney } from '../../../src/core/money/money.ts';

const date = (text: string) => {
  const read = parseDate(text, { dateOf: 'event' });
  return read.ok ? read.value : expect.fail(read.problem);
};
const money = (text: string) => {
  const read = parseMoney(text);
  return read.ok ? read.value : expect.fail(read.problem);
};
let line = 1;
function event(
  name: LifeEventName,
  when: string,
  more: { amount?: string; costs?: string; due?: string; deal?: string; piece?: string } = {},
): LifeEvent {
  line += 1;
  const { amount, costs, due, deal = null, piece = 'a' } = more;
  return {
    piece, event: name, date: date(when), deal, line,
    amount: amount === undefined ? null : money(amount),
    costs: costs === undefined ? null : money(costs),
    due: due === undefined ? null : date(due),
  }; // prettier-ignore
}

// Common practice of stock-keeping, and what the words say: nothing leaves twice, and what is lent is not at hand to be sold.
const COURSES: readonly (readonly [LifeEventName[], status: string | null, faults: number])[] = [
  [[], null, 0],
  [['bought'], 'kept', 0],
  [['bought', 'sold'], 'sold', 0],
  [['sold'], 'sold', 0],
  [['bought', 'lent'], 'lent', 0],
  [['bought', 'lent', 'returned', 'sold'], 'sold', 0],
  [['bought', 'lent', 'sold'], 'lent', 1],
  [['bought', 'lent', 'lost'], 'lost', 0],
  [['bought', 'lent', 'lent'], 'lent', 1],
  [['bought', 'sold', 'sold'], 'sold', 1],
  [['bought', 'sold', 'recovered'], 'sold', 1],
  [['bought', 'stolen', 'recovered'], 'kept', 0],
  [['bought', 'stolen', 'recovered', 'given'], 'given', 0],
  [['bought', 'sold', 'bought'], 'kept', 0],
  [['bought', 'bought'], 'kept', 1],
  [['bought', 'returned'], 'kept', 1],
  [['recovered'], null, 1],
  [['dug up', 'exchanged out', 'exchanged in'], 'kept', 0],
  [['inherited', 'stolen', 'lent'], 'lost', 1],
];
test.for(COURSES)('%j leaves the piece %s, with %i faults', ([names, status, faults]) => {
  const course = courseOf(names.map((name, index) => event(name, String(2000 + index))));
  expect(statusOf(course)).toBe(status);
  expect(course.faults).toHaveLength(faults);
  for (const { says } of course.faults) expect(says).toMatch(/^[A-Z].*[.…]$/);
});

test('events are taken in the order of their days, and as written where that leaves it open', () => {
  const names = (events: readonly LifeEvent[]) => inOrderOfTime(events).map(({ event: name }) => name);
  expect(names([event('sold', '2005-03-01'), event('bought', '2003')])).toEqual(['bought', 'sold']);
  expect(names([event('bought', '2003-05-14'), event('sold', '2003')])).toEqual(['bought', 'sold']);
  expect(names([event('lent', '2003-02'), event('bought', '2003-01-31')])).toEqual(['bought', 'lent']);
});

test('no order of events is ever refused with a stack, and every piece ends somewhere', () => {
  const all = Object.keys(LIFE_EVENTS) as LifeEventName[];
  for (const one of all)
    for (const two of all)
      for (const three of all) {
        const course = courseOf([event(one, '2001'), event(two, '2002'), event(three, '2003')]);
        expect(['kept', 'lent', 'left']).toContain(course.where);
        expect(course.faults.length).toBeLessThan(4);
      }
});

describe('accounts', () => {
  // Worked by hand: 45 + 2.50 paid in 2003; 60 less 6 got in 2005.
  test('are cost and proceeds by year and currency, with the costs on the side they belong to', () => {
    const events = [
      event('bought', '2003', { amount: '45 GBP', costs: '2.50 GBP' }),
      event('sold', '2005-06', { amount: '60 GBP', costs: '6 GBP' }),
      event('bought', '2005', { amount: '10 EUR', piece: 'b' }),
    ];
    expect(moneyByYear(events, [])).toEqual([
      { year: '2003', currency: 'GBP', cost: 4750, proceeds: 0 },
      { year: '2005', currency: 'EUR', cost: 1000, proceeds: 0 },
      { year: '2005', currency: 'GBP', cost: 0, proceeds: 5400 },
    ]);
  });

  test('count the price of a job lot once, and work out no value for what was exchanged', () => {
    const lot = ['a', 'b', 'c'].map((piece) => event('bought', '2010', { deal: 'lot', piece }));
    expect(moneyByYear(lot, [{ deal: 'lot', total: money('90 GBP'), line: 9 }])).toEqual([
      { year: '2010', currency: 'GBP', cost: 9000, proceeds: 0 },
    ]);
    const swap = [
      event('exchanged out', '2011', { deal: 's' }),
      event('exchanged in', '2011', { deal: 's', piece: 'd' }),
    ];
    expect(moneyByYear(swap, [{ deal: 's', total: null, line: 9 }])).toEqual([]);
  });

  test('shares of a deal come to its price, or the deal is told', () => {
    const deal = { deal: 'lot', total: money('30 GBP'), line: 9 };
    const share = (amount?: string) =>
      event('bought', '2010', { deal: 'lot', ...(amount === undefined ? {} : { amount }) });
    expect(dealFaults([share('10 GBP'), share('20 GBP')], [deal])).toEqual([]);
    expect(dealFaults([share('10 GBP'), share()], [deal])).toEqual([]);
    expect(dealFaults([share('10 GBP'), share('21 GBP')], [deal])).toHaveLength(1);
    expect(dealFaults([share('31 GBP'), share()], [deal])).toHaveLength(1);
    expect(dealFaults([share('10 EUR'), share()], [deal])).toHaveLength(1);
    expect(dealFaults([], [deal])).toHaveLength(1);
  });

  test('opening and what came less what left is closing, in every year', () => {
    const courses = [
      courseOf([event('bought', '2001'), event('sold', '2004')]),
      courseOf([event('inherited', '2003'), event('lent', '2003'), event('returned', '2004')]),
      courseOf([event('bought', '2001'), event('stolen', '2002'), event('recovered', '2004')]),
    ];
    const years = piecesByYear(courses, 2);
    expect(years.map(({ year, came, left, closing }) => [year, came, left, closing])).toEqual([
      ['2001', 2, 0, 2],
      ['2002', 0, 1, 1],
      ['2003', 1, 0, 2],
      ['2004', 1, 1, 2],
    ]);
    for (const { opening, came, left, closing } of years) expect(opening + came - left).toBe(closing);
  });

  test('what is lent and not back is told, the first due first, and what is late', () => {
    const lent = (due: string | undefined, piece: string) =>
      courseOf([event('lent', '2020', { piece, ...(due === undefined ? {} : { due }) })]);
    const due = dueBack(
      [lent(undefined, 'x'), lent('2021-06', 'y'), lent('2021-01-05', 'z'), courseOf([event('bought', '2020')])],
      '2021-02-01',
    );
    expect(due.map(({ event: { piece }, isLate }) => [piece, isLate])).toEqual([['z', true], ['y', false], ['x', false]]); // prettier-ignore
  });
});
