import type { Denomination } from '../../../catalogue/catalogue.ts';
import { standardsOf } from '../../../catalogue/for-core/standards.ts';
import { writeAmount } from '../../../core/measures/amount.ts';
import type { Interval } from '../../../core/measures/units.ts';
import { formatFineness } from '../../../core/metal/parse-fineness.ts';
import { debasement } from '../../../core/metal/debasement.ts';
import type { SeriesRow } from '../../../core/metal/debasement.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { measuresWords } from '../../words/measures.ts';
import type { ChartTable } from '../charts/chart.ts';
import { numberScale } from '../charts/number-scale.ts';
import type { NumberScale, NumberTick } from '../charts/number-scale.ts';
import { barOf, scaleOver, ticksOf } from '../charts/time-scale.ts';
import type { TimeScale, TimeTick } from '../charts/time-scale.ts';
import { spanInWords } from '../charts/years.ts';

/** A block of a panel: across in per cent, down in pixels. */
export type SeriesBlock = {
  readonly x: number;
  readonly width: number;
  readonly y: number;
  readonly height: number;
  readonly kind: 'soft' | 'bar' | 'hollow';
};

export type SeriesPanel = {
  readonly title: string;
  readonly titleAt: number;
  readonly ticks: readonly (NumberTick & { readonly y: number })[];
  readonly blocks: readonly SeriesBlock[];
};

export type SeriesChart = {
  readonly name: string;
  readonly says: string;
  readonly years: readonly TimeTick[];
  readonly panels: readonly SeriesPanel[];
  readonly base: number;
  readonly height: number;
  readonly table: ChartTable;
  readonly steps: readonly { readonly years: string; readonly ways: string; readonly because: string }[];
};

/** Room for the name of a panel, and below it the highest figure of its scale. */
const TITLE = 38;
const TITLE_ABOVE = 22;
const TALL = 150;
const LOW = 60;
const AFTER = 18;
const FOOT = 26;
/** What is exact is still drawn as a line of this many pixels. */
const LEAST = 3;

/** A chart for every denomination with two standards or more whose weight is known; the one with most pieces here first. */
export function seriesCharts({ lists, listed }: Cabinet): readonly SeriesChart[] {
  const countOf = ({ id }: Denomination): number => listed.filter(({ denomination }) => isOf(denomination, id)).length;
  const fullestFirst = Object.values(lists.denominations).toSorted((a, b) => countOf(b) - countOf(a));
  return fullestFirst.flatMap((denomination) => {
    const rows = debasement(standardsOf(denomination.fields)).filter(({ standard }) => standard.grams !== null);
    const scale = scaleOver(rows.map(({ standard }) => standard.years));
    return rows.length < 2 || scale === null ? [] : [chartOf(denomination, rows, scale)];
  });
}

function isOf(denomination: PublicPiece['denomination'], id: string): boolean {
  return denomination !== null && typeof denomination !== 'string' && denomination.id === id;
}

function chartOf({ fields }: Denomination, rows: readonly SeriesRow[], scale: TimeScale): SeriesChart {
  const words = measuresWords.series;
  const weight = weightPanel(rows, scale, TITLE);
  const width = intervalPanel(rows, scale, weight.bottom, words.panels.diameter, ({ standard }) => standard.diameter);
  const thickness = intervalPanel(rows, scale, width.bottom, words.panels.thickness, (row) => row.thickness);
  const base = thickness.bottom - AFTER + 6;
  return {
    name: fields.name,
    says: words.says(fields.name, [
      ...(width.panel === null ? [] : [words.below.diameter]),
      ...(thickness.panel === null ? [] : [words.below.thickness]),
    ]),
    years: ticksOf(scale),
    panels: [weight, width, thickness].flatMap(({ panel }) => (panel === null ? [] : [panel])),
    base,
    height: base + FOOT,
    table: {
      columns: words.columns,
      rows: rows.map(({ standard, fineGrams, change }) => [
        spanInWords(standard.years),
        spanOf(standard.grams, 4),
        spanOf(fineGrams, 4),
        standard.fineness === null ? words.unknown : formatFineness(standard.fineness),
        spanOf(standard.diameter, 2),
        change?.because ?? words.first,
        standard.source,
      ]),
    },
    steps: rows.flatMap(({ standard, change }) =>
      change === null
        ? []
        : [
            {
              years: spanInWords(standard.years),
              ways: change.ways.map((way) => words.ways[way]).join(', '),
              because: change.because,
            },
          ],
    ),
  };
}

type Laid = { readonly panel: SeriesPanel | null; readonly bottom: number };

function weightPanel(rows: readonly SeriesRow[], scale: TimeScale, top: number): Laid {
  const heights = numberScale(
    rows.flatMap(({ standard }) => standard.grams?.high ?? []),
    0,
  );
  if (heights === null) return { panel: null, bottom: top };
  const y = (value: number): number => top + TALL - (TALL * (value - heights.low)) / (heights.high - heights.low);
  const blocks = rows.flatMap(({ standard, fineGrams }): readonly SeriesBlock[] => {
    const bar = barOf(scale, standard.years);
    if (bar === null || standard.grams === null) return [];
    const { low, high } = standard.grams;
    const block = (from: number, to: number, kind: SeriesBlock['kind']): readonly SeriesBlock[] =>
      from < to ? [{ x: bar.x, width: bar.width, y: y(to), height: y(from) - y(to), kind }] : [];
    return [
      ...block(low, high, 'hollow'),
      ...block(0, low, 'soft'),
      ...(fineGrams === null ? [] : [...block(0, fineGrams.low, 'bar')]),
    ];
  });
  return { panel: panelOf(measuresWords.series.panels.weight, top, heights, y, blocks), bottom: top + TALL + AFTER };
}

function intervalPanel(
  rows: readonly SeriesRow[],
  scale: TimeScale,
  from: number,
  title: string,
  measure: (row: SeriesRow) => Interval | null,
): Laid {
  const values = rows.flatMap((row) => {
    const span = measure(row);
    return span === null ? [] : [span.low, span.high];
  });
  const heights = numberScale(values);
  if (heights === null) return { panel: null, bottom: from };
  const top = from + TITLE;
  const y = (value: number): number => top + LOW - (LOW * (value - heights.low)) / (heights.high - heights.low);
  const blocks = rows.flatMap((row): readonly SeriesBlock[] => {
    const span = measure(row);
    const bar = barOf(scale, row.standard.years);
    if (span === null || bar === null) return [];
    const height = Math.max(LEAST, y(span.low) - y(span.high));
    return [{ x: bar.x, width: bar.width, y: y(span.high), height, kind: span.low === span.high ? 'bar' : 'hollow' }];
  });
  return { panel: panelOf(title, top, { ...heights, ticks: endsOf(heights) }, y, blocks), bottom: top + LOW + AFTER };
}

/** A low panel has room for two numbers. */
function endsOf({ ticks }: NumberScale): readonly NumberTick[] {
  return ticks.filter((_, at) => at === 0 || at === ticks.length - 1);
}

function panelOf(
  title: string,
  top: number,
  { ticks }: NumberScale,
  y: (value: number) => number,
  blocks: readonly SeriesBlock[],
): SeriesPanel {
  return { title, titleAt: top - TITLE_ABOVE, ticks: ticks.map((tick) => ({ ...tick, y: y(tick.at) })), blocks };
}

function spanOf(span: Interval | null, most: number): string {
  if (span === null) return measuresWords.series.unknown;
  const [a, b] = [writeAmount(span.low, most), writeAmount(span.high, most)];
  return a === b ? a : `${a}–${b}`;
}
