import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { measuresWords } from '../../words/measures.ts';
import { facetLists } from '../find/facets.ts';
import { gradesShown } from './grade-rows.ts';
import type { GradesShown } from './grade-rows.ts';
import type { PageHead } from '../shared/head.ts';
import { seriesCharts } from './series-charts.ts';
import type { SeriesChart } from './series-charts.ts';
import { weightCharts } from './weight-rows.ts';
import type { WeightChart } from './weight-rows.ts';
import { TROY_OUNCE } from '../../../core/measures/units.ts';
import { notAsStruck } from '../../../core/metal/fine-metal.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';

export type MeasuresPage = {
  readonly head: PageHead;
  readonly grades: GradesShown;
  readonly weights: readonly WeightChart[];
  readonly series: readonly SeriesChart[];
  /** Null where the keeper has not asked for totals. */
  readonly fine: readonly FineTotal[] | null;
};

export function measuresPage(cabinet: Cabinet): MeasuresPage {
  const { title, description } = measuresWords;
  return {
    head: { title, description, here: urls.measures() },
    grades: gradesShown(cabinet.listed, facetLists(cabinet)),
    weights: weightCharts(cabinet),
    series: seriesCharts(cabinet),
    fine: cabinet.lists.cabinet['metal-totals'] === 'yes' ? fineTotals(cabinet.listed) : null,
  };
}

type FineTotal = {
  readonly metal: string;
  readonly total: string;
  readonly counted: string;
  /** Empty when nothing was left out. */
  readonly left: string;
};

const METALS = [
  ['gold', /\bgold\b/i],
  ['silver', /\bsilver\b|\bbillon\b/i],
] as const;

/**
 * The fine gold and silver of the listed pieces that are here (kept or lent), each total from its low end to its high. Plated
 * pieces are of neither metal; of a mounted one the weight is not known.
 */
export function fineTotals(pieces: readonly PublicPiece[]): readonly FineTotal[] {
  const here = pieces.filter(({ listed, status }) => listed && (status === 'kept' || status === 'lent'));
  return METALS.flatMap(([metal, named]) => {
    const ofIt = here.filter((piece) => named.test(piece.metal ?? '') && !notAsStruck(piece).plated);
    const known = ofIt.flatMap((piece) =>
      piece.fineGrams === null || notAsStruck(piece).mounted ? [] : [piece.fineGrams],
    );
    if (known.length === 0) return [];
    const low = known.reduce((sum, grams) => sum + grams.low, 0);
    const high = known.reduce((sum, grams) => sum + grams.high, 0);
    const { fine } = measuresWords;
    return [
      {
        metal: fine.metal[metal],
        total:
          known.length === 1
            ? fine.total(nearest(low, high, 2), nearest(low / TROY_OUNCE, high / TROY_OUNCE, 3))
            : fine.total(span(low, high, 1), span(low / TROY_OUNCE, high / TROY_OUNCE, 3)),
        counted: fine.counted(known.length),
        left: fine.left(ofIt.length - known.length),
      },
    ];
  });
}

function nearest(low: number, high: number, decimals: number): string {
  const [a, b] = [low.toFixed(decimals), high.toFixed(decimals)];
  return a === b ? a : `${a}–${b}`;
}

/** The low end rounded down and the high end up, so that the range holds what was computed. */
function span(low: number, high: number, decimals: number): string {
  const scale = 10 ** decimals;
  const [a, b] = [Math.floor(low * scale) / scale, Math.ceil(high * scale) / scale];
  return a === b ? a.toFixed(decimals) : `${a.toFixed(decimals)}–${b.toFixed(decimals)}`;
}
