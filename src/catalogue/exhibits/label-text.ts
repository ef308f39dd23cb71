import type { Dating } from '../../core/dating/dating.ts';
import { formatDate } from '../../core/dating/format-date.ts';
import type { Axis } from '../../core/measures/parse-axis.ts';
import { formatSize } from '../../core/measures/parse-size.ts';
import type { Size } from '../../core/measures/parse-size.ts';
import { formatWeight } from '../../core/measures/parse-weight.ts';
import type { Weight } from '../../core/measures/parse-weight.ts';
import { formatReference } from '../../core/references/reference.ts';
import type { Reference } from '../../core/references/reference.ts';
import type { Blank, Certainty } from '../schema/fields.ts';
import { known } from '../schema/fields.ts';
import type { LabelFact } from '../schema/exhibit.ts';

type Named = { readonly name: string };
type Cited = Reference & { readonly cited: string };

/** What a label may tell of a piece; a piece as the public may see it is one. */
export type LabelledPiece = {
  readonly title: string;
  readonly number: string;
  readonly kind: string;
  readonly rulers: readonly Named[] | Blank | null;
  readonly issuer: string | null;
  readonly mint: Named | Blank | null;
  readonly makers: readonly { readonly name: string; readonly role: string }[];
  readonly denomination: Named | Blank | null;
  readonly date: Dating | Blank | null | undefined;
  readonly dated: string | null;
  readonly metal: string | null;
  readonly weight: Weight | Blank | null | undefined;
  readonly size: Size | Blank | null | undefined;
  readonly axis: Axis | null | undefined;
  readonly references: readonly Cited[];
  /** How sure each statement is, where it is not certain. */
  readonly sure: Readonly<Partial<Record<string, Certainty>>>;
};

/**
 * What a label says: its words, and of a derived one the facts it is made of, in the order in which they may be left out. Above
 * the keeper's own words stand the facts that these do not say: a judge sees the label alone.
 */
export type LabelText = {
  readonly label: string;
  readonly facts: readonly string[] | null;
  readonly identity: readonly string[];
};

/** The facts of derived labels, and those above the keeper's own words. */
type Chosen = {
  readonly facts?: readonly LabelFact[] | undefined;
  readonly identity?: readonly LabelFact[] | undefined;
};

/** In the order of a ticket: what it is, when, of what and how heavy, which book. */
export const USUAL_FACTS: readonly LabelFact[] = ['what', 'date', 'metal', 'weight', 'reference'];

const COPY = 'A modern copy.';
const COUNTERFEIT = 'A counterfeit.';
const CALLED_COPY = /\b(cop(?:y|ies)|replicas?|reproductions?|facsimiles?|electrotypes?)\b/i;
const CALLED_COUNTERFEIT = /\b(counterfeits?|forger(?:y|ies)|forged|fakes?|false|imitations?|imitative|spurious)\b/i;

/**
 * The keeper's own words, or the piece's facts in this order. What is not what it seems is always called so first: a modern
 * copy a copy, a counterfeit a counterfeit.
 */
export function labelText(
  piece: LabelledPiece,
  own: string | undefined,
  { facts: order = USUAL_FACTS, identity: above = [] }: Chosen = {},
): LabelText {
  const facts = own === undefined ? factsOf(piece, order) : null;
  const identity = own === undefined ? [] : factsOf(piece, above, own);
  const label = own ?? facts?.join(' ') ?? '';
  const warning = unsaid(piece.kind, label);
  if (warning === null) return { label, facts, identity };
  return {
    label: `${warning} ${label}`,
    facts: facts === null ? null : [`${warning} ${facts[0] ?? ''}`, ...facts.slice(1)],
    identity,
  };
}

/** What a label has to begin with because its words do not say it; null when they do, or there is nothing to say. */
export function unsaid(kind: string, label: string): string | null {
  if (kind === 'replica' && !CALLED_COPY.test(label)) return COPY;
  return kind === 'counterfeit' && !CALLED_COUNTERFEIT.test(label) ? COUNTERFEIT : null;
}

/** Facts whose values share one sentence when they follow one another: `Silver, 1.38 g.` */
const MEASURES: readonly LabelFact[] = ['metal', 'weight', 'diameter', 'axis'];

/**
 * The facts in sentences, but for those that the words beside them or the title among them say already: `Crown of Victoria, 1844`
 * needs no date. What is doubted is said with its doubt.
 */
