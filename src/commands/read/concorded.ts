import type { Types } from '../../catalogue/types/types-of.ts';
import { seriesNamed, typeOfKey } from '../../catalogue/types/types-of.ts';
import type { Outcome } from '../../core/outcome.ts';
import { refuse } from '../../core/outcome.ts';
import { parseReference } from '../../core/references/parse-reference.ts';
import { formatReference } from '../../core/references/reference.ts';
import { concord, numberKey } from '../../core/types/concordance.ts';
import type { ConcordedType, TypeRelation } from '../../core/types/concordance.ts';
import type { KnownWork } from './consulted.ts';
import type { Answer, Kind } from './kind.ts';

const STANDS: Readonly<Record<TypeRelation, string>> = {
  equal: 'is',
  close: 'is nearly',
  broader: 'covers more than',
  narrower: 'is a part of',
  overlaps: 'overlaps',
};

/** The kind for concordances: the types a number stands for, and their numbers in other books. */
export function concordKind(types: Types | null, works: readonly KnownWork[]): Kind {
  return {
    name: 'concord',
    args: ['reference'],
    examples: [['north 1017']],
    consults: 'always',
    read: (words) => {
      if (types === null)
        return refuse('A concordance is read from the types of a cabinet. Write --cabinet and its folder.');
      const read = parseReference(words.join(' '), works);
      return read.ok ? answerOf(types, formatReference(read.value), concord(read.value, types.concordance)) : read;
    },
  };
}

function answerOf(types: Types, asked: string, found: readonly ConcordedType[]): Outcome<Answer> {
  if (found.length === 0) return refuse(`No type in types/ has the number ${asked}.`);
  const claims = found.filter((one) => one.disputed).length;
  const disputed =
    claims === 0
      ? []
      : claims > 1
        ? [`Several types claim ${asked} as their own number, so nothing more is concluded from it.`]
        : [`The type claims several numbers of that book as its own, so nothing more is concluded from ${asked}.`];
  return {
    ok: true,
    value: {
      sentence: [...found.map((one) => sentenceOf(types, asked, one)), ...disputed].join('\n'),
      fields: {
        types: found.map(({ type, relation, sure, through, disputed: contested, numbers }) => ({
          type,
          relation,
          sure,
          through,
          disputed: contested,
          numbers: numbers.map((number) => ({
            work: number.row.work,
            number: number.row.number,
            ofType: number.row.relation,
            relation: number.relation,
            sure: number.sure,
          })),
        })),
      },
    },
  };
}

function sentenceOf(types: Types, asked: string, { type, relation, sure, numbers, disputed }: ConcordedType): string {
  const { series, id } = typeOfKey(type);
  const held = seriesNamed(types, series);
  const label = held?.types.get(id)?.label ?? id;
  if (disputed) return `${asked} is given as the number of ${label} (${type}), which is disputed.`;
  const doubt = sure === 'certain' ? '' : sure === 'probable' ? 'probably ' : 'possibly ';
  const others = numbers.map(({ row, sure: each }) => {
    const doubted = each === 'certain' ? '' : ', not certain';
    if (types.concordance.disputed.has(numberKey(row))) return `${row.work} ${row.number} (disputed)`;
    const near = row.relation === 'equal' ? '' : ` (${STANDS[row.relation]} the type${doubted})`;
    return `${row.work} ${row.number}${row.to === undefined ? '' : `–${row.to}`}${near === '' && doubted !== '' ? ' (not certain)' : near}`;
  });
  const stands = relation === null ? 'lies among the numbers of' : STANDS[relation];
  return `${asked} ${doubt}${stands} ${label} (${type}).${others.length === 0 ? '' : ` Elsewhere: ${others.join('; ')}.`}`;
}
