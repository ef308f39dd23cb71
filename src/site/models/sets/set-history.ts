import type { SetState } from '../../../core/sets/set-state.ts';
import { formatYear } from '../../../core/dating/format-date.ts';
import { countWords } from '../../words/counts.ts';
import { setsWords } from '../../words/sets.ts';
import type { ChartTable } from '../charts/chart.ts';
import { along, ticksOf, timeScale } from '../charts/time-scale.ts';
import type { TimeTick } from '../charts/time-scale.ts';

/** One step of the staircase. Across in per cent of the drawing, up and down in pixels from its top. */
export type HistoryStep = {
  readonly x: number;
  readonly width: number;
  readonly certainTop: number;
  readonly certainHeight: number;
  readonly possibleTop: number;
  readonly possibleHeight: number;
};

export type HistoryChart = {
  readonly says: string;
  readonly table: ChartTable;
  readonly height: number;
  readonly base: number;
  readonly steps: readonly HistoryStep[];
  readonly ticks: readonly TimeTick[];
  /** The figures at its left: nothing and half of the places. */
  readonly figures: readonly { readonly y: number; readonly says: string }[];
  /** What it has come to, at its right end. */
  readonly now: { readonly y: number; readonly says: string };
  /** The line of all the places there are. */
  readonly goal: { readonly y: number; readonly says: string };
};

const TOP = 20;
const RISE = 120;
const FOOT = 26;
/** The last year and what is undated are given a share of the width, in per cent. */
const LAST_SHARE = 6;

/** A set filling up through the years, to the year in which the catalogue was last changed; null where fewer than two years are known. */
export function historyChart(state: SetState, until: number | null = null): HistoryChart | null {
  const dated = state.history.flatMap(({ year, filled }) => (year === null ? [] : [{ year, filled }]));
  const [first] = dated;
  const last = dated.at(-1);
  if (first === undefined || last === undefined || dated.length < 2 || state.of === 0) return null;
  const scale = timeScale({
    low: first.year,
    high: Math.max(
      until ?? last.year,
      last.year + Math.max(1, Math.round(((last.year - first.year) * LAST_SHARE) / 100)),
    ),
  });
  const undated = state.history.find(({ year }) => year === null);
  const up = (count: number): number => (RISE * count) / state.of;
  const steps = dated.map(({ year, filled }, at) => {
    const from = along(scale, year);
    const to = along(scale, dated[at + 1]?.year ?? scale.high + 1);
    return {
      x: from,
      width: to - from,
      certainTop: TOP + RISE - up(filled.low),
      certainHeight: up(filled.low),
      possibleTop: TOP + RISE - up(filled.high),
      possibleHeight: up(filled.high - filled.low),
    };
  });
  return {
    says: setsWords.historySays(
      state.title,
      state.of,
      steps.some(({ possibleHeight }) => possibleHeight > 0),
    ),
    table: {
      columns: [setsWords.historyYear, setsWords.historyCount],
      rows: [
        ...dated.map(({ year, filled }) => [formatYear(year), countWords.filled(filled, state.of)]),
        ...(undated === undefined ? [] : [[setsWords.historyUndated, countWords.filled(undated.filled, state.of)]]),
      ],
    },
    height: TOP + RISE + FOOT,
    base: TOP + RISE,
    steps,
    ticks: ticksOf(scale),
    figures: [0, Math.floor(state.of / 2)].map((count) => ({ y: TOP + RISE - up(count), says: String(count) })),
    now: { y: TOP + RISE - up(last.filled.high), says: setsWords.historyNow(last.filled.low, last.filled.high) },
    goal: { y: TOP, says: setsWords.historyAxis(state.of) },
  };
}
