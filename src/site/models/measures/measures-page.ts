import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { measuresWords } from '../../words/measures.ts';
import { fineTotals } from './fine-totals.ts';
import type { FineTotal } from './fine-totals.ts';
import { gradesShown } from './grade-rows.ts';
import type { GradesShown } from './grade-rows.ts';
import type { PageHead } from '../shared/head.ts';
import { seriesCharts } from './series-charts.ts';
import type { SeriesChart } from './series-charts.ts';
import { weightCharts } from './weight-rows.ts';
import type { WeightChart } from './weight-rows.ts';

export type MeasuresPage = {
  readonly head: PageHead;
  readonly grades: GradesShown;
  readonly weights: readonly WeightChart[];
  readonly series: readonly SeriesChart[];
  readonly fine: readonly FineTotal[];
};

export function measuresPage(cabinet: Cabinet): MeasuresPage {
  const { title, description } = measuresWords;
  return {
    head: { title, description, here: urls.measures() },
    grades: gradesShown(cabinet.listed),
    weights: weightCharts(cabinet),
    series: seriesCharts(cabinet),
    fine: fineTotals(cabinet.listed),
  };
}