function factsOf(piece: LabelledPiece, order: readonly LabelFact[], beside = ''): readonly string[] {
  const title = order.includes('what') ? piece.title : '';
  const told = order.flatMap((fact) => {
    const says = FACTS[fact](piece);
    if (says === null || (beside !== '' && isSaidIn(says, beside))) return [];
    const full = doubted(piece, fact, says);
    if (fact !== 'what' && title !== '' && full === says && isSaidIn(says, title)) return [];
    return [{ isMeasure: MEASURES.includes(fact), says: full }];
  });
  const sentences: { isMeasure: boolean; says: string }[] = [];
  for (const { isMeasure, says } of told) {
    const last = sentences.at(-1);
    if (last?.isMeasure === true && isMeasure) last.says += `, ${says}`;
    else sentences.push({ isMeasure, says: says.charAt(0).toUpperCase() + says.slice(1) });
  }
  const said = sentences.map(({ says }) => (/[.!?]$/.test(says) ? says : `${says}.`));
  return said.length === 0 && beside === '' ? [`${piece.title}.`] : said;
}

/** Whether every word and figure of a fact is in a text. */
function isSaidIn(fact: string, text: string): boolean {
  const wordsOf = (words: string): readonly string[] => words.toLowerCase().match(/[\p{L}\d]+/gu) ?? [];
  const there = new Set(wordsOf(text));
  return wordsOf(fact).every((word) => there.has(word));
}

const DOUBT: Readonly<Record<Certainty, string>> = { certain: '', probable: 'probably ', possible: 'possibly ' };
/** The statement that a fact of a label tells, where it has another name. */
const STATEMENT: Readonly<Partial<Record<LabelFact, string>>> = { reference: 'references' };

/** A fact with its doubt before it: `possibly silver`. */
function doubted(piece: LabelledPiece, fact: LabelFact, says: string): string {
  const { sure } = piece;
  if (fact === 'what') return `${says}${openIn(piece)}`;
  return `${DOUBT[sure[STATEMENT[fact] ?? fact] ?? 'certain']}${says}`;
}

/** What a title names as certain, and the piece does not: ` (mint probable)`. */
function openIn({ title, sure, rulers, mint, makers }: LabelledPiece): string {
  if (/\?|\b(?:probabl[ey]|possibl[ey]|perhaps|attributed|uncertain)\b/iu.test(title)) return '';
  const named = { ruler: known(rulers) ?? [], mint: [known(mint) ?? []].flat(), makers };
  const open = (['ruler', 'mint', 'makers'] as const).flatMap((fact) => {
    const doubt = sure[fact] ?? 'certain';
    const isNamed = named[fact].some(({ name }) => title.includes(name.replace(/\s*\(.*\)|\s+of\s.*$/u, '')));
    return doubt === 'certain' || !isNamed ? [] : [`${fact === 'makers' ? 'maker' : fact} ${doubt}`];
  });
  return open.length === 0 ? '' : ` (${open.join(', ')})`;
}

/** The date in words; null where none is recorded. */
export function dateOf({ date }: Pick<LabelledPiece, 'date'>): string | null {
  const value = known(date);
  return value === null ? null : formatDate(value);
}

export function weightOf({ weight }: Pick<LabelledPiece, 'weight'>): string | null {
  const value = known(weight);
  return value === null ? null : formatWeight(value);
}

const FACTS: Readonly<Record<LabelFact, (piece: LabelledPiece) => string | null>> = {
  what: ({ title }) => title,
  number: ({ number }) => `No. ${number}`,
  ruler: ({ rulers }) =>
    known(rulers)
      ?.map(({ name }) => name)
      .join(' and ') ?? null,
  issuer: ({ issuer }) => issuer,
  denomination: ({ denomination }) => known(denomination)?.name ?? null,
  mint: ({ mint }) => known(mint)?.name ?? null,
  makers: ({ makers }) => (makers.length === 0 ? null : makers.map(({ name, role }) => `${role} ${name}`).join(', ')),
  date: dateOf,
  dated: ({ dated }) => (dated === null ? null : `Dated ${dated}`),
  metal: ({ metal }) => (metal === null || metal === 'unknown' || metal === 'none' ? null : metal),
  weight: weightOf,
  diameter: ({ size }) => {
    const value = known(size);
    return value === null ? null : formatSize(value);
  },
  axis: ({ axis }) => (axis?.hours == null ? null : `axis ${String(axis.hours)}h`),
  reference: ({ references: [first] }) => (first === undefined ? null : formatReference(first, first.cited)),
  references: ({ references }) =>
    references.length === 0 ? null : references.map((one) => formatReference(one, one.cited)).join('; '),
};
