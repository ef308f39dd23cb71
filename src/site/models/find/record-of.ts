import { numbersOf } from '../../../catalogue/types/types-of.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import { formatGrade } from '../../../core/grade/grade.ts';
import { sizeSpan } from '../../../core/measures/parse-size.ts';
import { cited } from '../../../publish/public-piece.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { digestOf } from '../../digest.ts';
import { wordsOf } from '../../find/fold.ts';
import { packRecords, packTexts } from '../../find/pack.ts';
import { FACETS, PARTS } from '../../find/record.ts';
import type { FindRecord, FoundFace, Part } from '../../find/record.ts';
import { onceFor } from '../../once-for.ts';
import { boardOf } from '../shared/board.ts';
import { lookOf } from '../shared/face.ts';
import type { FaceView } from '../shared/face.ts';
import { facetsOf } from './facets.ts';

/** What a browser is sent to search in, as it is written: the records, and what is long of them. Records themselves are not kept. */
export const packedSearch = onceFor(async (cabinet: Cabinet) => {
  const records = await findRecords(cabinet);
  // Places are counted in this order of pieces.
  const made = digestOf(records.map(({ id }) => id));
  return { records: JSON.stringify(packRecords(records, made)), texts: JSON.stringify(packTexts(records, made)) };
});

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
      // In one name and struck for the same ruler again, it answers to him once.
      [...new Set(values.filter((one) => one.facet === facet).map(({ value }) => value))],
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
        words: wordsByPart(piece, cabinet),
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

/** Parts of which a word is not told again that an earlier part has: their words are the most. */
const LONG: readonly Part[] = ['legend', 'story'];

/** The words of a piece, part by part. */
function wordsByPart(piece: PublicPiece, cabinet: Cabinet): FindRecord['words'] {
  const text = textOf(piece, cabinet);
  const before = new Set<string>();
  const words: Partial<Record<Part, readonly string[]>> = {};
  for (const part of PARTS) {
    const own = wordsOf(text[part].filter((one) => typeof one === 'string').join(' '));
    words[part] = LONG.includes(part) ? own.filter((word) => !before.has(word)) : own;
    for (const word of own) before.add(word);
  }
  return words;
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

/** A number that a visitor may write at once after the name of its book, and the search takes apart: `N1018`. */
const PLAIN = /^\d[\d.]*\p{L}?$/u;

/** A reference as it is cited, and by the other names of its book: its key, its author, their first letters. */
function referenceWords(
  { work, cited, number }: PublicPiece['references'][number],
  { works }: Cabinet['lists'],
): readonly string[] {
  const { author = '', short = '' } = works[work]?.fields ?? {};
  const names = [...new Set([cited, work.replaceAll('-', ' '), short, author.split(/[ ,]+/).at(-1) ?? ''])];
  const figures = number.replace(/\s+/g, '');
  return names.flatMap((name) => {
    const words = wordsOf(name);
    const short = [words.map((word) => word.charAt(0)).join(''), words.join('')];
    if (figures === '' || words.length === 0) return `${name} ${number}`;
    return [`${name} ${number}`, ...short, ...(PLAIN.test(figures) ? [] : short.map((book) => `${book}${figures}`))];
  });
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
