import { typeOfKey } from '../../../catalogue/types/types-of.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import type { SeriesType } from '../../../core/types/series.ts';
import type { TypeSeries } from '../../../catalogue/types/series.ts';
import type { PageHead } from '../shared/head.ts';
import { mostShown } from '../shared/most-shown.ts';
import { cutPage } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';
import type { Link } from '../sets/place-shown.ts';
import { numbersShown } from './type-page.ts';
import type { NumberShown } from './type-page.ts';
import { foundSeries, pagedPaths, seriesTrail, seriesWithNumbers, titleOfPage } from './types-page.ts';

export type ConcordancePage = {
  readonly head: PageHead;
  readonly rows: readonly { readonly type: Link; readonly numbers: readonly NumberShown[] }[];
  readonly disagreements: readonly string[];
  /** Disagreements that are not shown. */
  readonly more: number;
  readonly pager: Pager | null;
};

/** Types on a page: a sheet or two of paper. */
const ON_A_PAGE = 150;

export function concordancePaths(cabinet: Cabinet) {
  return pagedPaths(seriesWithNumbers(cabinet), (id) => numbered(cabinet, id).length, ON_A_PAGE);
}

/** The types of a series that have a number in any book. */
function numbered(cabinet: Cabinet, id: string): readonly SeriesType[] {
  const { types, numbers } = foundSeries(cabinet, id);
  const has = new Set(numbers.map(({ type }) => typeOfKey(type).id));
  return [...types.values()].filter((type) => has.has(type.id));
}

export function concordancePage(cabinet: Cabinet, id: string, page: number): ConcordancePage {
  const series = foundSeries(cabinet, id);
  const { shown, pager } = cutPage(numbered(cabinet, id), page, ON_A_PAGE, (at) => urls.concordance(id, at));
  const disagreements = mostShown(page === 1 ? disagreementsIn(cabinet, series) : []);
  return {
    head: {
      title: titleOfPage(`${typesWords.concordance} · ${series.fields.title}`, page),
      here: urls.concordance(id, page),
      trail: seriesTrail(series, true) ?? [],
    },
    rows: shown.map((type) => ({
      type: { href: urls.type(id, type.id), name: type.label },
      numbers: numbersShown(cabinet, id, type.id),
    })),
    disagreements: disagreements.shown,
    more: disagreements.more,
    pager,
  };
}

function disagreementsIn({ lists }: Cabinet, { id, types: own }: TypeSeries): readonly string[] {
  return lists.types.concordance.disagreements
    .filter(({ why, types }) => why === 'several-types' && types.some((type) => typeOfKey(type).series === id))
    .map(({ work, number, types }) => {
      const book = lists.works[work]?.fields.short ?? work;
      const labels = types.map((type) => own.get(typeOfKey(type).id)?.label ?? type);
      return typesWords.disputed(`${book} ${number}`, labels.join(' and '));
    });
}
