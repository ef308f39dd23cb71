import type { Rule } from '../check-records.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';

/** Degrees with three decimals or more stand within a hundred metres of a place. */
const DEGREES = /-?\d{1,2}\.\d{3,}\s*°?\s*[NS]?\s*[,;/ ]\s*-?\d{1,3}\.\d{3,}/;
/** A British or Irish grid reference of six figures or more: two letters, then two groups or one run of figures. */
const GRID =
  /\b(?:H[LMN-PT-Z]|N[A-HJ-OR-UW-Z]|O[V]|S[A-HJ-PR-Z]|T[AFGLMQRV])\s?(?:\d{3,5}\s\d{3,5}|\d{6}|\d{8}|\d{10})\b/;
/** What names an exact spot in public text is for the ledger. */
export const checkThief: Rule = (records, place) =>
  records.pieces
    .filter(({ fields }) => fields.publish !== 'no')
    .flatMap(({ file, fields, story }): readonly Problem[] => {
      const found = fields.found ?? {};
      const spots = [
        ...Object.entries(found).flatMap(([field, value]) =>
          typeof value === 'string' ? [{ path: ['found', field], text: value }] : [],
        ),
        ...(fields.provenance ?? []).map((link, index) => ({
          path: ['provenance', index],
          text: `${link.says ?? ''} ${link.source ?? ''}`,
        })),
        { path: [], text: story },
      ];
      return spots
        .map(({ path, text }) => ({ path, match: DEGREES.exec(text) ?? GRID.exec(text) }))
        .flatMap(({ path, match }) => (match === null ? [] : [problem('spot-too-exact', place(file, path), match[0])]));
    });
