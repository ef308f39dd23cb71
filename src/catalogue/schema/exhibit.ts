import { z } from 'zod';
import { LABEL_STANDS } from '../../core/cases/boxes.ts';
import { CASE_KINDS, parseCaseSize, parseHolder } from '../../core/cases/furniture.ts';
import { parsePosition } from '../../core/cases/position.ts';
import { parseLength } from '../../core/measures/parse-length.ts';
import { field, id, oneOrMore, words } from './fields.ts';

/** What a label made from the piece may tell. */
export const LABEL_FACTS = [
  'what', 'number', 'ruler', 'issuer', 'denomination', 'mint', 'makers', 'date', 'dated', 'metal', 'weight', 'diameter',
  'axis', 'reference', 'references',
] as const; // prettier-ignore
export type LabelFact = (typeof LABEL_FACTS)[number];

/** Inside measures of a case: `300 x 200 x 40 mm`, `32 3/4 x 20 3/4 x 2 3/4 in` (width, height, depth). */
const inside = field(parseCaseSize, 'case-unreadable');

/** What pieces lie in: `2x2`, `capsule 40 mm`, `slab 60 x 86 x 7 mm`, `ticket 38 mm`, `pocket 50 x 50 mm`, or `none`. */
const holder = field(parseHolder, 'holder-unreadable').optional();

const points = z
  .string()
  .regex(/^\d+(\.\d+)?\s*pt$/, 'A type size is in points: 18 pt.')
  .transform((text) => Number.parseFloat(text));

/** A list that is of no use empty; what is said of an empty one. */
function atLeastOne<T extends z.ZodType>(of: T, says: string) {
  return z.array(of).refine((held) => held.length > 0, says);
}

/** Where a thing is to lie, from the left and from the top inside the case: `120 80 mm`. */
const at = field(parsePosition, 'position-unreadable').optional();

const shownPiece = z.union([
  id.transform((piece) => ({ piece })),
  z.strictObject({
    piece: id,
    /** The face that lies upward, or `both`, side by side, where you have two or a picture of one. */
    side: z.enum(['obverse', 'reverse', 'both']).optional(),
    /** Your own words instead of the label made from the piece. */
    label: words.optional(),
    /** The upper left corner of its first face, where you want it to lie and nowhere else: `120 80 mm`. */
    at,
    /** What it lies in, where that is not what the exhibit says of all. */
    holder,
  }),
]);

const group = z.strictObject({
  /** The heading. */
  title: words,
  /** What the visitor is to see in these pieces. */
  text: words.optional(),
  /** The upper left corner of the heading, where you want it to stand and nowhere else: `12 12 mm`. */
  at,
  /** The pieces, in the order in which they are to be read. */
  pieces: atLeastOne(shownPiece, 'A group shows at least one piece. Name one here, or take the group out.'),
});

/** `exhibits/<id>/exhibit.md`: cases, groups and labels; the statement is the text below. */
export const exhibitSchema = z.strictObject({
  title: words,
  /** What the exhibit shows and what it leaves out, in a sentence or two. */
  scope: words.optional(),
  /** What else the title card says, a line each: the class it is entered in, its entry number, the year. Never your name. */
  'title-card': oneOrMore(words).default([]),
  'keeper-shown': z.enum(['yes', 'no']).default('yes'),
  /** `yes` for the exhibit shown on the first page. */
  'on-show': z.enum(['yes', 'no']).default('no'),
  /** The sets whose progress its texts speak of, so that "27 of 42" can be held against them. */
  sets: oneOrMore(id).default([]),
  cases: atLeastOne(
    z.strictObject({
      title: words.optional(),
      /** Width, height and depth inside its frame, in the unit it was measured in. */
      inside,
      /** `flat`, `sloped` or a `wall-frame`, in which bare pieces slide. */
      kind: z.enum(CASE_KINDS).default('flat'),
      groups: atLeastOne(group, 'A case holds at least one group. Add one, or take the case out.'),
    }),
    'An exhibit has at least one case. Add one with its inside measures.',
  ),
  /** What the pieces lie in, by its outer size; it decides the room each takes. Left out, they lie bare. */
  holder,
  label: z
    .strictObject({
      /** How wide every label is: `90 mm`. */
      width: field(parseLength, 'length-unreadable').optional(),
      /** The size of its letters: `18 pt`. */
      text: points.optional(),
      /** How high a label made from the piece may be; facts are left out from the end until it is. */
      height: field(parseLength, 'length-unreadable').optional(),
      /** What labels made from the piece tell, the least needful last: `[what, date, reference]`. */
      facts: atLeastOne(
        z.enum(LABEL_FACTS),
        'Name at least one fact, like [what, date], or take the line out.',
      ).optional(),
      /** What stands above labels in your own words, as far as these do not say it; left out, nothing. */
      identity: atLeastOne(
        z.enum(LABEL_FACTS),
        'Name at least one fact, like [what, date], or take the line out.',
      ).optional(),
      /** Where labels stand: `below` their pieces, `beside` them, or on a `key` that numbers lead to; left out, wherever they fit. */
      stand: z.enum(LABEL_STANDS).optional(),
    })
    .prefault({}),
  /** What your texts shorten, beside the books and the usual signs, which the key to abbreviations has anyway: `{ "cl.": class }`. */
  abbreviations: z.record(words, words).default({}),
  /** The books the exhibit rests on. */
  bibliography: z.array(id).default([]),
  /** What in it is your own work, which judges give marks for: weighing, a study of dies, an attribution, archives. */
  research: words.optional(),
  /** Whom you thank. */
  acknowledgements: words.optional(),
  /** Books for those who want to know more. */
  'further-reading': z.array(id).default([]),
});

export type ExhibitFields = z.infer<typeof exhibitSchema>;
