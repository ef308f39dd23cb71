import { known } from '../../../catalogue/schema/fields.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { onceFor } from '../../once-for.ts';
import { filedUnder } from '../shared/gather.ts';

/** Pieces that a visitor may want beside one another, and why. */
export type Related = { readonly because: 'die' | 'type'; readonly pieces: readonly PublicPiece[] };

/** The listed pieces that share a die, then those that a book files under one number; each company told once. */
export function worthComparing(listed: readonly PublicPiece[]): readonly Related[] {
  const related = (because: Related['because'], held: Companies): readonly Related[] =>
    [...held.values()].filter(({ length }) => length > 1).map((pieces) => ({ because, pieces }));
  const told = new Set<string>();
  return [...related('die', byDie(listed)), ...related('type', byType(listed))].filter(({ pieces }) => {
    const name = pieces.map(({ id }) => id).join(' ');
    if (told.has(name)) return false;
    told.add(name);
    return true;
  });
}

/** The pieces worth laying beside one: those that share its die first. */
export function relatedTo(piece: PublicPiece, listed: readonly PublicPiece[]): readonly PublicPiece[] {
  const shares = (held: Companies, names: readonly string[]): readonly PublicPiece[] => {
    const found = new Set(names.flatMap((name) => held.get(name) ?? []));
    found.delete(piece);
    const order = orderOf(listed);
    return [...found].sort((one, other) => (order.get(one) ?? 0) - (order.get(other) ?? 0));
  };
  return [...new Set([...shares(byDie(listed), diesOf(piece)), ...shares(byType(listed), typesOf(piece))])];
}

/** Pieces by a name that they share, in the order of the list. */
type Companies = ReadonlyMap<string, readonly PublicPiece[]>;

/** The place of each piece in a list, counted from 0. */
export const orderOf = onceFor((listed: readonly PublicPiece[]) => new Map(listed.map((piece, at) => [piece, at])));
const byDie = onceFor((listed: readonly PublicPiece[]) => filedUnder(listed, diesOf));
const byType = onceFor((listed: readonly PublicPiece[]) => filedUnder(listed, typesOf));

/** A die is named within its coinage: the same letter under another king or at another mint is another die. */
function diesOf({ dies, ...piece }: PublicPiece): readonly string[] {
  const rulers = Array.isArray(piece.rulers) ? piece.rulers.map(({ id }: { id: string }) => id).join('+') : '';
  const coinage = [rulers, known(piece.mint)?.id ?? '', known(piece.denomination)?.id ?? ''].join(' ');
  return (['obverse', 'reverse'] as const).flatMap((face) => {
    const die = dies?.[face];
    return die === undefined ? [] : [`${coinage} ${face} ${die}`];
  });
}

/** What the books call it, where they call it that without reserve. */
function typesOf({ references }: PublicPiece): readonly string[] {
  return references.flatMap(({ work, number, relation }) =>
    relation === 'is' && number !== '' ? [`${work} ${number}`] : [],
  );
}
