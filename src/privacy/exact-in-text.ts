import { NOT_EARLIER } from '../catalogue/kept-answers.ts';
import type { Earlier } from '../catalogue/kept-answers.ts';
import type { Rule } from '../catalogue/rules/rule.ts';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';
import { isLedgerColumn } from '../catalogue/fields/ledger-columns.ts';
import { inEachFile, textsIn } from './hidden-in-text.ts';
import { readCsv } from '../catalogue/csv.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import type { Records } from '../catalogue/records.ts';
import { placesIn } from '../catalogue/rules/rule.ts';
import { unescaped } from './letters.ts';
import { exactSpotIn, houseIn } from './exact-spots.ts';
import { answeredIn, NOT_SECRET, PLACE } from './not-secret.ts';

/** Fields whose figures are numbers in a list or a book, or years (`ND 1829-1835`), and no places. */
const NUMBERED = new Set(['number', 'date', 'references', 'dies', 'identifiers', 'address']);

/** Fields in which a keeper may write of home, as in a story. */
const TOLD = ['about', 'scope', 'cases'];

/** What names an exact spot in public text is for the ledger. Where a mint stood is no find. */
export function checkExactLocations(
  records: Records,
  folder: CabinetFolder,
  earlier: Earlier = NOT_EARLIER,
): readonly Problem[] {
  const place = placesIn(folder);
  const isAnswered = answeredIn(folder);
  const spotIn = (text: string, isStory: boolean): string | null => {
    const spot = exactSpotIn(text) ?? (isStory ? houseIn(text) : null);
    return spot === null || isAnswered(PLACE, spot) ? null : spot;
  };
  const answers = folder.files.find(({ file }) => file === NOT_SECRET)?.text ?? '';
  return inEachFile(records, ['exact', answers], earlier, ({ file, fields, story }) => [
    ...textsIn(fields, [], NUMBERED).flatMap(({ path, text }): readonly Problem[] => {
      const spot = spotIn(text, TOLD.includes(String(path[0])));
      return spot === null ? [] : [problem('spot-too-exact', place(file, path), withoutFigures(spot))];
    }),
    ...spotsInStory(story, (text) => spotIn(text, true)).map(({ line, spot }) =>
      problem('spot-too-exact', place(file, [], line), withoutFigures(spot)),
    ),
  ]);
}

/** The first spot of a story, and the line it stands on or begins on. */
function spotsInStory(
  story: string,
  spotIn: (text: string) => string | null,
): readonly { readonly line: string; readonly spot: string }[] {
  const lines = story.split('\n').flatMap((line) => {
    const spot = spotIn(line);
    return spot === null ? [] : [{ line, spot }];
  });
  const over = lines.length === 0 ? spotIn(story) : null;
  return over === null ? lines.slice(0, 1) : [{ line: over, spot: over }];
}

/** What is printed may be shown to others: the figures of a spot are left out. */
function withoutFigures(spot: string): string {
  return spot.replace(/\d/g, '·');
}

/**
 * Numbers of records of finds, which whoever has one may look up: institution letters and six hexadecimal figures, the cases of
 * the Treasure Act 1996 by their years, the Dutch record of portable antiquities, and the corpus of early medieval finds of coins.
 * Source: the forms these are printed in, from memory.
 */
const FIND_RECORD =
  /(?<![\p{L}\d-])(?:[A-Z]{2,6}-[\dA-F]{6}|(?:19|20)\d\d ?T ?\d{1,4}|PAN-\d{5,8}|EMC[ :]*\d{4}\.\d{3,4})(?![\p{L}\d-])/gu;

/** The number of a record of finds is a find spot by another door: told of in pieces of which the ledger keeps the spot. */
export function findRecordRemarks({ pieces }: Pick<Records, 'pieces'>, folder: CabinetFolder): readonly string[] {
  const kept = piecesWith('find-spot', folder);
  const isAnswered = answeredIn(folder);
  const own = new Set(pieces.map(({ fields }) => fields.number));
  return pieces
    .filter(({ id, fields }) => kept.has(id) && fields.publish !== 'no')
    .flatMap(({ file, fields, story }) => {
      const texts = [...textsIn(fields, [], new Set(['number', 'as-written'])).map(({ text }) => text), story];
      const numbers = texts.flatMap((text) => unescaped(text).match(FIND_RECORD) ?? []);
      const open = [...new Set(numbers)].filter((number) => !own.has(number) && !isAnswered(PLACE, number));
      return open.map(
        (number) =>
          `${file}: "${number}" looks like the number of a record of finds, where others may read the find spot that your ledger keeps private. Take it out, or answer for it as place in private/not-secret.csv.`,
      );
    });
}

/** The pieces of which the ledger keeps this. */
function piecesWith(column: string, folder: CabinetFolder): ReadonlySet<string | undefined> {
  const { rows } = readCsv(folder.files.find(({ file }) => file === 'private/ledger.csv')?.text ?? '');
  return new Set(rows.flatMap((row) => ((row[column] ?? '').trim() === '' ? [] : [row['piece']])));
}

/** `lot 318`, `Los 12`, `lotto 7`: a number in the list of a public sale. Common practice. */
const LOT = /(?<!\p{L})(?:lots?|los|lose|lotto|lote|kavel|nr\.? ?lot) ?(?:no\.? ?|nr\.? ?)?\d/iu;
const NAMED = 3;

/** A lot of a public sale is what was paid by another door: told of the keeper's own purchases of which the ledger keeps the cost. */
export function saleRemarks({ pieces }: Pick<Records, 'pieces'>, folder: CabinetFolder): readonly string[] {
  const kept = piecesWith('cost', folder);
  const told = pieces.filter(({ id, fields }) => {
    const last = fields.provenance?.at(-1);
    if (last === undefined || fields.publish === 'no' || !kept.has(id)) return false;
    return [last.says, last.source, last.from, last.to].some((text) => text !== undefined && LOT.test(text));
  });
  if (told.length === 0) return [];
  const names = told.slice(0, NAMED).map(({ id }) => id);
  const more = told.length > NAMED ? ` and ${told.length - NAMED} more` : '';
  return [
    `${told[0]?.file ?? ''}: the last step in the provenance of ${names.join(', ')}${more} names the lot of a public sale, where others may read what you paid, which your ledger keeps private. Leave the lot out, or keep it if you do not mind.`,
  ];
}

/** What a sheet said of money, storage or a seller is in no file but the ledger, also where it could not be read. */
export const checkAsWritten: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }) =>
    Object.keys(fields['as-written'] ?? {})
      .filter((name) => isLedgerColumn(name.replace(/^ledger /, '')))
      .map((name) => problem('ledger-in-piece', place(file, ['as-written', name]), name.replace(/^ledger /, ''))),
  );
