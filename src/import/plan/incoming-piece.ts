import { isLedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { formatInLine } from '../../catalogue/write/write-yaml.ts';
import { flatFacts } from '../reimport/flat-facts.ts';
import type { FlatFacts } from '../reimport/flat-facts.ts';
import type { UnreadCell } from './draft.ts';
import type { JoinedDraft } from '../names/join-sheet.ts';
import { WITHHELD } from '../../privacy/private-values.ts';
import { plainTitle } from './compose-title.ts';
import { numberOf } from './which-piece.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { parseMoney } from '../../core/money/money.ts';
import { parseMoneyRange } from '../../core/money/money-range.ts';
import { isOwnColumn } from '../../catalogue/ledger-and-guide.ts';

/** A piece as its row wishes it: facts by path, what could not be read among them as it was written, and its ledger cells. */
export type IncomingPiece = {
  readonly row: number;
  readonly number: string;
  readonly facts: FlatFacts;
  readonly story: string;
  readonly ledger: Readonly<Record<string, string>>;
  readonly unread: readonly UnreadCell[];
};

/** A draft as a piece. What was meant for the ledger and could not be read goes there too, never to the piece. */
export function incomingPiece(draft: JoinedDraft, always: Readonly<Record<string, string>>): IncomingPiece {
  const isPrivate = ({ field }: UnreadCell): boolean => isLedgerColumn(field.replace(/^ledger /, ''));
  const facts = new Map(flatFacts({ ...always, ...draft.facts, number: numberOf(draft) }));
  for (const { field, heading, text } of draft.unread.filter((cell) => !isPrivate(cell)))
    keep(facts, field === '' ? heading : field, text);
  return {
    row: draft.row,
    number: numberOf(draft),
    facts,
    story: draft.story.replace(/\r\n?/g, '\n').trim(),
    ledger: ledgerCells(draft.ledger, draft.unread.filter(isPrivate)),
    unread: draft.unread,
  };
}

function keep(facts: Map<string, Written>, field: string, text: string): void {
  const path = `as-written.${field}`;
  const held = facts.get(path);
  if (held !== text) facts.set(path, typeof held === 'string' ? `${held} · ${text}` : text);
}

/** The fact that a problem names, or the story for a problem that names none; null when the piece has it not, or no longer. */
export function factNamed({ facts, story }: IncomingPiece, field: string | null): string | null {
  const steps = (field ?? '').split('.');
  const path = [steps.slice(0, 2).join('.'), steps[0] ?? ''].find((one) => facts.has(one));
  return path ?? ((field ?? '') === '' && story !== '' ? STORY : null);
}

const STORY = 'story';

/** Facts that a piece cannot do without; what cannot be read of them sets the whole row aside. */
const NEEDED = new Set(['number', 'title', 'kind']);

/**
 * A piece without a fact that `check` would refuse, which is kept as it was written, or, where it must not be in a public file, in the
 * ledger. Null when the piece cannot do without it, or when no fact is named.
 */
export function withoutFact(
  piece: IncomingPiece,
  field: string | null,
  because: string,
  isSecret: boolean,
): IncomingPiece | null {
  const path = factNamed(piece, field);
  if (path === STORY && isSecret) return { ...withoutText(piece, STORY, piece.story, because), story: '' };
  if (path === 'title' && isSecret) return withPlainTitle(piece, because);
  if (path === null || path === STORY || NEEDED.has(path)) return null;
  const value = piece.facts.get(path) ?? '';
  const facts = new Map(piece.facts);
  const at = Number((field ?? '').split('.')[1]);
  const list: readonly Written[] = Array.isArray(value) ? (value as readonly Written[]) : [];
  const one = Number.isInteger(at) ? list[at] : undefined;
  if (one !== undefined && list.length > 1) facts.set(path, list.toSpliced(at, 1));
  else facts.delete(path);
  const text = asText(one ?? value);
  if (isSecret) return { ...withoutText(piece, path, text, because), facts };
  if (!path.startsWith('as-written.')) keep(facts, path, text);
  return { ...piece, facts, unread: [...piece.unread, { row: piece.row, heading: path, text, because, field: path }] };
}

/** A piece is named by its kind and number where its title would tell what is private; null when it is so named already. */
function withPlainTitle(piece: IncomingPiece, because: string): IncomingPiece | null {
  const [was = '', kind = ''] = [piece.facts.get('title'), piece.facts.get('kind')].map((one) => asText(one ?? ''));
  const title = plainTitle(kind, piece.number);
  if (was === title) return null;
  return { ...withoutText(piece, 'title', was, because), facts: new Map([...piece.facts, ['title', title]]) };
}

function withoutText(piece: IncomingPiece, field: string, text: string, because: string): IncomingPiece {
  const heading = `${field}${WITHHELD}`;
  return {
    ...piece,
    ledger: { ...piece.ledger, [heading]: text },
    unread: [...piece.unread, { row: piece.row, heading: field, text, because, field }],
  };
}

function asText(value: Written): string {
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) return (value as readonly Written[]).map(asText).join('; ');
  return formatInLine(value).replace(/^\{ | \}$/g, '');
}

const READ: Readonly<Record<string, (cell: string) => boolean>> = {
  cost: (cell) => parseMoney(cell).ok,
  value: (cell) => parseMoneyRange(cell).ok,
  insured: (cell) => parseMoney(cell).ok,
  acquired: (cell) => parseDate(cell, { dateOf: 'event' }).ok,
};

/** Whether a cell can be held by its column; the days of one sale and the prices of one box are asked for again and again. */
function isReadAs(heading: string, text: string): boolean {
  const reads = READ[heading];
  if (reads === undefined) return true;
  const known = READ_BEFORE.get(heading)?.get(text);
  if (known !== undefined) return known;
  const isRead = reads(text);
  READ_BEFORE.set(heading, (READ_BEFORE.get(heading) ?? new Map<string, boolean>()).set(text, isRead));
  return isRead;
}

const READ_BEFORE = new Map<string, Map<string, boolean>>();

/**
 * What a row puts in the ledger, by the ledger's own headings. A column that nobody mapped keeps its heading; where that could be
 * taken for one that is read, words behind it say which it is. So is a cell that its column could not hold.
 */
function ledgerCells(
  cells: Readonly<Record<string, string>>,
  unread: readonly UnreadCell[],
): Readonly<Record<string, string>> {
  const kept: Record<string, string> = {};
  const put = (heading: string, text: string): void => {
    const held = kept[heading];
    kept[heading] = held === undefined || held === text ? text : `${held}; ${text}`;
  };
  for (const [heading, text] of Object.entries(cells)) {
    if (text.trim() === '') continue;
    const isRead = isLedgerColumn(heading) && isReadAs(heading, text.trim());
    put(isRead ? heading : ownHeading(heading), text);
  }
  for (const { heading, text } of unread) put(ownHeading(heading), text);
  return kept;
}

/** What a sheet's headings became; thousands of rows have the same few dozen. */
const OWN_HEADINGS = new Map<string, string>();

/** A heading for a column of the keeper's own. */
export function ownHeading(heading: string): string {
  const known = OWN_HEADINGS.get(heading);
  if (known !== undefined) return known;
  const name = heading.replace(/\s+/gu, ' ').trim();
  const own = isOwnColumn(name) ? name : `${name} (in the sheet)`.trim();
  OWN_HEADINGS.set(heading, own);
  return own;
}
