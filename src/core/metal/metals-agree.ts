/** What is copper with something in it, by the names of catalogues; common practice. */
const OF_COPPER: ReadonlySet<string> = new Set([
  'copper', 'bronze', 'brass', 'orichalcum', 'latten', 'ae', 'bell metal', 'gunmetal', 'leaded bronze', 'copper alloy',
]); // prettier-ignore

/**
 * Whether two names of a metal can both be true of one piece: the same; one of them a nearer word for the other, as `pale
 * gold` is for `gold`; or a copper alloy that one of them does not name. `brass` and `bronze` cannot.
 */
export function metalsAgree(one: string, other: string): boolean {
  const [a, b] = [plain(one), plain(other)];
  if (a === b || a.endsWith(` ${b}`) || b.endsWith(` ${a}`)) return true;
  const isAny = (metal: string): boolean => metal === 'copper alloy' || metal === 'ae';
  return OF_COPPER.has(a) && OF_COPPER.has(b) && (isAny(a) || isAny(b));
}

function plain(metal: string): string {
  return metal
    .trim()
    .toLowerCase()
    .replaceAll('æ', 'ae')
    .replaceAll(/[\s-]+/gu, ' ');
}
