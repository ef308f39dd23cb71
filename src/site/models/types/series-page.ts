import { lineOf } from '../../../core/types/series.ts';
import type { SeriesType } from '../../../core/types/series.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import { linkedSeriesOf } from '../open-data/linked-lists.ts';
import { linkedHead } from '../shared/head.ts';
import type { PageHead } from '../shared/head.ts';
import { cutPage, furtherPages } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';
import type { Link } from '../sets/place-shown.ts';
import type { DrawnSymbol } from './drawings.ts';
import { drawnRows, wellRows } from './type-wells.ts';
import type { WellRow } from './type-wells.ts';
import {
  foundSeries,
  describedIds,
  piecesOfSeries,
  piecesOfType,
  seriesIds,
  seriesTrail,
  titleOfPage,
  topsOf,
} from './types-page.ts';

/** A type in the tree of its series, with those under it. */
export type TypeBranch = Link & { readonly here: string | null; readonly under: readonly TypeBranch[] };

export type SeriesPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly says: string;
  readonly note: string | null;
  readonly sources: readonly (Link & { readonly pages: string | null })[];
  /** Where a piece of the series is identified; null where it has no key. */
  readonly key: Link | null;
  readonly ways: readonly Link[];
  readonly tree: readonly TypeBranch[];
  /** A well for each type that has none under it, or a piece known no nearer. */
  readonly rows: readonly WellRow[];
  readonly symbols: readonly DrawnSymbol[];
  /** Books on the series that the list was not made from. */
  readonly seeAlso: readonly (Link & { readonly pages: string | null })[];
  /** Who drew the marks; null where none is drawn. */
  readonly drawnSo: string | null;
  /** Types in the list that are no types of it. */
  readonly outside: readonly Link[];
  readonly pager: Pager | null;
};

/** Types on a page. */
const ON_A_PAGE = 200;

export function furtherSeriesPaths(cabinet: Cabinet): { params: { series: string; page: string } }[] {
  return seriesIds(cabinet).flatMap((series) =>
    furtherPages(foundSeries(cabinet, series).types.size, ON_A_PAGE).map((page) => ({
      params: { series, page: String(page) },
    })),
  );
}

export function seriesPage(cabinet: Cabinet, id: string, page = 1): SeriesPage {
  const series = foundSeries(cabinet, id);
  const pieces = piecesOfSeries(cabinet, id);
  const says = typesWords.series(describedIds(series).length, pieces.length);
  const tops = topsOf(series);
  const { shown, pager } = cutPage(inOrder(series.types, tops), page, ON_A_PAGE, (at) => urls.series(id, at));
  const isLeaf = (type: string): boolean => series.types.get(type)?.narrower.length === 0;
  const holdsOwn = (type: string): boolean =>
    pieces.some(({ types }) => types.some((one) => one.series === id && one.id === type));
  // What a page begins with stands under the types it belongs to.
  const named = new Set(shown.flatMap((type) => lineOf(series.types, type).map((above) => above.id)));
  const branch = (type: string): TypeBranch => {
    const found = series.types.get(type);
    const all = piecesOfType(cabinet, id, type);
    const certain = all.filter(({ types }) => types.some((one) => one.series === id && one.sure === 'certain')).length;
    return {
      href: urls.type(id, type),
      name: found?.label ?? type,
      here: all.length === 0 ? null : typesWords.here(all.length, certain),
      under: (found?.narrower ?? []).filter((below) => named.has(below)).map(branch),
    };
  };
  return {
    head: {
      title: titleOfPage(series.fields.title, page),
      description: `${says}.`,
      here: urls.series(id, page),
      ...(page === 1 ? linkedHead(linkedSeriesOf(cabinet, id)[0]) : {}),
      trail: seriesTrail(series, page !== 1) ?? [],
    },
    title: series.fields.title,
    says,
    note: series.fields.note ?? null,
    sources: worksIn(cabinet, series.fields.source),
    seeAlso: worksIn(cabinet, series.fields['see-also']),
    drawnSo: series.fields.drawings ?? null,
    outside: series.fields.outside.map((type) => ({
      href: urls.type(id, type),
      name: series.types.get(type)?.label ?? type,
    })),
    key: series.characters.length === 0 ? null : { href: urls.typeKey(id), name: typesWords.key },
    ways: [
      ...(series.numbers.length === 0 ? [] : [{ href: urls.concordance(id), name: typesWords.concordance }]),
      ...(series.pairs.length === 0 ? [] : [{ href: urls.dieChart(id), name: typesWords.dies }]),
    ],
    tree: tops.filter((type) => named.has(type)).map(branch),
    pager,
    ...drawnRows(
      series,
      wellRows(
        cabinet,
        series,
        shown.filter((type) => isLeaf(type) || holdsOwn(type)),
      ),
    ),
  };
}

function worksIn(
  { lists }: Cabinet,
  works: readonly { readonly work: string; readonly pages?: string | undefined }[],
): SeriesPage['sources'] {
  return works.map(({ work, pages }) => ({
    href: urls.work(work),
    name: lists.works[work]?.fields.short ?? work,
    pages: pages ?? null,
  }));
}

/** Types with all that are under each, in the order of the tree. */
function inOrder(types: ReadonlyMap<string, SeriesType>, ids: readonly string[]): readonly string[] {
  return ids.flatMap((id) => [id, ...inOrder(types, types.get(id)?.narrower ?? [])]);
}
