/** What a citation of a page rests on. */
export type Cited = {
  /** A name for the entry in somebody's list of references: the id of the piece, set or exhibit. */
  readonly key: string;
  readonly title: string;
  /** Its inventory number; null for what has none. */
  readonly number: string | null;
  /** Null where the keeper is not named. */
  readonly keeper: string | null;
  readonly collection: string;
  /** The address of the page in full; null where the site has no public address. */
  readonly address: string | null;
  /** The day of the record's last change, `2026-11-29`; null where it is not known. */
  readonly changed: string | null;
  /** The language of the title. */
  readonly language: string;
};

/**
 * The citation as CSL-JSON, a list of one entry. The page of the record is what is cited, so the day is that of its last change.
 * Source: Citation Style Language, `csl-data.json` 1.0.2 (type `webpage`).
 */
export function cslJson({ key, title, number, keeper, collection, address, changed, language }: Cited): string {
  const entry = {
    id: key,
    type: 'webpage',
    title,
    ...(keeper === null ? {} : { author: [{ literal: keeper }] }),
    'container-title': collection,
    ...(number === null ? {} : { number }),
    ...(changed === null ? {} : { issued: { 'date-parts': [changed.split('-').map(Number)] } }),
    ...(address === null ? {} : { URL: address }),
    language,
  };
  return JSON.stringify([entry], null, 2);
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/**
 * The same for BibTeX: `@misc`, whose fields are those of its own documentation, and `url`, which every style of today knows.
 * Source: Oren Patashnik, *BibTeXing* (1988), §3.1 and 3.2.
 */
export function bibTeX({ key, title, number, keeper, collection, address, changed }: Cited): string {
  const [year, month, day] = (changed ?? '').split('-');
  const note = [number === null ? '' : `No. ${number}`, day === undefined ? '' : `last changed ${changed ?? ''}`];
  const said = note.filter((part) => part !== '').join(', ');
  const fields: readonly (readonly [name: string, value: string | null])[] = [
    // Braces within braces: a name that is no first name and last name, a title whose capitals stay.
    ['author', keeper === null ? null : `{{${inTeX(keeper)}}}`],
    ['title', `{{${inTeX(title)}}}`],
    ['howpublished', `{${inTeX(collection)}}`],
    ['year', year === undefined || year === '' ? null : year],
    ['month', month === undefined ? null : (MONTHS[Number(month) - 1] ?? null)],
    ['note', said === '' ? null : `{${inTeX(said)}}`],
    ['url', address === null ? null : `{${address}}`],
  ];
  const lines = fields.flatMap(([name, value]) => (value === null ? [] : [`  ${name} = ${value}`]));
  return `@misc{${key},\n${lines.join(',\n')}\n}`;
}

/** Characters that TeX takes for a command of its own. A brace by its name: BibTeX counts one also behind a backslash. */
const TEX: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '{': '\\textbraceleft{}',
  '}': '\\textbraceright{}',
  '~': '\\textasciitilde{}',
  '^': '\\textasciicircum{}',
};

function inTeX(text: string): string {
  return text.replace(/[\\{}~^&%$#_]/g, (sign) => TEX[sign] ?? `\\${sign}`);
}
