import { known } from '../../../catalogue/schema/fields.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';

/** Pieces that a visitor may want beside one another, and why. */
export type Kin = { readonly because: 'die' | 'type'; readonly pieces: readonly PublicPiece[] };

/** The listed pieces that share a die, then those that a book files under one number; each company told once. */
export function worthComparing(listed: readonly PublicPiece[]): readonly Kin[] {
  const byDie = companies(listed, diesOf).map((pieces): Kin => ({ because: 'die', pieces }));
  const byType = companies(listed, typesOf).map((pieces): Kin => ({ because: 'type', pieces }));
  const told = new Set<string>();
  return [...byDie, ...byType].filter(({ pieces }) => {
    const name = pieces.map(({ id }) => id).join(' ');
    if (told.has(name)) return false;
    told.add(name);
    return true;
  });
}

/** The pieces worth laying beside one: those that share its die first. */
export function kinOf(piece: PublicPiece, listed: readonly PublicPiece[]): readonly PublicPiece[] {
  const shares = (namesOf: (one: PublicPiece) => readonly string[]): readonly PublicPiece[] => {
    const own = namesOf(piece);
    return listed.filter((one) => one !== piece && namesOf(one).some((name) => own.includes(name)));
  };
  return [...new Set([...shares(diesOf), ...shares(typesOf)])];
}

function companies(
  pieces: readonly PublicPiece[],
  namesOf: (piece: PublicPiece) => readonly string[],
): readonly (readonly PublicPiece[])[] {
  const held = new Map<string, PublicPiece[]>();
  for (const piece of pieces) for (const name of namesOf(piece)) held.set(name, [...(held.get(name) ?? []), piece]);
  return [...held.values()].filter(({ length }) => length > 1);
}

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
