/**
 * What a spreadsheet would take for a formula when it opens a file: a cell that begins with = + - @, a tab, a line end or a nought byte, or
 * with the first four in full width (OWASP, *CSV Injection*; ASVS 5.0, 1.2.10). A sign alone, a figure with its sign, and a date in EDTF
 * before our era (`-0043/-0041`, `-005X~`) are neither.
 */
const FORMULA = /^'*(?:[=@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20]|[+-].)/s;
const FIGURE = /^[+-]?\d+(?:[.,]\d+)*[~?%]?$/;
const DAY = String.raw`[\dX]{4,}(?:-[\dX]{2}){0,2}[~?%]?`;
/** A date in EDTF that begins before our era: figures, and nothing that a spreadsheet could run. */
const EDTF = new RegExp(String.raw`^-${DAY}(?:/(?:\.\.|-?${DAY})?)?$`);

/** A cell as it is written to a file: with an apostrophe before what would be evaluated. `unguarded` takes it off again. */
export function guarded(cell: string): string {
  return FORMULA.test(cell) && !FIGURE.test(cell) && !EDTF.test(cell) ? `'${cell}` : cell;
}

/** A cell as it was before `guarded`; one that was written by hand without the apostrophe is the same. */
export function unguarded(cell: string): string {
  return cell.startsWith("'") && guarded(cell.slice(1)) === cell ? cell.slice(1) : cell;
}
