import { PIECE_ROWS } from '../../../catalogue/fields/piece-fields.ts';
import { factColumn } from '../../../catalogue/types/type-facts.ts';
import type { TypeSeries } from '../../../catalogue/types/series.ts';
import { isCopy } from '../../../catalogue/types/inherit-facts.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { formatGrade } from '../../../core/grade/grade.ts';
import { formatStanding, standingOf } from '../../../core/types/census.ts';
import { leavesBelow, lineOf, NOT_APPLICABLE, NOT_KNOWN } from '../../../core/types/series.ts';
import type { Said, SeriesType } from '../../../core/types/series.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { capital, kindInWords } from '../../words/capital.ts';
import { typesWords } from '../../words/types.ts';
import { row } from '../piece/row.ts';
import type { Row } from '../piece/row.ts';
import type { Board } from '../shared/board.ts';
import { boardOf } from '../shared/board.ts';
import { acrossClass, faceOf } from '../shared/face.ts';
import type { FaceView } from '../shared/face.ts';
import { ticketOf } from '../shared/ticket.ts';
import type { Ticket } from '../shared/ticket.ts';
import { symbolsOf } from './drawings.ts';
import type { DrawnSymbol } from './drawings.ts';
import { glassesOn } from './key-coin.ts';
import type { Glass } from './key-coin.ts';
import { marksOf } from './marks.ts';
import type { TypeMarks } from './marks.ts';
import { numbersShown } from './numbers-shown.ts';
import type { NumbersShown } from './numbers-shown.ts';
import { linkedTypeOf } from '../open-data/linked-lists.ts';
import type { PageHead } from '../shared/head.ts';
import { mostShown } from '../shared/most-shown.ts';
import type { Link } from '../sets/place-shown.ts';
import { copiesOfType, foundSeries, piecesOfType, seriesTrail } from './types-page.ts';

export type SpecimenShown = {
  readonly name: string;
  readonly grade: string;
  /** Null where all are from one source. */
  readonly source: string | null;
  readonly sameAs: string | null;
};

/** Rows that come from one place: the type itself, one above it, or the whole series. */
export type RowsFrom = { readonly from: string; readonly rows: readonly Row[] };

export type TypePage = {
  readonly head: PageHead;
  readonly title: string;
  readonly level: string | null;
  readonly note: string | null;
  /** The piece that shows the type best, both faces of it; null where the cabinet has none. */
  readonly inHand: TypeInHand | null;
  readonly marks: TypeMarks;
  /** By character: where a mark of it is on the piece in hand. */
  readonly glasses: Readonly<Record<string, Glass>>;
  readonly symbols: readonly DrawnSymbol[];
  /** Who drew the marks; null where none is drawn. */
  readonly drawnSo: string | null;
  readonly facts: readonly RowsFrom[];
  readonly numbers: NumbersShown;
  readonly rarity: readonly Row[];
  readonly specimens: readonly SpecimenShown[];
  /** Who recorded them, each once. */
  readonly recordedBy: readonly string[];
  readonly standings: readonly string[];
  /** Where a piece of the series is identified; null where it has no key. */
  readonly key: Link | null;
  readonly narrower: readonly Link[];
  /** Where all of the narrower are, and in what words; null where they are all here. */
  readonly others: Link | null;
  readonly more: number;
  /** The other pieces of the type, and what imitates it. */
  readonly board: Board | null;
};

/** A piece of a type as it lies on the page: its faces, its ticket, and where it leads. */
export type TypeInHand = Link & {
  readonly faces: Readonly<Record<'obverse' | 'reverse', FaceView>>;
  readonly ticket: Ticket;
  readonly across: string;
};

