import { answerWhere, askedOf, both } from './answer-where.ts';
import type { Answer, Asked } from './answer-where.ts';
import { factsOf } from './facts.ts';
import type { Facts } from './facts.ts';
import type { SetPlace } from './places.ts';
import type { SetPiece } from './set-piece.ts';
import { ACCEPT } from './set-rule.ts';
import type { Accept, Lists, SetRule, Where } from './set-rule.ts';
import { COPIES, GONE } from './tally.ts';

/**
 * How well a piece fits a place. `filler` is in and does not count. For `no`, `barred` says whether the piece is what the
 * place asks for and is kept out by one thing only, which `because` names.
 */
export type Fit = {
  readonly level: 'certain' | 'possible' | 'filler' | 'no';
  /** Whether everything the place asks is stated for certain. */
  readonly sure: boolean;
  readonly barred: boolean;
  /** Sentences; empty for a plain fit and a plain misfit. */
  readonly because: string;
};

const MISFIT: Fit = { level: 'no', sure: false, barred: false, because: '' };

/** A piece read against the set as a whole, ready to be tried in its places. */
export type Candidate = { readonly piece: SetPiece; readonly facts: Facts; readonly toSet: Answer };

/** A place made ready for trying many pieces in it. */
export type OpenPlace = { readonly place: SetPlace; readonly asked: Asked };

export function candidatesOf(pieces: readonly SetPiece[], rule: SetRule, lists: Lists): readonly Candidate[] {
  const asked = askedOf(rule.where, rule, lists);
  return pieces.map((piece) => {
    const facts = factsOf(piece, lists);
    return { piece, facts, toSet: both(answerWhere(piece, facts, asked), genuine(piece)) };
  });
}

export function openPlace(place: SetPlace, rule: SetRule, lists: Lists): OpenPlace {
  return { place, asked: askedOf(place.where, rule, lists) };
}

export function fits(piece: SetPiece, place: SetPlace, rule: SetRule, lists: Lists): Fit {
  const [candidate] = candidatesOf([piece], rule, lists);
  return candidate === undefined ? MISFIT : fitOf(candidate, openPlace(place, rule, lists), rule);
}

export function fitOf({ piece, facts, toSet }: Candidate, { place, asked }: OpenPlace, rule: SetRule): Fit {
  if (toSet.verdict === 'no' || place.excused !== undefined) return MISFIT;
  const toPlace = answerWhere(piece, facts, asked);
  if (toPlace.verdict === 'no') return MISFIT;
  const answer = both(toSet, toPlace);
  const accept: Accept = { ...ACCEPT, ...rule.accept };
  const bar = barOf(piece, accept, [rule.where, place.where]);
  if (bar !== null) return answer.verdict === 'unrecorded' ? MISFIT : { ...MISFIT, barred: true, because: bar };
  const because = answer.because.length === 0 ? '' : sentence(answer.because);
  const sure = answer.verdict === 'yes';
  if (answer.verdict === 'unrecorded') return { ...MISFIT, barred: answer.meetsSome, because };
  if (!sure && accept.uncertain === 'no') {
    return { ...MISFIT, barred: true, because: `${because} This set counts certain pieces only.` };
  }
  if (piece.details && accept.details === 'filler') {
    const standsIn = 'Has a problem, and is a filler until a sound piece comes.';
    return { level: 'filler', sure, barred: false, because: because === '' ? standsIn : `${standsIn} ${because}` };
  }
  return { level: sure ? 'certain' : 'possible', sure, barred: false, because };
}

/** What keeps a piece out of every place, whatever it shows. */
function barOf(piece: SetPiece, accept: Accept, wheres: readonly Where[]): string | null {
  if (GONE.includes(piece.status)) return `${capital(piece.status)}: only pieces kept or lent count.`;
  const asked = wheres.some((where) => where.kind?.includes(piece.kind));
  if (COPIES.includes(piece.kind) && accept.copies === 'no' && !asked) {
    return `A ${piece.kind}, and this set is not of them.`;
  }
  if (piece.altered && accept.altered === 'no') return 'Made over from another piece; this set wants pieces as struck.';
  if (piece.details && accept.details === 'no') return 'Has a problem; this set takes sound pieces only.';
  return null;
}

/** Whatever a set asks, a piece whose very kind is doubtful fills nothing for certain. */
function genuine(piece: SetPiece): Answer {
  if (piece.kind === 'unknown') return { verdict: 'maybe', because: ['the kind is not known'], meetsSome: false };
  const sure = piece.sure['kind'] ?? 'certain';
  if (sure === 'certain') return { verdict: 'yes', because: [], meetsSome: false };
  return { verdict: 'maybe', because: [`the kind is only ${sure}`], meetsSome: false };
}

function sentence(clauses: readonly string[]): string {
  const text =
    clauses.length < 3 ? clauses.join(' and ') : `${clauses.slice(0, -1).join(', ')} and ${clauses.at(-1) ?? ''}`;
  return `${capital(text)}.`;
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
