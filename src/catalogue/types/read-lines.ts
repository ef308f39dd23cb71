import type { DiePair } from '../../core/dies/links.ts';
import type { DieStateRow } from '../../core/dies/states.ts';
import type { Grade } from '../../core/grade/grade.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import { isScaleId } from '../../core/grade/scales.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import type { CitedWork, Reference } from '../../core/references/reference.ts';
import type { ConcordanceRow, TypeRelation } from '../../core/types/concordance.ts';
import { TYPE_RELATIONS } from '../../core/types/concordance.ts';
import { CERTAINTIES } from '../schema/fields.ts';
import type { Certainty } from '../schema/fields.ts';
import { rowsIn, slipAt, typeIn, wanted } from './read-tables.ts';
import type { Found } from './read-tables.ts';

/** A line of a concordance with its reference as printed. */
export type ConcordanceLine = ConcordanceRow & { readonly reference: Reference; readonly line: number };
/** A known piece of a type, as somebody recorded it. */
export type SpecimenLine = {
  readonly type: string;
  readonly specimen: string;
  readonly grade: Grade | null;
  readonly source: string | null;
  readonly date: string | null;
  readonly sameAs: readonly string[];
  readonly line: number;
};
export function concordanceIn(
  found: Found,
  isKnown: (id: string) => boolean,
  works: readonly CitedWork[],
): readonly ConcordanceLine[] {
  return rowsIn(found, 'concordance').flatMap((row): readonly ConcordanceLine[] => {
    const type = typeIn(found, 'concordance', row, isKnown);
    const text = wanted(found, 'concordance', row, 'reference');
    const relation = row.cells['relation'] ?? 'equal';
    const sure = row.cells['sure'] ?? 'certain';
    if (!isRelation(relation))
      slipAt(
        found,
        'concordance',
        row,
        'relation',
        `"${relation}" is no relation. Write one of ${TYPE_RELATIONS.join(', ')}.`,
      );
    if (!isCertainty(sure))
      slipAt(
        found,
        'concordance',
        row,
        'sure',
        `"${sure}" is not how sure one is. Write one of ${CERTAINTIES.join(', ')}.`,
      );
    if (type === null || text === null || !isRelation(relation) || !isCertainty(sure)) return [];
    const read = parseReferences(text, { works });
    const [reference, ...more] = read.ok ? read.value : [];
    if (!read.ok) slipAt(found, 'concordance', row, 'reference', read.problem);
    else if (reference === undefined || more.length > 0 || reference.relation !== 'is')
      slipAt(
        found,
        'concordance',
        row,
        'reference',
        `"${text}" is not one number of one book. Write the relation in its own column, and a row for each number.`,
      );
    else {
      const { work, number, volume, to } = reference;
      const { source, date } = row.cells;
      return [
        {
          type: `${found.series.id}/${type}`,
          relation,
          sure: reference.doubtful === true ? 'possible' : sure,
          work,
          number,
          volume,
          to,
          source,
          date,
          reference,
          line: row.line,
        },
      ];
    }
    return [];
  });
}

function isRelation(text: string): text is TypeRelation {
  return (TYPE_RELATIONS as readonly string[]).includes(text);
}

function isCertainty(text: string): text is Certainty {
  return (CERTAINTIES as readonly string[]).includes(text);
}

export function specimensIn(found: Found, isKnown: (id: string) => boolean): readonly SpecimenLine[] {
  const told = new Set<string>();
  return rowsIn(found, 'specimens').flatMap((row): readonly SpecimenLine[] => {
    const type = typeIn(found, 'specimens', row, isKnown);
    const specimen = wanted(found, 'specimens', row, 'specimen');
    if (type === null || specimen === null) return [];
    if (told.has(specimen))
      slipAt(
        found,
        'specimens',
        row,
        'specimen',
        `${specimen} stands here twice. Give the second record a name of its own, and the first in its column "same as".`,
      );
    told.add(specimen);
    const scale = row.cells['grade scale'];
    const { grade: text, problem, source, date } = row.cells;
    const scaled = scale === undefined ? {} : isScaleId(scale) ? { scale } : null;
    if (scaled === null)
      slipAt(found, 'specimens', row, 'grade scale', `There is no grade scale called "${scale ?? ''}".`);
    const grade =
      text === undefined || scaled === null
        ? null
        : parseGrade(text, { ...scaled, ...(problem === undefined ? {} : { problem }) });
    if (grade?.ok === false) slipAt(found, 'specimens', row, 'grade', grade.problem);
    return [
      {
        type,
        specimen,
        grade: grade?.ok === true ? grade.value : null,
        source: source ?? null,
        date: date ?? null,
        sameAs: listed(row.cells['same as']),
        line: row.line,
      },
    ];
  });
}

function listed(cell: string | undefined): readonly string[] {
  return (cell ?? '')
    .split(';')
    .map((each) => each.trim())
    .filter((each) => each !== '');
}

const COUNTED = /^[1-9]\d*$/;

export function pairsIn(found: Found, isKnown: (id: string) => boolean): readonly DiePair[] {
  return rowsIn(found, 'dies').flatMap((row): readonly DiePair[] => {
    const obverse = wanted(found, 'dies', row, 'obverse');
    const reverse = wanted(found, 'dies', row, 'reverse');
    const { coins } = row.cells;
    const types = listed(row.cells['type']);
    for (const type of types)
      if (!isKnown(type))
        slipAt(
          found,
          'dies',
          row,
          'type',
          `There is no type ${type} in this series. Write the id of a row of types.csv.`,
        );
    if (coins !== undefined && !COUNTED.test(coins))
      slipAt(
        found,
        'dies',
        row,
        'coins',
        `Coins are counted in whole numbers; this says "${coins}". Leave it empty where nobody counted.`,
      );
    if (obverse === null || reverse === null) return [];
    return [{ obverse, reverse, types, coins: coins === undefined || !COUNTED.test(coins) ? null : Number(coins) }];
  });
}

export function statesIn(found: Found): readonly DieStateRow[] {
  return rowsIn(found, 'die-states').flatMap((row): readonly DieStateRow[] => {
    const die = wanted(found, 'die-states', row, 'die');
    const state = wanted(found, 'die-states', row, 'state');
    return die === null || state === null
      ? []
      : [{ die, state, after: listed(row.cells['after']), sign: row.cells['sign'] }];
  });
}
