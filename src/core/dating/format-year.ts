/**
 * An astronomical year for a visitor. From 1000 it stands bare; before, AD goes in front and BC behind, since a
 * number below 1000 could be counted from any era. Common practice.
 */
export function formatYear(year: number): string {
  if (year <= 0) return `${String(1 - year)} BC`;
  return year < 1000 ? `AD ${String(year)}` : String(year);
}

/** A span of years: "1279–81", "1279–1307", "AD 895–905", "27–14 BC", "27 BC – AD 14". */
export function formatYears(low: number, high: number): string {
  if (low === high) return formatYear(low);
  if (high <= 0) return `${String(1 - low)}–${formatYear(high)}`;
  if (low <= 0) return `${formatYear(low)} – ${formatYear(high)}`;
  if (high < 1000) return `AD ${String(low)}–${String(high)}`;
  if (low < 1000) return `AD ${String(low)} – ${String(high)}`;
  const sameCentury = low < 10_000 && Math.floor(low / 100) === Math.floor(high / 100);
  return `${String(low)}–${sameCentury ? String(high).slice(-2) : String(high)}`;
}

/** The years of ours beside a year of another era: "1839/40", "906/7", "131/130 BC", "902–912". */
export function formatGloss(low: number, high: number): string {
  if (high !== low + 1) return low > 0 ? formatYears(low, high).replace('AD ', '') : formatYears(low, high);
  if (low < 0) return `${String(1 - low)}/${formatYear(high)}`;
  if (low === 0) return formatYears(low, high);
  const [first, second] = [String(low), String(high)];
  if (first.length < second.length) return `${first}/${second}`;
  let shared = 0;
  while (first[shared] === second[shared]) shared += 1;
  // Numbers in the teens are spoken as one word, so they are not cut: 1911/12.
  const cut = second.at(-2) === '1' ? Math.min(shared, second.length - 2) : shared;
  return `${first}/${second.slice(cut)}`;
}
