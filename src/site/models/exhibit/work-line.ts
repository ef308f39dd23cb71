import type { Work } from '../../../catalogue/catalogue.ts';
import type { Run } from '../../../core/cases/typeset-text.ts';

/** A book as a list of books gives it: author, title in italics, series, place and year. */
export function workLine({ fields }: Work): readonly Run[] {
  const { author, title, series, place, year } = fields;
  const printed = [place, year].filter((part) => part !== undefined).join(', ');
  const after = [series, printed].filter((part) => part !== undefined && part !== '').join('. ');
  return [
    ...(author === undefined ? [] : [{ text: `${author}, ` }]),
    { text: title, italic: true },
    { text: after === '' ? '.' : `. ${after}${after.endsWith('.') ? '' : '.'}` },
  ];
}
