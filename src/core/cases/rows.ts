/**
 * Breaks widths into as few rows as they need, in order, and among those the rows that are most alike in width: six in
 * room for five stand three and three. What is wider than the room has a row of its own. Answers how many are in each.
 */
export function balancedRows(widths: readonly number[], room: number, gap: number): readonly number[] {
  const fewest = fill(widths, room, gap);
  if (fewest.length < 2) return fewest;
  const limits = widths
    .flatMap((_, from) => widths.slice(from).map((_, many) => lengthOf(widths.slice(from, from + many + 1), gap)))
    .filter((long) => long <= room + 1e-9)
    .sort((a, b) => a - b);
  let [low, high] = [0, limits.length - 1];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (fill(widths, limits[middle] ?? room, gap).length <= fewest.length) high = middle;
    else low = middle + 1;
  }
  const rows = fill(widths, limits[low] ?? room, gap);
  return rows.length === fewest.length ? rows : fewest;
}

/** How long a row of these is. */
export function lengthOf(widths: readonly number[], gap: number): number {
  return widths.reduce((sum, width) => sum + width, 0) + Math.max(0, widths.length - 1) * gap;
}

function fill(widths: readonly number[], room: number, gap: number): readonly number[] {
  const rows: number[] = [];
  let used = Infinity;
  for (const width of widths) {
    if (used + gap + width > room + 1e-9) {
      rows.push(0);
      used = -gap;
    }
    rows[rows.length - 1] = (rows.at(-1) ?? 0) + 1;
    used += gap + width;
  }
  return rows;
}
