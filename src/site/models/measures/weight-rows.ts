import type { Denomination } from '../../../catalogue/catalogue.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { yearsOf } from '../../../core/dating/interval.ts';
import { standardsOf } from '../../../catalogue/for-core/standards.ts';
import { writeAmount } from '../../../core/measures/amount.ts';
import { isCopy } from '../../../catalogue/types/inherit-facts.ts';
import { notAsStruck } from '../../../core/metal/fine-metal.ts';
import { weightSpan } from '../../../core/measures/parse-weight.ts';
import type { Interval } from '../../../core/measures/units.ts';
import { againstStandard, standardsBinding } from '../../../core/metal/standards.ts';
import type { Standard } from '../../../core/metal/standards.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { measuresWords } from '../../words/measures.ts';
import type { ChartTable } from '../charts/chart.ts';
import { numberScale, shareAlong, widthAlong } from '../charts/number-scale.ts';
import type { NumberTick } from '../charts/number-scale.ts';
import { spanInWords } from '../charts/years.ts';
import type { Link } from '../sets/place-shown.ts';
import { leadingFace } from '../shared/face.ts';
import { firstSentence } from '../shared/first-sentence.ts';
import type { FaceView } from '../shared/face.ts';
import { urls } from '../../urls.ts';

/** What a chart is laid out for. */
export type ChartPage = 'wide' | 'narrow';

/** A piece as a dot: across in per cent, up in dots from the line of its row. */
export type WeightDot = {
  readonly x: number;
  readonly stack: Readonly<Record<ChartPage, number>>;
  readonly isHollow: boolean;
  readonly href: string;
  /** `Penny of Stephen, 1.31 g`. */
  readonly says: string;
};

/** The lightest and the heaviest of a chart, with their pictures. */
export type WeightEnd = Link & { readonly face: FaceView; readonly says: string };

export type WeightRow = {
  readonly says: string;
  /** Why a standard is a range; null where it is none. */
  readonly note: string | null;
  /** The standard: across in per cent; null in the row of those without one. */
  readonly band: { readonly x: number; readonly width: number } | null;
  readonly dots: readonly WeightDot[];
  /** The highest stack. */
  readonly high: Readonly<Record<ChartPage, number>>;
};

export type WeightChart = {
  readonly name: string;
  readonly says: string;
  readonly ticks: readonly (NumberTick & { readonly x: number })[];
  readonly rows: readonly WeightRow[];
  /** Whether columns stand for its dots, and its table tells of each row as a whole. */
  readonly isLong: boolean;
  readonly ends: readonly WeightEnd[];
  /** What is said of the standards, where some piece is under none. */
  readonly note: string | null;
  readonly table: ChartTable;
};

type Weighed = {
  readonly piece: PublicPiece;
  readonly grams: Interval;
  readonly standards: readonly Standard[];
  readonly percent: Interval | null;
};

/** Fewer weighed pieces make no picture. */
const ENOUGH = 3;
/** In per cent of the width of a chart: dots nearer than this, 24 pixels for a finger, lie above one another. */
export const DOT_WIDTH: Readonly<Record<ChartPage, number>> = { wide: 2.75, narrow: 7.2 };
const MIDDLE = 2;

/** One chart for each denomination of which enough pieces were weighed, the fullest first. */
export function weightCharts(cabinet: Cabinet): readonly WeightChart[] {
  const all = Object.values(cabinet.lists.denominations)
    .map((denomination) => ({ denomination, weighed: weighedOf(denomination, cabinet) }))
    .filter(({ weighed }) => weighed.length >= ENOUGH)
    .toSorted((a, b) => b.weighed.length - a.weighed.length)
    .slice(0, MOST_CHARTS);
  const isLong = all.reduce((sum, { weighed }) => sum + weighed.length, 0) > MOST_ON_A_PAGE;
  return all.flatMap(({ denomination, weighed }) => {
    const chart = chartOf(denomination, weighed, { isLong, photographs: cabinet.photographs });
    return chart === null ? [] : [chart];
  });
}

/** The fullest denominations have charts; of the others the list of pieces by denomination has everything. */
const MOST_CHARTS = 24;
/** Where more pieces than this were weighed, no piece has a line or a dot of its own: the page would grow with the cabinet. */
const MOST_ON_A_PAGE = 200;

