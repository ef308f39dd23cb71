import { coverageInterval } from '../../../core/dies/estimate.ts';
import { dieCounts, issuesOf, linkedGroups } from '../../../core/dies/links.ts';
import type { DiePair, LinkedGroup, Side } from '../../../core/dies/links.ts';
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
  /** The columns that tell something: what all pairs share is a remark. */
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

export type DiesPage = {
  readonly head: PageHead;
  /** How the dies are named; null where the series does not say. */
  readonly naming: string | null;
  readonly groups: readonly DieGroup[];
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
  return {
    head: {
      title: titleOfPage(`${typesWords.dies} · ${series.fields.title}`, page),
      here: urls.dieChart(id, page),
      trail: seriesTrail(series, true) ?? [],
    },
    naming: series.fields['die-names'] ?? null,
    groups: shown.flat().map(({ group, at }) => groupOf(cabinet, series, group, at)),
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

function groupOf(cabinet: Cabinet, series: TypeSeries, group: LinkedGroup, at: number): DieGroup {
  const pieces = piecesOfSeries(cabinet, series.id).filter(({ dies }) => dies !== null && dies !== undefined);
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
    isHere: [...obverses, ...reverses].some((die) => die.held),
    obverses,
    reverses,
    lines: group.pairs.map(({ obverse, reverse, coins }) => ({
      from: obverses.find(({ name }) => name === obverse)?.x ?? 0,
      to: reverses.find(({ name }) => name === reverse)?.x ?? 0,
      coins: coins ?? 1,
    })),
    remarks: remarksOn(series, group, pairs),
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

function remarksOn(series: TypeSeries, { joints, types }: LinkedGroup, pairs: PairsShown): readonly string[] {
  const labels = labelsIn(series, types);
  return [
    ...(joints.length === 0 ? [] : [typesWords.joints(joints.map(({ side, die }) => `${side} ${die}`).join(', '))]),
    ...(types.length === 0 ? [] : [types.length === 1 ? typesWords.ofTypes(labels) : typesWords.linkedTypes(labels)]),
    ...alike(pairs, ({ source }) => source).map(typesWords.pairsFrom),
  ];
}

const COLUMNS = ['mints', 'types', 'coins', 'source'] as const;

/** Whether a column tells something: a mint and a count are looked for in each row, even where all rows agree. */
function tells(column: (typeof COLUMNS)[number], pairs: PairsShown): boolean {
  if (column === 'mints' || column === 'coins') return pairs.some((pair) => pair[column].length > 0);
  return new Set(pairs.map((pair) => pair[column])).size > 1;
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

/** Fewer coins than this say nothing of the dies that are missing. */
const FEW = 10;

/** Coverage by issue: dies of issues years apart are of no one sample, so it is never told of a whole series. */
function coverageOf(series: TypeSeries): readonly string[] {
  const issues = issuesOf(series.pairs).map(({ types, pairs }) => ({
    pairs,
    name: typesWords.issue(types.map((type) => series.types.get(type)?.label ?? type)),
    coins: dieCounts(pairs, 'obverse')?.n ?? 0,
  }));
  const few = issues.filter(({ coins }) => coins > 0 && coins < FEW);
  return [
    ...issues.filter(({ coins }) => coins >= FEW).flatMap(({ name, pairs }) => coverageOfIssue(name, pairs)),
    ...(few.length === 0 ? [] : [typesWords.fewCoins(few.map(({ name }) => name), FEW)]),
  ];
} // prettier-ignore

function coverageOfIssue(name: string, pairs: readonly DiePair[]): readonly string[] {
  return (['obverse', 'reverse'] as const).flatMap((side) => {
    const counts = dieCounts(pairs, side);
    if (counts === null) return [];
    const face = typesWords.faceOf[side];
    // With no die known from one coin alone, or with all, the formula gives all or nothing and no interval.
    if (counts.d1 === 0) return [typesWords.noLoneDie(name, face, counts.n, counts.d)];
    if (counts.d1 === counts.n) return [typesWords.loneDies(name, face, counts.n)];
    const { coverage, low, high } = coverageInterval(counts);
    const shares = [coverage, low, high].map((value) => `${(value * 100).toFixed(0)} per cent`);
    return [typesWords.coverage(name, face, shares, counts.n, counts.d)];
  });
}
