import { known } from '../../../catalogue/schema/fields.ts';
import { periodYears } from '../../../core/eras/era-scheme.ts';
import type { EraScheme, Interval } from '../../../core/eras/era-scheme.ts';
import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { erasWords } from '../../words/eras.ts';
import type { ChartTable } from '../charts/chart.ts';
import { allBands } from './era-bands.ts';
import { sourceParts } from './eras-page.ts';
import type { SchemesChart, SourcePart } from './eras-page.ts';
import type { PageHead } from '../shared/head.ts';
import { leadingFace } from '../shared/face.ts';
import { isCertain, tallyOf } from '../shared/tally.ts';
import { mostShown } from '../shared/most-shown.ts';
import { packedBars } from '../charts/packed-bars.ts';
import { scaleOver, ticksOf } from '../charts/time-scale.ts';
import { pieceRow, timeLine } from '../charts/timed.ts';
import { byYears } from '../charts/years.ts';
import type { TimeLine, UndrawnRow } from '../charts/timed.ts';

/** A period and the pieces whose years it touches; `line` is null when there is none. */
export type PeriodShown = {
  readonly id: string;
  readonly name: string;
  readonly years: string | null;
  readonly note: string | null;
  readonly count: string;
  /** A long list is folded on a phone. */
  readonly isLong: boolean;
  readonly line: TimeLine | null;
  /** Pieces left off a long list. */
  readonly more: number;
  /** Where all of them are. */
  readonly all: string;
};

export type EraPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly source: readonly SourcePart[];
  /** What the mark on some pieces means; null where there is none. */
  readonly footnote: string | null;
  readonly region: string | null;
  readonly appliesTo: string | null;
  readonly note: string | null;
  readonly ends: string;
  /** What the drawing shows. */
  readonly says: string;
  readonly chart: SchemesChart | null;
  readonly table: ChartTable;
  readonly periods: readonly PeriodShown[];
};

/** Pieces of a period above which its list is folded on a phone. */
const LONG = 8;

export function eraIds({ lists }: Cabinet): readonly string[] {
  return lists.eras.map(({ id }) => id);
}

export function eraPage(cabinet: Cabinet, id: string): EraPage {
  const era = cabinet.lists.eras.find((one) => one.id === id);
  if (era === undefined) throw new Error(`There is no era scheme ${id}.`);
  const { fields, scheme } = era;
  const pieces = byYears(cabinet.listed);
  const { chart, beyond } = chartOf(cabinet, era.scheme);
  const placed = (of: string): readonly PublicPiece[] =>
    pieces.filter((piece) => piece.eras[id]?.periods.some((period) => period.id === of));
  const periods = scheme.periods.map((period) => {
    const here = placed(period.id);
    const { shown, more } = mostShown(here);
    const rows = shown.map((piece) => rowOf(piece, id, period.id, cabinet));
    return {
      id: period.id,
      name: period.name,
      years: yearsInWords(periodYears(period)),
      note: fields.periods.find((one) => one.id === period.id)?.note ?? null,
      count: countWords.tally(tallyOf(here, (piece) => isSurelyOf(piece, id, period.id))),
      isLong: here.length > LONG,
      line: here.length === 0 ? null : lineOf(rows, periodYears(period)),
      more,
      all: urls.facet('era', `${id}-${period.id}`),
    };
  });
  return {
    head: {
      title: fields.title,
      description: fields.note ?? erasWords.periodsOf(fields.title),
      here: urls.era(id),
      trail: [{ name: erasWords.title, href: urls.eras() }],
    },
    title: fields.title,
    source: sourceParts(fields.source),
    footnote: pieces.some((piece) => piece.eras[id]?.applies === 'perhaps') ? erasWords.perhapsNote : null,
    region: fields.region ?? null,
    appliesTo:
      scheme.appliesTo === undefined
        ? null
        : erasWords.appliesTo(scheme.appliesTo.map((place) => cabinet.lists.mints[place]?.fields.name ?? place)),
    note: fields.note ?? null,
    ends: erasWords.ends[fields.ends],
    says: [erasWords.schemeSays(fields.title), erasWords.notDrawn(beyond)].join(' ').trim(),
    chart,
    table: {
      columns: [erasWords.tablePeriod, erasWords.tableYears, erasWords.tablePieces],
      rows: periods.map(({ name, years, count }) => [name, years, count]),
    },
    periods: [
      ...periods,
      ...UNPLACED.flatMap(({ id: as, name, state }) =>
        unplaced(
          as,
          name,
          pieces.filter((piece) => piece.eras[id]?.state === state),
          cabinet.photographs,
        ),
      ),
    ],
  };
}

