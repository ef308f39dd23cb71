/**
 * The rule of the finder in the plainest words, for comparison: cut the ring open at every letter and try the mask as
 * a pattern. For legends without W, Æ, thorn, P or a loss, whose letters all stand for themselves.
 */
export function naiveAt(mask: string, ring: string): number | null {
  const seen = mask.replace(/^\*+|\*+$/g, '');
  if (seen === '') return null;
  const pattern = new RegExp(`^${seen.replaceAll('?', '.').replaceAll('*', '.*')}`, 'u');
  for (let at = 0; at < ring.length; at += 1) if (pattern.test(ring.slice(at) + ring.slice(0, at))) return at;
  return null;
}

/** The most letters of a mask that can stand on legible letters of a ring with losses; −1 when it cannot stand at all. Tries everything. */
export function naiveWeight(mask: string, opened: string): number {
  const [sign, ...signs] = mask;
  const [letter, ...letters] = opened;
  if (sign === undefined) return 0;
  const [rest, after] = [signs.join(''), letters.join('')];
  const ways: number[] = [];
  if (sign === '*') ways.push(naiveWeight(rest, opened));
  if (letter !== undefined) {
    if (sign === '*') ways.push(naiveWeight(mask, after));
    else if (letter === '…') ways.push(naiveWeight(rest, opened), naiveWeight(mask, after));
    else if (sign === '?') ways.push(naiveWeight(rest, after));
    else if (sign === letter) {
      const way = naiveWeight(rest, after);
      if (way >= 0) ways.push(1 + way);
    }
  }
  return Math.max(-1, ...ways);
}
