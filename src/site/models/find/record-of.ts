import { known } from '../../../catalogue/schema/fields.ts';
import { sizeSpan } from '../../../core/measures/parse-size.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { wordsOf } from '../../find/fold.ts';
import { FACETS } from '../../find/record.ts';
import type { FindRecord, FoundFace } from '../../find/record.ts';
import { boardOf } from '../shared/board.ts';
import { lookOf } from '../shared/face.ts';
import type { FaceView } from '../shared/face.ts';
import { facetsOf } from './facets.ts';

/** The search's record of every listed piece, in the order of inventory numbers. */
export async function findRecords(cabinet: Cabinet): Promise<readonly FindRecord[]> {
  const { laid } = await boardOf(cabinet.listed);
  return cabinet.listed.flatMap((piece, at) => {
    const on = laid[at];
    if (on === undefined) return [];
    const { id, href, title, line, note, room, face } = on;
    const values = facetsOf(piece, cabinet);
    const facets = FACETS.map((facet) => [
      facet,
      values.filter((one) => one.facet === facet).map(({ value }) => value),
    ]);
    return [
      {
        id,
        to: href,
        title,
        line,
        note,
        room,
        face: foundFace(face),
        words: wordsOf(textOf(piece, cabinet)).join(' '),
        legends: [piece.obverse, piece.reverse, piece.edge].flatMap((side) => side?.legend?.text ?? []),
        facets: Object.fromEntries(facets.filter(([, held]) => held?.length !== 0)) as FindRecord['facets'],
        by: sortedBy(piece),
      },
    ];
  });
}

function foundFace(face: FaceView): FoundFace {
  if (face.shown === 'photograph') {
    return { wide: face.wide, src: face.small, width: face.width, height: face.height };
  }
  return { wide: face.wide, tall: face.tall, look: lookOf(face) };
}

/** Everything public that a visitor may remember a piece by. */
function textOf(piece: PublicPiece, { lists }: Cabinet): string {
  const names = (held: readonly { id: string; name: string }[] | string | null): readonly string[] =>
    held === null || typeof held === 'string'
      ? []
      : held.flatMap(({ id, name }) => [name, ...(lists.rulers[id]?.fields['other-names'] ?? [])]);
  const mint = piece.mint === null || typeof piece.mint === 'string' ? null : piece.mint;
  const sides = [piece.obverse, piece.reverse, piece.edge].flatMap((side) => [
    side?.legend?.text,
    side?.reading,
    side?.design,
  ]);
  return [
    piece.title,
    piece.number,
    piece.kind,
    ...names(piece.rulers),
    ...names(piece.struckFor),
    piece.issuer,
    mint?.name,
    mint?.area,
    ...(mint === null ? [] : (lists.mints[mint.id]?.fields.names ?? []).map(({ name }) => name)),
    ...piece.makers.map(({ name }) => name),
    piece.denomination === null || typeof piece.denomination === 'string' ? null : piece.denomination.name,
    piece.dated,
    piece.metal,
    piece.problem,
    piece.altered?.host,
    piece.found?.area,
    ...piece.treatments,
    ...piece.peculiarities,
    ...piece.tags,
    ...[...piece.references, ...piece.elsewhere].map(({ cited, number }) => `${cited} ${number}`),
    ...piece.types.flatMap(({ id, label }) => [id, label]),
    ...sides,
    piece.story,
  ]
    .filter((part) => part !== null && part !== undefined)
    .join(' ');
}

function sortedBy({ years, grade, ...piece }: PublicPiece): FindRecord['by'] {
  const size = known(piece.size);
  const finite = (value: number | undefined): number | null =>
    value !== undefined && Number.isFinite(value) ? value : null;
  return {
    date: finite(years?.low) ?? finite(years?.high),
    weight: known(piece.weight)?.grams ?? null,
    size: size === null ? null : sizeSpan(size).width,
    grade: grade?.low ?? null,
  };
}
