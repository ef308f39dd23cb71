import { isToCome } from '../../core/dating/interval.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import type { Rule } from './rule.ts';
import { nearestName } from '../nearest.ts';
import { isBlank } from '../schema/fields.ts';
import type { Problem, Spot } from '../problem.ts';
import { problem } from '../problem.ts';
import { SERIES_TABLES, TABLE_NAMES } from '../types/series-tables.ts';
import type { SeriesTable } from '../types/series-tables.ts';
import type { TypeSeries } from '../types/series.ts';
import { factColumn, FACT_COLUMNS } from '../types/type-facts.ts';
import { readTypes, typeNamed } from '../types/types-of.ts';
import type { Place } from './rule.ts';
import { nameOf } from './names.ts';

/** Every table of a series can be read, names what is there, and has columns that something reads. */
export const checkTypes: Rule = (records, place, day) => {
  const { types, slips } = readTypes(records);
  return [
    ...slips.map(({ series, table, line, column, says }) => {
      const rows = table === 'series' ? undefined : series.tables[table];
      const spot = rows === undefined ? sharedSpot(series, column, place) : { file: rows.file, line, field: column };
      return problem('cell-unreadable', spot, says);
    }),
    ...types.series.flatMap((series) => [
      ...(series.whole ? checkColumns(series, place) : []),
      ...checkNamesIn(series, records, place),
      ...checkDatesIn(series, place, day),
      ...checkSameObjects(series, records.named.pieces),
      ...checkMintsOfDies(series, records),
      ...(['source', 'see-also'] as const).flatMap((field) =>
        series.fields[field].flatMap(({ work }, at) =>
          records.named.works.includes(work)
            ? []
            : [problem('work-unknown', place(series.file, [field, at]), work, records.named.works)],
        ),
      ),
    ]),
    ...records.pieces.flatMap(({ file, fields }): readonly Problem[] => {
      const named = fields.type === undefined || isBlank(fields.type) ? null : typeNamed(types, fields.type);
      return named === null || named.ok ? [] : [problem('type-unknown', place(file, ['type']), named.problem)];
    }),
  ];
};

function sharedSpot(series: TypeSeries, column: string, place: Place): Spot {
  return Object.hasOwn(series.fields.shared, column)
    ? place(series.file, ['shared', column])
    : place(series.file, [column]);
}

function checkColumns(series: TypeSeries, place: Place): readonly Problem[] {
  const characters = series.characters.map(({ id }) => id.toLowerCase());
  const known = (table: SeriesTable): readonly string[] =>
    table === 'types' ? [...SERIES_TABLES.types, ...characters, ...FACT_COLUMNS] : SERIES_TABLES[table];
  const isKnown = (table: SeriesTable, column: string): boolean =>
    known(table).includes(column) || (table === 'types' && factColumn(column) !== null);
  return [
    ...TABLE_NAMES.flatMap((table) => {
      const held = series.tables[table];
      const spot = (column: string): Spot => ({ file: held?.file ?? series.file, line: 1, field: column });
      return (held?.columns ?? [])
        .filter((column) => column !== '' && !isKnown(table, column))
        .map((column) =>
          problem('series-column', spot(column), column, nearestName(column, known(table)), known(table)),
        );
    }),
    ...Object.keys(series.fields.shared)
      .filter((column) => !isKnown('types', column.toLowerCase()))
      .map((column) =>
        problem(
          'series-column',
          place(series.file, ['shared', column]),
          column,
          nearestName(column, known('types')),
          known('types'),
        ),
      ),
  ];
}

/** What a specimen is said to be the same as is a line of its census or a piece: a misspelt name would count one object twice. */
function checkSameObjects({ file, tables, specimens }: TypeSeries, pieces: readonly string[]): readonly Problem[] {
  const known = new Set([...specimens.map(({ specimen }) => specimen), ...pieces]);
  const spot = (line: number): Spot => ({ file: tables.specimens?.file ?? file, line, field: 'same as' });
  return specimens.flatMap(({ sameAs, line }) =>
    sameAs
      .filter((name) => !known.has(name))
      .map((name) => {
        const near = nearestName(name, [...known]);
        const write = near === null ? 'Write one of those, with semicolons between several.' : `Write ${near}.`;
        return problem(
          'cell-unreadable',
          spot(line),
          `"${name}" is neither a specimen of this table nor a piece. ${write}`,
        );
      }),
  );
}

/** A mint that a pair of dies names has a file. */
function checkMintsOfDies({ file, tables }: TypeSeries, records: Parameters<Rule>[0]): readonly Problem[] {
  const held = tables.dies;
  return (held?.rows ?? []).flatMap(({ line, cells: { mint } }) =>
    nameOf('mint', mint, records, () => ({ file: held?.file ?? file, line, field: 'mint' })),
  );
}

/** A ruler, mint or denomination that a type names has a file; told once for each cell that says so. */
function checkNamesIn(series: TypeSeries, records: Parameters<Rule>[0], place: Place): readonly Problem[] {
  const found = [...series.facts].flatMap(([id, facts]) =>
    (['ruler', 'struck-for', 'mint', 'denomination'] as const).flatMap((field) =>
      nameOf(field, facts[field], records, () => factSpot(series, id, field, place)),
    ),
  );
  return toldOnce(found, ({ file, line, says }) => `${file} ${String(line)} ${says}`);
}

/** Where a fact of a type is stated: its own row, that of the type it comes from, or what all share. */
function factSpot(series: TypeSeries, id: string, field: string, place: Place): Spot {
  const by = series.types.get(id)?.says.get(field)?.by ?? null;
  const rows = series.tables.types;
  if (by === null || rows === undefined) return sharedSpot(series, field, place);
  return { file: rows.file, line: rows.rows.find(({ cells }) => cells['id'] === by)?.line ?? 1, field };
}

function toldOnce(found: readonly Problem[], keyOf: (one: Problem) => string): readonly Problem[] {
  const told = new Set<string>();
  return found.filter((one) => !told.has(keyOf(one)) && told.add(keyOf(one)));
}

/** No type was struck, no number concorded and no specimen recorded on a day that is still to come. */
function checkDatesIn(series: TypeSeries, place: Place, day: string): readonly Problem[] {
  const struck = [...series.facts].flatMap(([id, { date }]) =>
    date === undefined || isBlank(date) || !isToCome(date, day)
      ? []
      : [problem('made-in-future', factSpot(series, id, 'date', place), date.text, day)],
  );
  const recorded = (['concordance', 'specimens', 'rarities'] as const).flatMap((table) => {
    const held = series.tables[table];
    return (held?.rows ?? []).flatMap(({ line, cells: { date = '' } }) => {
      const read = parseDate(date, { dateOf: 'event' });
      const spot = { file: held?.file ?? series.file, line, field: 'date' };
      return read.ok && isToCome(read.value, day) ? [problem('date-in-future', spot, date, day)] : [];
    });
  });
  // A date that many types inherit is stated in one place.
  return toldOnce([...struck, ...recorded], ({ file, line, field }) => `${file} ${String(line)} ${field ?? ''}`);
}