/** The standards of its denomination that bind a piece: those of its metal and its realm. */
export function standardsOfPiece(piece: PublicPiece, { lists }: Pick<Cabinet, 'lists'>): readonly Standard[] {
  const { metal, issuer, mint } = piece;
  const denomination = lists.denominations[known(piece.denomination)?.id ?? ''];
  if (denomination === undefined) return [];
  const ruled = [...(known(piece.rulers) ?? []), ...piece.struckFor].flatMap(
    ({ id }) => lists.rulers[id]?.fields.realm ?? [],
  );
  const places = [known(mint)?.area, issuer].filter((place) => typeof place === 'string');
  return standardsBinding(standardsOf(denomination.fields), { metal, realms: ruled.length > 0 ? ruled : places });
}

function weighedOf(denomination: Denomination, { lists, listed }: Cabinet): readonly Weighed[] {
  return listed.flatMap((piece) => {
    const { years, denomination: of } = piece;
    const weight = known(piece.weight);
    if (of === null || typeof of === 'string' || of.id !== denomination.id) return [];
    // What is no coin of its denomination was struck to none of its standards.
    if (weight === null || isCopy(piece)) return [];
    const against =
      years === null
        ? null
        : againstStandard(weight, standardsOfPiece(piece, { lists }), years, !notAsStruck(piece).lost);
    const found = against?.ok === true ? against.value : null;
    return [
      {
        piece,
        grams: weightSpan(weight),
        standards: found?.rows.map(({ standard }) => standard) ?? [],
        percent: found?.percent ?? null,
      },
    ];
  });
}

function chartOf(
  { fields }: Denomination,
  weighed: readonly Weighed[],
  { isLong, photographs }: { readonly isLong: boolean } & Pick<Cabinet, 'photographs'>,
): WeightChart | null {
  const rowsOf = [...new Set(weighed.map(({ standards }) => rowName(standards[0])))];
  const scale = numberScale([
    ...weighed.flatMap(({ grams }) => [grams.low, grams.high]),
    ...weighed.flatMap(({ standards }) =>
      standards.flatMap(({ grams }) => (grams === null ? [] : [grams.low, grams.high])),
    ),
  ]);
  if (scale === null) return null;
  const ordered = weighed.toSorted((a, b) => firstYear(a) - firstYear(b));
  const rows = [...rowsOf]
    .toSorted((a, b) => startOf(a, ordered) - startOf(b, ordered))
    .map((name): WeightRow => {
      const here = ordered.filter(({ standards }) => rowName(standards[0]) === name);
      const standard = here[0]?.standards[0];
      const dots = stacked(here, scale);
      return {
        says: name,
        note: standard === undefined ? null : noteOf(standard, fields),
        band: bandOf(standard, scale),
        dots,
        high: { wide: highest(dots, 'wide'), narrow: highest(dots, 'narrow') },
      };
    });
  const name = fields.plural ?? fields.name;
  return {
    name,
    says: measuresWords.weights.says(name, weighed.length),
    ticks: scale.ticks.map((tick) => ({ ...tick, x: shareAlong(scale, tick.at) })),
    rows,
    isLong,
    ends: endsOf(ordered, photographs),
    note: rowsOf.includes(measuresWords.weights.noStandard) ? (fields.note ?? measuresWords.weights.noNote) : null,
    table: isLong ? tableOfRows(ordered, rows) : tableOfPieces(ordered),
  };
}

/** The lightest piece and the heaviest of those that have a picture: what the ends of the axis look like. */
function endsOf(weighed: readonly Weighed[], photographs: Cabinet['photographs']): readonly WeightEnd[] {
  const middle = ({ grams }: Weighed): number => (grams.low + grams.high) / MIDDLE;
  const seen = weighed.filter(({ piece }) => photographs[piece.id] !== undefined);
  const ordered = seen.toSorted((a, b) => middle(a) - middle(b));
  const [first, last] = [ordered[0], ordered.at(-1)];
  if (first === undefined || last === undefined || first === last) return [];
  return [
    { says: measuresWords.weights.lightest, of: first },
    { says: measuresWords.weights.heaviest, of: last },
  ].map(({ says, of }) => ({
    says: `${says}, ${weightCell(of.piece, of.grams)} g`,
    href: urls.piece(of.piece.id),
    name: of.piece.title,
    face: leadingFace(of.piece, photographs),
  }));
}

function tableOfPieces(weighed: readonly Weighed[]): ChartTable {
  return {
    columns: measuresWords.weights.columns,
    rows: weighed.map(({ piece, grams, standards, percent }) => [
      piece.title,
      weightCell(piece, grams),
      rowName(standards[0]),
      percent === null ? measuresWords.weights.unweighed : spanOf(percent, 0),
    ]),
  };
}

