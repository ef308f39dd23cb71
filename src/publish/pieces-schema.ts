import { z } from 'zod';
import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import type { PieceRows } from '../catalogue/fields/piece-fields.ts';
import { DATA_ROWS } from './public-facts.ts';

const interval = (unit: string) => z.strictObject({ low: z.number(), high: z.number() }).describe(unit);
const year = z.union([z.int(), z.literal('open'), z.null()]);
/** What the keeper wrote: words, several, or words under names. */
const written: z.ZodType = z.lazy(() =>
  z.union([z.string(), z.number(), z.boolean(), z.array(written), z.record(z.string(), written)]),
);
const WANTED = new Set(['number', 'title', 'kind', 'status']);

/** The JSON Schema (2020-12) of `pieces.json`. */
export function piecesSchema(): object {
  const told = DATA_ROWS.filter(({ fact }) => fact !== 'grade').map(({ name, fact }) => {
    const { says } = PIECE_ROWS[name as keyof PieceRows];
    const of = WANTED.has(fact) ? z.string() : written.optional();
    return [fact, of.describe(says)] as const;
  });
  const period = z.strictObject({
    id: z.string(),
    name: z.string().optional(),
    share: z.number().min(0).max(1).nullable().optional(),
  });
  const piece = z.strictObject({
    id: z.string().describe('The permanent name of the piece, the last part of its address.'),
    address: z.url().describe('The address of its page.'),
    ...Object.fromEntries(told),
    edtf: z.string().optional().describe('The date it was made, EDTF (Library of Congress, 2019).'),
    dating: z
      .strictObject({ earliest: year, latest: year })
      .optional()
      .describe('Astronomical years: 0 is 1 BC. “open” is a bound left open, null one that is not known.'),
    afterType: z.array(z.string()).optional().describe('The fields that follow from its type.'),
    eras: z.record(z.string(), z.looseObject({ state: z.string(), periods: z.array(period.loose()).optional() })),
    grade: interval('Steps of the numeric scale, 1 to 70.').optional(),
    fine: interval('Grams of fine metal.').optional(),
    grams: z.number().positive().optional().describe('Its weight in grams.'),
    millimetres: z
      .strictObject({ width: z.number().positive(), height: z.number().positive() })
      .optional()
      .describe('Its size in millimetres, across and down.'),
  });
  return { title: 'pieces.json', ...z.toJSONSchema(z.array(piece)) };
}
