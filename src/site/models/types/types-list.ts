import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import type { Link } from '../sets/place-shown.ts';
import type { PageHead } from '../shared/head.ts';
import type { DrawnSymbol } from './drawings.ts';
import { drawnRows, typeWells } from './type-wells.ts';
import type { WellRow } from './type-wells.ts';
import { describedIds, piecesOfSeries, topsOf } from './types-page.ts';

export type TypesPage = {
  readonly head: PageHead;
  readonly series: readonly (Link & {
    readonly says: string;
    readonly note: string | null;
    readonly rows: readonly WellRow[];
    readonly symbols: readonly DrawnSymbol[];
    readonly more: string | null;
  })[];
};

/** Wells of a series among others. */
const SHOWN = 24;

export function typesPage(cabinet: Cabinet): TypesPage {
  return {
    head: { title: typesWords.title, description: typesWords.description, here: urls.types() },
    series: cabinet.lists.types.series.map((series) => ({
      href: urls.series(series.id),
      name: series.fields.title,
      says: typesWords.series(describedIds(series).length, piecesOfSeries(cabinet, series.id).length),
      note: series.fields.note ?? null,
      ...drawnRows(series, [{ type: null, wells: typeWells(cabinet, series, topsOf(series).slice(0, SHOWN)) }]),
      more: topsOf(series).length > SHOWN ? typesWords.more(topsOf(series).length - SHOWN) : null,
    })),
  };
}
