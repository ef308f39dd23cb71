import { z } from 'zod';
import { parseLength } from '../../core/measures/parse-length.ts';
import { field, id, words } from './fields.ts';

/** Inside measures of a case: `831.85 x 527.05 x 69.85 mm` (width, height, depth). */
const inside = z
  .string()
  .regex(
    /^\d+(\.\d+)?\s*[x×]\s*\d+(\.\d+)?(\s*[x×]\s*\d+(\.\d+)?)?\s*mm$/,
    'A case is width x height x depth inside: 300 x 200 x 40 mm.',
  )
  .transform((text) => {
    const [width = 0, height = 0, depth] = text.replace(/mm$/, '').split(/[x×]/).map(Number);
    return depth === undefined ? { width, height } : { width, height, depth };
  });

const points = z
  .string()
  .regex(/^\d+(\.\d+)?\s*pt$/, 'A type size is in points: 18 pt.')
  .transform((text) => Number.parseFloat(text));

/** `exhibits/<id>/exhibit.md`: cases, groups and labels; the statement is the text below. */
export const exhibitSchema = z.strictObject({
  title: words,
  /** What the exhibit shows and what it leaves out, in a sentence or two. */
  scope: words.optional(),
  'keeper-shown': z.enum(['yes', 'no']).default('yes'),
  /** `yes` for the exhibit shown on the first page. */
  'on-show': z.enum(['yes', 'no']).default('no'),
  cases: z
    .array(
      z.strictObject({
        title: words.optional(),
        inside,
        groups: z
          .array(
            z.strictObject({
              title: words,
              text: words.optional(),
              pieces: z
                .array(
                  z.union([
                    id.transform((piece) => ({ piece })),
                    z.strictObject({
                      piece: id,
                      side: z.enum(['obverse', 'reverse', 'both']).optional(),
                      /** Your own words instead of the derived label. */
                      label: words.optional(),
                    }),
                  ]),
                )
                .min(1),
            }),
          )
          .min(1),
      }),
    )
    .min(1),
  label: z
    .strictObject({ width: field(parseLength, 'length-unreadable').optional(), text: points.optional() })
    .prefault({}),
  bibliography: z.array(id).default([]),
  acknowledgements: words.optional(),
  'further-reading': z.array(id).default([]),
});

export type ExhibitFields = z.infer<typeof exhibitSchema>;
