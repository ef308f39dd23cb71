import { disagreements } from '../../../core/eras/disagreements.ts';
import type { Disagreement } from '../../../core/eras/disagreements.ts';
import { periodYears } from '../../../core/eras/era-scheme.ts';
import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { erasWords } from '../../words/eras.ts';
import type { ChartTable } from '../charts/chart.ts';
import { eraBands } from './era-bands.ts';
import type { EraBands } from './era-bands.ts';
import { gather } from '../shared/gather.ts';
import type { PageHead } from '../shared/head.ts';
import { mostShown } from '../shared/most-shown.ts';
import { packedBars } from '../charts/packed-bars.ts';
import type { PackedBars, PieceDensity } from '../charts/packed-bars.ts';
import type { Link } from '../sets/place-shown.ts';
import { scaleOver, ticksOf, timeScale } from '../charts/time-scale.ts';
import type { TimeTick } from '../charts/time-scale.ts';
import { pieceRow } from '../charts/timed.ts';
import { byYears } from '../charts/years.ts';

/** Schemes drawn above one another, and pieces under them. */
export type SchemesChart = {
  readonly ticks: readonly TimeTick[];
  readonly schemes: readonly EraBands[];
  readonly pieces: PackedBars | PieceDensity;
};

export type SchemeLine = Link & {
  readonly source: string;
  readonly region: string | null;
  readonly note: string | null;
};

/** One disagreement of the schemes, and every piece it is over. */
export type SchemeDisagreement = {
  readonly title: string;
  readonly pieces: readonly (Link & { readonly years: string })[];
  /** Pieces left off a long list. */
  readonly more: number;
  readonly because: readonly string[];
  readonly claims: readonly (Link & { readonly source: string; readonly says: string })[];
  readonly chart: SchemesChart | null;
};

export type ErasPage = {
  readonly head: PageHead;
  readonly schemes: readonly SchemeLine[];
  readonly chart: SchemesChart | null;
  readonly table: ChartTable;
  readonly lead: string | null;
  readonly disagreements: readonly SchemeDisagreement[];
};

export function erasPage(cabinet: Cabinet): ErasPage {
  const { eras } = cabinet.lists;
  const found = disagreementsOf(cabinet);
  const over = found.reduce((sum, { pieces, more }) => sum + pieces.length + more, 0);
  const { title, description } = erasWords;
  return {
    head: { title, description, here: urls.eras() },
    schemes: eras.map(({ id, fields }) => ({
      href: urls.era(id),
      name: fields.title,
      source: fields.source,
      region: fields.region ?? null,
      note: fields.note ?? null,
    })),
    chart: schemesChart(cabinet, cabinet.listed),
    table: {
      columns: [erasWords.tableScheme, erasWords.tablePeriod, erasWords.tableYears],
      rows: eras.flatMap(({ scheme }) =>
        scheme.periods.map((period) => [scheme.title, period.name, yearsInWords(periodYears(period))]),
      ),
    },
    lead: found.length === 0 ? null : erasWords.disagreementsLead(countWords.pieces(over)),
    disagreements: found,
  };
}

function schemesChart({ lists }: Cabinet, pieces: readonly PublicPiece[], room = 0): SchemesChart | null {
  const spans = pieces.flatMap(({ years }) => (years === null ? [] : [years]));
  const around = scaleOver(spans);
  if (around === null) return null;
  const scale = timeScale({ low: around.low - room, high: around.high + room });
  return {
    ticks: ticksOf(scale),
    schemes: lists.eras.map(({ scheme }) => eraBands(scheme, scale)),
    pieces: packedBars(pieces, scale),
  };
}

/** Years shown on either side of the pieces of a disagreement, so that the bounds it is about come into view. */
const ROOM = 60;

function disagreementsOf(cabinet: Cabinet): readonly SchemeDisagreement[] {
  const dated = byYears(cabinet.listed);
  const byId = new Map(dated.map((piece) => [piece.id, piece]));
  const found = disagreements(
    dated.map(({ id, years }) => ({ id, interval: years })),
    cabinet.lists.eras.map(({ scheme }) => scheme),
  );
  return gather(found, ({ because }) => because.join('\n')).map(({ all }) => {
    const pieces = all.flatMap(({ piece }) => byId.get(piece) ?? []);
    const claims = all[0]?.claims ?? [];
    return {
      title: erasWords.over(countWords.pieces(pieces.length), yearsOver(pieces)),
      more: mostShown(pieces).more,
      pieces: mostShown(pieces).shown.map((piece) => {
        const { name, years } = pieceRow(piece);
        return { href: urls.piece(piece.id), name, years };
      }),
      because: all[0]?.because ?? [],
      claims: claims.map((claim) => ({
        href: urls.era(claim.scheme),
        name: claim.title,
        source: sourceShortly(claim.source),
        says: claimInWords(claim),
      })),
      chart: schemesChart(cabinet, pieces, ROOM),
    };
  });
}

/** The years that pieces may belong to, from the first to the last. */
function yearsOver(pieces: readonly PublicPiece[]): string {
  const spans = pieces.flatMap(({ years }) => years ?? []);
  const low = spans.reduce((least, span) => Math.min(least, span.low), Infinity);
  const high = spans.reduce((most, span) => Math.max(most, span.high), -Infinity);
  return yearsInWords({ low, high });
}

/** Who says so, without the rest of the citation, which stands with the scheme: up to the first comma. */
function sourceShortly(source: string): string {
  return source.split(/[,;(]/)[0]?.trim() ?? source;
}

function claimInWords({ state, periods }: Disagreement['claims'][number]): string {
  const named = periods.map(({ name, years }) => `${name}, ${years}`).join('; ');
  return `${erasWords.says[state]}${named}`;
}
