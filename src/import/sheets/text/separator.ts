import { readRecords } from './records.ts';

const CANDIDATES = [',', ';', '\t', '|', '^', '~', ':'] as const;
const SAMPLE = 64 * 1024;

const NAMES: Readonly<Record<string, string>> = {
  comma: ',',
  semicolon: ';',
  tab: '\t',
  '\\t': '\t',
  pipe: '|',
  bar: '|',
  colon: ':',
  space: ' ',
};

/** A separator as a keeper names it: the character itself, or `tab`, `semicolon` … ; null for what cannot be one. */
export function parseSeparator(text: string): string | null {
  const named = NAMES[text.trim().toLowerCase()];
  if (named !== undefined) return named;
  return text.length === 1 && !/["\r\n]/.test(text) ? text : null;
}

/** A separator by its name, or the sign itself where it has none: `semicolon`, `^`. */
export function formatSeparator(separator: string): string {
  return Object.entries(NAMES).find(([, sign]) => sign === separator)?.[0] ?? separator;
}

/** The separator a text states in a first line `sep=;`, as spreadsheets write and read it, and the text after that line. */
export function statedSeparator(text: string): { readonly separator: string; readonly rest: string } | null {
  const line = /^sep=(.)(?:\r\n|\r|\n)/i.exec(text);
  return line === null ? null : { separator: line[1] ?? ',', rest: text.slice(line[0].length) };
}

/**
 * The separator that cuts the text into the most even records. A comma between figures (`1,38`) cuts only where every
 * other sign does worse: the rows of a sheet have one number of fields, those of a sheet cut at its decimal commas
 * have not.
 */
export function findSeparator(text: string): string {
  const sample = text.length > SAMPLE ? text.slice(0, text.lastIndexOf('\n', SAMPLE) + 1 || SAMPLE) : text;
  let best: { separator: string; evenness: number } = { separator: ',', evenness: 0 };
  for (const separator of CANDIDATES) {
    const evenness = evennessOf(sample, separator);
    if (evenness > best.evenness) best = { separator, evenness };
  }
  return best.separator;
}

/** The share of filled records that have the commonest number of fields, weighted by that number; 0 for no cut at all. */
function evennessOf(sample: string, separator: string): number {
  const { records } = readRecords(sample, separator, 400);
  const filled = records.filter(({ fields }) => fields.some((field) => field.trim() !== ''));
  if (filled.length === 0) return 0;
  const byWidth = new Map<number, number>();
  for (const { fields } of filled) byWidth.set(fields.length, (byWidth.get(fields.length) ?? 0) + 1);
  let best = 0;
  for (const [width, count] of byWidth) {
    // A sign that stands in one row of two is more likely part of the words than between them.
    const share = count / filled.length;
    if (width > 1) best = Math.max(best, share * share * Math.log2(width + 1));
  }
  return best * (separator === ',' || separator === ':' ? 1 - shareBetweenFigures(sample, separator) / 2 : 1);
}

/** How many of these signs stand between two figures, as in `1,38` and `12:30`. */
function shareBetweenFigures(sample: string, sign: string): number {
  const all = sample.split(sign).length - 1;
  if (all === 0) return 0;
  const between = sample.match(new RegExp(`\\d${sign}(?=\\d)`, 'g'))?.length ?? 0;
  return between / all;
}
