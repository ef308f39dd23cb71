import { periodYears } from '../../../core/eras/era-scheme.ts';
import type { EraScheme } from '../../../core/eras/era-scheme.ts';
import { barOf, lanesOf } from '../charts/time-scale.ts';
import type { TimeBar, TimeScale } from '../charts/time-scale.ts';

/**
 * A period drawn as a band, with where its name begins or ends, across in per cent: wholly in the band or beside it, else in a lane
 * of its own above it.
 */
export type EraBand = TimeBar & {
  readonly name: string;
  readonly lane: number;
  readonly named: Named & { readonly lane: number };
};
type Named = { readonly x: number; readonly anchor: 'start' | 'end'; readonly isBeside: boolean };

/** The bands of a scheme on a page of one width, those that overlap and those named beside in lanes of their own. */
type EraLanes = { readonly lanes: number; readonly bands: readonly EraBand[] };

/** A scheme as it is drawn on a wide page and on a narrow one. */
export type EraBands = { readonly title: string | null; readonly wide: EraLanes; readonly narrow: EraLanes };

// Widths of a drawing in pixels on a wide page and a narrow, and of a letter at the size of a band's name.
const WIDE = 1100;
const NARROW = 330;
const LETTER = 6.2;
const AROUND = 12;

/** The schemes of a drawing, the first at the top. */
export function allBands(schemes: readonly EraScheme[], scale: TimeScale): readonly EraBands[] {
  return schemes.map((scheme) => ({
    title: scheme.title,
    wide: lanesFor(scheme, scale, WIDE),
    narrow: lanesFor(scheme, scale, NARROW),
  }));
}

/** The periods of a scheme that show on the scale, on a page so many pixels wide. */
function lanesFor(scheme: EraScheme, scale: TimeScale, page: number): EraLanes {
  const drawn = scheme.periods.flatMap((period) => {
    const bar = barOf(scale, periodYears(period));
    return bar === null
      ? []
      : [{ name: period.name, bar, room: roomFor(period.name, bar, page), asked: askedBy(period.name, page) }];
  });
  const fitting = drawn.flatMap(({ room }) => room ?? []);
  // A period is seen to touch the next; only a true overlap, or a name beside it, takes another lane.
  const lanes = lanesOf(
    fitting.map(({ taken }) => taken),
    -Math.max(0.1, 150 / (scale.high - scale.low + 1)),
  );
  let last = Math.max(0, ...lanes.map((lane) => lane + 1));
  const bands = drawn.map(({ name, bar, room, asked }): EraBand => {
    const own = room === null ? undefined : lanes[fitting.indexOf(room)];
    if (room !== null && own !== undefined) return { ...bar, name, lane: own, named: { ...room.named, lane: own } };
    last += 2;
    const x = Math.max(0, Math.min(bar.x, 100 - asked));
    return { ...bar, name, lane: last - 1, named: { x, anchor: 'start', isBeside: true, lane: last - 2 } };
  });
  return { lanes: last, bands };
}

/** How much of the width of a page a name asks, in per cent. */
function askedBy(name: string, page: number): number {
  return (100 * (name.length * LETTER + AROUND)) / page;
}

/** Where a name is written in its band or beside it, and what of the width it takes with the band, in per cent; null where neither has room. */
function roomFor(
  name: string,
  { x, width }: TimeBar,
  page: number,
): { readonly named: Named; readonly taken: Pick<TimeBar, 'x' | 'width'> } | null {
  const asked = askedBy(name, page);
  const from = (at: number, isBeside: boolean): Named => ({ x: at, anchor: 'start', isBeside });
  if (asked <= width) return { named: from(x, false), taken: { x, width } };
  if (x + width + asked <= 100) return { named: from(x + width, true), taken: { x, width: width + asked } };
  if (x >= asked) return { named: { x, anchor: 'end', isBeside: true }, taken: { x: x - asked, width: width + asked } };
  return null;
}
