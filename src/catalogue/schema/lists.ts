import { z } from 'zod';
import { parseDate } from '../../core/dating/parse-date.ts';
import { LETTERINGS, NUMBERINGS } from '../../core/references/ranges.ts';
import { parseFineness } from '../../core/metal/parse-fineness.ts';
import { parseLength } from '../../core/measures/parse-length.ts';
import { parseWeight } from '../../core/measures/parse-weight.ts';
import { field, id, oneOrMore, words, yesOrNo } from './fields.ts';

const date = field((text) => parseDate(text, { dateOf: 'event' }), 'date-unreadable');

/** The tag of a language, of whichever there is one: an old one may have no name in the locale data. */
const language = words.regex(
  /^[a-z]{2,3}(-[a-z]{4})?(-([a-z]{2}|\d{3}))?$/i,
  'A language is written as its tag, like la, ang or sr-Latn (BCP 47).',
);

/** The same thing in other people's lists: `{ nomisma: edward_i, wikidata: Q57798 }`. */
const identifiers = z.record(z.string(), words).optional();

/** A place on the earth in degrees, north and east positive: `53.958, -1.080`. */
const coordinates = z
  .string()
  .regex(
    /^-?\d{1,2}(\.\d+)?,\s*-?\d{1,3}(\.\d+)?$/,
    'Coordinates are degrees north, then degrees east: 53.958, -1.080.',
  )
  .transform((text) => {
    const [north = 0, east = 0] = text.split(',').map(Number);
    return { north, east };
  });

/** `rulers/<id>.yaml`: in whose name pieces stand. */
export const rulerSchema = z.strictObject({
  /** The name used on pages. */
  name: words,
  /** Other forms of it, as lists write them. */
  'other-names': z.array(words).default([]),
  /** What was ruled, when that is known. */
  realm: words.optional(),
  /** Who bears the name, where it is no ruler's: `archbishop of York`, `saint`, `city`. */
  role: words.optional(),
  /** The family, where a set asks one ruler or piece of each: `Plantagenet`. */
  dynasty: words.optional(),
  /** One reign or several, oldest first; left out when no years are known. */
  reigns: z
    .array(
      z.strictObject({
        from: date,
        to: date,
        /** The day the regnal years are counted from, when it is not `from`. */
        'regnal-from': words.optional(),
        /** Those who reigned jointly. */
        with: oneOrMore(id).optional(),
        /** What was ruled in this reign, where the realm was then called otherwise. */
        realm: words.optional(),
        /** `no` where no coins were struck in the name. */
        coins: yesOrNo.optional(),
        note: words.optional(),
      }),
    )
    .default([]),
  identifiers,
  note: words.optional(),
  source: words.optional(),
});

/** `mints/<id>.yaml`: where pieces were made. */
export const mintSchema = z.strictObject({
  name: words,
  /** Its names through time. */
  names: z
    .array(z.strictObject({ name: words, from: date.optional(), to: date.optional(), lang: language.optional() }))
    .default([]),
  /** When it struck coins, as far as that is known: `[{ from: 1279, to: 1281 }]`. */
  struck: z.array(z.strictObject({ from: date, to: date, note: words.optional() })).optional(),
  /** The region it is in. */
  area: words.optional(),
  coordinates: coordinates.optional(),
  identifiers,
  note: words.optional(),
  source: words.optional(),
});

/** `denominations/<id>.yaml`: what pieces were worth, and by which standards they were struck. */
export const denominationSchema = z.strictObject({
  name: words,
  plural: words.optional(),
  /** Where the standards were law; left out where they hold for every piece of that name: `[England, the United Kingdom]`. */
  realms: z.array(words).optional(),
  /** The lawful or usual weights and finenesses, oldest first, each of one metal. */
  standards: z
    .array(
      z.strictObject({
        from: date,
        to: date,
        /** One weight, or the ends of a disputed one: `1.42/1.45 g`. */
        weight: field(parseWeight, 'weight-unreadable').optional(),
        /** The other end of a disputed weight. */
        'weight-to': field(parseWeight, 'weight-unreadable').optional(),
        fineness: field(parseFineness, 'fineness-unreadable').optional(),
        diameter: field(parseLength, 'length-unreadable').optional(),
        metal: words.optional(),
        source: words,
        note: words.optional(),
      }),
    )
    .default([]),
  identifiers,
  note: words.optional(),
  source: words.optional(),
});

/** `works/<id>.yaml`: the books cited. */
export const workSchema = z.strictObject({
  author: words.optional(),
  title: words,
  /** Year of printing as the title page gives it. */
  year: words.optional(),
  /** How it is cited in a line: `North`. */
  short: words.optional(),
  place: words.optional(),
  series: words.optional(),
  pages: words.optional(),
  /** The last number printed in it, against slips; only where it numbers straight through: `2884`. */
  last: z
    .string()
    .regex(/^\d{1,5}$/, 'The last number of a book is figures alone: 2884.')
    .optional(),
  /** How it numbers: in one run; afresh in each volume; or by pairs with a stroke (`44/5`) or a hyphen (`84-7`). */
  numbers: z.enum(NUMBERINGS).optional(),
  letters: z.enum(LETTERINGS).optional(),
  /** Where it can be read. */
  address: words.optional(),
  note: words.optional(),
});

export type RulerFields = z.infer<typeof rulerSchema>;
export type MintFields = z.infer<typeof mintSchema>;
export type DenominationFields = z.infer<typeof denominationSchema>;
export type WorkFields = z.infer<typeof workSchema>;
