import { z } from 'zod';
import type { DateContext } from '../../core/dating/dating.ts';
import { pieceRows } from '../fields/piece-fields.ts';
import { shapeOf } from '../fields/row.ts';

/** The schema of `piece.md`: the table of a piece's fields, and no other field; the context settles dates with two readings. */
export function pieceSchema(context: DateContext = {}, gr?: 'grains' | 'grams') {
  return z.strictObject(shapeOf(pieceRows(context, gr)));
}

export type PieceFields = z.infer<ReturnType<typeof pieceSchema>>;
