import { periodYears } from '../../../core/eras/era-scheme.ts';
import type { EraScheme } from '../../../core/eras/era-scheme.ts';
import { COPIES, GONE } from '../../../core/sets/tally.ts';
import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { boardWords } from '../../words/board.ts';
import { countWords } from '../../words/counts.ts';
import { erasWords } from '../../words/eras.ts';
import type { ChartTable } from '../charts/chart.ts';
import { packedBars } from '../charts/packed-bars.ts';
import { scaleOver, ticksOf } from '../charts/time-scale.ts';
import { byYears } from '../charts/years.ts';
import type { Link } from '../sets/place-shown.ts';
import { boardOf } from '../shared/board.ts';
import type { Board } from '../shared/board.ts';
import type { PageHead } from '../shared/head.ts';
import { mostShown } from '../shared/most-shown.ts';
import { tallyOf } from '../shared/tally.ts';
import { allBands } from './era-bands.ts';
import { sourceParts } from './eras-page.ts';
import type { SchemesChart, SourcePart } from './eras-page.ts';
import { periodRows } from './period-rows.ts';
import type { PeriodRows } from './period-rows.ts';
import { doubtOf, piecesIn, tallyIn } from './placed.ts';

/** A period and its pieces; `board` is null when there is none. */
export type PeriodShown = {
  readonly id: string;
  readonly name: string;
  readonly years: string | null;
  readonly note: string | null;
  readonly count: string;
  /** Which of them are not certain, by reason; more than a few are not named here. */
  readonly doubts: readonly { readonly says: string; readonly pieces: readonly Link[] }[];
  /** A long list is folded on a phone. */
  readonly isLong: boolean;
  readonly board: Board | null;
  /** Pieces left off a long list. */
  readonly more: number;
  /** Where all of them are. */
  readonly all: string;
};

export type EraPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly source: readonly SourcePart[];
  readonly region: string | null;
  readonly appliesTo: string | null;
  readonly note: string | null;
  readonly ends: string;
  /** What the drawing shows. */
  readonly says: string;
  readonly chart: SchemesChart | null;
  /** The same for a narrow page. */
  readonly rows: PeriodRows | null;
  readonly table: ChartTable;
  readonly periods: readonly PeriodShown[];
};

/** Pieces of a period above which its list is folded on a phone. */
const LONG = 8;
/** Doubtful pieces that are named at the head of a period. */
const NAMED = 4;

export function eraIds({ lists }: Cabinet): readonly string[] {
  return lists.eras.map(({ id }) => id);
}

export async function eraPage(cabinet: Cabinet, id: string): Promise<EraPage> {
  const era = cabinet.lists.eras.find((one) => one.id === id);
  if (era === undefined) throw new Error(`There is no era scheme ${id}.`);
  const { fields, scheme } = era;
  const pieces = byYears(cabinet.listed);
  const { chart, rows, beyond } = chartOf(cabinet, scheme);
  const periods = await Promise.all(
    scheme.periods.map(async (period, at): Promise<PeriodShown> => {
      const here = piecesIn(pieces, scheme, period.id);
      return {
        id: period.id,
        name: period.name,
        years: yearsInWords(periodYears(period)),
        note: fields.periods[at]?.note ?? null,
        count: countWords.tally(tallyIn(here, scheme, period.id, cabinet.lists.rulers)),
        all: urls.facet('era', `${id}-${period.id}`),
        ...(await laid(here, (piece) => doubtOf(piece, scheme, period.id, cabinet.lists.rulers))),
      };
    }),
  );
  return {
    head: {
      title: fields.title,
      description: fields.note ?? erasWords.periodsOf(fields.title),
      here: urls.era(id),
      trail: [{ name: erasWords.title, href: urls.eras() }],
    },
    title: fields.title,
    source: sourceParts(fields.source),
    region: fields.region ?? null,
    appliesTo:
      scheme.appliesTo === undefined
        ? null
        : erasWords.appliesTo(scheme.appliesTo.map((place) => cabinet.lists.mints[place]?.fields.name ?? place)),
    note: fields.note ?? null,
    ends: erasWords.ends[fields.ends],
    says: [erasWords.schemeSays, erasWords.notDrawn(beyond)].join(' ').trim(),
    chart,
    rows,
    table: {
      columns: [erasWords.tablePeriod, erasWords.tableYears, erasWords.tablePieces],
      rows: periods.map(({ name, years, count }) => [name, years ?? '', count]),
    },
    periods: [...periods, ...(await unplaced(pieces, id))],
  };
}

