import { dayFromIso } from '../../core/calendars/civil.ts';
import type { Dating } from '../../core/dating/dating.ts';
import { yearsOf } from '../../core/dating/interval.ts';
import type { Grade } from '../../core/grade/grade.ts';
import type { Outcome } from '../../core/outcome.ts';
import { refuse } from '../../core/outcome.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import { SCALE_IDS } from '../../core/grade/grade.ts';
import { isScaleId } from '../../core/grade/scales.ts';
import type { TimeSpan } from '../../core/sets/set-piece.ts';
import { lineOf } from '../../core/types/series.ts';
import type { ListedType, Lists, SetRule, Where } from '../../core/sets/set-rule.ts';
import { citedWorks } from '../types/cited-works.ts';
import { openFacts } from '../types/inherit-facts.ts';
import type { TypeSeries } from '../types/series.ts';
import type { Types } from '../types/types-of.ts';
import { isBlank, known } from '../schema/fields.ts';
import type { Records } from '../records.ts';
import type { Filed } from '../records.ts';
import type { CabinetFields } from '../schema/cabinet.ts';
import type { SetFields, WhereFields } from '../schema/sets-and-eras.ts';

/** A set's file as the core wants it: dates as years, the aim on the numeric scale. */
export function setRuleOf({ id, fields }: Filed<SetFields>): SetRule {
  const aim = aimOf(fields);
  return {
    id,
    title: fields.title,
    'one-per': fields['one-per'],
    count: fields.count,
    where: whereOf(fields.where),
    series: fields.series,
    level: fields.level,
    places: fields.places?.map((place) => ({
      ...place,
      where: 'where' in place && place.where !== undefined ? whereOf(place.where) : undefined,
    })),
    accept: fields.accept,
    dates: fields.dates,
    aim: aim?.ok === true ? aim.value : null,
  };
}

/** The grade aimed at; null when the set has no aim. */
export function aimOf(fields: SetFields): Outcome<Grade> | null {
  const scale = fields['aim-scale'] ?? 'uk';
  if (fields.aim === undefined) return null;
  if (!isScaleId(scale))
    return refuse(`There is no grade scale called "${scale}". Write one of ${SCALE_IDS.join(', ')}.`);
  const grade = parseGrade(fields.aim, { scale });
  if (!grade.ok) return grade;
  return grade.value.low === null ? refuse(`"${fields.aim}" is not a grade to aim at. Write VF.`) : grade;
}

function whereOf({ date, ...facts }: WhereFields): Where {
  return date === undefined ? facts : { ...facts, date: timeSpanOf(date) };
}

/** When something was made, by years and, where the text or its calendar settles them, by days. */
export function timeSpanOf(date: Dating): TimeSpan {
  const { from, to, dayCalendar, years } = date;
  return {
    ...yearsOf(date),
    ...(from === undefined || to === undefined || dayCalendar === undefined
      ? {}
      : { days: [dayFromIso(from, dayCalendar), dayFromIso(to, dayCalendar)] as const }),
    ...(years === undefined ? {} : { alternatives: years.map(([low, high]) => ({ low, high })) }),
  };
}

const STATED = ['kind', 'ruler', 'issuer', 'mint', 'denomination', 'metal', 'made', 'shape'] as const;

/** What a type says of every piece of it, as far as a rule may ask for it and no narrower type says otherwise. */
function statedBy(series: TypeSeries, id: string): Pick<ListedType, 'states' | 'made'> {
  const facts = series.facts.get(id) ?? {};
  const open = openFacts(series, id);
  const states = STATED.flatMap((fact): [string, readonly string[]][] => {
    const value = facts[fact];
    if (value === undefined || value === 'unknown' || open.has(fact)) return [];
    return [[fact, value === 'none' ? [] : [value].flat()]];
  });
  const date = facts.date === undefined || isBlank(facts.date) || open.has('date') ? null : known(facts.date);
  return { states: Object.fromEntries(states), ...(date === null ? {} : { made: yearsOf(date) }) };
}

/** What a rule may draw places from. */
export function setListsOf(
  records: Pick<Records, 'rulers' | 'mints' | 'works'>,
  cabinet: Pick<CabinetFields, 'areas' | 'realms'> | undefined,
  types: Types,
): Lists {
  return {
    types: types.series.flatMap((series) =>
      [...series.types.values()].map(({ id, label, level, narrower }) => ({
        id,
        names: lineOf(series.types, id).flatMap((one) => [one.id, `${series.id}/${one.id}`]),
        label,
        level,
        series: series.id,
        leaf: narrower.length === 0,
        ...statedBy(series, id),
      })),
    ),
    rulers: records.rulers.map(({ id, fields }) => ({
      id,
      name: fields.name,
      realm: fields.realm,
      dynasty: fields.dynasty,
      reigns: fields.reigns.map(({ from, to, coins, realm }) => ({
        low: yearsOf(from).low,
        high: yearsOf(to).high,
        coins,
        realm,
      })),
    })),
    mints: records.mints.map(({ id, fields }) => ({
      id,
      name: fields.name,
      area: fields.area,
      struck: fields.struck?.map(({ from, to }) => ({ low: yearsOf(from).low, high: yearsOf(to).high })),
    })),
    works: citedWorks(records.works),
    areas: cabinet?.areas ?? [],
    realms: cabinet?.realms ?? [],
  };
}
