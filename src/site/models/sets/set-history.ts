import type { PlaceState, SetState } from '../../../core/sets/set-state.ts';
import { formatYear } from '../../../core/dating/format-date.ts';
import { setsWords } from '../../words/sets.ts';
import type { ChartTable } from '../charts/chart.ts';
import { tallyOf } from './place-shown.ts';

/** The places that got their piece in one year; the last are those that are empty still. */
export type HistoryYear = {
  readonly year: string;
  /** The marks of its places; of many, the first. */
  readonly wells: readonly PlaceState['state'][];
  /** How many more there are. */
  readonly more: number;
};

export type History = { readonly says: string; readonly table: ChartTable; readonly years: readonly HistoryYear[] };

/** Wells of one year that are drawn. */
const DRAWN = 20;

/** The places of a set by the year in which their piece came, as the board has them; null where fewer than two years are known. */
export function setHistory({ history, places, title }: SetState): History | null {
  if (history.filter(({ year }) => year !== null).length < 2) return null;
  const wanted = places.flatMap(({ state }) => (state === 'wanted' ? [state] : []));
  const years = history.map(({ year, came }) => ({ year: named(year), came }));
  return {
    says: setsWords.historySays(title, new Set(history.flatMap(({ came }) => came))),
    table: {
      columns: [setsWords.historyYear, setsWords.historyCame],
      rows: years.map(({ year, came }) => [year, tallyOf(came)]),
    },
    years: [...years, { year: setsWords.state.wanted, came: wanted }].flatMap(({ year, came }) =>
      came.length === 0 ? [] : [{ year, wells: came.slice(0, DRAWN), more: Math.max(0, came.length - DRAWN) }],
    ),
  };
}

function named(year: number | null): string {
  return year === null ? setsWords.historyUndated : formatYear(year);
}
