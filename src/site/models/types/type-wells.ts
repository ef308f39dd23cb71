import type { TypeSeries } from '../../../catalogue/types/series.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import { usualWidth } from '../sets/place-shown.ts';
import type { Link, TrayPlace } from '../sets/place-shown.ts';
import { leadingFace } from '../shared/face.ts';
import { widthClass } from '../shared/sizes.ts';
import { symbolsOf } from './drawings.ts';
import type { DrawnSymbol } from './drawings.ts';
import { drawnBy } from './marks.ts';
import { piecesOfSeries, piecesOfType } from './types-page.ts';

/** The well of a type: with a piece of it, or with the drawings of what it is known by, and words where no drawing tells it. */
export type TypeWell = TrayPlace & {
  readonly drawings: readonly string[];
  readonly mark: string | null;
  /** How many pieces there are, where that is more or less than the one that is seen. */ readonly several:
    string | null;
};

/** A row of a board of types: those under one broader type, with its name and date; null where they are under none. */
export type WellRow = {
  readonly type: (Link & { readonly id: string; readonly date: string | null }) | null;
  readonly wells: readonly TypeWell[];
};

/** Rows with the drawings that their wells show. */
export function drawnRows(
  series: TypeSeries,
  rows: readonly WellRow[],
): { readonly rows: readonly WellRow[]; readonly symbols: readonly DrawnSymbol[] } {
  return {
    rows,
    symbols: symbolsOf(
      series,
      rows.flatMap(({ wells }) => wells.flatMap(({ drawings }) => drawings)),
    ),
  };
}

/** The wells of these types in rows, by the types they are under. */
export function wellRows(cabinet: Cabinet, series: TypeSeries, ids: readonly string[]): readonly WellRow[] {
  const rows: { type: WellRow['type']; under: string | null; wells: TypeWell[] }[] = [];
  for (const well of typeWells(cabinet, series, ids)) {
    const type = series.types.get(well.id);
    // A type with others under it, of which a piece is known no nearer, begins the row of its own.
    const under = (type?.narrower.length ?? 0) > 0 ? well.id : (type?.broader ?? null);
    const last = rows.at(-1);
    if (last !== undefined && last.under === under) last.wells.push(well);
    else rows.push({ under, type: under === null ? null : rowName(series, under), wells: [well] });
  }
  return rows;
}

function rowName(series: TypeSeries, id: string): WellRow['type'] {
  const date = known(series.facts.get(id)?.date);
  return {
    id,
    href: urls.type(series.id, id),
    name: series.types.get(id)?.label ?? id,
    date: date === null ? null : formatDate(date),
  };
}

/** A well for each of these types, with a piece of it, or of one under it, where there is one: one that is surely so first. */
export function typeWells(cabinet: Cabinet, series: TypeSeries, ids: readonly string[]): readonly TypeWell[] {
  const drawn = drawnBy(series);
  const well = widthClass(usualWidth(piecesOfSeries(cabinet, series.id)));
  return ids.map((id) => {
    const all = piecesOfType(cabinet, series.id, id);
    const isSure = (piece: PublicPiece): boolean =>
      piece.types.some((type) => type.series === series.id && type.sure === 'certain');
    const isSeen = (piece: PublicPiece): boolean => cabinet.photographs[piece.id] !== undefined;
    const piece = [isSeen, () => true].flatMap((may) => all.filter((one) => isSure(one) && may(one)))[0] ?? all[0];
    const to = urls.type(series.id, id);
    return {
      id,
      label: series.types.get(id)?.label ?? id,
      state: piece === undefined ? 'wanted' : isSure(piece) ? 'filled' : 'possible',
      several:
        all.length === 0 || (all.length === 1 && all.every(isSure))
          ? null
          : typesWords.here(all.length, all.filter(isSure).length),
      says: piece === undefined ? typesWords.noneHere : typesWords.here(all.length, all.filter(isSure).length),
      piece:
        piece === undefined ? null : { href: to, name: piece.title, face: leadingFace(piece, cabinet.photographs) },
      well,
      to,
      drawings: drawn.get(id)?.drawings ?? [],
      mark: drawn.get(id)?.says ?? null,
    };
  });
}
