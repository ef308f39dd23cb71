import { z } from 'zod';
import type { Reign } from '../../core/dating/dating.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { parseAxis } from '../../core/measures/parse-axis.ts';
import { parseLength } from '../../core/measures/parse-length.ts';
import { parseSize } from '../../core/measures/parse-size.ts';
import { parseWeight } from '../../core/measures/parse-weight.ts';
import { parseFineness } from '../../core/metal/parse-fineness.ts';
import { parseLegend } from '../../core/legends/parse-legend.ts';
import { parseCrop } from '../crop.ts';
import { CERTAINTIES, field, id, oneOrMore, orBlank, words } from './fields.ts';

export const KINDS = [
  'coin', 'token', 'medal', 'jeton', 'ingot', 'hacksilver', 'coin-weight', 'pattern', 'replica', 'counterfeit',
  'paper', 'other',
] as const; // prettier-ignore
export const STATUSES = ['kept', 'lent', 'sold', 'given', 'exchanged', 'lost'] as const;
export const PHOTOGRAPHED = ['obverse', 'reverse', 'edge'] as const;
export const EVIDENCE = [
  'plate-match', 'museum-number', 'document', 'ticket', 'published', 'statement', 'inference',
] as const; // prettier-ignore
export const UNSURE_FIELDS = [
  'ruler', 'struck-for', 'issuer', 'mint', 'denomination', 'date', 'metal', 'references', 'kind', 'makers',
] as const; // prettier-ignore

const side = z.strictObject({
  /** The letters as they stand: `[ ]` restored, `( )` expanded, `…` lost. */
  legend: field(parseLegend, 'legend-unreadable').optional(),
  /** The legend written out in full. */
  reading: words.optional(),
  /** The picture, in a few words. */
  design: words.optional(),
});

const photographCredit = z.strictObject({
  /** Who took or drew it. */
  by: words.optional(),
  /** On what terms others may use it. */
  licence: words.optional(),
  /** What it shows, for those who do not see it, in your own words. */
  alt: words.optional(),
  /** Where the piece lies in it: from the left, from the top, width, height. `120 80 900 900 px`, `10 8 60 60 %`. */
  crop: field(parseCrop, 'crop-unreadable').optional(),
});

