import { isBlank, known } from '../catalogue/schema/fields.ts';
import { timeSpanOf } from '../catalogue/for-core/set-rule.ts';
import { parseDate } from '../core/dating/parse-date.ts';
import { yearsOf } from '../core/dating/interval.ts';
import type { SetPiece } from '../core/sets/set-piece.ts';
import type { PublicPiece } from './public-piece.ts';

/** What a set may know of a piece: its public facts and no more. */
export function setPieceOf(piece: PublicPiece): SetPiece {
  const { grade } = piece;
  return {
    id: piece.id,
    title: piece.title,
    kind: piece.kind,
    status: piece.status,
    rulers: (known(piece.rulers) ?? []).map(({ id }) => id),
    struckFor: piece.struckFor.map(({ id }) => id),
    issuer: piece.issuer ?? undefined,
    mint: known(piece.mint)?.id,
    area: known(piece.mint)?.area ?? undefined,
    denomination: known(piece.denomination)?.id,
    metal: piece.metal ?? undefined,
    shape: piece.shape ?? undefined,
    made: piece.made ?? undefined,
    blanks: blanksOf(piece),
    interval: madeIn(piece),
    dated: datedOf(piece),
    references: [...piece.references, ...piece.mayBe.numbers],
    types: { is: piece.mayBe.is, maybe: piece.mayBe.maybe },
    tags: piece.tags,
    dies: piece.dies ?? undefined,
    altered: piece.altered !== null && piece.altered !== undefined,
    host: piece.altered?.['host-ruler'],
    details: piece.problem !== null,
    grade: grade === null || grade.low === null || grade.high === null ? null : { low: grade.low, high: grade.high },
    stated: grade,
    sure: { ...sureOf(piece), ...(piece.types[0] === undefined ? {} : { type: piece.types[0].sure }) },
    acquired: acquiredIn(piece),
    prefer: piece.prefer ?? undefined,
  };
}

/** The facts that the keeper states to be unknown, or not to apply. */
function blanksOf({ rulers, mint, denomination, date }: PublicPiece): SetPiece['blanks'] {
  const stated = { ruler: rulers, mint, denomination, date };
  return Object.fromEntries(
    Object.entries(stated).flatMap(([fact, value]) => (value !== null && isBlank(value) ? [[fact, value]] : [])),
  );
}

function madeIn({ date }: PublicPiece): SetPiece['interval'] {
  const made = known(date);
  return made === null ? null : timeSpanOf(made);
}

/** The date that stands on the piece. */
function datedOf({ dated }: PublicPiece): SetPiece['dated'] {
  if (dated === null) return undefined;
  const read = parseDate(dated);
  return read.ok ? timeSpanOf(read.value) : 'unreadable';
}

/**
 * A date written with a question mark (`1344?`) is itself a doubt, so it fills nothing for certain, unless the keeper has said
 * how sure it is. *About* stays certain: it says how exact the date is and not whether it is right, and a rule asks for an
 * interval, which `c. 1280` names as plainly as `1280`; how far about reaches no two authorities agree.
 */
function sureOf({ date, sure }: PublicPiece): SetPiece['sure'] {
  return known(date)?.doubtful === true && sure.date === undefined ? { ...sure, date: 'possible' } : sure;
}

/** The year the last dated link of the provenance brought it, as far as the keeper publishes it. */
function acquiredIn(piece: PublicPiece): number | null {
  const last = known(piece.provenance.at(-1)?.when);
  if (last === null) return null;
  const { high } = yearsOf(last);
  return Number.isFinite(high) ? high : null;
}