export async function typePage(cabinet: Cabinet, seriesId: string, id: string): Promise<TypePage> {
  const series = foundSeries(cabinet, seriesId);
  const type = series.types.get(id);
  if (type === undefined) throw new Error(`There is no type ${id} in ${seriesId}.`);
  const pieces = piecesOfType(cabinet, seriesId, id);
  const narrower = mostShown(type.narrower);
  const above = lineOf(series.types, id).slice(1).reverse();
  const marks = marksOf(series, type);
  const best = bestOf(cabinet, series, pieces);
  return {
    head: {
      title: `${type.label} · ${series.fields.title}`,
      description: `${type.label}: ${typesWords.here(pieces.length)}.`,
      here: urls.type(seriesId, id),
      linked: linkedTypeOf(cabinet, seriesId, id),
      trail: [
        ...(seriesTrail(series, true) ?? []),
        ...above.map((one) => ({ name: one.label, href: urls.type(seriesId, one.id) })),
      ],
    },
    title: type.label,
    level: type.level === null ? null : typesWords.levelOf(type.level, above.at(-1)?.label ?? null),
    note: type.says.get('note')?.by === id ? (type.says.get('note')?.text ?? null) : null,
    inHand: best === undefined ? null : inHandOf(cabinet, best),
    marks,
    glasses: best === undefined ? {} : glassesOn(cabinet, series, best),
    symbols: symbolsOf(
      series,
      [...marks.telling, ...marks.common].flatMap(({ drawings }) => drawings),
    ),
    drawnSo: series.fields.drawings ?? null,
    facts: bySource(factRows(cabinet, series, type)),
    numbers: numbersShown(cabinet, seriesId, [{ id, type: null }]),
    rarity: (series.rarities.get(id) ?? []).flatMap(({ printed, scale, source, date }) =>
      row(scale, printed, { note: [source, date].filter((part) => part !== null).join(', ') || undefined }),
    ),
    ...censusOf(cabinet, series, id),
    key: series.characters.length === 0 ? null : { href: urls.typeKey(seriesId), name: typesWords.key },
    narrower: narrower.shown.map((below) => ({
      href: urls.type(seriesId, below),
      name: series.types.get(below)?.label ?? below,
    })),
    others:
      narrower.more === 0 ? null : { href: urls.series(seriesId), name: typesWords.allTypes(type.narrower.length) },
    board: await boardOfType(
      pieces.filter((piece) => piece !== best),
      copiesOfType(cabinet, seriesId, id),
    ),
  };
}

/** The piece that is surely of the type and was photographed, before any that is not. */
function bestOf({ photographs }: Cabinet, { id }: TypeSeries, pieces: readonly PublicPiece[]): PublicPiece | undefined {
  const worth = (piece: PublicPiece): number =>
    (piece.types.some((type) => type.series === id && type.sure === 'certain') ? 2 : 0) +
    (photographs[piece.id] === undefined ? 0 : 1);
  return pieces.toSorted((one, other) => worth(other) - worth(one))[0];
}

function inHandOf({ photographs }: Cabinet, piece: PublicPiece): TypeInHand {
  const faces = { obverse: faceOf(piece, 'obverse', photographs), reverse: faceOf(piece, 'reverse', photographs) };
  return {
    href: urls.piece(piece.id),
    name: piece.title,
    faces,
    ticket: ticketOf(piece),
    across: acrossClass([[faces.obverse, faces.reverse]]),
  };
}

/** The pieces of a type, and after them what imitates it, each said to be what it is. */
async function boardOfType(pieces: readonly PublicPiece[], copies: readonly PublicPiece[]): Promise<Board | null> {
  const all = [...pieces, ...copies];
  if (all.length === 0) return null;
  return boardOf(mostShown(all).shown, (piece) => (isCopy(piece) ? kindInWords(piece.kind) : null));
}

/** Where a cell comes from, when it is not the type's own. */
function inheritedFrom(series: TypeSeries, type: SeriesType, said: Said): string | undefined {
  if (said.by === type.id) return undefined;
  return said.by === null ? typesWords.wholeSeries : typesWords.after(series.types.get(said.by)?.label ?? said.by);
}

/** Rows under the source that each names, the type's own first, the whole series last. */
function bySource(rows: readonly Row[]): readonly RowsFrom[] {
  const from = ({ note }: Row): string => note ?? typesWords.ownRows;
  const place = (name: string): number => (name === typesWords.ownRows ? 0 : name === typesWords.wholeSeries ? 2 : 1);
  return [...new Set(rows.map(from))]
    .toSorted((one, other) => place(one) - place(other))
    .map((name) => ({
      from: name,
      rows: rows.filter((one) => from(one) === name).map((one) => ({ ...one, note: undefined })),
    }));
}

