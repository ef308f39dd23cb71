import { lettersOf } from './letters.ts';
import { privateIn, searchFor, whereStands } from './find-values.ts';
import type { PrivateSearch } from './find-values.ts';
import type { FiledPiece, Records } from '../catalogue/records.ts';

type Told = { readonly id: string; readonly publish: 'no' | 'unlisted' };

/** The pieces that are in no list, ready to be looked for in texts. */
export type PieceSearch = {
  /** By their ids, old ones too, where these can be told from other words. */
  readonly byId: ReadonlyMap<string, Told>;
  /** Ids that are a plain word or a figure, which tell of a piece only as an address: `12`, `york`. */
  readonly plain: readonly { readonly name: string; readonly told: Told }[];
  /** Their titles and numbers. */
  readonly names: PrivateSearch;
  readonly byName: ReadonlyMap<string, Told>;
};

/** A single word up to this length may be a word of any text; a longer one is a name. */
const WORD = 8;

/** Makes the unlisted and unpublished pieces of a cabinet ready to be looked for. */
export function pieceSearch({ pieces }: Pick<Records, 'pieces'>): PieceSearch {
  const byId = new Map<string, Told>();
  const plain: { name: string; told: Told }[] = [];
  const byName = new Map<string, Told>();
  const isAny = pieces.some(({ fields }) => fields.publish !== 'yes');
  const titles = isAny
    ? pieces.filter(({ fields }) => fields.publish === 'yes').map(({ fields }) => lettersOf(fields.title))
    : [];
  for (const { id, fields } of pieces) {
    if (fields.publish === 'yes') continue;
    const told = { id, publish: fields.publish };
    for (const name of [id, ...(fields.formerly ?? [])])
      if (name.length >= 4 && /[a-z]/.test(name) && (/[-\d]/.test(name) || name.length > WORD)) byId.set(name, told);
      else plain.push({ name, told });
    for (const name of namesOf(fields, titles)) byName.set(name, told);
  }
  const values = [...byName.keys()].map((value) => ({ value, from: '', column: '', line: 0 }));
  return { byId, plain, names: searchFor(values), byName };
}

/**
 * The title of a piece, and its number where that could be told from any other. A title that a listed piece has as well, or
 * has as a part of its own, gives nothing away.
 */
function namesOf({ title, number }: FiledPiece['fields'], titles: readonly string[]): readonly string[] {
  const [named, numbered] = [lettersOf(title).trim(), lettersOf(number).trim()];
  return [
    ...(titles.some((listed) => listed.includes(named)) ? [] : [named]),
    ...(/\p{L}/u.test(numbered) && numbered.length >= 4 ? [numbered] : []),
  ];
}

/** Up to so many, each is sooner looked for by itself than a text is split into words. */
const FEW = 20;

/** An id as it is in an address or a list, whole. */
const ID = /[a-z0-9]+(?:-[a-z0-9]+)*/g;
/** Where an id stands that is too short or too plain a word to be looked for by itself. */
const ADDRESSES = ['pieces/', 'photographs/', 'iiif/', 'compare/', '"id":"', '"id": "'];

/**
 * The pieces in no list that a text tells of. `text` is without escapes; `letters` is what `lettersOf` gives, or nothing where
 * names are not looked for; below `pieces/` an address may begin with `../`.
 */
export function piecesIn(search: PieceSearch, file: string, text: string, letters = ''): readonly Told[] {
  const { byId, plain, names, byName } = search;
  const found = new Set<Told>();
  if (byId.size <= FEW) for (const [name, told] of byId) if (stands(text, '', name, '')) found.add(told);
  if (byId.size > FEW)
    for (const [word] of text.matchAll(ID)) {
      const told = byId.get(word);
      if (told !== undefined) found.add(told);
    }
  const addresses = file.startsWith('pieces/') ? [...ADDRESSES, '../'] : ADDRESSES;
  if (plain.length <= FEW)
    for (const { name, told } of plain)
      if (addresses.some((before) => stands(text, before, name, '')) || stands(text, '\n', name, ',')) found.add(told);
  if (plain.length > FEW) for (const told of inAddresses(text, plain, addresses)) found.add(told);
  if (byName.size <= FEW) for (const [name, told] of byName) if (whereStands(letters, name) !== -1) found.add(told);
  if (byName.size > FEW)
    for (const { value } of privateIn(letters, names)) {
      const told = byName.get(value);
      if (told !== undefined) found.add(told);
    }
  return [...found];
}

/** Those that are in an address or at the beginning of a line of a table: the same as `stands` says, with the text read once. */
function inAddresses(text: string, plain: PieceSearch['plain'], addresses: readonly string[]): readonly Told[] {
  const byName = new Map<string, Told[]>();
  for (const { name, told } of plain) byName.set(name, [...(byName.get(name) ?? []), told]);
  const before = addresses.map((address) => address.replaceAll('.', '\\.')).join('|');
  const found = [
    ...text.matchAll(new RegExp(`(?:${before})([a-z0-9]+(?:-[a-z0-9]+)*)(?![a-z0-9-])`, 'g')),
    ...text.matchAll(/\n([a-z0-9]+(?:-[a-z0-9]+)*),/g),
  ];
  return found.flatMap(([, name = '']) => byName.get(name) ?? []);
}

/** Whether a name is in a text with this before and after it, and as no part of a longer one. */
function stands(text: string, before: string, name: string, after: string): boolean {
  const word = `${before}${name}${after}`;
  for (let at = text.indexOf(word); at !== -1; at = text.indexOf(word, at + 1)) {
    const around = `${before === '' ? (text[at - 1] ?? ' ') : ' '}${after === '' ? (text[at + word.length] ?? ' ') : ' '}`;
    if (!/[a-z0-9-]/.test(around)) return true;
  }
  return false;
}

/** A file of a list that only pieces which are not published name: on the site it stands with nothing beside it. */
export function namedByHiddenOnly({ pieces, rulers, mints, denominations }: Records): readonly string[] {
  const named = (isHidden: boolean): ReadonlySet<string> =>
    new Set(
      pieces
        .filter(({ fields }) => (fields.publish === 'no') === isHidden)
        .flatMap(({ fields }) => [
          ...[fields.ruler, fields['struck-for']].flat().map((id) => `rulers/${String(id)}`),
          `mints/${String(fields.mint)}`,
          `denominations/${String(fields.denomination)}`,
        ]),
    );
  const [hidden, shown] = [named(true), named(false)];
  return [...rulers, ...mints, ...denominations]
    .map(({ file }) => file.replace(/\.yaml$/, ''))
    .filter((name) => hidden.has(name) && !shown.has(name));
}
