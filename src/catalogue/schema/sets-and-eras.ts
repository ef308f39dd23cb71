import { z } from 'zod';
import { parseDate } from '../../core/dating/parse-date.ts';
import { folded } from '../../core/sets/facts.ts';
import { GRID_FACTS } from '../../core/sets/grid.ts';
import { field, id, oneOrMore, words } from './fields.ts';

/** When pieces of a set were made. */
const date = field((text) => parseDate(text), 'date-unreadable');
/** When a period began or ended. */
const bound = field((text) => parseDate(text, { dateOf: 'event' }), 'date-unreadable');

/** `eras/<id>.yaml`: one authority's way to cut up time. */
export const eraSchema = z.strictObject({
  title: words,
  /** Who cuts time this way, and where it is printed. */
  source: words,
  /** Where the scheme holds, in the words of its authors. */
  region: words.optional(),
  /** The areas and mints it applies to, by mint or by find: `[England, calais]`; left out, it applies to every piece. */
  'applies-to': oneOrMore(words).optional(),
  /** `inclusive`: 1066 belongs to one period; `shared`: it ends one and begins the next. */
  ends: z.enum(['inclusive', 'shared']),
  /** `yes` when the scheme itself has periods that overlap or years between them. */
  gaps: z.enum(['yes', 'no']).default('no'),
  periods: z
    .array(
      z.strictObject({
        id,
        name: words,
        from: bound,
        to: bound,
        /** Whose pieces are all of this period, also those of years that it shares with another. */
        rulers: oneOrMore(id).optional(),
        /** The same, of all rulers of a realm. */
        realms: oneOrMore(words).optional(),
        /** The same, of all rulers of a dynasty. */
        dynasties: oneOrMore(words).optional(),
        note: words.optional(),
      }),
    )
    .min(1),
  note: words.optional(),
});

const values = oneOrMore(words);

/** The facts a rule may ask about, each with one value or several. */
const asked = {
  kind: values.optional(),
  ruler: values.optional(),
  'struck-for': values.optional(),
  issuer: values.optional(),
  mint: values.optional(),
  area: values.optional(),
  denomination: values.optional(),
  metal: values.optional(),
  tag: values.optional(),
  shape: values.optional(),
  made: values.optional(),
  /** A work and the number as printed there: `north 1017`. */
  references: values.optional(),
  realm: values.optional(),
  /** An obverse die, a reverse die, or the pair: `obverse A1`, `reverse b3`, `A1-b3`. */
  die: values.optional(),
  /** A type of types/, by its id or `series/id`; narrower types are it too. */
  type: values.optional(),
  dynasty: values.optional(),
};

/** What a piece must be to count: any public fact, one value or several, or `not: …`. */
export const whereSchema = z.strictObject({
  ...asked,
  /** Made wholly within it. */
  date: date.optional(),
  /** The same facts, for what must not be so. */
  not: z.strictObject(asked).optional(),
});

type NumberedPlace = { is: string; label: string; where: z.infer<typeof whereSchema>; excused?: undefined };

/** `sets/<id>.yaml`: a goal with a written rule. */
export const setSchema = z.strictObject({
  title: words,
  /** The rule in the keeper's own words. */
  rule: words.optional(),
  source: z.array(z.strictObject({ work: id, pages: words.optional() })).default([]),
  'one-per': z.enum([
    'ruler', 'dynasty', 'mint', 'area', 'issuer', 'date', 'type', 'reference', 'die', 'listed',
  ]), // prettier-ignore
  /** Of one per type: which series of types/, and at which of its levels; its leaves when that is left out. */
  series: id.optional(),
  level: words.optional(),
  /** A second view of the set: its places by two facts. */
  grid: z.strictObject({ rows: z.enum(GRID_FACTS), columns: z.enum(GRID_FACTS) }).optional(),
  /** Whether a ruler counts as the name on the piece or as the one it was struck for. */
  count: z.enum(['ruler', 'struck-for']).default('ruler'),
  /** Whether a date counts as the time of making, or as it stands on the piece (`dated:`) where it does. */
  dates: z.enum(['as-made', 'as-dated']).default('as-made'),
  where: whereSchema.default({}),
  /** Every position; absent: every value the rule yields from the list files. */
  places: z
    .array(
      z.union([
        id.transform((is) => ({ is })),
        // The number of a book names a place too: `north 1017`.
        words
          .regex(/^\S+ .*\d/, 'A place is an id, the number of a book like north 1017, or { is: york, where: { … } }.')
          .transform((text): NumberedPlace => ({
            is: folded(text),
            label: text.charAt(0).toUpperCase() + text.slice(1),
            where: { references: [text] },
          })),
        z.strictObject({
          is: id,
          label: words.optional(),
          where: whereSchema.optional(),
          /** Why nothing can stand here. */
          excused: words.optional(),
        }),
      ]),
    )
    .optional(),
  accept: z
    .strictObject({
      altered: z.enum(['yes', 'no']).default('no'),
      details: z.enum(['filler', 'yes', 'no']).default('filler'),
      uncertain: z.enum(['count-as-possible', 'no']).default('count-as-possible'),
      'joint-reign': z.enum(['one', 'both']).default('one'),
      copies: z.enum(['yes', 'no']).default('no'),
      'one-piece': z.enum(['one-place', 'any-places']).default('one-place'),
    })
    .prefault({}),
  /** The grade aimed at, on any scale. */
  aim: words.optional(),
  'aim-scale': words.optional(),
  note: words.optional(),
});

export type EraFields = z.infer<typeof eraSchema>;
export type WhereFields = z.infer<typeof whereSchema>;
export type SetFields = z.infer<typeof setSchema>;
