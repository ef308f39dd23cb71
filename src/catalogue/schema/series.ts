import { z } from 'zod';
import { parseLength } from '../../core/measures/parse-length.ts';
import { parseWeight } from '../../core/measures/parse-weight.ts';
import type { Character } from '../../core/types/key/character.ts';
import { USUAL } from '../../core/types/key/character.ts';
import { isDrawingFile } from '../types/series-tables.ts';
import { id, oneOrMore, words } from './fields.ts';

/** The pages of a series that are no types. */
export const RESERVED_TYPES = ['concordance', 'key', 'dies'] as const;

const typeId = z
  .string()
  .regex(
    /^[a-z0-9]+([.-][a-z0-9]+)*$/,
    'A type is named in small letters and digits, with points or hyphens: 3b, lc-3b.',
  );

const share = (least: number) =>
  z
    .string()
    .refine((text) => /^\d(\.\d+)?$/.test(text) && Number(text) >= least && Number(text) <= 1, {
      message: `This wants a share from ${String(least)} to 1, like 0.05 or 0.9.`,
    })
    .transform(Number);

/** A state as written; `drawing` names a file. */
type StateFields = { readonly id: string; readonly label: string; readonly drawing?: string | undefined };

const drawingName = z.string().refine(isDrawingFile, {
  message:
    'A drawing is an SVG file in the folder of the series, named in small letters, digits and hyphens: crown-pearls.svg.',
});

/** A place on a face, all in hundredths of the width and height of the piece: `50 31 34`. */
export type PlaceOnFace = { readonly across: number; readonly down: number; readonly wide: number };

const place = z
  .string()
  .refine((text) => /^\d{1,3} \d{1,3} \d{1,3}$/.test(text) && text.split(' ').every((part) => Number(part) <= 100), {
    message:
      'This wants three numbers from 0 to 100: across from the left, down from the top, and how wide, in hundredths of the piece: 50 31 34.',
  })
  .transform((text): PlaceOnFace => {
    const [across = 0, down = 0, wide = 0] = text.split(' ').map(Number);
    return { across, down, wide };
  });

const character = z
  .strictObject({
    /** Its name in the columns of types.csv. */
    id: words,
    /** What the key calls it. */
    label: words.optional(),
    /** `states` (one of a list), `weight`, `length`, or `legend` (letters, read worn). */
    kind: z.enum(['states', 'weight', 'length', 'legend']).default('states'),
    /** What can be seen, each by a word for the cells of types.csv, the words the key shows, and a drawing in this folder. */
    states: z
      .array(
        z.union([
          words.transform((word): StateFields => ({ id: word, label: word })),
          z
            .strictObject({ id: words, label: words.optional(), drawing: drawingName.optional() })
            .transform(({ label, ...state }): StateFields => ({ ...state, label: label ?? state.id })),
        ]),
      )
      .optional(),
    /** Where to look, and what is easily mistaken. */
    look: words.optional(),
    /** What the key asks, as one would say it to somebody who has the piece in hand: `Look at the crown.` */
    ask: words.optional(),
    /** Where it is on the face, in hundredths of the piece: across from the left, down from the top, and how wide. */
    at: place.optional(),
    /** On which face. */
    on: z.enum(['obverse', 'reverse', 'edge']).optional(),
    /** How often an answer is wrong. */
    error: share(0).default(USUAL.error),
    /** How often it can be seen on a piece at all. */
    seen: share(0).default(USUAL.seen),
    /** How much trouble it is against a look: 1 for a look, 3 for a scale. */
    cost: z
      .string()
      .refine((text) => /^\d+(\.\d+)?$/.test(text) && Number(text) > 0, {
        message: 'This wants a number above 0: 1 for a look.',
      })
      .transform(Number)
      .default(USUAL.cost),
    /** What wear takes off such a piece on average: `0.05 g`. */
    wear: words.optional(),
    /** How far single pieces lie off the published measure, either way: `0.09 g`; of a weight a twentieth when left out. */
    scatter: words.optional(),
  })
  .superRefine(({ kind, states, ...lost }, context) => {
    const problem = (path: string, message: string): void =>
      context.addIssue({ code: 'custom', path: [path], message });
    if (kind === 'states' && (states ?? []).length < 2)
      problem('states', 'A character wants at least two states to choose from.');
    if (kind !== 'states' && states !== undefined)
      problem('states', `A ${kind} has no list of states. Take the line out.`);
    const names = (states ?? []).flatMap(({ id: name, label }) => [
      ...new Set([name, label].map((one) => one.toLowerCase())),
    ]);
    const twice = names.find((name, at) => names.indexOf(name) !== at);
    if (twice !== undefined) problem('states', `Two states are called "${twice}". Give each a name of its own.`);
    const split = (states ?? []).find(({ id: name }) => /\/|^[?-]$|\(seldom\)$/i.test(name));
    if (split !== undefined)
      problem(
        'states',
        `A state cannot be called "${split.id}": in a cell a/b is either, b (seldom) is on few, ? is not known, and - is none.`,
      );
    for (const name of ['wear', 'scatter'] as const) {
      const text = lost[name];
      if (text === undefined) continue;
      const read = kind === 'weight' ? parseWeight(text) : kind === 'length' ? parseLength(text) : null;
      if (read === null) problem(name, `Only a weight or a length has ${name}. Take the line out.`);
      else if (!read.ok) problem(name, read.problem);
    }
  });

