import { z } from 'zod';
import type { Reign } from '../../core/dating/dating.ts';
import { pieceRows } from '../fields/piece-fields.ts';
import { shapeOf } from '../fields/row.ts';

/** The schema of `piece.md`: the table of a piece's fields, and no other field. */
export function pieceSchema(reigns: readonly Reign[]) {
  return z.strictObject(shapeOf(pieceRows(reigns)));
}

export type PieceFields = z.infer<ReturnType<typeof pieceSchema>>;