/** The form for one piece; `reigns` (from the rulers' files) let a date say `Edward I, year 7`. */
export function pieceSchema(reigns: readonly Reign[]) {
  const date = field((text) => parseDate(text, { reigns }), 'date-unreadable');
  return z.strictObject({
    /** Inventory number, kept exactly as written, unique in the cabinet. */
    number: words,
    /** What it is, in a line. */
    title: words,
    /** What sort of object it is. */
    kind: z.enum(KINDS),
    /** `yes`; `unlisted` (a page, but in no list, feed, search or count); `no` (no trace at all). */
    publish: z.enum(['yes', 'unlisted', 'no']).default('yes'),
    /** Where it is with you: kept, lent, sold … A sold piece keeps its page. */
    status: z.enum(STATUSES).default('kept'),
    /** In whose name it stands (stated authority); several for a joint reign. */
    ruler: orBlank(oneOrMore(id)).optional(),
    /** For whom it was struck in fact, only when that differs from the name on it. */
    'struck-for': oneOrMore(id).optional(),
    /** Who was responsible: moneyer, archbishop, town, company. */
    issuer: words.optional(),
    /** Where it was made. */
    mint: orBlank(id).optional(),
    /** The people who made it: moneyer, engraver, medallist, die-sinker, artist. */
    makers: z.array(z.strictObject({ name: words, role: words })).optional(),
    /** What it was worth. */
    denomination: orBlank(id).optional(),
    /** When it was made: `1279/1281`, `c. 1280`, `AH 294`, `44 BC`. */
    date: orBlank(date).optional(),
    /** The date that stands on the piece, as it stands. */
    dated: words.optional(),
    /** The books that describe it: key of a work, then the number as printed there. */
    references: z.array(words).optional(),
    /** What it is made of. */
    metal: orBlank(words).optional(),
    /** How fine: `925/1000`, `22 ct`, `11 oz 2 dwt`, `0.90/0.92`, `15 loth`. */
    fineness: orBlank(field(parseFineness, 'fineness-unreadable')).optional(),
    /** What it weighs, with the unit: `1.38 g`, `21.3 gr`, `1.38 g ± 0.01`. */
    weight: orBlank(field(parseWeight, 'weight-unreadable')).optional(),
    /** `18.6 mm`, `18.2-19.4 mm`, or height x width for what is not round. */
    diameter: orBlank(field(parseSize, 'size-unreadable')).optional(),
    /** How thick: `0.9 mm`. */
    thickness: orBlank(field(parseLength, 'length-unreadable')).optional(),
    /** The turn between the faces, written as a clock hour: `6h`; `none` for uniface and cast pieces. */
    axis: field(parseAxis, 'axis-unreadable').optional(),
    /** How it was made: struck, cast, engraved, pressed. */
    made: words.optional(),
    /** `two`, `uniface` or `incuse-reverse`. */
    faces: z.enum(['two', 'uniface', 'incuse-reverse']).default('two'),
    /** `round`, `square`, `cut half` … */
    shape: words.optional(),
    /** What was done to it later: clipped, pierced, gilt. */
    treatments: z.array(words).optional(),
    /** What happened to it at the mint: off-centre, double-struck. */
    peculiarities: z.array(words).optional(),
    /** The grade as it was given; `not graded` when it was not. */
    grade: words.optional(),
    /** The scale the grade is on. */
    'grade-scale': words.optional(),
    /** Who gave it. */
    'graded-by': z.enum(['keeper', 'dealer', 'third party']).optional(),
    /** What makes it a details piece: cleaned, bent, tooled. */
    problem: words.optional(),
    /** The face with the ruler, or the first. */
    obverse: side.optional(),
    /** The other face. */
    reverse: side.optional(),
    /** What stands on the edge. */
    edge: side.optional(),
    /** What it was before, when it was made from another piece. */
    altered: z
      .strictObject({
        /** The piece it was made from. */
        host: words,
        /** The ruler of the host. */
        'host-ruler': id.optional(),
        /** Each thing done to it. */
        done: z.array(
          z.strictObject({
            what: words,
            on: words.optional(),
            date: date.optional(),
            by: words.optional(),
            for: words.optional(),
          }),
        ),
      })
      .optional(),
    /** How sure each statement is, where it is not certain: `{ mint: probable }`. */
    sure: z.partialRecord(z.enum(UNSURE_FIELDS), z.enum(CERTAINTIES)).optional(),
    /** How it came down to you, oldest first. */
    provenance: z
      .array(
        z.strictObject({
          when: orBlank(date).optional(),
          how: words.optional(),
          from: words.optional(),
          to: words.optional(),
          evidence: z.enum(EVIDENCE).optional(),
          source: words.optional(),
          says: words.optional(),
          /** `yes` when it passed straight to the next owner. */
          direct: z.enum(['yes', 'no']).optional(),
          /** `yes` when the link is only possible. */
          possibly: z.enum(['yes', 'no']).optional(),
          /** `yes` when the one it came from was a dealer; the new owner, where no one is named. */
          dealer: z.enum(['yes', 'no']).optional(),
        }),
      )
      .optional(),
    /** Where it was found, as coarse as you are willing to publish. */
    found: z
      .strictObject({
        area: words.optional(),
        how: words.optional(),
        when: date.optional(),
        recorded: words.optional(),
      })
      .optional(),
    /** The dies, by your own or a book's letters. */
    dies: z.strictObject({ obverse: words.optional(), reverse: words.optional() }).optional(),
    /** Credits and words for the photographs beside this file. */
    photographs: z.partialRecord(z.enum(PHOTOGRAPHED), photographCredit).optional(),
    /** Your own words to gather pieces by. */
    tags: z.array(words).default([]),
    /** What a sheet said of a field and could not be read, word for word; it is published nowhere: `{ weight: about 1,4 }`. */
    'as-written': z.record(z.string(), words).optional(),
    /** Old ids of this piece, which stay alive as redirects. */
    formerly: oneOrMore(id).optional(),
    /** The keeper's preference between equals in a set: 1 before 2. */
    prefer: z
      .string()
      .regex(/^[1-9]\d*$/, 'This wants a whole number from 1.')
      .transform(Number)
      .optional(),
  });
}

export type PieceFields = z.infer<ReturnType<typeof pieceSchema>>;
