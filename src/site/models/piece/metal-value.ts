import { known } from '../../../catalogue/schema/fields.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { fineMetal, metalValue, notAsStruck } from '../../../core/metal/fine-metal.ts';
import type { MetalPrice } from '../../../core/metal/fine-metal.ts';
import { formatMoney } from '../../../core/money/money.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { pieceWords } from '../../words/piece.ts';
import { row } from './row.ts';
import type { Row } from './row.ts';

/** What the fine metal would come to at the keeper's own price; nothing where that would mislead or no price is given. */
export function valueRows(piece: PublicPiece, cabinet: Cabinet): readonly Row[] {
  const { metal } = piece;
  if (!isAskedFor(piece, cabinet)) return [];
  const [weight, fineness] = [known(piece.weight), known(piece.fineness)];
  if (weight === null || fineness === null) return [];
  const { plated, mounted } = notAsStruck(piece);
  const value = metalValue({
    fine: fineMetal(weight, fineness),
    price: priceOf(metal, cabinet),
    plated,
    mounted,
    altered: piece.altered !== null && piece.altered !== undefined,
  });
  if (!value.ok) return [];
  const { low, high, currency, caution } = value.value;
  const said = pieceWords.range(formatMoney({ minor: low, currency }), formatMoney({ minor: high, currency }));
  return row(pieceWords.field.value, said, { note: caution });
}

/** A penny is not shown as so much scrap unless the keeper wants that. */
function isAskedFor({ kind, tags, metalValue }: PublicPiece, { lists }: Cabinet): boolean {
  if (metalValue !== null) return metalValue === 'yes';
  const of = lists.cabinet['metal-values'];
  return of === 'all' || (of === 'bullion' && (kind === 'ingot' || kind === 'hacksilver' || tags.includes('bullion')));
}

/** The keeper's price of a metal, the latest where there are several. */
function priceOf(metal: string | null, { lists }: Cabinet): MetalPrice | null {
  const found = lists.cabinet['metal-prices'].findLast((price) => price.metal === metal);
  if (found === undefined) return null;
  const { minor, currency } = found.price;
  return { minorPerTroyOunce: minor, currency, date: formatDate(found.date), source: found.source };
}
