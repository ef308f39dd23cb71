import { isCopy } from '../../../catalogue/types/inherit-facts.ts';
import type { TypeSeries } from '../../../catalogue/types/series.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import { filedUnder } from '../shared/gather.ts';
import type { PageHead } from '../shared/head.ts';
import { furtherPages } from '../shared/pager.ts';

/** The types under no other. */
export function topsOf({ types, fields }: TypeSeries): readonly string[] {
  return [...types.values()]
    .filter(({ id, broader }) => broader === null && !fields.outside.includes(id))
    .map(({ id }) => id);
}

/** What the key may end with: every type that has none under it. */
export function leafIds(series: TypeSeries): readonly string[] {
  return [...series.types.values()].filter(({ narrower }) => narrower.length === 0).map(({ id }) => id);
}

/** The types that a series describes and that have none under them. */
export function describedIds(series: TypeSeries): readonly string[] {
  return leafIds(series).filter((id) => !series.fields.outside.includes(id));
}

/** The listed pieces of a series: those that say so and those that follow from a reference. No copies: see `copiesOfType`. */
export function piecesOfSeries({ listed }: Cabinet, series: string): readonly PublicPiece[] {
  return listed.filter((piece) => !isCopy(piece) && piece.types.some((type) => type.series === series));
}

/** The listed pieces of a type, or of one under it; what only imitates the type is no piece of it. */
export function piecesOfType({ listed }: Cabinet, series: string, id: string): readonly PublicPiece[] {
  return (byType(listed).get(`${series}/${id}`) ?? []).filter((piece) => !isCopy(piece));
}

/** The listed counterfeits and replicas that have a type, or one under it, for their model. */
export function copiesOfType({ listed }: Cabinet, series: string, id: string): readonly PublicPiece[] {
  return (byType(listed).get(`${series}/${id}`) ?? []).filter(isCopy);
}

const byType = onceFor((listed: readonly PublicPiece[]) => filedUnder(listed, ({ mayBe }) => mayBe.is));

export function foundSeries(cabinet: Cabinet, id: string): TypeSeries {
  const series = cabinet.lists.types.series.find((one) => one.id === id);
  if (series === undefined) throw new Error(`There is no series ${id}.`);
  return series;
}

export function seriesIds(cabinet: Cabinet): readonly string[] {
  return cabinet.lists.types.series.map(({ id }) => id);
}

export function seriesWithKey({ lists }: Cabinet): readonly string[] {
  return lists.types.series.flatMap(({ id, characters }) => (characters.length === 0 ? [] : [id]));
}

export function seriesWithNumbers({ lists }: Cabinet): readonly string[] {
  return lists.types.series.flatMap(({ id, numbers }) => (numbers.length === 0 ? [] : [id]));
}

export function seriesWithDies({ lists }: Cabinet): readonly string[] {
  return lists.types.series.flatMap(({ id, pairs }) => (pairs.length === 0 ? [] : [id]));
}

/** The paths of the pages of a list that a series has: the first without a number, the others with theirs. */
export function pagedPaths(
  ids: readonly string[],
  count: (series: string) => number,
  most: number,
): { params: { series: string; page: string | undefined } }[] {
  return ids.flatMap((series) =>
    [undefined, ...furtherPages(count(series), most).map(String)].map((page) => ({ params: { series, page } })),
  );
}

/** The title of a page of a list: of the first, the title alone. */
export function titleOfPage(title: string, page: number): string {
  return page === 1 ? title : `${title}, ${typesWords.page(page)}`;
}

/** Every type of every series, for the addresses of its page. */
export function typePaths({ lists }: Cabinet): readonly { readonly series: string; readonly id: string }[] {
  return lists.types.series.flatMap(({ id: series, types }) => [...types.keys()].map((id) => ({ series, id })));
}

/** The way to a page of a series. */
export function seriesTrail(series: TypeSeries, within: boolean): PageHead['trail'] {
  const types = { name: typesWords.title, href: urls.types() };
  return within ? [types, { name: series.fields.title, href: urls.series(series.id) }] : [types];
}