/** `types/<series>/series.yaml`: what a group of types has in common, and what tells them from one another. */
export const seriesSchema = z.strictObject({
  title: words,
  /** The books the series follows. */
  source: oneOrMore(z.strictObject({ work: id, pages: words.optional() })).default([]),
  /** Facts every type shares, by the columns of types.csv: `{ ruler: edward-i, metal: silver }`. */
  shared: z.record(z.string(), words).default({}),
  /** From the broadest: [class, variety]. */
  levels: z.array(words).default([]),
  /** What to make sure of before any question of the key is asked. */
  first: words.optional(),
  /** Who drew the marks, and after what. */
  drawings: words.optional(),
  /** Books on the series that the list was not made from. */
  'see-also': oneOrMore(z.strictObject({ work: id, pages: words.optional() })).default([]),
  /** Types that are in the list only so that the key can lead to them: they are not described, not counted, and have no well. */
  outside: oneOrMore(words).default([]),
  /** How the dies of dies.csv are named. */
  'die-names': words.optional(),
  /** What the key asks. */
  characters: z.array(character).default([]),
  note: words.optional(),
  /** A small series may hold its tables here, a list of rows each. */
  types: z.array(z.record(z.string(), z.string())).optional(),
  concordance: z.array(z.record(z.string(), z.string())).optional(),
  rarities: z.array(z.record(z.string(), z.string())).optional(),
  specimens: z.array(z.record(z.string(), z.string())).optional(),
  dies: z.array(z.record(z.string(), z.string())).optional(),
  'die-states': z.array(z.record(z.string(), z.string())).optional(),
});

export type SeriesFields = z.infer<typeof seriesSchema>;
export type CharacterFields = SeriesFields['characters'][number];

/** A character as the core asks it. */
export function characterOf(fields: CharacterFields): Character {
  const { wear, scatter } = fields;
  return {
    id: fields.id,
    label: fields.label ?? `${fields.id.charAt(0).toUpperCase()}${fields.id.slice(1)}`,
    kind: fields.kind,
    states: (fields.states ?? []).map(({ id: state, label }) => ({ id: state, label })),
    error: fields.error,
    seen: fields.seen,
    cost: fields.cost,
    wear: wear === undefined ? 0 : lossOf(fields.kind, wear),
    ...(scatter === undefined ? {} : { scatter: lossOf(fields.kind, scatter) }),
  };
}

/** A wear or a scatter in grams or millimetres. */
function lossOf(kind: CharacterFields['kind'], wear: string): number {
  if (kind === 'weight') {
    const weight = parseWeight(wear);
    return weight.ok ? weight.value.grams : 0;
  }
  const length = parseLength(wear);
  return length.ok ? length.value.high : 0;
}

/** Whether a text can be the id of a type; the sentence when it cannot. */
export function typeIdProblem(text: string): string | null {
  const read = typeId.safeParse(text);
  if (!read.success) return read.error.issues[0]?.message ?? null;
  return (RESERVED_TYPES as readonly string[]).includes(text)
    ? `${text} is the name of a page of every series, and cannot be a type. Give the type another id.`
    : null;
}
