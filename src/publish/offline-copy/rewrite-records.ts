/** What JSON holds, with every text that is an address under the base rewritten. */
export function rewriteRecords(held: unknown, base: string, readdress: (address: string) => string): unknown {
  if (typeof held === 'string') return held.startsWith(base) ? readdress(held) : held;
  if (Array.isArray(held)) return held.map((one) => rewriteRecords(one, base, readdress));
  if (typeof held !== 'object' || held === null) return held;
  return Object.fromEntries(
    Object.entries(held).map(([name, value]) => [name, rewriteRecords(value, base, readdress)]),
  );
}
