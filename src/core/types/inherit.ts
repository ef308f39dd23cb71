import type { HowSure } from '../sets/set-piece.ts';

/**
 * What is true of the specimen alone and never follows from its type: what it weighs and measures, how it was kept and
 * what was done to it, its dies, the date and the letters that can be *read on it*.
 */
export const NEVER_INHERITED: ReadonlySet<string> = new Set([
  'number', 'title', 'publish', 'status', 'weight', 'diameter', 'thickness', 'axis', 'dated', 'grade', 'grade-scale',
  'graded-by', 'problem', 'treatments', 'peculiarities', 'dies', 'altered', 'provenance', 'found', 'photographs', 'tags',
  'formerly', 'prefer', 'metal-value', 'as-written', 'type', 'sure', 'references',
]); // prettier-ignore

/** A field of a piece with where it comes from: its own word, or the type's. */
export type Inherited<T> = { readonly fields: T; readonly fromType: readonly string[] };

/**
 * A piece's fields with those of its type wherever it says nothing itself. What the piece says, `unknown` and `none`
 * included, always wins. A side (`obverse`, `reverse`, `edge`) is filled part by part, and never its legend or the reading of it.
 */
export function inherit<T extends Readonly<Record<string, unknown>>>(
  piece: T,
  type: Readonly<Record<string, unknown>>,
): Inherited<T> {
  const fromType: string[] = [];
  const fields: Record<string, unknown> = { ...piece };
  for (const [name, value] of Object.entries(type)) {
    if (NEVER_INHERITED.has(name) || value === undefined) continue;
    const own = piece[name];
    if (SIDES.has(name)) {
      const parts = missingParts((own ?? {}) as Parts, value as Parts);
      if (Object.keys(parts).length === 0) continue;
      fields[name] = { ...(own as Parts | undefined), ...parts };
      fromType.push(...Object.keys(parts).map((part) => `${name}.${part}`));
    } else if (own === undefined) {
      fields[name] = value;
      fromType.push(name);
    }
  }
  return { fields: fields as T, fromType };
}

type Parts = Readonly<Record<string, unknown>>;
/** The letters, and those letters written out: what is said of them is said of one specimen. */
const AS_READ: ReadonlySet<string> = new Set(['legend', 'reading']);
const SIDES: ReadonlySet<string> = new Set(['obverse', 'reverse', 'edge']);

function missingParts(own: Parts, type: Parts): Parts {
  return Object.fromEntries(
    Object.entries(type).filter(
      ([part, value]) => !AS_READ.has(part) && value !== undefined && own[part] === undefined,
    ),
  );
}

const BEST_FIRST = ['certain', 'probable', 'possible'] as const;

/** How sure an inherited fact is: no surer than the type itself is of the piece, nor than the type is of the fact. */
export function noSurer(one: HowSure, other: HowSure): HowSure {
  return BEST_FIRST[Math.max(BEST_FIRST.indexOf(one), BEST_FIRST.indexOf(other))] ?? 'possible';
}
