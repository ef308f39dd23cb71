import type { EraBand } from './era-bands.ts';
import type { SchemesChart } from './eras-page.ts';
import type { DrawnBar } from './timed.ts';

/** Pixels from the top of the drawing. */
export type LaidSchemes = {
  readonly schemes: readonly {
    readonly title: string;
    readonly titleAt: number;
    readonly bands: readonly (EraBand & { readonly y: number })[];
  }[];
  readonly bars: readonly (DrawnBar & { readonly y: number })[];
  readonly base: number;
  readonly height: number;
};

const TITLE = 20;
const BAND = 24;
const AFTER = 8;
const BAR = 9;
const FOOT = 26;

/** Schemes from the top down, each with a title and its lanes, then the pieces, then the axis. */
export function layOutSchemes({ schemes, pieces }: SchemesChart): LaidSchemes {
  let top = 0;
  const laid = schemes.map(({ title, lanes, bands }) => {
    const first = top + TITLE;
    top = first + lanes * BAND + AFTER;
    return { title, titleAt: first - 6, bands: bands.map((band) => ({ ...band, y: first + band.lane * BAND })) };
  });
  const base = top + AFTER + pieces.lanes * BAR + AFTER;
  return {
    schemes: laid,
    bars: pieces.bars.map((bar) => ({ ...bar, y: top + AFTER + bar.lane * BAR })),
    base,
    height: base + FOOT,
  };
}
