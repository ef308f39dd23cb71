import type { Records } from '../catalogue/records.ts';

/** The records whose facts a visitor reads. */
export type PublicRecords = Pick<Records, 'pieces' | 'rulers' | 'mints' | 'denominations' | 'works'>;

/** Facts of a piece that are words of the trade, names and letters; what tells of its keepers and finds is not among them. */
const SAID = [
  'number', 'title', 'issuer', 'makers', 'dated', 'references', 'metal', 'made', 'shape', 'treatments', 'peculiarities', 'problem',
  'obverse', 'reverse', 'edge', 'tags',
] as const; // prettier-ignore

/** Every fact of the published pieces and of the lists: words that are public by the keeper's own wish. */
export function publicWords(records: PublicRecords): string {
  const known = SAID_BEFORE.get(records);
  if (known !== undefined) return known;
  const words = wordsOf(records);
  SAID_BEFORE.set(records, words);
  return words;
}

const SAID_BEFORE = new WeakMap<PublicRecords, string>();

function wordsOf({ pieces, rulers, mints, denominations, works }: PublicRecords): string {
  const shown = pieces.filter(({ fields }) => fields.publish !== 'no');
  const said = [
    ...shown.map(({ id }) => id),
    ...shown.flatMap(({ fields }) => SAID.flatMap((field) => textsIn(fields[field]))),
    ...namesIn({ rulers, mints, denominations, works }),
    ...rulers.map(({ fields }) => fields.realm ?? ''),
    ...mints.map(({ fields }) => fields.area ?? ''),
    ...works.flatMap(({ fields }) => [fields.author ?? '', fields.series ?? '']),
  ];
  return [...new Set(said)].join('\n');
}

/** Every name in the lists, in small letters. */
export function listNames(records: Omit<PublicRecords, 'pieces'>): ReadonlySet<string> {
  return new Set(namesIn(records).map((name) => name.toLowerCase()));
}

function namesIn({ rulers, mints, denominations, works }: Omit<PublicRecords, 'pieces'>): readonly string[] {
  return [
    ...rulers.flatMap(({ fields }) => [fields.name, ...fields['other-names']]),
    ...mints.flatMap(({ fields }) => [fields.name, ...fields.names.map(({ name }) => name)]),
    ...denominations.flatMap(({ fields }) => [fields.name, fields.plural ?? '']),
    ...works.flatMap(({ fields }) => [fields.title, fields.short ?? '']),
  ];
}

function textsIn(held: unknown): readonly string[] {
  if (typeof held === 'string') return [held];
  if (typeof held !== 'object' || held === null) return [];
  return Object.values(held).flatMap(textsIn);
}
