import type { Records } from '../catalogue/records.ts';
import { lettersOf } from './letters.ts';
import { bothOf } from './not-secret.ts';
import type { Answered } from './not-secret.ts';
import { privateIn, searchFor } from './find-values.ts';
import type { PrivateValue } from './find-values.ts';

/** The records whose facts a visitor reads. */
export type PublicRecords = Pick<Records, 'pieces' | 'rulers' | 'mints' | 'denominations' | 'works'>;

/** Facts of a piece that are words of the trade, names and letters; what tells of its keepers and finds is not among them. */
const SAID = [
  'number', 'title', 'issuer', 'makers', 'dated', 'references', 'metal', 'made', 'shape', 'treatments', 'peculiarities', 'problem',
  'obverse', 'reverse', 'edge', 'tags',
] as const; // prettier-ignore

/** Those of them that are told in the keeper's own words, into which a note may have slipped whole. */
const TOLD: ReadonlySet<string> = new Set(['problem', 'peculiarities']);

/** Every fact of the published pieces and of the lists, in letters: words that are public by the keeper's own wish. */
export function publicLetters(records: PublicRecords): string {
  return saidBefore(records).all;
}

type Words = { readonly all: string; readonly ofTheTrade: string };

const SAID_BEFORE = new WeakMap<PublicRecords, Words>();

function saidBefore(records: PublicRecords): Words {
  const known = SAID_BEFORE.get(records);
  if (known !== undefined) return known;
  const { pieces, rulers, mints, denominations, works } = records;
  const said = new Set<string>([
    ...namesIn({ rulers, mints, denominations, works }),
    ...rulers.map(({ fields }) => fields.realm ?? ''),
    ...mints.map(({ fields }) => fields.area ?? ''),
    ...works.flatMap(({ fields }) => [fields.author ?? '', fields.series ?? '']),
  ]);
  const told = new Set<string>();
  for (const { id, fields } of pieces) {
    if (fields.publish === 'no') continue;
    said.add(id);
    for (const field of SAID) addTexts(fields[field], TOLD.has(field) ? told : said);
  }
  const lettersIn = (texts: ReadonlySet<string>): string => [...texts].map(lettersOf).join('\n');
  const ofTheTrade = lettersIn(said);
  const words = { all: `${ofTheTrade}\n${lettersIn(told)}`, ofTheTrade };
  SAID_BEFORE.set(records, words);
  return words;
}

function addTexts(held: unknown, to: Set<string>): void {
  if (typeof held === 'string') to.add(held);
  else if (typeof held === 'object' && held !== null) for (const one of Object.values(held)) addTexts(one, to);
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
  const { all, ofTheTrade } = saidBefore(records);
  const [short, sentences]: [PrivateValue[], PrivateValue[]] = [[], []];
  for (const one of values) {
    const value = lettersOf(one.value).trim();
    const isSentence =
      (value.match(/[\p{L}']+/gu) ?? []).length >= SENTENCE &&
      ![...TOLD].some((field) => isAnswered(bothOf(one.column, field), value));
    (isSentence ? sentences : short).push({ ...one, value });
  }
  const found = [...privateIn(all, searchFor(short)), ...privateIn(ofTheTrade, searchFor(sentences))];
  return new Set(found.map(({ value }) => value));
}
