/** `A` for 0, `Z` for 25, `AA` for 26, as a spreadsheet names its columns. */
export function formatColumn(column: number): string {
  let letters = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** 0 for `A`, 27 for `AB`; null for what names no column. */
export function parseColumn(letters: string): number | null {
  if (!/^[A-Z]{1,3}$/.test(letters)) return null;
  let column = 0;
  for (let at = 0; at < letters.length; at += 1) column = column * 26 + letters.charCodeAt(at) - 64;
  return column - 1;
}
