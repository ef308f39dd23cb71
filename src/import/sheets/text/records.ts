/** A record of a text file: a line, or several where a quoted field runs over them. */
export type TextRecord = {
  /** As a spreadsheet counts the rows of this file, blank ones too, from 1. */
  readonly row: number;
  readonly fields: readonly string[];
};

export type Records = {
  readonly records: readonly TextRecord[];
  /** The first field that is opened by a quotation mark and never closed; null where there is none. */
  readonly unclosed: { readonly row: number; readonly column: number; readonly begins: string } | null;
  /** Whether reading ended before the text did, because there were more records than wanted. */
  readonly isCut: boolean;
};

const QUOTE = 34;
const SPACE = 32;
const NEW_LINE = 10;
const RETURN = 13;

/**
 * The records of a separated text as RFC 4180 has them, and as people's programs write them: lines end in CR LF, LF or
 * CR, mixed as they come; blanks may stand before a quotation mark; and a field whose closing mark is followed by more
 * text (`"Widow's mite" of Alexander`) was never a quoted one and is kept as written, marks and all.
 */
export function readRecords(text: string, separator: string, most = Infinity): Records {
  const stop = separator.charCodeAt(0);
  const records: TextRecord[] = [];
  let row = 0;
  let at = 0;

  const endOfPlain = (from: number): number => {
    let end = from;
    for (; end < text.length; end += 1) {
      const code = text.charCodeAt(end);
      if (code === stop || code === NEW_LINE || code === RETURN) break;
    }
    return end;
  };

  while (at < text.length) {
    if (records.length >= most) return { records, unclosed: null, isCut: true };
    row += 1;
    const fields: string[] = [];
    for (;;) {
      const quoted = readQuoted(text, at, stop);
      if (quoted === 'unclosed') {
        const unclosed = { row, column: fields.length, begins: text.slice(at, at + 40).split(/[\r\n]/, 1)[0] ?? '' };
        return { records, unclosed, isCut: false };
      }
      const end = quoted === null ? endOfPlain(at) : quoted.end;
      fields.push(quoted === null ? text.slice(at, end) : quoted.field);
      at = end;
      if (text.charCodeAt(at) !== stop) break;
      at += 1;
    }
    if (text.charCodeAt(at) === RETURN && text.charCodeAt(at + 1) === NEW_LINE) at += 1;
    at += 1;
    records.push({ row, fields });
  }
  return { records, unclosed: null, isCut: false };
}

/** The quoted field that begins here and where it ends; null where none does. */
function readQuoted(text: string, from: number, stop: number): { field: string; end: number } | 'unclosed' | null {
  let open = from;
  while (text.charCodeAt(open) === SPACE && stop !== SPACE) open += 1;
  if (text.charCodeAt(open) !== QUOTE) return null;
  let close = open;
  for (;;) {
    close = text.indexOf('"', close + 1);
    if (close === -1) return 'unclosed';
    if (text.charCodeAt(close + 1) !== QUOTE) break;
    close += 1;
  }
  let end = close + 1;
  while (text.charCodeAt(end) === SPACE && stop !== SPACE) end += 1;
  const next = text.charCodeAt(end);
  if (end < text.length && next !== stop && next !== NEW_LINE && next !== RETURN) return null;
  return { field: text.slice(open + 1, close).replaceAll('""', '"'), end };
}

/** The records as a text, in the strict form of RFC 4180. */
export function formatRecords(records: readonly (readonly string[])[], separator: string): string {
  const needsQuotes = (field: string): boolean =>
    field.includes(separator) || /["\r\n]/.test(field) || field !== field.trim();
  const quote = (field: string): string => (needsQuotes(field) ? `"${field.replaceAll('"', '""')}"` : field);
  return records.map((fields) => `${fields.map(quote).join(separator)}\r\n`).join('');
}