/** Whether all of its possible years are in the period, nothing about its date is doubtful, and the scheme is for its place. */
function isSurelyOf(piece: PublicPiece, scheme: string, period: string): boolean {
  const placing = piece.eras[scheme];
  if (placing === undefined || placing.applies === 'perhaps') return false;
  const isWhole = placing.periods.some(({ id, share }) => id === period && share === 1);
  return isWhole && isCertain(piece, 'date') && known(piece.date)?.doubtful !== true;
}

/** What has no period here, in the order in which it is told. */
const UNPLACED = [
  { id: 'outside', name: erasWords.outside, state: 'outside' },
  { id: 'not-applicable', name: erasWords.notApplicable, state: 'not applicable' },
  { id: 'undated', name: erasWords.undated, state: 'unknown' },
] as const;

/** A piece in a period, with where else it may belong, and a mark where the scheme applies only perhaps. */
function rowOf(piece: PublicPiece, scheme: string, period: string, { photographs }: Cabinet): UndrawnRow {
  const placing = piece.eras[scheme];
  const isWhole = placing?.periods.find(({ id }) => id === period)?.share === 1;
  const others = (placing?.periods ?? []).filter(({ id }) => id !== period).map(({ name }) => name);
  const row = withFace(piece, photographs, isWhole ? null : erasWords.orElse(others));
  return placing?.applies === 'perhaps' ? { ...row, years: `${row.years}${erasWords.perhapsMark}` } : row;
}

function withFace(piece: PublicPiece, photographs: Cabinet['photographs'], note: string | null): UndrawnRow {
  const face = photographs[piece.id] === undefined ? null : leadingFace(piece, photographs);
  return { ...pieceRow(piece, note), face };
}

/** The pieces of a period on its own years: what runs on beyond them ends in an arrow. */
function lineOf(rows: readonly UndrawnRow[], { low, high }: Interval): TimeLine {
  // One bar alone on its own line of years says nothing that its years do not.
  if (rows.length === 1) return withoutAxis(rows);
  const ends = rows.flatMap(({ spans }) => spans.flatMap(({ span }) => [span.low, span.high])).filter(Number.isFinite);
  const scale = scaleOver([
    {
      low: Number.isFinite(low) ? low : Math.min(...ends),
      high: Number.isFinite(high) ? high : Math.max(...ends),
    },
  ]);
  return (scale === null ? null : timeLine(rows, { scale })) ?? withoutAxis(rows);
}

/** On the years of the scheme's own periods; what lies beyond them is counted. */
function chartOf(cabinet: Cabinet, scheme: EraScheme): { chart: SchemesChart | null; beyond: number } {
  const listed = cabinet.listed.filter((piece) => piece.eras[scheme.id]?.state !== 'not applicable');
  const scale = scaleOver(scheme.periods.map(periodYears));
  if (scale === null) return { chart: null, beyond: 0 };
  const drawn = listed.filter(({ years }) => years !== null && years.high >= scale.low && years.low <= scale.high);
  const dated = listed.filter(({ years }) => years !== null);
  return {
    chart: { ticks: ticksOf(scale), schemes: allBands([scheme], scale), pieces: packedBars(drawn, scale) },
    beyond: dated.length - drawn.length,
  };
}

/** Rows in words alone. */
function withoutAxis(rows: readonly UndrawnRow[]): TimeLine {
  return { ticks: [], behind: [], rows: rows.map(({ spans: _, ...row }) => ({ ...row, bars: [] })) };
}

/** What no period holds; left out when there is nothing. An undated piece has a row and no bar. */
function unplaced(
  id: string,
  name: string,
  pieces: readonly PublicPiece[],
  photographs: Cabinet['photographs'],
): readonly PeriodShown[] {
  if (pieces.length === 0) return [];
  const { shown, more } = mostShown(pieces);
  const rows = shown.map((piece) => withFace(piece, photographs, null));
  return [
    {
      id,
      name,
      years: null,
      note: null,
      count: countWords.tally(tallyOf(pieces, () => true)),
      isLong: pieces.length > LONG,
      // Of all times and places: an axis for them would be a diagonal.
      line: withoutAxis(rows),
      more,
      all: urls.pieces(),
    },
  ];
}
