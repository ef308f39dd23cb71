import { z } from 'zod';
import type { Outcome } from '../../core/outcome.ts';

/** Words in a field: anything but nothing. */
export const words = z.string().trim().min(1);

/** What is said of a name that is written in another way than the names of files are. */
export const ID_FORM = 'A file is named in small letters, with hyphens.';

/** The permanent name of a folder or list file: `york-penny-3b`. */
export const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, ID_FORM);

/** One value or several: `ruler: edward-i` or `ruler: [philip-of-spain, mary-i]`. */
export function oneOrMore<T extends z.ZodType>(of: T) {
  return z.union([z.array(of).min(1), of.transform((value) => [value])]);
}

/** A field in the words one of the core's parsers reads; what it refuses is a problem of that kind. */
export function field<T>(parse: (text: string) => Outcome<T>, kind: string) {
  return z.string().transform((text, context): T => {
    const outcome = parse(text);
    if (outcome.ok) return outcome.value;
    context.addIssue({ code: 'custom', message: outcome.problem, params: { kind } });
    return z.NEVER;
  });
}

/** The two blanks that are written down; a field left out is the third, *not recorded*. */
export const BLANKS = ['unknown', 'none'] as const;
export type Blank = (typeof BLANKS)[number];

/** `unknown` (searched for and not known), `none` (does not apply), or what the field holds. */
export function orBlank<T extends z.ZodType>(of: T) {
  return z.union([z.literal('unknown'), z.literal('none'), of]);
}

export function isBlank(value: unknown): value is Blank {
  return value === 'unknown' || value === 'none';
}

/** What a field holds; null for each of the three blanks. */
export function known<T extends object>(value: T | Blank | null | undefined): T | null {
  return value === null || value === undefined || isBlank(value) ? null : value;
}

/** `yes` or `no`. */
export const yesOrNo = z.enum(['yes', 'no']).transform((answer) => answer === 'yes');

/** How sure a statement is; what is not said is certain. */
export const CERTAINTIES = ['certain', 'probable', 'possible'] as const;
export type Certainty = (typeof CERTAINTIES)[number];
