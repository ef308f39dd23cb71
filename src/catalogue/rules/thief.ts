import type { Rule } from '../check-records.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import { LEDGER_COLUMNS } from '../schema/cabinet.ts';

/** Degrees with three decimals or more stand within a hundred metres of a place. */
const DEGREES = /-?\d{1,2}\.\d{3,}\s*°?\s*[NS]?\s*[,;/ ]\s*-?\d{1,3}\.\d{3,}/;
/** A British or Irish grid reference of six figures or more: two letters, then two groups or one run of figures. */
const GRID =
  /\b(?:H[LMN-PT-Z]|N[A-HJ-OR-UW-Z]|O[V]|S[A-HJ-PR-Z]|T[AFGLMQRV])\s?(?:\d{3,5}\s\d{3,5}|\d{6}|\d{8}|\d{10})\b/;
/** Fields whose figures are measures, or numbers in a list or a book, and no places. */
const NUMBERED = new Set(['number', 'references', 'dies', 'weight', 'diameter', 'thickness', 'fineness', 'inside']);

/** What names an exact spot in public text is for the ledger. */
export const checkThief: Rule = (records, place) =>
  [...records.pieces.filter(({ fields }) => fields.publish !== 'no'), ...records.exhibits].flatMap(
    ({ file, fields, story }) =>
      [...textsIn(fields, []), { path: [], text: story }].flatMap(({ path, text }): readonly Problem[] => {
        const match = DEGREES.exec(text) ?? GRID.exec(text);
        return match === null ? [] : [problem('spot-too-exact', place(file, path, match[0]), match[0])];
      }),
  );

/** What a sheet said of money, storage or a seller stands in no file but the ledger, also where it could not be read. */
export const checkAsWritten: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }) =>
    Object.keys(fields['as-written'] ?? {})
      .filter((name) => LEDGER_COLUMNS.some((column) => column === name.replace(/^ledger /, '')))
      .map((name) => problem('ledger-in-piece', place(file, ['as-written', name]), name.replace(/^ledger /, ''))),
  );

type Text = { readonly path: readonly (string | number)[]; readonly text: string };

/** Every text in the fields of a file, and the way to it. */
function textsIn(held: unknown, path: Text['path']): readonly Text[] {
  if (typeof held === 'string') return [{ path, text: held }];
  if (Array.isArray(held)) return held.flatMap((one, index) => textsIn(one, [...path, index]));
  if (typeof held !== 'object' || held === null) return [];
  return Object.entries(held)
    .filter(([field]) => !NUMBERED.has(field))
    .flatMap(([field, one]) => textsIn(one, [...path, field]));
}