/** In grams, with the decimals it was written with: 1.40 says more than 1.4. */
function weightCell({ weight }: PublicPiece, { low, high }: Interval): string {
  const held = known(weight);
  const decimals = held?.unit === 'g' ? (held.decimals ?? 2) : 2;
  const [from, to] = [low.toFixed(decimals), high.toFixed(decimals)];
  return from === to ? from : `${from}–${to}`;
}

function tableOfRows(weighed: readonly Weighed[], rows: readonly WeightRow[]): ChartTable {
  return {
    columns: measuresWords.weights.columnsOfRows,
    rows: rows.map(({ says }) => {
      const here = weighed.filter(({ standards }) => rowName(standards[0]) === says);
      const against = here.flatMap(({ percent }) => percent ?? []);
      return [
        says,
        String(here.length),
        spanOf(overAll(here.map(({ grams }) => grams)), 3),
        against.length === 0 ? measuresWords.weights.unweighed : spanOf(overAll(against), 0),
      ];
    }),
  };
}

/** From the lowest of these to the highest. */
function overAll(spans: readonly Interval[]): Interval {
  return {
    low: spans.reduce((least, { low }) => Math.min(least, low), Infinity),
    high: spans.reduce((most, { high }) => Math.max(most, high), -Infinity),
  };
}

function rowName(standard: Standard | undefined): string {
  if (standard?.grams === undefined || standard.grams === null) return measuresWords.weights.noStandard;
  return measuresWords.weights.row(spanInWords(standard.years), spanOf(standard.grams, 3));
}

/** Those without a standard come first: their years are before the first, or not known. */
function startOf(name: string, weighed: readonly Weighed[]): number {
  return weighed.find(({ standards }) => rowName(standards[0]) === name)?.standards[0]?.years.low ?? -10_000;
}

function firstYear({ piece }: Weighed): number {
  const low = piece.years?.low ?? 10_000;
  return Number.isFinite(low) ? low : -10_000;
}

function bandOf(standard: Standard | undefined, scale: Interval): WeightRow['band'] {
  const grams = standard?.grams;
  if (grams === undefined || grams === null) return null;
  return { x: shareAlong(scale, grams.low), width: widthAlong(scale, grams) };
}

/** What the list says of a standard that is a range: whose figures its ends are. */
function noteOf({ grams, years }: Standard, { standards }: Denomination['fields']): string | null {
  if (grams === null || grams.low === grams.high) return null;
  const isIt = ({ from, to }: (typeof standards)[number]): boolean =>
    yearsOf(from).low === years.low && yearsOf(to).high === years.high;
  const note = standards.find(isIt)?.note;
  return note === undefined ? null : firstSentence(note);
}

function highest(dots: readonly WeightDot[], page: ChartPage): number {
  return dots.reduce((most, { stack }) => Math.max(most, stack[page] + 1), 1);
}

/** Each dot at its own weight, on the lowest level where it touches none. */
function stacked(weighed: readonly Weighed[], scale: Interval): readonly WeightDot[] {
  const lastOn: Record<ChartPage, number[]> = { wide: [], narrow: [] };
  const levelFor = (x: number, page: ChartPage): number => {
    const free = lastOn[page].findIndex((last) => x - last >= DOT_WIDTH[page]);
    const level = free < 0 ? lastOn[page].length : free;
    lastOn[page][level] = x;
    return level;
  };
  return weighed
    .map(({ piece, grams, standards }) => ({
      x: Math.round(100 * shareAlong(scale, (grams.low + grams.high) / MIDDLE)) / 100,
      isHollow: standards.length > 1 || hasLost(piece),
      href: urls.piece(piece.id),
      says: `${piece.title}, ${weightCell(piece, grams)} g`,
    }))
    .toSorted((a, b) => a.x - b.x)
    .map((dot) => ({ ...dot, stack: { wide: levelFor(dot.x, 'wide'), narrow: levelFor(dot.x, 'narrow') } }));
}

function hasLost(piece: PublicPiece): boolean {
  const { lost, mounted } = notAsStruck(piece);
  return lost || mounted;
}

function spanOf({ low, high }: Interval, most: number): string {
  const [a, b] = [writeAmount(low, most), writeAmount(high, most)];
  return a === b ? a : `${a}–${b}`;
}