const NAMED = { ruler: 'rulers', 'struck-for': 'rulers', mint: 'mints', denomination: 'denominations' } as const;

function factRows({ lists }: Cabinet, series: TypeSeries, type: SeriesType): readonly Row[] {
  const characters = new Set(series.characters.map(({ id }) => id.toLowerCase()));
  return [...type.says].flatMap(([column, said]): readonly Row[] => {
    const field = factColumn(column);
    if (field === null || (characters.has(column) && !column.endsWith(' legend')) || said.text === NOT_APPLICABLE)
      return [];
    const list = NAMED[field as keyof typeof NAMED] as (typeof NAMED)[keyof typeof NAMED] | undefined;
    const text =
      said.text === NOT_KNOWN
        ? typesWords.leftOpen
        : list === undefined
          ? said.text
          : (lists[list][said.text]?.fields.name ?? said.text);
    const to = list === 'rulers' ? urls.ruler(said.text) : list === 'mints' ? urls.mint(said.text) : undefined;
    const date = field === 'date' ? known(series.facts.get(type.id)?.date) : null;
    const isLink = to !== undefined && said.text !== NOT_KNOWN;
    return row(fieldName(field), date == null ? capital(text) : formatDate(date), {
      ...(isLink ? { to } : {}),
      note: inheritedFrom(series, type, said),
    });
  });
}

function fieldName(field: string): string {
  const [side = '', part] = field.split(' ');
  const label = PIECE_ROWS[side as keyof typeof PIECE_ROWS].label;
  return part === undefined ? label : `${label}, ${part}`;
}

/** Whether to be of one type is to be of the other: it is the same, or lies under it. */
function isOf(series: TypeSeries, one: PublicPiece['types'][number], id: string): boolean {
  return one.series === series.id && lineOf(series.types, one.id).some((above) => above.id === id);
}

/** A type that a scale of its series calls common: a list of its pieces is never whole, so that a place in it would mislead. */
function isCommon(series: TypeSeries, id: string): boolean {
  return (series.rarities.get(id) ?? []).some(({ printed }) => /^(?:very |extremely )?common\b|^C\d?$/iu.test(printed));
}

function censusOf(
  cabinet: Cabinet,
  series: TypeSeries,
  id: string,
): Pick<TypePage, 'specimens' | 'recordedBy' | 'standings' | 'more'> {
  const leaves = new Set(leavesBelow(series.types, id));
  const lines = series.specimens.filter(({ type }) => type === id || leaves.has(type));
  const mine = piecesOfType(cabinet, series.id, id);
  // The other pieces here are as well known as any, whether or not a line names them.
  const own = mine.filter(({ types }) => types.some((one) => one.sure === 'certain' && isOf(series, one, id)));
  const everyone = [...lines, ...own.map((piece) => ({ specimen: piece.id, grade: piece.grade, sameAs: [] }))];
  const { shown, more } = mostShown(lines);
  const standings =
    lines.length === 0 || !leaves.has(id)
      ? []
      : isCommon(series, id)
        ? [typesWords.isCommon]
        : mostShown(own).shown.flatMap((piece) => {
            const standing = standingOf({ name: piece.id, grade: piece.grade }, everyone);
            const open =
              standing.withoutComparison === 0 || !standing.isGraded
                ? ''
                : ` ${typesWords.cannotCompare(standing.withoutComparison)}`;
            return [`${typesWords.standing(piece.title, formatStanding(standing))}.${open}`];
          });
  const recordedBy = [...new Set(lines.flatMap(({ source }) => source ?? []))];
  return {
    more,
    recordedBy,
    specimens: shown.map(({ specimen, grade, source, sameAs }) => ({
      name: specimen,
      grade: grade === null ? typesWords.notGraded : capital(formatGrade(grade)),
      source: recordedBy.length === 1 ? null : source,
      sameAs:
        sameAs.length === 0
          ? null
          : sameAs.map((name) => cabinet.listed.find((piece) => piece.id === name)?.title ?? name).join(', '),
    })),
    standings,
  };
}
