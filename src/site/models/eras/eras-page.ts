import { disagreements } from '../../../core/eras/disagreements.ts';
import { periodYears } from '../../../core/eras/era-scheme.ts';
import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { erasWords } from '../../words/eras.ts';
import type { ChartTable } from '../charts/chart.ts';
import { allBands } from './era-bands.ts';
import type { EraBands } from './era-bands.ts';
import { periodRows } from './period-rows.ts';
import type { PeriodRows } from './period-rows.ts';
import type { PageHead } from '../shared/head.ts';
import { facetLists } from '../find/facets.ts';
import { mostShown } from '../shared/most-shown.ts';
import { packedBars } from '../charts/packed-bars.ts';
import type { PackedBars, PieceDensity } from '../charts/packed-bars.ts';
import type { Link } from '../sets/place-shown.ts';
import { scaleOver, ticksOf } from '../charts/time-scale.ts';
import type { TimeScale, TimeTick } from '../charts/time-scale.ts';
import { pieceRow } from '../charts/timed.ts';
import { byYears } from '../charts/years.ts';

/** Schemes drawn above one another, and pieces under them. */
export type SchemesChart = {
  readonly ticks: readonly TimeTick[];
  readonly schemes: readonly EraBands[];
  readonly pieces: PackedBars | PieceDensity;
};

/** A part of the words of a source, with the address it is a link to. */
export type SourcePart = { readonly text: string; readonly to: string | null };

export type SchemeLine = Link & {
  /** What it is called by below. */
  readonly letter: string;
  /** Its periods for a narrow page; null where no piece has a year. */
  readonly rows: PeriodRows | null;
  readonly source: readonly SourcePart[];
  readonly region: string | null;
  readonly note: string | null;
};

/** One thing the schemes disagree about, what each says, and the pieces it is over. */
export type SchemeDisagreement = {
  readonly title: string;
  /** Whether it is about a name that several schemes know; else about years. */
  readonly isNamed: boolean;
  readonly claims: readonly (Link & { readonly letter: string; readonly says: string })[];
  /** How many pieces, in words. */
  readonly over: string;
  readonly pieces: readonly (Link & { readonly years: string })[];
  /** Pieces left off a long list. */
  readonly more: number;
};

export type ErasPage = {
  readonly head: PageHead;
  readonly schemes: readonly SchemeLine[];
  /** The pieces that no scheme has a period for, and where they are listed. */
  readonly without: Link | null;
  readonly chart: SchemesChart | null;
  readonly table: ChartTable;
  readonly lead: string | null;
  readonly disagreements: readonly SchemeDisagreement[];
};

export function erasPage(cabinet: Cabinet): ErasPage {
  const { eras } = cabinet.lists;
  const found = disagreementsOf(cabinet);
  const { title, description } = erasWords;
  const scale = scaleOf(cabinet.listed);
  return {
    head: { title, description, here: urls.eras() },
    schemes: eras.map(({ id, fields, scheme }, at) => ({
      letter: erasWords.letter(at),
      rows: scale === null ? null : periodRows(scheme, cabinet.listed, scale, cabinet.lists),
      href: urls.era(id),
      name: fields.title,
      source: sourceParts(fields.source),
      region: fields.region ?? null,
      note: fields.note ?? null,
    })),
    without: withoutPeriod(cabinet),
    chart: schemesChart(cabinet, cabinet.listed),
    table: {
      columns: [erasWords.tableScheme, erasWords.tablePeriod, erasWords.tableYears],
      rows: eras.flatMap(({ scheme }) =>
        scheme.periods.map((period) => [scheme.title, period.name, yearsInWords(periodYears(period))]),
      ),
    },
    lead: found.length === 0 ? null : erasWords.disagreementsLead,
    disagreements: found,
  };
}

const ADDRESS = /https?:\/\/[^\s,;]+/;

/** A source with its first address taken out of the words: what stands before it is what the link is called. */
export function sourceParts(source: string): readonly SourcePart[] {
  const address = ADDRESS.exec(source)?.[0];
  if (address === undefined) return [{ text: source, to: null }];
  const [before = '', after = ''] = source.split(address);
  const parts = before.replace(/[\s,;:]+$/, '').split(/(?<=; )/);
  const named = parts.at(-1) ?? '';
  return [
    { text: parts.slice(0, -1).join(''), to: null },
    { text: named === '' ? address : named, to: address },
    { text: after, to: null },
  ].filter(({ text }) => text !== '');
}

function withoutPeriod(cabinet: Cabinet): Link | null {
  const list = facetLists(cabinet).find(({ facet, value }) => facet === 'era' && value === 'none');
  return list === undefined
    ? null
    : { href: urls.facet('era', 'none'), name: erasWords.withoutPeriod(list.pieces.length) };
}

function scaleOf(pieces: readonly PublicPiece[]): TimeScale | null {
  return scaleOver(pieces.flatMap(({ years }) => (years === null ? [] : [years])));
}

function schemesChart({ lists }: Cabinet, pieces: readonly PublicPiece[]): SchemesChart | null {
  const scale = scaleOf(pieces);
  if (scale === null) return null;
  return {
    ticks: ticksOf(scale),
    schemes: allBands(
      lists.eras.map(({ scheme }, at) => ({ ...scheme, title: `${erasWords.letter(at)} · ${scheme.title}` })),
      scale,
    ),
    pieces: packedBars(pieces, scale),
  };
}

function disagreementsOf({ listed, lists }: Cabinet): readonly SchemeDisagreement[] {
  const dated = byYears(listed);
  const byId = new Map(dated.map((piece) => [piece.id, piece]));
  const schemes = lists.eras.map(({ scheme }) => scheme);
  return disagreements(dated, schemes).map((one) => {
    const pieces = one.pieces.flatMap((id) => byId.get(id) ?? []);
    const { shown, more } = mostShown(pieces);
    return {
      title: one.name === null ? erasWords.noCommonName(yearsOver(pieces)) : `“${one.name}”`,
      isNamed: one.name !== null,
      claims: one.claims.map(({ scheme, says }) => ({
        href: urls.era(scheme),
        letter: erasWords.letter(schemes.findIndex(({ id }) => id === scheme)),
        name: schemes.find(({ id }) => id === scheme)?.title ?? scheme,
        says,
      })),
      over: countWords.pieces(pieces.length),
      more,
      pieces: shown.map((piece) => {
        const { name, years } = pieceRow(piece);
        return { href: urls.piece(piece.id), name, years };
      }),
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
