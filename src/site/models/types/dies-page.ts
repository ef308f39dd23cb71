import { linkedGroups } from '../../../core/dies/links.ts';
import type { LinkedGroup, Side } from '../../../core/dies/links.ts';
import { dieStates } from '../../../core/dies/states.ts';
import type { TypeSeries } from '../../../catalogue/types/series.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { capital } from '../../words/capital.ts';
import { typesWords } from '../../words/types.ts';
import type { PageHead } from '../shared/head.ts';
import { cutPage } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';
import type { Link } from '../sets/place-shown.ts';
import { faceOf } from '../shared/face.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { coverageOf } from './die-coverage.ts';
import { foundSeries, pagedPaths, piecesOfSeries, seriesTrail, seriesWithDies, titleOfPage } from './types-page.ts';

/** A group of linked dies drawn: obverses along the top, reverses along the bottom, in per cent across. */
export type DieGroup = {
  readonly title: string;
  readonly says: string;
  /** How wide it is drawn, in pixels; null where it fits any screen. */
  readonly width: number | null;
  /** Whether a die of it is that of a piece here. */
  readonly isHere: boolean;
  readonly obverses: readonly DieDrawn[];
  readonly reverses: readonly DieDrawn[];
  readonly lines: readonly { readonly from: number; readonly to: number; readonly coins: number }[];
  readonly remarks: readonly string[];
  /** Dies side by side at most, for the width of a chart that fits any screen. */
  readonly abreast: number;
  /** The columns that tell something: what all pairs share is a remark, and their mint is in the title. */
  readonly columns: readonly ('mints' | 'types' | 'coins' | 'source')[];
  readonly pairs: readonly {
    readonly obverse: string;
    readonly reverse: string;
    readonly types: string;
    readonly mints: readonly Link[];
    readonly coins: string;
    readonly source: string;
    readonly pieces: readonly Link[];
  }[];
};

/** A die in the chart; with the face that a piece here has of it, where it was photographed. */
export type DieDrawn = {
  readonly name: string;
  readonly x: number;
  readonly held: boolean;
  readonly picture: string | null;
};

/** A pair of dies that shares neither with another, in a line. */
export type LonePair = { readonly says: string; readonly pieces: readonly Link[] };

export type DiesPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly series: string;
  /** Who recorded the pairs, where all are from one source; else each group says it. */
  readonly source: string | null;
  /** How the dies are named; null where the series does not say. */
  readonly naming: string | null;
  readonly groups: readonly DieGroup[];
  readonly lone: readonly LonePair[];
  readonly pager: Pager | null;
  readonly coverage: readonly string[];
  /** Each die with its states from the earliest; those of one step have no known order. */
  readonly states: readonly {
    readonly name: string;
    readonly steps: readonly (readonly { readonly name: string; readonly sign: string | null }[])[];
  }[];
};

/** Pairs of dies on a page, as far as groups are not cut. */
const ON_A_PAGE = 80;

export function diePaths(cabinet: Cabinet) {
  return pagedPaths(seriesWithDies(cabinet), (id) => sheetsOf(foundSeries(cabinet, id)).length, 1);
}

/** The groups by page: whole groups, until there are pairs enough. */
function sheetsOf({ pairs }: TypeSeries): readonly (readonly Numbered[])[] {
  const sheets: Numbered[][] = [[]];
  let held = 0;
  for (const [at, group] of linkedGroups(pairs).entries()) {
    if (held >= ON_A_PAGE) {
      sheets.push([]);
      held = 0;
    }
    sheets.at(-1)?.push({ group, at: at + 1 });
    held += group.pairs.length;
  }
  return sheets;
}

type Numbered = { readonly group: LinkedGroup; readonly at: number };

