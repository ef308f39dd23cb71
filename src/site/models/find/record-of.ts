import { numbersOf } from '../../../catalogue/types/types-of.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { formatGrade } from '../../../core/grade/grade.ts';
import { sizeSpan } from '../../../core/measures/parse-size.ts';
import { cited } from '../../../publish/public-piece.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { wordsOf } from '../../find/fold.ts';
import { FACETS, PARTS } from '../../find/record.ts';
import type { FindRecord, FoundFace, Part } from '../../find/record.ts';
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
    const { id, number, href, title, line, note, face } = on;
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
        number,
        line,
        grade: piece.grade === null || piece.grade.words === '' ? null : formatGrade(piece.grade),
        note,
        face: foundFace(face),
        ...wordsByPart(piece, cabinet),
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

/** Everything public that a visitor may remember a piece by, part by part. */
function textOf(
  piece: PublicPiece,
  { lists }: Cabinet,
): Readonly<Record<Part, readonly (string | null | undefined)[]>> {
  const names = (held: readonly { id: string; name: string }[] | string | null): readonly string[] =>
    held === null || typeof held === 'string'
      ? []
      : held.flatMap(({ id, name }) => [name, ...(lists.rulers[id]?.fields['other-names'] ?? [])]);
  const mint = known(piece.mint);
  return {
    title: [piece.title],
    number: [piece.number],
    // In one name and struck for another: what both ways of it are called.
    ruler: [
      ...names(piece.rulers),
      ...names(piece.struckFor),
      ...(piece.struckFor.length > 0 ? ['posthumous', 'immobilised'] : []),
      ...realmsOf(piece, lists),
      piece.issuer,
    ],
    mint: [
      mint?.name,
      mint?.area,
      ...(mint === null ? [] : (lists.mints[mint.id]?.fields.names ?? []).map(({ name }) => name)),
    ],
    denomination: [known(piece.denomination)?.name, ...joined(piece.denomination)],
    maker: piece.makers.map(({ name }) => name),
    reference: [
      ...piece.references.flatMap((reference) => referenceWords(reference, lists)),
      ...piece.types.flatMap(({ series, id, label }) => [
        id,
        label,
        // It is found by any number of its type, also by one that covers more than the type.
        ...numbersOf(lists.types, { series, id })
          .filter(({ relation }) => relation !== 'narrower' && relation !== 'overlaps')
          .flatMap(({ reference }) => referenceWords(cited(reference, lists), lists)),
      ]),
    ],
    legend: [piece.obverse, piece.reverse, piece.edge].flatMap((side) => [
      side?.legend?.text,
      side?.reading,
      side?.design,
    ]),
    fact: [
      piece.kind === 'unknown' ? null : piece.kind,
      piece.dated,
      piece.metal,
      piece.problem,
      piece.altered?.host,
      piece.found?.area,
      ...piece.treatments,
      ...piece.peculiarities,
      ...piece.tags,
    ],
    story: [piece.story],
  };
}

/** The words of a piece, each once, those of its first part first; and how many are of each part. */
function wordsByPart(piece: PublicPiece, cabinet: Cabinet): Pick<FindRecord, 'words' | 'parts'> {
  const text = textOf(piece, cabinet);
  const all = new Set<string>();
  const parts = PARTS.map((part) => {
    const before = all.size;
    for (const word of wordsOf(text[part].filter((one) => typeof one === 'string').join(' '))) all.add(word);
    return all.size - before;
  });
  return { words: [...all].join(' '), parts };
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
