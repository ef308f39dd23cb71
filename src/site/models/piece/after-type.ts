import type { PublicPiece } from '../../../publish/public-piece.ts';
import { pieceWords } from '../../words/piece.ts';
import type { Row } from './row.ts';

const { field } = pieceWords;

/** The rows whose facts may follow from the type, by the fields each tells or is worked out from. */
const FIELDS: Readonly<Record<string, string | readonly string[]>> = {
  [field.kind]: 'kind', [field.ruler]: 'ruler', [field.struckFor]: 'struck-for', [field.issuer]: 'issuer', [field.mint]: 'mint',
  [field.denomination]: 'denomination', [field.date]: 'date', [field.made]: 'made', [field.shape]: 'shape',
  [field.metal]: 'metal', [field.fineness]: 'fineness', [field.fine]: ['metal', 'fineness'], [field.value]: ['metal', 'fineness'],
  [field.standard]: ['denomination', 'date'],
}; // prettier-ignore

/** A fact that is not the piece's own word says so, and is no surer than the type. */
export function afterType(row: Row, { fromType, sure }: PublicPiece): Row {
  const from = [FIELDS[row.name] ?? []].flat();
  if (!from.some((each) => fromType.includes(each))) return row;
  // That nobody knows something is not in doubt.
  const isKnown = row.values.some(({ isBlank }) => !isBlank);
  const doubt = row.doubt === '' && isKnown ? pieceWords.doubt[sure.type ?? 'certain'] : row.doubt;
  return { ...row, doubt, note: [pieceWords.afterType, row.note].filter((part) => part !== undefined).join('; ') };
}
