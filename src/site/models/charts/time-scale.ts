import type { Interval } from '../../../core/eras/era-scheme.ts';
import { formatYear } from '../../../core/dating/format-date.ts';

/** A stretch of whole years laid across a drawing, both ends included. Finite. */
export type TimeScale = Interval;

/** A marked year: how far across, in per cent, and its name. */
export type TimeTick = { readonly x: number; readonly says: string };

/** A piece, a reign or a period on a time line: across in per cent; an end is open where the years run on past the drawing. */
export type TimeBar = {
  readonly x: number;
  readonly width: number;
  readonly opensLeft: boolean;
  readonly opensRight: boolean;
};

const STEPS = [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 5000];
const MOST_TICKS = 6;

/** The scale that holds every finite end of the spans, with a little room; null when none has one. */
export function scaleOver(spans: readonly Interval[]): TimeScale | null {
  const ends = spans.flatMap(({ low, high }) => [low, high]).filter(Number.isFinite);
  if (ends.length === 0) return null;
  const [low, high] = [ends.reduce((a, b) => Math.min(a, b)), ends.reduce((a, b) => Math.max(a, b))];
  const room = Math.ceil((high - low) * 0.02);
  return timeScale({ low: low - room, high: high + room });
}

/** At least a decade, so that a single year is not as long as the drawing. */
export function timeScale({ low, high }: Interval): TimeScale {
  const short = Math.max(0, 10 - (high - low + 1));
  return { low: low - Math.floor(short / 2), high: high + Math.ceil(short / 2) };
}

/** How far across a year begins, in per cent; the year after the last ends the drawing. */
export function along({ low, high }: TimeScale, year: number): number {
  return hundredths((100 * (year - low)) / (high - low + 1));
}

/** The bar of an interval: from the beginning of its first year to the end of its last, cut at the edges of the drawing. */
export function barOf(scale: TimeScale, { low, high }: Interval): TimeBar | null {
  if (high < scale.low || low > scale.high) return null;
  const [from, to] = [Math.max(low, scale.low), Math.min(high, scale.high)];
  const x = along(scale, from);
  return {
    x,
    width: hundredths(along(scale, to + 1) - x),
    opensLeft: low < scale.low,
    opensRight: high > scale.high,
  };
}

/** At most six round years. There is no year 0, so the round years before it count back from 1 BC. */
export function ticksOf(scale: TimeScale): readonly TimeTick[] {
  const length = scale.high - scale.low + 1;
  const step = STEPS.find((each) => length / each <= MOST_TICKS) ?? Math.ceil(length / MOST_TICKS / 1000) * 1000;
  const first = Math.floor(scale.low / step);
  const count = Math.ceil(length / step) + 2;
  return Array.from({ length: count }, (_, at) => (first + at) * step)
    .map((round) => (step === 1 || round > 0 ? round : round + 1))
    .filter((year) => year >= scale.low && year <= scale.high)
    .map((year) => ({ x: along(scale, year), says: formatYear(year) }));
}

/** For each bar the lane it lies in, so that no two in a lane touch: the first free one, in the order given. */
export function lanesOf(bars: readonly Pick<TimeBar, 'x' | 'width'>[], gap = 0.4): readonly number[] {
  const ends: number[] = [];
  return bars.map(({ x, width }) => {
    const free = ends.findIndex((end) => end + gap <= x);
    const lane = free === -1 ? ends.length : free;
    ends[lane] = x + width;
    return lane;
  });
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}