/** What has no period here, in the order in which it is told; nothing of what there is none. */
const UNPLACED = [
  { id: 'outside', name: erasWords.outside, state: 'outside' },
  { id: 'not-applicable', name: erasWords.notApplicable, state: 'not applicable' },
  { id: 'undated', name: erasWords.undated, state: 'unknown' },
] as const;

async function unplaced(pieces: readonly PublicPiece[], scheme: string): Promise<readonly PeriodShown[]> {
  const all = await Promise.all(
    UNPLACED.map(async ({ id, name, state }): Promise<PeriodShown> => {
      const here = pieces.filter((piece) => piece.eras[scheme]?.state === state);
      const count = countWords.tally(tallyOf(here, () => true));
      return { id, name, years: null, note: null, count, all: urls.pieces(), ...(await laid(here, () => null)) };
    }),
  );
  return all.filter(({ board }) => board !== null);
}

/** Pieces on a board, each that is doubtful with the reason under it, and the reasons together. */
async function laid(
  pieces: readonly PublicPiece[],
  reasonOf: (piece: PublicPiece) => string | null,
): Promise<Pick<PeriodShown, 'doubts' | 'isLong' | 'board' | 'more'>> {
  const { shown, more } = mostShown(pieces);
  const reasons = new Map<string, PublicPiece[]>();
  // What only imitates, and what is no longer here, is in no count that would have to be explained.
  const counted = pieces.filter(({ kind, status }) => !COPIES.includes(kind) && !GONE.includes(status));
  for (const piece of counted) {
    const reason = reasonOf(piece);
    if (reason !== null) reasons.set(reason, [...(reasons.get(reason) ?? []), piece]);
  }
  const noteOf = (piece: PublicPiece): string | null => {
    const reason = reasonOf(piece);
    if (reason === null) return null;
    const status = boardWords.status(piece.status);
    return [...(status === null ? [] : [status]), erasWords.notCertain(reason)].join('. ');
  };
  return {
    doubts: [...reasons].map(([reason, of]) => ({
      says: erasWords.notCertainOf(of.length, counted.length, reason),
      pieces: of.length > NAMED ? [] : of.map(({ id, title }) => ({ href: urls.piece(id), name: title })),
    })),
    isLong: pieces.length > LONG,
    board: pieces.length === 0 ? null : await boardOf(shown, noteOf),
    more,
  };
}

/** On the years of the scheme's own periods; what lies beyond them is counted. */
function chartOf(
  cabinet: Cabinet,
  scheme: EraScheme,
): { readonly chart: SchemesChart | null; readonly rows: PeriodRows | null; readonly beyond: number } {
  const listed = cabinet.listed.filter((piece) => piece.eras[scheme.id]?.state !== 'not applicable');
  const scale = scaleOver(scheme.periods.map(periodYears));
  if (scale === null) return { chart: null, rows: null, beyond: 0 };
  const drawn = listed.filter(({ years }) => years !== null && years.high >= scale.low && years.low <= scale.high);
  const dated = listed.filter(({ years }) => years !== null);
  // Its title is the page's.
  const bands = allBands([scheme], scale).map((one) => ({ ...one, title: null }));
  return {
    chart: { ticks: ticksOf(scale), schemes: bands, pieces: packedBars(drawn, scale) },
    rows: periodRows(scheme, listed, scale, cabinet.lists),
    beyond: dated.length - drawn.length,
  };
}
