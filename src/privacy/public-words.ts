import type { Records } from '../catalogue/records.ts';
import { lettersOf } from './letters.ts';
import { bothOf } from './not-secret.ts';
import type { Answered } from './not-secret.ts';
import { privateIn, searchFor } from './search.ts';
import type { PrivateValue } from './search.ts';

/** The records whose facts a visitor reads. */
export type PublicRecords = Pick<Records, 'pieces' | 'rulers' | 'mints' | 'denominations' | 'works'>;

/** Facts of a piece that are words of the trade, names and letters; what tells of its keepers and finds is not among them. */
const SAID = [
  'number', 'title', 'issuer', 'makers', 'dated', 'references', 'metal', 'made', 'shape', 'treatments', 'peculiarities', 'problem',
  'obverse', 'reverse', 'edge', 'tags',
] as const; // prettier-ignore

/** Those of them that are told in the keeper's own words, into which a note may have slipped whole. */
const TOLD: readonly string[] = ['problem', 'peculiarities'];

/** Every fact of the published pieces and of the lists: words that are public by the keeper's own wish. */
export function publicWords(records: PublicRecords): string {
  return saidBefore(records).all;
}

type Words = { readonly all: string; readonly ofTheTrade: string };

const SAID_BEFORE = new WeakMap<PublicRecords, Words>();

function saidBefore(records: PublicRecords): Words {
  const known = SAID_BEFORE.get(records);
  if (known !== undefined) return known;
  const ofTheTrade = SAID.filter((field) => !TOLD.includes(field));
  const words = { all: wordsOf(records, SAID), ofTheTrade: wordsOf(records, ofTheTrade) };
  SAID_BEFORE.set(records, words);
  return words;
}

function wordsOf(
  { pieces, rulers, mints, denominations, works }: PublicRecords,
  fields: readonly (typeof SAID)[number][],
): string {
  const shown = pieces.filter(({ fields }) => fields.publish !== 'no');
  const said = [
    ...shown.map(({ id }) => id),
    ...shown.flatMap((piece) => fields.flatMap((field) => textsIn(piece.fields[field]))),
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

/** A note of so many words is a sentence; fewer may name a hole or a scratch, as the problem of the piece does. */
const SENTENCE = 3;

/**
 * The values, in letters, that the published pieces and the lists say anyway. A sentence that is a problem as well is not among
 * them, unless that is answered for: of a sheet, one column may have been read as both.
 */
export function saidIn(
  records: PublicRecords,
  values: readonly PrivateValue[],
  isAnswered: Answered = () => false,
): ReadonlySet<string> {
  const asked = values.map((one) => ({ ...one, value: lettersOf(one.value).trim() }));
  const words = saidBefore(records);
  const isSentence = ({ value, column }: PrivateValue): boolean =>
    (value.match(/[\p{L}']+/gu) ?? []).length >= SENTENCE &&
    !TOLD.some((field) => isAnswered(bothOf(column, field), value));
  const said = [
    ...saidOf(words.all, asked.filter((one) => !isSentence(one))),
    ...saidOf(words.ofTheTrade, asked.filter(isSentence)),
  ]; // prettier-ignore
  return new Set(said);
}

function saidOf(words: string, values: readonly PrivateValue[]): readonly string[] {
  const letters = words.split('\n').map(lettersOf).join('\n');
  return privateIn(letters, searchFor(values)).map(({ value }) => value);
}