export function diesPage(cabinet: Cabinet, id: string, page: number): DiesPage {
  const series = foundSeries(cabinet, id);
  const { shown, pager } = cutPage(sheetsOf(series), page, 1, (at) => urls.dieChart(id, at));
  const states = page === 1 ? dieStates(series.dieStates).histories : [];
  const sources = new Set(series.pairs.map(({ obverse, reverse }) => sourcesOf(series, obverse, reverse)));
  const source = sources.size === 1 ? ([...sources][0] ?? '') : '';
  const isLone = ({ group }: Numbered): boolean => group.pairs.length === 1;
  const all = shown.flat();
  return {
    head: {
      title: titleOfPage(`${typesWords.dies} · ${series.fields.title}`, page),
      here: urls.dieChart(id, page),
      trail: seriesTrail(series, true) ?? [],
    },
    naming: series.fields['die-names'] ?? null,
    title: titleOfPage(typesWords.dies, page),
    series: series.fields.title,
    source: source === '' ? null : source,
    groups: all
      .filter((one) => !isLone(one))
      .map(({ group, at }) => groupOf(cabinet, series, group, at, source !== '')),
    lone: all.filter(isLone).map(({ group }) => lonePair(cabinet, series, group, source !== '')),
    pager,
    coverage: page === 1 ? coverageOf(series) : [],
    states: states.map(({ die, steps }) => ({
      name: capital(die),
      steps: steps.map((step) =>
        step.map((state) => ({
          name: typesWords.state(state),
          sign: series.dieStates.find((one) => one.die === die && one.state === state)?.sign ?? null,
        })),
      ),
    })),
  };
}

/** Dies that stand side by side on a telephone, and the pixels each takes where there are more. */
const FITS = 5;
const APART = 60;

/** The pieces of a series whose dies are recorded. */
function piecesWithDies(cabinet: Cabinet, { id }: TypeSeries): readonly PublicPiece[] {
  return piecesOfSeries(cabinet, id).filter(({ dies }) => dies !== null && dies !== undefined);
}

function lonePair(cabinet: Cabinet, series: TypeSeries, group: LinkedGroup, isSaid: boolean): LonePair {
  const [pair] = pairsShown(cabinet, series, group, piecesWithDies(cabinet, series));
  if (pair === undefined) return { says: '', pieces: [] };
  const { obverse, reverse, types, mints, coins, source } = pair;
  const facts = [types, mints.map(({ name }) => name).join(', '), coins === '' ? '' : typesWords.coins(Number(coins)), isSaid ? '' : source]; // prettier-ignore
  return {
    says: typesWords.lonePair(
      obverse,
      reverse,
      facts.filter((fact) => fact !== ''),
    ),
    pieces: pair.pieces,
  };
}

function groupOf(cabinet: Cabinet, series: TypeSeries, group: LinkedGroup, at: number, isSaid: boolean): DieGroup {
  const pieces = piecesWithDies(cabinet, series);
  const held = new Set(
    pieces.flatMap(({ dies }) => [`obverse ${dies?.obverse ?? ''}`, `reverse ${dies?.reverse ?? ''}`]),
  );
  const spread = (names: readonly string[], side: Side) =>
    names.map((name, index) => ({
      name,
      x: ((index + 0.5) / names.length) * 100,
      held: held.has(`${side} ${name}`),
      picture: pictureOf(
        cabinet,
        pieces.find(({ dies }) => dies?.[side] === name),
        side,
      ),
    }));
  const widest = Math.max(group.obverses.length, group.reverses.length);
  const obverses = spread(inOrder(group.obverses), 'obverse');
  const reverses = spread(inOrder(group.reverses), 'reverse');
  const pairs = pairsShown(cabinet, series, group, pieces);
  return {
    title: typesWords.group(
      at,
      group.coins,
      alike(pairs, ({ mints }) => mints.map(({ name }) => name).join(', ')),
    ),
    says: typesWords.chartSays(at),
    width: widest > FITS ? widest * APART : null,
    abreast: Math.min(widest, FITS),
    isHere: [...obverses, ...reverses].some((die) => die.held),
    obverses,
    reverses,
    lines: group.pairs.map(({ obverse, reverse, coins }) => ({
      from: obverses.find(({ name }) => name === obverse)?.x ?? 0,
      to: reverses.find(({ name }) => name === reverse)?.x ?? 0,
      coins: coins ?? 1,
    })),
    remarks: remarksOn(series, group, pairs, isSaid),
    columns: COLUMNS.filter((column) => tells(column, pairs)),
    pairs,
  };
}

