import type { Ruler } from '../../../catalogue/catalogue.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import type { Interval } from '../../../core/eras/era-scheme.ts';
import type { Named, PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { capital } from '../../words/capital.ts';
import { rulersWords } from '../../words/rulers.ts';
import { boardOf } from '../shared/board.ts';
import type { Board } from '../shared/board.ts';
import { linkedRulerOf } from '../open-data/linked-lists.ts';
import { linkedHead } from '../shared/head.ts';
import type { PageHead } from '../shared/head.ts';
import { identifiersOf } from '../shared/identifiers.ts';
import type { Identifier } from '../shared/identifiers.ts';
import { mostShown } from '../shared/most-shown.ts';
import { isCertain } from '../shared/tally.ts';
import type { PiecesOfRuler } from './pieces-of-ruler.ts';
import { piecesOfRuler, rulersNamed, tallyOfRuler } from './pieces-of-ruler.ts';
import type { Link } from '../sets/place-shown.ts';
import { spanOf } from './rulers-page.ts';
import { pieceRow, timeLine } from '../charts/timed.ts';
import type { TimeLine, UndrawnRow } from '../charts/timed.ts';
import { spanInWords } from '../charts/years.ts';

type ReignShown = {
  readonly years: string;
  readonly with: readonly Link[];
  readonly note: string | null;
  readonly struckNone: boolean;
};

export type RulerPage = {
  readonly head: PageHead;
  readonly name: string;
  /** What was ruled, or what somebody was who did not rule; null when it is not recorded. */
  readonly realm: string | null;
  readonly reignsTitle: string;
  readonly otherNames: string | null;
  readonly note: string | null;
  readonly source: string | null;
  readonly identifiers: readonly Identifier[];
  readonly reigns: readonly ReignShown[];
  /** How many pieces, in words; what is doubtful, copied or gone apart. */
  readonly count: string;
  readonly line: TimeLine | null;
  readonly gaps: string | null;
  readonly groups: readonly { readonly title: string; readonly board: Board; readonly more: number }[];
  /** Where all the pieces are, when a page is too long for them. */
  readonly all: string;
};

export function rulerIds({ lists }: Cabinet): readonly string[] {
  return Object.keys(lists.rulers);
}

export async function rulerPage(cabinet: Cabinet, id: string): Promise<RulerPage> {
  const ruler = cabinet.lists.rulers[id];
  if (ruler === undefined) throw new Error(`There is no ruler ${id}.`);
  const { fields } = ruler;
  const pieces = piecesOfRuler(cabinet, id);
  const { own, forOther, inOther, copies } = pieces;
  const noteOf = notesOn(id, pieces);
  const groups = [
    { title: rulersWords.groups.own, pieces: own },
    { title: rulersWords.groups.forOther, pieces: forOther },
    { title: rulersWords.groups.inOther, pieces: inOther },
    { title: rulersWords.groups.copies, pieces: copies },
  ].filter(({ pieces }) => pieces.length > 0);
  const all = [...own, ...forOther, ...inOther, ...copies];
  const count = rulersWords.count(tallyOfRuler(pieces));
  return {
    head: {
      title: fields.name,
      description: `${[fields.name, fields.role ?? fields.realm].filter((part) => part !== undefined).join(', ')}: ${count}.`,
      here: urls.ruler(id),
      ...linkedHead(linkedRulerOf(cabinet, id)),
      trail: [{ name: rulersWords.title, href: urls.rulers() }],
    },
    name: fields.name,
    ...whatItWas(fields),
    otherNames: fields['other-names'].length === 0 ? null : rulersWords.otherNames(fields['other-names']),
    note: fields.note ?? null,
    source: fields.source ?? null,
    identifiers: identifiersOf(fields.identifiers),
    reigns: reignsShown(cabinet, id),
    count: capital(count),
    line: timeLine(
      [...reignRows(cabinet, id), ...mostShown(all).shown.map((piece) => pieceRow(piece, noteOf(piece)))],
      {
        behind: fields.reigns.map(spanOf),
      },
    ),
    all: urls.facet('ruler', id),
    gaps:
      all.length === 0 || fields.reigns.length === 0
        ? null
        : gapsInWords(fields.reigns.map(spanOf), [...own, ...inOther]),
    groups: await Promise.all(
      groups.map(async ({ title, pieces }) => ({
        title,
        // The first shows the king whatever the others show.
        board: await boardOf(mostShown(pieces).shown, noteOf, mostShown(pieces).shown.slice(1)),
        more: mostShown(pieces).more,
      })),
    ),
  };
}

/** What is added to a piece on the page of a ruler: for whom else it was struck or may be, in whose name, with whom. */
function notesOn(id: string, { forOther, inOther }: PiecesOfRuler): (piece: PublicPiece) => string | null {
  const othersOf = (names: readonly Named[]): readonly string[] =>
    names.filter((one) => one.id !== id).map(({ name }) => name);
  const others = (names: readonly Named[]): string => rulersWords.and(othersOf(names));
  return (piece) => {
    const isSure = isCertain(piece, 'struck-for');
    if (forOther.includes(piece)) return rulersWords.forWhom(others(piece.struckFor), isSure);
    if (piece.struckFor.length > 1 && !isSure) return rulersWords.orFor(othersOf(piece.struckFor));
    if (inOther.includes(piece)) return rulersWords.inWhose(others(rulersNamed(piece)));
    return rulersNamed(piece).length > 1 ? rulersWords.withWhom(others(rulersNamed(piece))) : null;
  };
}

/** What was ruled, or what somebody was who did not rule, and how the years of that are headed. */
function whatItWas({ role, realm, reigns }: Ruler['fields']): Pick<RulerPage, 'realm' | 'reignsTitle'> {
  if (role !== undefined) return { realm: rulersWords.role(role), reignsTitle: rulersWords.office };
  return {
    realm: realm === undefined ? null : rulersWords.reignOf(realm),
    reignsTitle: rulersWords.reigns(reigns.length),
  };
}

function reignsShown({ lists }: Cabinet, id: string): RulerPage['reigns'] {
  return (lists.rulers[id]?.fields.reigns ?? []).map((reign) => ({
    years: `${formatDate(reign.from)} – ${formatDate(reign.to)}`,
    with: (reign.with ?? []).map((other) => ({
      href: urls.ruler(other),
      name: lists.rulers[other]?.fields.name ?? other,
    })),
    note: reign.note ?? null,
    struckNone: reign.coins === false,
  }));
}

function reignRows({ lists }: Cabinet, id: string): readonly UndrawnRow[] {
  const fields = lists.rulers[id]?.fields;
  if (fields === undefined) return [];
  return fields.reigns.map((reign, at) => ({
    name: rulersWords.reign(fields.name, at, fields.reigns.length),
    href: null,
    years: spanInWords(spanOf(reign)),
    note: reign.with === undefined ? null : rulersWords.with(namesOf(lists, reign.with)),
    spans: [{ span: spanOf(reign), kind: reign.with === undefined ? 'reign' : 'joint-reign' }],
  }));
}

function namesOf(lists: Cabinet['lists'], ids: readonly string[]): string {
  return rulersWords.and(ids.map((id) => lists.rulers[id]?.fields.name ?? id));
}

/** The years of the reigns to which no piece can belong; a year two reigns share is told once. */
function gapsInWords(reigns: readonly Interval[], pieces: readonly PublicPiece[]): string {
  const taken = pieces.flatMap(({ years }) => (years === null ? [] : [years]));
  const years = [...new Set(reigns.flatMap((reign) => gapsIn(reign, taken)).map(spanInWords))];
  return years.length === 0 ? rulersWords.noGaps : rulersWords.gaps(years);
}

/** The years of a stretch that none of the others touches; whole years, both ends included. */
export function gapsIn({ low, high }: Interval, taken: readonly Interval[]): readonly Interval[] {
  const gaps: Interval[] = [];
  let from = low;
  for (const span of taken.toSorted((a, b) => (a.low < b.low ? -1 : a.low > b.low ? 1 : 0))) {
    if (span.low > high) break;
    if (span.low > from) gaps.push({ low: from, high: span.low - 1 });
    from = Math.max(from, span.high + 1);
  }
  if (from <= high) gaps.push({ low: from, high });
  return gaps;
}
