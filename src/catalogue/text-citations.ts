import type { Filed, Records } from './records.ts';
import type { WorkFields } from './schema/lists.ts';

/** A book named in running text by author and year: `(Booth, 1984)`, `(see Blunt and Whitton 1945–1948)`. */
export type TextCitation = { readonly words: string; readonly name: string; readonly year: string };

const NAME = String.raw`(?:[Vv][ao]n )?\p{Lu}[\p{L}’'-]+`;
/** In brackets, or after a semicolon in them; the second of two authors is left out. A book on coins is hardly older than 1700. */
const CITED = new RegExp(
  String.raw`(?<=[(;] ?(?:(?:see|cf\.|after|from) )?)(${NAME})(?:(?: and | & )(?:\p{Lu}\. )*${NAME})?,? ((?:1[789]|20)\d\d)(?!\d)`,
  'gu',
);
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
/** Words with a capital that stand before a year and are nobody's name. */
const NO_NAME: ReadonlySet<string> = new Set([
  ...MONTHS, 'Christmas', 'Easter', 'Lent', 'Act', 'Statute', 'Spring', 'Summer', 'Autumn', 'Winter',
  'In', 'About', 'Before', 'After', 'Until', 'Since', 'From', 'By', 'The', 'AD', 'AH',
]); // prettier-ignore

/** The books that a text cites by author and year. */
export function textCitations(text: string): readonly TextCitation[] {
  return [...text.matchAll(CITED)].flatMap(([words, name = '', year = '']) =>
    NO_NAME.has(name) ? [] : [{ words, name, year }],
  );
}

/** The work of that author and that year, or of years that include it. */
export function workCited<Work extends Pick<Filed<WorkFields>, 'fields'>>(
  { name, year }: TextCitation,
  works: readonly Work[],
): Work | undefined {
  return works.find(({ fields: { author = '', year: printed = '' } }) => isBy(author, name) && isOf(printed, year));
}

function isBy(author: string, name: string): boolean {
  return author.split(/[^\p{L}’'-]+/u).includes(name.split(' ').at(-1) ?? name);
}

/** `1945–1948` includes 1946, `1993–4` both, `1991 and 1994` those two. */
function isOf(printed: string, year: string): boolean {
  const range = /^(\d{4})[–-](\d{1,4})$/u.exec(printed);
  if (range === null) return printed.includes(year);
  const [, from = '', to = ''] = range;
  return Number(year) >= Number(from) && Number(year) <= Number(from.slice(0, 4 - to.length) + to);
}

/** Books that a story cites by author and year and that have no file in works/. A story may name a house and a year, so it stops nothing. */
export function citationRemarks({
  pieces,
  works,
  mints,
  rulers,
}: Pick<Records, 'pieces' | 'works' | 'mints' | 'rulers'>): readonly string[] {
  // A town or a king before a year is no author: (York 1697).
  const others = new Set([...mints, ...rulers].flatMap(({ fields }) => fields.name.split(/[^\p{L}’'-]+/u)));
  return pieces.flatMap(({ file, story }) => {
    const unknown = textCitations(story).filter((one) => !others.has(one.name) && workCited(one, works) === undefined);
    return [...new Set(unknown.map(({ words }) => words))].map(
      (words) =>
        `${file}: the story cites “${words}”, which has no file in works/. With one it is listed among the works cited.`,
    );
  });
}
