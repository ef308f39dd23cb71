import { numbersOf } from '../../../catalogue/types/types-of.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { sizeSpan } from '../../../core/measures/parse-size.ts';
import { cited } from '../../../publish/public-piece.ts';
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
    const { id, href, title, line, note, face } = on;
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
        face: foundFace(face),
        words: wordsOf(textOf(piece, cabinet)).join(' '),
        years: piece.years === null ? null : [finite(piece.years.low), finite(piece.years.high)],
        legends: [piece.obverse, piece.reverse, piece.edge].flatMap((side) => side?.legend?.text ?? []),
        facets: Object.fromEntries(facets.filter(([, held]) => held?.length !== 0)) as FindRecord['facets'],
        by: sortedBy(piece),
      },
    ];
  });
}

/** A face as a script lays it. */
export function foundFace(face: FaceView): FoundFace {
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
    piece.kind === 'unknown' ? null : piece.kind,
    ...names(piece.rulers),
    ...names(piece.struckFor),
    // In one name and struck for another: what both ways of it are called.
    ...(piece.struckFor.length > 0 ? ['posthumous', 'immobilised'] : []),
    ...realmsOf(piece, lists),
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
    ...piece.references.flatMap((reference) => referenceWords(reference, lists)),
    ...joined(piece.denomination),
    ...piece.types.flatMap(({ series, id, label }) => [
      id,
      label,
      // It is found by any number of its type, also by one that covers more than the type.
      ...numbersOf(lists.types, { series, id })
        .filter(({ relation }) => relation !== 'narrower' && relation !== 'overlaps')
        .flatMap(({ reference }) => referenceWords(cited(reference, lists), lists)),
    ]),
    ...sides,
    piece.story,
  ]
    .filter((part) => part !== null && part !== undefined)
    .join(' ');
}

/** What the rulers of a piece ruled: `Ottoman Empire`. */
function realmsOf({ rulers }: PublicPiece, { rulers: all }: Cabinet['lists']): readonly string[] {
  return (known(rulers) ?? []).flatMap(({ id }) => all[id]?.fields.realm ?? []);
}

/** `half-crown` is also looked for as halfcrown. */
function joined(denomination: PublicPiece['denomination']): readonly string[] {
  const name = denomination === null || typeof denomination === 'string' ? '' : denomination.name;
  return /[\s-]/.test(name) ? [name.replace(/[\s-]+/g, '')] : [];
}

/** A reference as it is cited, and by the other names of its book: its key, its author, their first letters (`N1018`). */
function referenceWords(
  { work, cited, number }: PublicPiece['references'][number],
  { works }: Cabinet['lists'],
): readonly string[] {
  const { author = '', short = '' } = works[work]?.fields ?? {};
  const names = [...new Set([cited, work.replaceAll('-', ' '), short, author.split(/[ ,]+/).at(-1) ?? ''])];
  const figures = number.replace(/\s+/g, '');
  return [
    ...names.map((name) => `${name} ${number}`),
    ...names.flatMap((name) => {
      const initials = wordsOf(name)
        .map((word) => word.charAt(0))
        .join('');
      return figures === '' || initials === ''
        ? []
        : [`${initials} ${initials}${figures} ${wordsOf(name).join('')}${figures}`];
    }),
  ];
}

function finite(value: number | undefined): number | null {
  return value !== undefined && Number.isFinite(value) ? value : null;
}

/** A piece with a problem sorts after every sound one: its grade speaks of wear alone. */
const BELOW_SOUND = 100;

function sortedBy({ years, grade, ...piece }: PublicPiece): FindRecord['by'] {
  const size = known(piece.size);
  const gradeLow = grade?.low ?? null;
  return {
    date: finite(years?.low) ?? finite(years?.high),
    weight: known(piece.weight)?.grams ?? null,
    size: size === null ? null : sizeSpan(size).width,
    grade: gradeLow === null ? null : piece.problem === null ? gradeLow : gradeLow - BELOW_SOUND,
  };
}
