import type { Draft } from '../plan/draft.ts';
import type { BroughtIn } from './last-import.ts';

/** The number a row without one is given. */
const BY_ROW = /^row-\d+$/;
/** The share of filled cells that must be the same for a row to be one that was there before. */
const ALIKE = 0.5;

/**
 * Rows without a number of their own keep the one they were given the first time, wherever in the sheet they stand now: a row is known by
 * its cells, all of them or, where no other row claims it, most of them. A new row gets a number that no piece has had.
 */
export function matchUnnumbered(
  drafts: readonly Draft[],
  cells: ReadonlyMap<number, readonly string[]>,
  before: readonly BroughtIn[],
  numbers: ReadonlySet<string>,
): readonly Draft[] {
  const earlier = before.filter(({ number }) => BY_ROW.test(number));
  const mine = drafts.filter(({ facts }) => isByRow(facts['number']));
  if (earlier.length === 0 || mine.length === 0) return drafts;
  const given = new Map<number, string>();
  const left = new Map(earlier.map((piece) => [piece.number, piece]));
  const byCells = new Map<string, BroughtIn[]>();
  for (const piece of earlier)
    byCells.set(JSON.stringify(piece.cells), [...(byCells.get(JSON.stringify(piece.cells)) ?? []), piece]);
  for (const { row } of mine) {
    const found = byCells.get(JSON.stringify(cells.get(row) ?? []))?.shift();
    if (found === undefined) continue;
    given.set(row, found.number);
    left.delete(found.number);
  }
  for (const { row } of mine.filter((draft) => !given.has(draft.row))) {
    const best = [...left.values()]
      .map((piece) => ({ piece, share: alike(piece.cells, cells.get(row) ?? []) }))
      .filter(({ share }) => share >= ALIKE)
      .sort((a, b) => b.share - a.share || Math.abs(a.piece.row - row) - Math.abs(b.piece.row - row))[0];
    if (best === undefined) continue;
    given.set(row, best.piece.number);
    left.delete(best.piece.number);
  }
  const taken = new Set([...numbers, ...earlier.map(({ number }) => number)]);
  let last = Math.max(
    0,
    ...[...taken].filter((number) => BY_ROW.test(number)).map((number) => Number(number.slice(4))),
  );
  return drafts.map((draft) => {
    const number = draft.facts['number'];
    if (!isByRow(number)) return draft;
    const kept = given.get(draft.row) ?? (taken.has(number) ? `row-${(last += 1)}` : number);
    return kept === number ? draft : renumbered(draft, number, kept);
  });
}

function isByRow(number: unknown): number is string {
  return typeof number === 'string' && BY_ROW.test(number);
}

function renumbered(draft: Draft, was: string, number: string): Draft {
  const { title } = draft.facts;
  const told =
    typeof title === 'string' && title.endsWith(` ${was}`) ? `${title.slice(0, -was.length)}${number}` : title;
  return { ...draft, facts: { ...draft.facts, ...(told === undefined ? {} : { title: told }), number } };
}

/** The share of cells, of those that hold something in either row, that hold the same. */
function alike(a: readonly string[], b: readonly string[]): number {
  const filled = Array.from({ length: Math.max(a.length, b.length) }, (_, at) => at).filter(
    (at) => (a[at] ?? '') !== '' || (b[at] ?? '') !== '',
  );
  return filled.length === 0 ? 0 : filled.filter((at) => a[at] === b[at]).length / filled.length;
}
