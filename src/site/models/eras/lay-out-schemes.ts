import type { EraBand } from './era-bands.ts';
import type { SchemesChart } from './eras-page.ts';
import type { TimeKind } from '../charts/timed.ts';

/** A mark under the schemes: across in per cent, down in pixels. */
export type LaidMark = {
  readonly kind: TimeKind;
  readonly x: number;
  readonly width: number;
  readonly y: number;
  readonly height: number;
};

/** Pixels from the top of the drawing. */
export type LaidSchemes = {
  readonly schemes: readonly {
    readonly title: string | null;
    readonly titleAt: number;
    readonly bands: readonly (EraBand & { readonly y: number; readonly nameY: number })[];
  }[];
  readonly marks: readonly LaidMark[];
  readonly base: number;
  readonly height: number;
};

const TITLE = 20;
const BAND = 25;
const AFTER = 8;
const LANE = 11;
const BAR = 8;
const FOOT = 26;
/** The room for pieces, however many there are. */
const MOST_HIGH = 220;
const DENSITY_HIGH = 90;

/** Schemes from the top down, each with a title and its lanes, then the pieces, then the axis, as on a wide page or a narrow. */
export function layOutSchemes({ schemes, pieces }: SchemesChart, page: 'wide' | 'narrow'): LaidSchemes {
  let top = 0;
  const laid = schemes.map(({ title, [page]: { lanes, bands } }) => {
    const first = top + (title === null ? 0 : TITLE);
    top = first + lanes * BAND + AFTER;
    return {
      title,
      titleAt: first - 6,
      bands: bands.map((band) => ({ ...band, y: first + band.lane * BAND, nameY: first + band.named.lane * BAND })),
    };
  });
  const { marks, high } = marksUnder(pieces, top + AFTER);
  const base = top + AFTER + high + AFTER;
  return { schemes: laid, marks, base, height: base + FOOT };
}

function marksUnder(
  pieces: SchemesChart['pieces'],
  top: number,
): { readonly marks: readonly LaidMark[]; readonly high: number } {
  if (pieces.drawn === 'density') {
    const marks = pieces.columns.map(({ x, width, share }): LaidMark => {
      const height = DENSITY_HIGH * share;
      return { kind: 'sure', x, width, y: top + DENSITY_HIGH - height, height };
    });
    return { marks: marks.filter(({ height }) => height > 0), high: DENSITY_HIGH };
  }
  const high = Math.min(MOST_HIGH, pieces.lanes * LANE);
  const lane = pieces.lanes === 0 ? LANE : high / pieces.lanes;
  const marks = pieces.bars.map(({ kind, x, width, lane: at }) => ({
    kind,
    x,
    width,
    y: top + at * lane,
    height: (lane * BAR) / LANE,
  }));
  return { marks, high };
}
