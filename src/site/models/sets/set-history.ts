import type { SetState } from '../../../core/sets/set-state.ts';
import { formatYear } from '../../../core/dating/format-date.ts';
import { countWords } from '../../words/counts.ts';
import { setsWords } from '../../words/sets.ts';
import type { ChartTable } from '../charts/chart.ts';

/** The wells that were filled in one year; the last are those that are empty still. */
export type HistoryYear = {
  readonly year: string;
  /** The marks of its places; of many, the first. */
  readonly wells: readonly ('filled' | 'possible' | 'wanted')[];
  /** How many more there are. */
  readonly more: number;
};

export type History = { readonly says: string; readonly table: ChartTable; readonly years: readonly HistoryYear[] };

/** Wells of one year that are drawn. */
const DRAWN = 20;

/** A set filling up through the years; null where fewer than two years are known. */
export function setHistory(state: SetState): History | null {
  const { history, of, title } = state;
  if (history.filter(({ year }) => year !== null).length < 2 || of === 0) return null;
  const years = history.map(({ year, filled }, at): HistoryYear => {
    const before = history[at - 1]?.filled ?? { low: 0, high: 0 };
    const high = Math.max(0, filled.high - before.high);
    const low = Math.min(high, Math.max(0, filled.low - before.low));
    return yearOf(year === null ? setsWords.historyUndated : formatYear(year), low, high - low, 0);
  });
  const filled = history.at(-1)?.filled.high ?? 0;
  const all = [...years, yearOf(setsWords.historyEmpty, 0, 0, of - filled)].filter(({ wells }) => wells.length > 0);
  return {
    says: setsWords.historySays(
      title,
      of,
      all.some(({ wells }) => wells.includes('possible')),
    ),
    table: {
      columns: [setsWords.historyYear, setsWords.historyCount],
      rows: history.map(({ year, filled: held }) => [
        year === null ? setsWords.historyUndated : formatYear(year),
        countWords.filled(held, of),
      ]),
    },
    years: all,
  };
}

function yearOf(year: string, filled: number, possible: number, wanted: number): HistoryYear {
  const wells = [
    ...Array.from({ length: filled }, () => 'filled' as const),
    ...Array.from({ length: possible }, () => 'possible' as const),
    ...Array.from({ length: wanted }, () => 'wanted' as const),
  ];
  return { year, wells: wells.slice(0, DRAWN), more: Math.max(0, wells.length - DRAWN) };
}
