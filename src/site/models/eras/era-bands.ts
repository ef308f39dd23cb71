import { periodYears } from '../../../core/eras/era-scheme.ts';
import type { EraScheme } from '../../../core/eras/era-scheme.ts';
import { barOf, lanesOf } from '../charts/time-scale.ts';
import type { TimeBar, TimeScale } from '../charts/time-scale.ts';

/** A period drawn as a band, with where its name begins or ends, across in per cent: in the band, beside it, or over it where no side has room. */
export type EraBand = TimeBar & { readonly name: string; readonly lane: number; readonly named: Named };
type Named = { readonly x: number; readonly anchor: 'start' | 'end'; readonly isBeside: boolean };

/** The bands of a scheme on a page of one width, those that overlap and those named beside in lanes of their own. */
type EraLanes = { readonly lanes: number; readonly bands: readonly EraBand[] };

/** A scheme as it is drawn on a wide page and on a narrow one. */
export type EraBands = { readonly title: string | null; readonly wide: EraLanes; readonly narrow: EraLanes };

// Widths of a drawing in pixels on a wide page and a narrow, and of a letter at the size of a band's name.
const WIDE = 1100;
const NARROW = 330;
const LETTER = 6.6;
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
    return bar === null ? [] : [{ name: period.name, bar, ...roomFor(period.name, bar, page) }];
  });
  // A period is seen to touch the next; only a true overlap, or a name beside it, takes another lane.
  const lanes = lanesOf(
    drawn.map(({ taken }) => taken),
    -Math.max(0.1, 150 / (scale.high - scale.low + 1)),
  );
  return {
    lanes: Math.max(0, ...lanes.map((lane) => lane + 1)),
    bands: drawn.map(({ name, bar, named }, at) => ({ ...bar, name, named, lane: lanes[at] ?? 0 })),
  };
}

/** Where a name stands, and what of the width it takes with its band, in per cent. */
function roomFor(
  name: string,
  { x, width }: TimeBar,
  page: number,
): { readonly named: Named; readonly taken: Pick<TimeBar, 'x' | 'width'> } {
  const asked = (100 * (name.length * LETTER + AROUND)) / page;
  const from = (at: number, isBeside: boolean): Named => ({ x: at, anchor: 'start', isBeside });
  if (asked <= width) return { named: from(x, false), taken: { x, width } };
  if (x + width + asked <= 100) return { named: from(x + width, true), taken: { x, width: width + asked } };
  if (x >= asked) return { named: { x, anchor: 'end', isBeside: true }, taken: { x: x - asked, width: width + asked } };
  const begins = Math.max(0, Math.min(x, 100 - asked));
  const ends = Math.max(x + width, begins + asked);
  return { named: from(begins, false), taken: { x: Math.min(x, begins), width: ends - Math.min(x, begins) } };
}
