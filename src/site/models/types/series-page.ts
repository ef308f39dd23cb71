import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import type { Board } from '../shared/board.ts';
import { boardOf } from '../shared/board.ts';
import { linkedSeriesOf } from '../open-data/linked-lists.ts';
import { linkedHead } from '../shared/head.ts';
import type { PageHead } from '../shared/head.ts';
import { mostShown } from '../shared/most-shown.ts';
import type { Link } from '../sets/place-shown.ts';
import { foundSeries, leafIds, piecesOfSeries, piecesOfType, seriesTrail } from './types-page.ts';

/** A type in the tree of its series, with those under it. */
export type TypeBranch = Link & { readonly here: string | null; readonly under: readonly TypeBranch[] };

export type SeriesPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly says: string;
  readonly note: string | null;
  readonly sources: readonly (Link & { readonly pages: string | null })[];
  readonly ways: readonly Link[];
  readonly tree: readonly TypeBranch[];
  readonly board: Board | null;
};

export async function seriesPage(cabinet: Cabinet, id: string): Promise<SeriesPage> {
  const series = foundSeries(cabinet, id);
  const pieces = piecesOfSeries(cabinet, id);
  const labels = new Map(
    pieces.map((piece) => [piece.id, piece.types.find((type) => type.series === id)?.label ?? null]),
  );
  const says = typesWords.series(leafIds(series).length, pieces.length);
  const branch = (type: string): TypeBranch => {
    const found = series.types.get(type);
    const count = piecesOfType(cabinet, id, type).length;
    return {
      href: urls.type(id, type),
      name: found?.label ?? type,
      here: count === 0 ? null : typesWords.here(count),
      under: (found?.narrower ?? []).map(branch),
    };
  };
  return {
    head: {
      title: series.fields.title,
      description: `${says}.`,
      here: urls.series(id),
      ...linkedHead(linkedSeriesOf(cabinet, id)[0]),
      trail: seriesTrail(series, false) ?? [],
    },
    title: series.fields.title,
    says,
    note: series.fields.note ?? null,
    sources: series.fields.source.map(({ work, pages: at }) => ({
      href: urls.work(work),
      name: cabinet.lists.works[work]?.fields.short ?? work,
      pages: at ?? null,
    })),
    ways: [
      ...(series.characters.length === 0 ? [] : [{ href: urls.typeKey(id), name: typesWords.key }]),
      ...(series.numbers.length === 0 ? [] : [{ href: urls.concordance(id), name: typesWords.concordance }]),
      ...(series.pairs.length === 0 ? [] : [{ href: urls.dieChart(id), name: typesWords.dies }]),
    ],
    tree: [...series.types.values()].filter(({ broader }) => broader === null).map((type) => branch(type.id)),
    board: pieces.length === 0 ? null : await boardOf(mostShown(pieces).shown, (piece) => labels.get(piece.id) ?? null),
  };
}
