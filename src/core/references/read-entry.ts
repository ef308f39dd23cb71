import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { knownWork, letterAlone, unknownWork } from './cited-work.ts';
import type { Head } from './cited-work.ts';
import {
  AFTER, BEFORE, CLASS, DENIED_BEFORE, DOUBT, FIGURE, LIKE_ALONE, NOTE_DIFFERS, NOTE_HAS_NO, NOTE_IS_WRONG, PAGE, PART_OF_NUMBER, PLATE, RARITY, isNeverABook, namesBookInside,
} from './reference-words.ts'; // prettier-ignore
import { askForEach, readNumber, shown } from './ranges.ts';
import type { CitedWork, Reference, Relation } from './reference.ts';

/** What helps to read references. */
export type Books = {
  /** The books that may be cited; with none, the first word is taken for the key of a book. */
  readonly works?: readonly CitedWork[];
  /** Without a list: whether a name is one word or all words before the number. */
  readonly names?: 'first word' | 'every word';
  /** The letters behind a number are known to be its own: `123f` is not "123 and following". */
  readonly lettered?: boolean;
};

export const HOW =
  'Write the work, then the number as printed there: north 1018, cf. north 176, north 1018 var., north unlisted';
/** Whether a text begins with a book: one in the list, or a word that no part of a book is called by, with a number after it. */
export function opensBook(text: string, { works }: Required<Books>): boolean {
  const { body } = withoutBefore(text);
  if (/^[a-z]+(?:-[a-z0-9]+)+\s+(?:\d|[IVX]+$)/u.test(body)) return true;
  if (works.length > 0 && knownWork(body, works) !== null) return true;
  if ([PAGE, PLATE, CLASS, FIGURE, RARITY].some((pattern) => pattern.test(body))) return false;
  const word = /^(\p{Lu}[\p{L}\p{M}&'’.-]*?)[\s.#°-]*(?:\d|[-–—]\s*$|\s\p{Lu}.*\d|&)/u.exec(body)?.[1];
  return word !== undefined && !isNeverABook(word);
}

type Before = {
  readonly body: string;
  readonly relation?: Relation;
  readonly doubtful: boolean;
  /** The word that denies the entry. */
  readonly denied?: string;
};

/** Takes what stands before a book off a text. */
function withoutBefore(text: string): Before {
  let before: Before = { body: text.trim(), doubtful: false };
  for (;;) {
    const { body } = before;
    const denied = DENIED_BEFORE.exec(body)?.[0];
    if (denied !== undefined && before.denied === undefined) {
      before = { ...before, denied: denied.trim(), body: body.slice(denied.length) };
      continue;
    }
    const doubt = DOUBT.exec(body)?.[0];
    if (doubt !== undefined) before = { ...before, doubtful: true, body: body.slice(doubt.length) };
    const next = before.relation === undefined ? BEFORE.find(([pattern]) => pattern.test(before.body)) : undefined;
    if (next !== undefined) before = { ...before, relation: next[1], body: before.body.replace(next[0], '') };
    else if (doubt === undefined) return before;
  }
}

/** Reads one reference, of one book. */
export function readEntry(text: string, books: Required<Books>): Outcome<Reference> {
  const { body, relation, doubtful, denied } = withoutBefore(text);
  if (denied !== undefined) return refuse(whyDenied(text, denied));
  const head = books.works.length > 0 ? knownWork(body, books.works) : unknownWork(body, books.names);
  if (head === 'other edition')
    return refuse(
      `"${shown(text)}" does not say which edition, and the list has another. Write the edition: (2nd ed.).`,
    );
  if (head === null) return refuse(whyNoWork(text, books.works));
  const cited = body.slice(0, body.length - head.rest.length).replace(/[\s,:]+$/u, '');
  const beside = readBeside(head);
  if (!beside.ok) return beside;
  const { number, rest, relation: after, doubtful: doubted, class: inClass, isNear, ...said } = beside.value;
  const unclear = whyUnclear(text, head, cited, number, books);
  if (unclear !== undefined) return refuse(unclear);
  if (rest !== '') return refuse(askForEach(text, cited, number, rest) ?? whyLeftOver(text, rest, books));
  const halfListed = whyHalfListed(text, cited, number, relation ?? after, isNear);
  if (halfListed !== undefined) return refuse(halfListed);
  const relations = [relation, after].filter((one) => one !== undefined);
  if (relations.length === 2 && relations[0] !== relations[1] && !relations.includes('unlisted')) {
    const both = relations.map((one) => one.replace('.', '')).join(' and ');
    const plain = `${cited} ${number}`;
    return refuse(`"${shown(text)}" says both ${both}. Write ${plain} var., or cf. ${plain}.`);
  }
  const stands = relations.includes('unlisted') ? 'unlisted' : (relations[0] ?? 'is');
  const ofNote = whyNote(text, said.note, `${cited} ${number}`, stands);
  if (ofNote !== undefined) return refuse(ofNote);
  if (head.numbers === 'by-volume' && head.volume === undefined && number !== '')
    return refuse(
      `"${shown(text)}" does not say which volume, and the work counts afresh in each. Write ${cited} II ${number}.`,
    );
  const range = readNumber(number, head, cited, books);
  if (!range.ok) return range;
  const nowhere = number === '' && inClass === undefined && said.page === undefined && said.plate === undefined;
  if (nowhere && stands !== 'unlisted') return refuse(`"${shown(text)}" names a work without a number. ${HOW}.`);
  const { work, named, edition, volume, numbers, letters } = head;
  return good({
    text,
    work,
    named,
    ...(edition === undefined ? {} : { edition }),
    ...(volume === undefined ? {} : { volume }),
    ...range.value,
    // Where the book counts by classes alone, the class is the number.
    ...(inClass === undefined ? {} : number === '' ? { number: `class ${inClass}` } : { class: inClass }),
    relation: stands,
    ...(doubtful || doubted === true ? { doubtful: true as const } : {}),
    ...said,
    ...(numbers === undefined ? {} : { numbers }),
    ...(letters === undefined ? {} : { letters }),
  });
}

/** What follows the name of a book: the number, and what was said beside it; `rest` is what nothing here understands. */
type Beside = Partial<Pick<Reference, 'relation' | 'doubtful' | 'class' | 'page' | 'plate' | 'rarity' | 'note'>> & {
  readonly number: string;
  readonly rest: string;
  /** Whether the number is only near: `RIC –, cf. 123`. */
  readonly isNear?: true;
};

function readBeside(head: Head): Outcome<Beside> {
  let said: Beside = { number: '', rest: head.rest };
  for (;;) {
    const rest = said.rest.replace(/^[\s,;:.]+/u, '');
    if (rest === '') return good({ ...said, rest });
    const next = clauseAt({ ...said, rest }) ?? numberAt({ ...said, rest });
    if (next === null) return good({ ...said, rest });
    said = next;
  }
}

/** The next thing said beside a number; null where none begins here. */
function clauseAt(said: Beside): Beside | null {
  const { rest } = said;
  const bracket = /^[([]([^()[\]]*)[)\]]/u.exec(rest);
  if (bracket !== null) return inBrackets(said, (bracket[1] ?? '').trim(), rest.slice(bracket[0].length));
  const doubt = /^\?+/u.exec(rest);
  if (doubt !== null) return { ...said, doubtful: true, rest: rest.slice(doubt[0].length) };
  const relation = AFTER.find(([pattern]) => pattern.test(rest));
  if (relation !== undefined && said.relation === undefined)
    return { ...said, relation: relation[1], rest: rest.replace(relation[0], '') };
  const dash = /^[-–—](?=[\s,(;]|$)/u.exec(rest);
  if (dash !== null && said.number === '' && said.relation === undefined)
    return { ...said, relation: 'unlisted', rest: rest.slice(dash[0].length) };
  const near =
    said.relation === 'unlisted' && said.number === ''
      ? /^(?:cf|cfr|cp|vgl|jfr?|por|zie|voir|see|vedi)\.?\s*(?=\S)/iu.exec(rest)
      : null;
  if (near !== null) return numberAt({ ...said, isNear: true, rest: rest.slice(near[0].length) });
  const fields = [
    ['page', PAGE],
    ['plate', PLATE],
    ['plate', FIGURE],
    ['class', CLASS],
  ] as const;
  for (const [field, pattern] of fields) {
    const match = said[field] === undefined ? pattern.exec(rest) : null;
    if (match?.[1] !== undefined) return { ...said, [field]: match[1].trim(), rest: rest.slice(match[0].length) };
  }
  const rarity = said.number === '' ? null : /^[RC]\d{0,2}(?=\s*[,;(]|$)|^R{2,5}(?![\p{L}\p{N}])/u.exec(rest);
  return rarity === null ? null : { ...said, rarity: rarity[0], rest: rest.slice(rarity[0].length) };
}

function inBrackets(said: Beside, inner: string, rest: string): Beside | null {
  if (inner === '' || /^\?+$/u.test(inner)) return { ...said, doubtful: true, rest };
  const doubt = DOUBT.exec(`${inner} `)?.[0];
  if (doubt !== undefined) return inBrackets({ ...said, doubtful: true }, inner.slice(doubt.length).trim(), rest);
  if (RARITY.test(inner) && said.number !== '') return { ...said, rarity: inner, rest };
  if (said.number === '' && /^\d+$/u.test(inner)) return null;
  if (LIKE_ALONE.test(inner) && said.number !== '' && said.relation === undefined)
    return { ...said, relation: 'cf.', rest };
  const inside = clauseAt({ ...said, rest: inner });
  const left = inside?.rest.replace(/^[\s,;:]+/u, '') ?? '';
  if (inside !== null && /^\?+$/u.test(left)) return { ...inside, doubtful: true, rest };
  if (inside !== null && !inner.startsWith('(')) return { ...inside, ...noted(said, left), rest };
  return { ...said, ...noted(said, inner), rest };
}

function noted({ note }: Beside, more: string): { note?: string } {
  const notes = [note, more === '' ? undefined : more].filter((one) => one !== undefined);
  return notes.length === 0 ? {} : { note: notes.join('; ') };
}

/** A heading of the book, then the number: letters, figures and the marks between them, and a letter or a word that counts on. */
const HEADING =
  "(?:\\p{Lu}[\\p{L}\\p{M}.'’]*\\s+|[IVXLC]+[-./]\\d{1,2}\\s+(?=N[or])|(?:obv|rev|type|typ|group|series|issue|period|supp|suppl|addenda|add|die)\\.?\\s+){0,4}";
const LAST = '\\s?[-–—]\\s?(?:\\p{Lu}[\\p{L}]+\\s)?[\\p{L}]{0,3}[\\p{L}\\p{N}./]+';
const FIGURES = `(?:[\\p{L}*]{1,4}[.#/-]?)?\\d[\\p{L}\\d*†'’]*(?:[./:°+•-][\\p{L}\\p{N}*†]+|${LAST})*`;
const COUNTING_ON =
  '(?:\\s(?:bis|ter|quater|[A-Za-z]|[ivx]{1,4}|(?:type|typ|symbol|group|issue|die|variety|no|nr)\\.?\\s[\\p{L}]?\\d*[a-z]?)(?![\\p{L}\\p{N}.]))*';
const SIGN = '(?:[Nn](?:o|r|um)?[.#°º№]{1,2}\\s*|[#№°]\\s*|[Nn](?:o|r|um)\\s+(?=\\d))?';
const NUMBER = new RegExp(`^-?${SIGN}(${HEADING}${FIGURES}${COUNTING_ON})`, 'u');
/** A book may number by Roman figures or letters alone: `BMC VIII`. */
const LETTERS = /^((?:[Tt]yp(?:e|us)?\s)?(?:[IVXLC]{1,10}|\p{Lu}))(?=\s*(?:$|[,;(?]))/u;

function numberAt(said: Beside): Beside | null {
  if (said.number !== '') return null;
  const match = NUMBER.exec(said.rest) ?? LETTERS.exec(said.rest);
  if (match?.[1] === undefined) return null;
  // `1018var`: the word is no part of the number.
  const joined = /^(.*\d)(?=(?:var|corr)\.?$)/iu.exec(match[1])?.[1] ?? match[1];
  const isOne = /^-?(?:[Nn](?:o|r|um)?[.#°º№]|№)/u.test(match[0]) || (match[0].includes('#') && joined.includes('/'));
  // `SNG Kopenhagen Nr. 31`: nor is the word for a number.
  const plain = joined.replace(/(?<=\s)N(?:r|o|um)\.?\s*(?=\d)/u, '');
  const literal = isOne ? `#${plain}` : plain;
  return { ...said, number: literal, rest: said.rest.slice(match[0].length - (match[1].length - joined.length)) };
}

function whyDenied(text: string, denied: string): string {
  return `"${denied}" in "${shown(text)}" does not say that the piece is in that entry. Leave the reference out, or write cf. before the work, or the work and unlisted.`;
}

/** Why what was read may be another number, or another book. */
function whyUnclear(
  text: string,
  { named, rest }: Head,
  cited: string,
  number: string,
  { works }: Required<Books>,
): string | undefined {
  if (
    /\d[-\s]?(?:ish|odd)$/iu.test(number) ||
    /^[-\s]?(?:ish|odd|or so)(?!\p{L})/iu.test(rest.slice(rest.indexOf(number) + number.length))
  )
    return `"${shown(text)}" gives no number, but one near it. Write the number as printed, or cf. ${cited} ${number.replace(/\D+$/u, '')}.`;
  const part = PART_OF_NUMBER.exec(rest)?.[0];
  if (part !== undefined)
    return `"${part}" in "${shown(text)}" may be part of the number. Write the number without the mark, with (?) behind it if it is doubted.`;
  if (/^s\.\s*\d/iu.test(number))
    return `"${number}" in "${shown(text)}" may be a page or a number. Write ${cited} ${number.replace(/^s\.\s*/iu, 'p. ')}, or ${cited} ${number.replace(/\.\s*/u, '')}.`;
  if (DENIED_BEFORE.test(number) || namesBookInside(named, number, works.length > 0))
    return `"${shown(text)}" has a word before the work that is not understood, or names two works. Write the work first, then the number.`;
  return undefined;
}

/** Why a book cannot lack a piece and number it: `not in RIC 123`, `RIC 123 unlisted`. */
function whyHalfListed(
  text: string,
  cited: string,
  number: string,
  relation: Relation | undefined,
  isNear: true | undefined,
): string | undefined {
  if (relation !== 'unlisted' || number === '' || isNear === true) return undefined;
  return `"${shown(text)}" says that the work lacks the piece, and gives it a number. Write ${cited} unlisted, or ${cited} – (cf. ${number}).`;
}

/** Why a note says more of an entry than a note: `RIC 123 (recte 132)`, `(not this)`, `(but legend differs)`. */
function whyNote(text: string, note: string | undefined, entry: string, stands: Relation): string | undefined {
  const isOpen = stands === 'is' || stands === 'this coin';
  if (
    note === undefined ||
    !(NOTE_IS_WRONG.test(note) || (isOpen && (NOTE_DIFFERS.test(note) || NOTE_HAS_NO.test(note))))
  )
    return undefined;
  return `"(${note})" in "${shown(text)}" may say that the piece is not that entry. Write ${entry} var. (and what differs), cf. ${entry}, or the right number.`;
}

function whyNoWork(text: string, works: readonly CitedWork[]): string {
  const letter = letterAlone(text, works);
  if (letter !== undefined) return letter;
  if (works.length === 0) return `"${shown(text)}" does not begin with a work and a number in it. ${HOW}.`;
  const known = works.slice(0, 6).map((work) => work.id);
  return `"${shown(text)}" begins with no work in the list. Write one of ${known.join(', ')}${works.length > 6 ? ' …' : ''}, then the number.`;
}

/** "And following", as left over behind a number; common practice. */
const FOLLOWING_WORDS = [
  'and following', 'and the following', 'et seqq?', 'seqq?', 'sqq?', 'et suiv', 'u\\.? ?folg', 'u\\.? ?ff?', 'folg', 'ff?',
  'e segg?', 'segg?', 'y ss', 'ss?', 'e\\.? ?v', 'vv', 'onwards?', 'passim',
]; // prettier-ignore
const FOLLOWING = new RegExp(`^(?:${FOLLOWING_WORDS.join('|')})(?![\\p{L}\\p{N}])`, 'iu');

function whyLeftOver(text: string, rest: string, books: Required<Books>): string {
  if (!/[\p{L}\p{N}]/u.test(rest)) return `"${shown(rest)}" in "${shown(text)}" is not a number in a book. ${HOW}.`;
  if (FOLLOWING.test(rest))
    return `"${shown(rest)}" in "${shown(text)}" says that more numbers follow. Write the last of them, or ${shown(text.slice(0, -rest.length).trim())} (and following).`;
  if (opensBook(rest, books))
    return `"${shown(text)}" seems to name two books. Write a semicolon between them: ${shown(text.slice(0, -rest.length).trim())}; ${shown(rest)}.`;
  return `"${shown(rest)}" in "${shown(text)}" is not understood. Write what is no part of the number in brackets, at the end.`;
}
