import { readCsv } from '../catalogue/csv.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';
import type { Records } from '../catalogue/records.ts';
import { namesFault } from '../core/grade/faults.ts';
import { lettersOf } from './letters.ts';
import { answeredIn, bothOf } from './not-secret.ts';
import { isOwn } from './told-by-column.ts';
import { listNames } from './public-words.ts';

/**
 * Facts of a piece that are told in whatever words a sheet had for them: where one column of it was read as such a fact, its notes
 * are public from then on.
 */
const IN_ANY_WORDS = ['issuer', 'problem', 'peculiarities', 'treatments', 'made', 'shape', 'dated', 'tags'] as const;
type InAnyWords = (typeof IN_ANY_WORDS)[number];
const LEDGER = 'private/ledger.csv';

/** What of a record a cell is compared with, in letters. */
function textsOf(held: unknown): readonly string[] {
  return (Array.isArray(held) ? held : [held]).flatMap((one) => (typeof one === 'string' ? [lettersOf(one).trim()] : []));
} // prettier-ignore

/**
 * Notes of the ledger that are, word for word, a public fact of the same piece: of a sheet, one column may have been read as both.
 * Asked once for each two columns. The name of a fault or of anything in the lists is in both by right.
 */
export function checkToldTwice(records: Records, folder: CabinetFolder): readonly Problem[] {
  const { headings, rows } = readCsv(folder.files.find(({ file }) => file === LEDGER)?.text ?? '');
  const pieces = new Map(records.pieces.filter(({ fields }) => fields.publish !== 'no').map((one) => [one.id, one]));
  const isAnswered = answeredIn(folder);
  const names = new Set([...listNames(records)].map((name) => lettersOf(name).trim()));
  const tells = (cell: string): boolean => cell !== '' && /\p{L}{2}/u.test(cell) && !names.has(cell) && !namesFault(cell); // prettier-ignore
  return headings
    .filter((column) => column !== 'piece' && isOwn(LEDGER, column))
    .flatMap((column) => {
      const twice = new Map<InAnyWords, string[]>();
      for (const row of rows) {
        const piece = pieces.get((row['piece'] ?? '').trim());
        const cell = lettersOf(row[column] ?? '').trim();
        if (piece === undefined || !tells(cell) || isAnswered(column, row[column] ?? '')) continue;
        for (const field of IN_ANY_WORDS)
          if (textsOf(piece.fields[field]).includes(cell) && !isAnswered(bothOf(column, field), row[column] ?? ''))
            twice.set(field, [...(twice.get(field) ?? []), piece.file]);
      }
      return [...twice].map(([field, files]) =>
        problem('told-twice', { file: files[0] ?? LEDGER, field }, column, field, files.length, bothOf(column, field)),
      );
    });
}

/** Words by which a keeper speaks of what is nobody else's business, by what they tell of; in letters without accents. */
const SPEAKING: Readonly<Record<string, string>> = {
  secrecy:
    'private(?! (?:mint|issue|token|coin|bank|pattern|trade|compan)), (?<!point )secret(?! (?:mark|point|sign)), confidential, nobody, not for show, not to be shown, do not (?:show|publish|tell), don\'t (?:show|tell), keep quiet, ' +
    'privat, geheim, vertraulich, niemand(?:em|en)?, nicht zeigen, nicht veroffentlichen, prive, confidentiel, a personne, ne pas (?:montrer|publier), niet (?:tonen|laten zien), vertrouwelijk',
  buying:
    'bought (?:of|off|from|for|at|in|with), paid, swapped, swap with, part exchange, inherited, given (?:to|by), gift (?:of|from), had (?:of|off|from), haggled, overpaid, ' +
    'gekauft, bezahlt, geschenkt, geerbt, getauscht, ersteigert, achete(?:e|es|s)?, paye(?:e|es|s)?, offert par, cadeau de, herite, echange avec, gekocht, betaald, gekregen, geruild, geerfd',
  keeping:
    '(?:drawer|tray|box|shelf|cabinet|album|folder|envelope|schublade|lade|fach|kasten|mappe|tiroir|boite|plateau|classeur|doos|map) ?(?:n[or°]?)?\\.? ?[a-z]?\\d+[a-z]?, ' +
    '(?:in|at|im|in der|dans|au|a la|in de) (?:the |le |la |my )?(?:bank|safe|vault|tresor|schliessfach|coffre|banque|kluis), behind the, under the (?:bed|stairs|floor), hinter dem, unter dem bett, derriere le, achter de',
  persons: 'my, mein(?:e[mnrs]?)?, von mir, mijn, de mon, de ma, a moi, uncle, aunt, grandad, grandfather, grandmother, opa, oma, onkel, tante, grand-pere, grand-mere',
  addresses: '[\\w.+-]+@[\\w-]+\\.[a-z]{2,}, tel\\.? ?[+\\d], phone, telefon, telephone',
}; // prettier-ignore
const SPEAKS = Object.entries(SPEAKING).map(
  ([of, words]) => [of, new RegExp(`(?<![\\p{L}\\d])(?:${words.split(/, /).join('|')})(?![\\p{L}])`, 'u')] as const,
);

/** What a text tells of that a keeper tells nobody: `buying`, `keeping`; null where it says nothing of the kind. */
export function speaksPrivately(text: string): string | null {
  const letters = lettersOf(text);
  return SPEAKS.find(([, words]) => words.test(letters))?.[0] ?? null;
}

/** Facts in any words that speak as a keeper's notes do: told of once for each, whatever the ledger says. */
export function privateNoteRemarks({ pieces }: Pick<Records, 'pieces'>, folder: CabinetFolder): readonly string[] {
  const isAnswered = answeredIn(folder);
  const shown = pieces.filter(({ fields }) => fields.publish !== 'no');
  return IN_ANY_WORDS.flatMap((field) => {
    const said = shown.flatMap(({ file, fields }) => {
      const of = textsOf(fields[field]).filter((text) => !isAnswered(field, text)).map(speaksPrivately).find((one) => one !== null); // prettier-ignore
      return of === undefined ? [] : [{ file, of }];
    });
    const [first] = said;
    if (first === undefined) return [];
    const more = said.length === 1 ? '' : ` So do those of ${said.length - 1} more.`;
    return [
      `${first.file}: its ${field} speaks of ${first.of} and would be published.${more} Take it out, or write ${field},*, and today's date in private/not-secret.csv.`,
    ];
  });
}
