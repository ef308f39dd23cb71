import { yearsOf } from '../core/dating/interval.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import { parseGrade } from '../core/grade/parse-grade.ts';
import { SCALE_IDS } from '../core/grade/grade.ts';
import { isScaleId } from '../core/grade/scales.ts';
import type { Lists, SetRule, Where } from '../core/sets/set-rule.ts';
import type { Records } from './records.ts';
import type { Filed } from './records.ts';
import type { SetFields, WhereFields } from './schema/goals.ts';

/** A set's file as the core wants it: dates as years, the aim on the numeric scale. */
export function setRuleOf({ id, fields }: Filed<SetFields>): SetRule {
  const aim = aimOf(fields);
  return {
    id,
    title: fields.title,
    'one-per': fields['one-per'],
    count: fields.count,
    where: whereOf(fields.where),
    places: fields.places?.map((place) => ({
      ...place,
      where: 'where' in place && place.where !== undefined ? whereOf(place.where) : undefined,
    })),
    accept: fields.accept,
    aim: aim?.ok === true ? aim.value : null,
  };
}

/** The grade aimed at as an interval of the numeric scale; null when the set has no aim. */
export function aimOf(fields: SetFields): Outcome<{ low: number; high: number }> | null {
  const scale = fields['aim-scale'] ?? 'uk';
  if (fields.aim === undefined) return null;
  if (!isScaleId(scale))
    return refuse(`There is no grade scale called "${scale}". Write one of ${SCALE_IDS.join(', ')}.`);
  const grade = parseGrade(fields.aim, { scale });
  if (!grade.ok) return grade;
  const { low, high } = grade.value;
  return low === null || high === null
    ? refuse(`"${fields.aim}" is not a grade to aim at. Write VF.`)
    : good({ low, high });
}

function whereOf({ date, ...facts }: WhereFields): Where {
  return date === undefined ? facts : { ...facts, date: yearsOf(date) };
}

/** What a rule may draw places from. */
export function setListsOf(records: Pick<Records, 'rulers' | 'mints'>): Lists {
  return {
    rulers: records.rulers.map(({ id, fields }) => ({
      id,
      name: fields.name,
      realm: fields.realm,
      reigns: fields.reigns.map(({ from, to, coins }) => ({ low: yearsOf(from).low, high: yearsOf(to).high, coins })),
    })),
    mints: records.mints.map(({ id, fields }) => ({
      id,
      name: fields.name,
      area: fields.area,
      struck: fields.struck?.map(({ from, to }) => ({ low: yearsOf(from).low, high: yearsOf(to).high })),
    })),
  };
}
