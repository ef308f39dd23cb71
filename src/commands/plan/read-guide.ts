import { readCsv } from '../../catalogue/csv.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import type { Grade, ScaleId } from '../../core/grade/grade.ts';
import { isCurrency } from '../../core/money/currencies.ts';
import { parseMoney } from '../../core/money/money.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { GuidePrice } from '../../core/plan/offers-from-guide.ts';

export const GUIDE = 'private/guide.csv';

export type ReadGuide = {
  /** The prices of each set, by its id. */
  readonly prices: ReadonlyMap<string, readonly GuidePrice[]>;
  /** Rows that name a set and cannot be planned with: where they stand, and why. */
  readonly unread: readonly { readonly set: string; readonly says: string }[];
};

/** Reads the guide; a price is taken whole or not at all. `scaleOf` tells the scale a set's grades are on. */
export function readGuide(text: string, scaleOf: (set: string) => ScaleId | undefined): ReadGuide {
  const prices = new Map<string, GuidePrice[]>();
  const unread: { set: string; says: string }[] = [];
  const { rows, lines } = readCsv(text);
  for (const [index, raw] of rows.entries()) {
    const row = Object.fromEntries(Object.entries(raw).map(([column, cell]) => [column, cell.trim()]));
    const set = row['set'] ?? '';
    const price = readRow(row, scaleOf(set));
    if (price.ok) prices.set(set, [...(prices.get(set) ?? []), price.value]);
    else unread.push({ set, says: `${GUIDE}:${lines[index] ?? ''} is not used. ${price.problem}` });
  }
  return { prices, unread };
}

function readRow(row: Readonly<Record<string, string>>, scale: ScaleId | undefined): Outcome<GuidePrice> {
  const { place = '', grade = '', low = '', high = '', currency = '', source = '', date = '' } = row;
  const cells = Object.entries({ place, grade, low, high, currency, source, date });
  const empty = cells.find(([, cell]) => cell === '')?.[0];
  if (empty !== undefined) return refuse(WANTED[empty] ?? `Its ${empty} is missing. Fill the column ${empty}.`);
  if (!isCurrency(currency))
    return refuse(`"${currency}" is no currency that can be told from others. Write its three capitals, like GBP.`);
  const [least, most] = [parseMoney(`${currency} ${low}`), parseMoney(`${currency} ${high}`)];
  if (!least.ok) return least;
  if (!most.ok) return most;
  if (least.value.minor > most.value.minor)
    return refuse(`Its price runs backwards, from ${low} to ${high}. Write ${high} under low and ${low} under high.`);
  const graded = readWantedGrade(grade, scale);
  if (!graded.ok) return graded;
  const dated = parseDate(date, { dateOf: 'event' });
  if (!dated.ok) return dated;
  const { latest } = dated.value;
  if (typeof latest !== 'number')
    return refuse(`"${date}" does not say in which year the price was true. Write 2025 or 2025-02-15.`);
  // A plan counts whole pence; a price of old pence is rounded up, so that it is never over budget.
  const price = { low: Math.ceil(least.value.minor), high: Math.ceil(most.value.minor) };
  return good({ place, grade, graded: graded.value, price, currency, source, year: latest });
}

const WANTED: Readonly<Record<string, string>> = {
  low: 'It has no low price. For a single price write the same figure under low and high.',
  high: 'It has no high price. For a single price write the same figure under low and high.',
  date: 'Its price has no date, so that its age cannot be told. Write the year under date.',
  source: 'Its price has no source. Write under source where it comes from.',
};

/** On the scale of its set, and failing that on whichever knows the words. */
function readWantedGrade(written: string, scale: ScaleId | undefined): Outcome<Grade> {
  const onScale = scale === undefined ? null : parseGrade(written, { scale });
  const grade = onScale?.ok === true ? onScale : parseGrade(written);
  if (!grade.ok) return grade;
  if (grade.value.problem !== undefined)
    return refuse(
      `"${written}" is the grade of a problem piece, which fills no place. Write the price of a sound one.`,
    );
  return grade.value.low === null ? refuse(`"${written}" is not a grade to look for. Write VF.`) : grade;
}
