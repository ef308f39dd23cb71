import type { Interval } from '../../../core/eras/era-scheme.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { urls } from '../../urls.ts';
import type { FaceView } from '../shared/face.ts';
import { dateInWords } from '../shared/ticket.ts';
import { barOf, scaleOver, ticksOf } from './time-scale.ts';
import type { TimeBar, TimeScale, TimeTick } from './time-scale.ts';

/**
 * How a stretch of years is drawn. `sure`: solid; `unsure`: hollow; `reign`: the pale ground that pieces are seen against;
 * `joint` and `joint-reign`: half as high; `gap`: a broken outline.
 */
export type TimeKind = 'sure' | 'unsure' | 'reign' | 'joint' | 'joint-reign' | 'gap';
export type DrawnBar = TimeBar & { readonly kind: TimeKind };

/** One line of a time line: a name, its years in words, and its bars. */
export type TimeRow = {
  readonly name: string;
  readonly href: string | null;
  readonly years: string;
  readonly note: string | null;
  /** A piece of it, drawn small before its name. */
  readonly face?: FaceView | null;
  readonly bars: readonly DrawnBar[];
};

/** Rows on one axis. */
export type TimeLine = {
  readonly ticks: readonly TimeTick[];
  readonly rows: readonly TimeRow[];
  /** Stretches behind all the rows. */
  readonly behind: readonly TimeBar[];
};

/** A row before it is laid on an axis. */
export type UndrawnRow = Omit<TimeRow, 'bars'> & {
  readonly spans: readonly { readonly span: Interval; readonly kind: TimeKind }[];
};

/** Lays rows on the axis that holds them all, or on the one given; null when nothing has a year. */
export function timeLine(
  rows: readonly UndrawnRow[],
  options: { readonly scale?: TimeScale; readonly behind?: readonly Interval[] } = {},
): TimeLine | null {
  const behind = options.behind ?? [];
  const scale = options.scale ?? scaleOver([...rows.flatMap(({ spans }) => spans.map(({ span }) => span)), ...behind]);
  if (scale === null) return null;
  const bar = (span: Interval): readonly TimeBar[] => {
    const drawn = barOf(scale, span);
    return drawn === null ? [] : [drawn];
  };
  return {
    ticks: ticksOf(scale),
    behind: behind.flatMap(bar),
    rows: rows.map(({ spans, ...row }) => ({
      ...row,
      bars: spans.flatMap(({ span, kind }) => bar(span).map((drawn) => ({ ...drawn, kind }))),
    })),
  };
}

/** A piece as a row: its date from low to high, hollow where the keeper is not sure of it. */
export function pieceRow(piece: PublicPiece, note: string | null = null): UndrawnRow {
  return {
    name: piece.title,
    href: urls.piece(piece.id),
    years: dateInWords(piece),
    note,
    spans: piece.years === null ? [] : [{ span: piece.years, kind: isSureOfDate(piece) ? 'sure' : 'unsure' }],
  };
}

function isSureOfDate({ date, sure }: PublicPiece): boolean {
  if ((sure.date ?? 'certain') !== 'certain') return false;
  const dated = known(date);
  return dated === null || !(dated.about || dated.doubtful);
}
