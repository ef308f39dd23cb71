import { addMinor, type Money } from '../money/money.ts';
import { daysOf, LIFE_EVENTS } from './life.ts';
import type { Course, LifeEvent, LifeFault } from './life.ts';

/** The price of a whole deal: an exchange, a job lot. */
export type Deal = { readonly deal: string; readonly total: Money | null; readonly line: number };

/** What one year brought and took, in one currency; sums in its smallest unit. */
export type YearOfMoney = {
  readonly year: string;
  readonly currency: string;
  /** Paid for what came, costs included. */
  readonly cost: number;
  /** Got for what left, costs taken off. */
  readonly proceeds: number;
};

/** How many pieces there were, came and left in a year: opening + came − left = closing. */
export type YearOfPieces = {
  readonly year: string;
  readonly opening: number;
  readonly came: number;
  readonly left: number;
  readonly closing: number;
};

/** What is said where a year is not known. */
const NO_YEAR = 'no year';

/** The year of an event; where it lies in one of several, the words say so. */
export function yearOf({ date }: Pick<LifeEvent, 'date'>): string {
  const { first, last } = daysOf(date);
  return first.slice(0, 4) === last.slice(0, 4) ? first.slice(0, 4) : NO_YEAR;
}

/**
 * What was paid and got, by year and currency. A deal with a price counts once, at its first piece that came or left; its
 * pieces' shares are then parts of it and are not added to it.
 */
export function moneyByYear(events: readonly LifeEvent[], deals: readonly Deal[]): readonly YearOfMoney[] {
  const sums = new Map<string, { cost: number; proceeds: number }>();
  const add = (year: string, { currency, minor }: Pick<Money, 'currency' | 'minor'>, isCost: boolean): void => {
    const key = `${year} ${currency}`;
    const held = sums.get(key) ?? { cost: 0, proceeds: 0 };
    if (isCost) held.cost = addMinor(held.cost, minor);
    else held.proceeds = addMinor(held.proceeds, minor);
    sums.set(key, held);
  };
  const priced = new Map(deals.flatMap(({ deal, total }) => (total === null ? [] : [[deal, total] as const])));
  for (const event of events) {
    const effect = LIFE_EVENTS[event.event];
    if (effect !== 'comes' && effect !== 'leaves') continue;
    const year = yearOf(event);
    const total = event.deal === null ? undefined : priced.get(event.deal);
    const amount = total ?? event.amount;
    if (total !== undefined && event.deal !== null) priced.set(event.deal, { ...total, minor: 0 });
    if (amount !== null) add(year, amount, effect === 'comes');
    if (event.costs !== null)
      add(
        year,
        { ...event.costs, minor: effect === 'comes' ? event.costs.minor : -event.costs.minor },
        effect === 'comes',
      );
  }
  return [...sums]
    .map(([key, { cost, proceeds }]) => ({ year: key.slice(0, -4), currency: key.slice(-3), cost, proceeds }))
    .sort((a, b) => (a.year === b.year ? (a.currency < b.currency ? -1 : 1) : a.year < b.year ? -1 : 1));
}

/** How the number of pieces went, year by year; `there` is how many there are now. Events without a year come last. */
export function piecesByYear(courses: readonly Course[], there: number): readonly YearOfPieces[] {
  const years = new Map<string, { came: number; left: number }>();
  for (const { events, faults } of courses) {
    const impossible = new Set(faults.map(({ line }) => line));
    for (const event of events) {
      const effect = LIFE_EVENTS[event.event];
      if (impossible.has(event.line) || effect === 'lent' || effect === 'returned') continue;
      const held = years.get(yearOf(event)) ?? { came: 0, left: 0 };
      if (effect === 'leaves') held.left += 1;
      else held.came += 1;
      years.set(yearOf(event), held);
    }
  }
  const ordered = [...years].sort(([a], [b]) => (a === NO_YEAR ? 1 : b === NO_YEAR ? -1 : a < b ? -1 : 1));
  // Counted back from what is there now.
  let closing = there;
  return ordered
    .reverse()
    .map(([year, { came, left }]) => {
      const opening = closing - came + left;
      const told = { year, opening, came, left, closing };
      closing = opening;
      return told;
    })
    .reverse();
}

/** What is lent and not back, the one that is due first first; `isLate` on this day or after. */
export function dueBack(
  courses: readonly Course[],
  today: string,
): readonly { readonly event: LifeEvent; readonly isLate: boolean }[] {
  return courses
    .flatMap(({ where, by }) => (where === 'lent' && by !== null ? [by] : []))
    .map((event) => ({ event, isLate: event.due !== null && daysOf(event.due).last < today }))
    .sort((a, b) => (dueDay(a.event) < dueDay(b.event) ? -1 : 1));
}

function dueDay({ due }: LifeEvent): string {
  return due === null ? '9999-99-99' : daysOf(due).last;
}

/** Shares of a deal that do not come to its price. A piece without a share has none: none is worked out. */
export function dealFaults(events: readonly LifeEvent[], deals: readonly Deal[]): readonly LifeFault[] {
  return deals.flatMap(({ deal, total, line }) => {
    const parts = events.filter((event) => event.deal === deal);
    if (parts.length === 0)
      return [
        { line, says: `No piece belongs to the deal ${deal}. Write ${deal} in the column deal of each of its pieces.` },
      ];
    if (total === null) return [];
    const shares = parts.flatMap(({ amount }) => (amount === null ? [] : [amount]));
    const other = shares.find(({ currency }) => currency !== total.currency);
    if (other !== undefined)
      return [
        {
          line,
          says: `The deal ${deal} is in ${total.currency}, and a share of it in ${other.currency}. Write both in one.`,
        },
      ];
    const sum = shares.reduce((all, { minor }) => addMinor(all, minor), 0);
    if (sum > total.minor || (shares.length === parts.length && sum !== total.minor))
      return [
        {
          line,
          says: `The shares of the deal ${deal} do not come to its price. Write shares that do, or leave them out.`,
        },
      ];
    return [];
  });
}
