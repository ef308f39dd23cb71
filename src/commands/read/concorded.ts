import type { ConcordanceLine } from '../../catalogue/types/read-lines.ts';
import type { Types } from '../../catalogue/types/types-of.ts';
import { seriesNamed, typeOfKey } from '../../catalogue/types/types-of.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { parseReference } from '../../core/references/parse-reference.ts';
import { formatReference } from '../../core/references/reference.ts';
import type { Reference } from '../../core/references/reference.ts';
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
      if (!read.ok) return read;
      // What is asked is the number; whether a piece is that or only near it comes after.
      const asked = { ...read.value, relation: 'is' as const };
      const answer = answerOf(types, asked, concord(asked, types.concordance));
      return answer.ok ? good(withNearness(answer.value, read.value)) : answer;
    },
  };
}

/** Of a piece that a book is only compared with, no type follows. */
function withNearness(answer: Answer, read: Reference): Answer {
  if (read.relation === 'is' || read.relation === 'this coin') return answer;
  const says = `${formatReference(read)} says that a piece is near that number and not of it, so its type does not follow.`;
  return { ...answer, sentence: `${answer.sentence}\n${says}` };
}

function answerOf(types: Types, reference: Reference, found: readonly ConcordedType[]): Outcome<Answer> {
  const asked = formatReference(reference);
  if (found.length === 0)
    return refuse(`No type in types/ has the number ${asked}.${elsewhereInBook(types, reference)}`);
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

/** The same number under the headings of that book, as where each county is numbered by itself. */
function elsewhereInBook({ concordance }: Types, { work, number }: Reference): string {
  const under = concordance.rows.filter((row) => row.work === work && row.number.endsWith(` ${number}`));
  const [first] = new Set(under.map((row) => formatReference((row as ConcordanceLine).reference)));
  return first === undefined ? '' : ` With its heading it is ${first}.`;
}

function sentenceOf(types: Types, asked: string, { type, relation, sure, numbers, disputed }: ConcordedType): string {
  const { series, id } = typeOfKey(type);
  const held = seriesNamed(types, series);
  const label = held?.types.get(id)?.label ?? id;
  if (disputed) return `${asked} is given as the number of ${label} (${type}), which is disputed.`;
  const doubt = sure === 'certain' ? '' : sure === 'probable' ? 'probably ' : 'possibly ';
  const others = numbers.map(({ row, sure: each }) => {
    const doubted = each === 'certain' ? '' : ', not certain';
    const printed = formatReference((row as ConcordanceLine).reference);
    if (types.concordance.disputed.has(numberKey(row))) return `${printed} (disputed)`;
    const near = row.relation === 'equal' ? '' : ` (${STANDS[row.relation]} the type${doubted})`;
    return `${printed}${near === '' && doubted !== '' ? ' (not certain)' : near}`;
  });
  const stands = relation === null ? 'lies among the numbers of' : STANDS[relation];
  return `${asked} ${doubt}${stands} ${label} (${type}).${others.length === 0 ? '' : ` Elsewhere: ${others.join('; ')}.`}`;
}
