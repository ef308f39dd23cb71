import { folded, namesInArea } from '../../core/sets/facts.ts';
import { parseReference } from '../../core/references/parse-reference.ts';
import { citedWorks } from '../types/cited-works.ts';
import { nearestName } from '../nearest.ts';
import type { Problem, Spot } from '../problem.ts';
import { problem } from '../problem.ts';
import type { FiledPiece, Records } from '../records.ts';
import type { WhereFields } from '../schema/sets-and-eras.ts';
import { KINDS } from '../fields/piece-fields.ts';

type Asked = Omit<WhereFields, 'date' | 'not'>;

/** What a rule asks for in words that come from a closed list: a kind, an area, a realm, a book. Nothing could ever answer another. */
export function wordsOf(where: Asked | undefined, records: Records, spot: (field: string) => Spot): readonly Problem[] {
  if (where === undefined) return [];
  const { areas = [], realms = [] } = records.cabinet?.fields ?? {};
  const lists: readonly (readonly [keyof Asked, string, readonly string[]])[] = [
    ['kind', 'There is no kind', KINDS],
    ['area', 'No mint lies in the area', [...records.mints.map(({ fields }) => fields.area), ...areas.map((one) => one.in)].filter(isSaid).flatMap(namesInArea)],
    ['realm', 'No ruler has the realm', [...records.rulers.flatMap(({ fields }) => [fields.realm, ...fields.reigns.map(({ realm }) => realm)]), ...realms.map((one) => one.in)].filter(isSaid)],
  ];
  const unknown = lists.flatMap(([field, none, known]) =>
    // A list that is empty, or that could not be read, makes no word wrong.
    known.length === 0
      ? []
      : (where[field] ?? [])
          .filter((value) => !known.map(folded).includes(folded(value)))
          .map((value) => problem('set-word-unknown', spot(field), none, value, [...new Set(known)])),
  );
  const works = citedWorks(records.works);
  const references = (where.references ?? []).flatMap((text) => {
    const read = parseReference(text, works);
    return read.ok || records.works.length !== records.named.works.length
      ? []
      : [problem('reference-unreadable', spot('references'), read.problem)];
  });
  return [...unknown, ...references];
} // prettier-ignore

function isSaid(value: string | undefined): value is string {
  return value !== undefined;
}

const FREE: readonly (readonly [keyof Asked, string, (piece: FiledPiece) => readonly (string | undefined)[]])[] = [
  ['issuer', 'issuer', ({ fields }) => [fields.issuer]],
  ['metal', 'metal', ({ fields }) => [fields.metal]],
  ['tag', 'tag', ({ fields }) => fields.tags],
  ['shape', 'shape', ({ fields }) => [fields.shape]],
  ['made', 'way of making', ({ fields }) => [fields.made]],
];

/**
 * Words in the rules of sets that no piece has, though some have nearly the same: perhaps a slip of the pen, perhaps a piece still to
 * come, so it is said and stops nothing.
 */
export function setRemarks({ sets, pieces }: Pick<Records, 'sets' | 'pieces'>): readonly string[] {
  const known = new Map(FREE.map(([field, , of]) => [field, [...new Set(pieces.flatMap(of).filter(isSaid))]]));
  return sets.flatMap(({ file, fields }) => {
    const wheres = [fields.where, ...(fields.places ?? []).map((place) => ('where' in place ? place.where : undefined))];
    const all = wheres.flatMap((where) => (where === undefined ? [] : [where, where.not ?? {}]));
    const said = all.flatMap((where: Asked) =>
      FREE.flatMap(([field, name]) =>
        (where[field] ?? []).flatMap((value) => {
          const words = known.get(field) ?? [];
          if (words.some((word) => folded(word) === folded(value))) return [];
          const near = nearestName(value, words);
          return near === null ? [] : [`${file}: the rule asks for the ${name} “${value}”, which no piece has; some have “${near}”.`];
        }),
      ),
    );
    return [...new Set(said)];
  });
} // prettier-ignore