type PairsShown = DieGroup['pairs'];

function pairsShown(
  cabinet: Cabinet,
  series: TypeSeries,
  group: LinkedGroup,
  pieces: readonly PublicPiece[],
): PairsShown {
  return group.pairs.map(({ obverse, reverse, types, coins }) => ({
    obverse,
    reverse,
    types: labelsIn(series, types),
    mints: mintsOf(cabinet, series, obverse, reverse),
    coins: coins === null ? '' : String(coins),
    source: sourcesOf(series, obverse, reverse),
    pieces: pieces
      .filter(({ dies }) => dies?.obverse === obverse && dies.reverse === reverse)
      .map((piece) => ({ href: urls.piece(piece.id), name: piece.title })),
  }));
}

function labelsIn({ types }: TypeSeries, ids: readonly string[]): string {
  return ids.map((id) => types.get(id)?.label ?? id).join(', ');
}

function remarksOn(
  series: TypeSeries,
  { joints, types }: LinkedGroup,
  pairs: PairsShown,
  isSaid: boolean,
): readonly string[] {
  const labels = typesWords.issue(types.map((id) => series.types.get(id)?.label ?? id));
  return [
    ...(joints.length === 0 ? [] : [typesWords.joints(joints.map(({ side, die }) => `${side} ${die}`).join(', '))]),
    ...(types.length === 0 ? [] : [types.length === 1 ? typesWords.ofTypes(labels) : typesWords.linkedTypes(labels)]),
    ...(isSaid ? [] : alike(pairs, ({ source }) => source).map(typesWords.pairsFrom)),
  ];
}

const COLUMNS = ['mints', 'types', 'coins', 'source'] as const;

/** Whether a column tells something: a count is looked for in each row, even where all rows agree. */
function tells(column: (typeof COLUMNS)[number], pairs: PairsShown): boolean {
  if (column === 'coins') return pairs.some((pair) => pair.coins !== '');
  const said = (pair: PairsShown[number]): string =>
    column === 'mints' ? pair.mints.map(({ name }) => name).join(', ') : pair[column];
  return new Set(pairs.map(said)).size > 1;
}

/** What all of these say, where they say it alike; nothing where they differ. */
function alike<T>(rows: readonly T[], say: (row: T) => string): readonly string[] {
  const said = new Set(rows.map(say));
  return said.size === 1 ? [...said].filter((one) => one !== '') : [];
}

/** The picture of one face of a piece, as small as a chart wants it; null where none was taken. */
function pictureOf({ photographs }: Cabinet, piece: PublicPiece | undefined, side: Side): string | null {
  const face = piece === undefined ? null : faceOf(piece, side, photographs);
  return face?.shown === 'photograph' ? face.small : null;
}

/** The mints of a pair, as its rows in dies.csv name them. */
function mintsOf({ lists }: Cabinet, { tables }: TypeSeries, obverse: string, reverse: string): readonly Link[] {
  const rows = (tables.dies?.rows ?? []).filter(({ cells }) => cells['obverse'] === obverse && cells['reverse'] === reverse); // prettier-ignore
  return [...new Set(rows.flatMap(({ cells }) => cells['mint'] ?? []))].map((mint) => ({
    href: urls.mint(mint),
    name: lists.mints[mint]?.fields.name ?? mint,
  }));
}

/** Who recorded a pair: the words of its rows in dies.csv, each once. */
function sourcesOf({ tables }: TypeSeries, obverse: string, reverse: string): string {
  const rows = (tables.dies?.rows ?? []).filter(({ cells }) => cells['obverse'] === obverse && cells['reverse'] === reverse); // prettier-ignore
  return [...new Set(rows.flatMap(({ cells }) => cells['source'] ?? []))].join('; ');
}

const NAMES = new Intl.Collator('en', { numeric: true });

function inOrder(names: readonly string[]): readonly string[] {
  return names.toSorted(NAMES.compare);
}
