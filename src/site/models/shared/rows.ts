import type { FaceView } from './face.ts';

/** Pixels that a piece has on a board at least, with its gap; and pixels a millimetre, as in tokens.css. */
export const ROOM = {
  labelled: { least: 170, gap: 28 },
  brief: { least: 133, gap: 20 },
  board: { least: 148, gap: 19 },
} as const;
type Room = (typeof ROOM)[keyof typeof ROOM];
const SCALE = 5;
/** The narrowest screen that is called wide (80rem), without its margins and the bar at its side. */
const WIDE = 1160;
/** The margin of a cut-out picture hangs out at its left. */
const HANGS = 0.06;

/**
 * How many pieces one row has of a wide board, at most `most`: all rows share their columns, each as wide as the widest in it.
 * A row that has no room is broken into rows of about the same length, for one piece alone in a row reads as a mistake.
 */
export function piecesInRow(pieces: readonly (readonly FaceView[])[], most: number, room: Room): number {
  const widths = pieces.map((faces) => {
    const hangs = HANGS * (faces[0]?.millimetres ?? 0);
    return Math.max(room.least, SCALE * (faces.reduce((sum, { millimetres }) => sum + millimetres, 0) - hangs));
  });
  for (let rows = Math.max(1, Math.ceil(widths.length / most)); rows < widths.length; rows++) {
    const columns = Math.ceil(widths.length / rows);
    const wide = Array.from({ length: columns }, (_, at) =>
      Math.max(...widths.filter((__, one) => one % columns === at)),
    );
    if (wide.reduce((sum, one) => sum + one, (columns - 1) * room.gap) <= WIDE) return columns;
  }
  return 1;
}

/** The length of the longest row of what lies at these distances from the left, row by row. */
export function longestRow(lefts: readonly number[]): number {
  let [longest, row] = [0, 0];
  for (const [at, left] of lefts.entries()) {
    row = left > (lefts[at - 1] ?? -Infinity) ? row + 1 : 1;
    longest = Math.max(longest, row);
  }
  return Math.max(1, longest);
}
