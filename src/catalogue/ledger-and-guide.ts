import { isToCome } from '../core/dating/interval.ts';
import { parseDate } from '../core/dating/parse-date.ts';
import { parseMoney } from '../core/money/money.ts';
import { parseMoneyRange } from '../core/money/money-range.ts';
import { placesOf } from '../core/sets/places.ts';
import { readCsv } from './csv.ts';
import { nearestName } from './nearest.ts';
import type { CabinetFolder } from './files.ts';
import type { Problem } from './problem.ts';
import { problem } from './problem.ts';
import type { Records } from './records.ts';
import { LEDGER_COLUMNS } from './fields/ledger-columns.ts';
import { GUIDE_COLUMNS, NOT_SECRET_COLUMNS } from './schema/cabinet.ts';
import { setListsOf, setRuleOf } from './for-core/set-rule.ts';
import { readTypes } from './types/types-of.ts';

const LEDGER = 'private/ledger.csv';
const GUIDE = 'private/guide.csv';

type Names = {
  readonly folder: string;
  readonly known: readonly string[];
  readonly isKnown: (cell: string) => boolean;
  /** The name meant by something else that was written: an inventory number. */
  readonly meant: (cell: string) => string | null;
};

type Column = {
  /** The ids a cell may hold, where it holds one. */
  readonly names?: Names;
  /** Whether the table makes no sense without it. */
  readonly wanted?: true;
  /** Reads a cell; its sentence is a problem. */
  readonly read?: (cell: string) => string | null;
  /** The day it is, when a cell names one that is still to come; null otherwise. */
  readonly dayToCome?: (cell: string) => string | null;
};

/** Finds what is wrong in the ledger and the guide: columns, names of pieces and sets, money, dates. */
export function checkPrivate(records: Records, folder: CabinetFolder, day: string): readonly Problem[] {
  const sets = { pieces: new Set(records.named.pieces), sets: new Set(records.named.sets) };
  const names = (of: 'pieces' | 'sets') => ({
    folder: of,
    known: records.named[of],
    isKnown: (cell: string) => sets[of].has(cell),
    meant: (cell: string) =>
      of === 'pieces' ? (records.pieces.find(({ fields }) => fields.number === cell)?.id ?? null) : null,
  });
  const money = (cell: string): string | null =>
    sentence(parseMoney(cell, { dollar: records.cabinet?.fields.currency }));
  const worth = (cell: string): string | null =>
    sentence(parseMoneyRange(cell, { dollar: records.cabinet?.fields.currency }));
  const date: Column = {
    read: (cell) => sentence(parseDate(cell, { dateOf: 'event' })),
    dayToCome: (cell) => {
      const outcome = parseDate(cell, { dateOf: 'event' });
      return outcome.ok && isToCome(outcome.value, day) ? day : null;
    },
  };
  const figure = (cell: string): string | null =>
    /^\d+(\.\d{1,2})?$/.test(cell)
      ? null
      : `A guide price is a figure with a point, without the currency; this says "${cell}". Write 120 or 120.50.`;
  return [
    ...folder.files.flatMap(({ file, text }) => (isOwnTable(file) ? checkShape(file, text ?? '') : [])),
    ...checkTable(folder, LEDGER, LEDGER_COLUMNS, {
      piece: { names: names('pieces'), wanted: true },
      cost: { read: money },
      value: { read: worth },
      insured: { read: money },
      acquired: date,
    }),
    ...checkTable(folder, GUIDE, GUIDE_COLUMNS, {
      set: { names: names('sets'), wanted: true },
      low: { read: figure },
      high: { read: figure },
      date,
    }),
    ...checkTable(folder, 'private/not-secret.csv', NOT_SECRET_COLUMNS, {
      column: { wanted: true },
      value: { wanted: true },
      date,
    }),
    ...checkGuidePlaces(records, folder),
    ...checkPricesSeen(folder, date),
  ];
}

/** Tables that this program reads: those of `private/` and of the types; not the copies of a keeper's sheets. */
function isOwnTable(file: string): boolean {
  return file.endsWith('.csv') && (/^private\/[^/]+$/.test(file) || file.startsWith('types/'));
}

/** Rows of a table with too few or too many cells, by which facts stand under the wrong heading. */
export function checkShape(file: string, text: string): readonly Problem[] {
  const { headings, uneven, otherMark } = readCsv(text);
  if (otherMark !== null) return [problem('table-separator', { file, line: 1 }, otherMark)];
  return uneven.map(({ line, cells }) => problem('row-uneven', { file, line }, cells, headings.length));
}

/** Prices seen have columns of the keeper's own; none was seen on a day that is still to come. */
function checkPricesSeen(folder: CabinetFolder, date: Column): readonly Problem[] {
  const file = 'private/prices.csv';
  const { headings } = readCsv(folder.files.find((held) => held.file === file)?.text ?? '');
  const dated = headings.filter((heading) => /^(?:date|when|seen|sold)$/i.test(heading));
  return checkTable(folder, file, headings, Object.fromEntries(dated.map((heading) => [heading, date])));
}

/** A guide price is for a place that its set has. */
function checkGuidePlaces(records: Records, folder: CabinetFolder): readonly Problem[] {
  const text = folder.files.find(({ file }) => file === GUIDE)?.text ?? '';
  const lists = setListsOf(records, records.cabinet?.fields, readTypes(records).types);
  const { rows, lines } = readCsv(text);
  return rows.flatMap((row, index) => {
    const set = records.sets.find(({ id }) => id === row['set']);
    const places = set === undefined ? null : placesOf(setRuleOf(set), lists);
    const place = (row['place'] ?? '').trim();
    if (set === undefined || places?.ok !== true || place === '') return [];
    const known = places.value.map(({ id }) => id);
    const spot = { file: GUIDE, line: lines[index] ?? null, field: 'place' };
    return known.includes(place) ? [] : [problem('guide-place-unknown', spot, place, set.id, known)];
  });
}

function checkTable(
  folder: CabinetFolder,
  file: string,
  columns: readonly string[],
  forms: Readonly<Record<string, Column>>,
): readonly Problem[] {
  const text = folder.files.find((held) => held.file === file)?.text;
  if (text === undefined || text === null) return [];
  const { headings, rows, lines, otherMark } = readCsv(text);
  if (otherMark !== null) return [];
  // The ledger takes columns of the keeper's own; what is nearly the name of a column is a slip, for nothing would guard it so.
  const isOwn = (heading: string): boolean => file === LEDGER && isOwnColumn(heading);
  const unknown = headings
    .filter((heading) => !columns.includes(heading) && !isOwn(heading))
    .map((heading) => problem('column-unknown', { file, line: 1, field: heading }, heading, columns));
  const missing = Object.entries(forms)
    .filter(([column, { wanted }]) => wanted === true && !headings.includes(column))
    .map(([column]) => problem('column-missing', { file, line: 1, field: column }, column));
  const cells = rows.flatMap((row, index) =>
    Object.entries(forms).flatMap(([column, { names, read, dayToCome }]): readonly Problem[] => {
      const cell = (row[column] ?? '').trim();
      if (cell === '') return [];
      const spot = { file, line: lines[index] ?? null, field: column };
      if (names !== undefined && !names.isKnown(cell))
        return [problem('row-names-nothing', spot, cell, names.folder, names.known, names.meant(cell))];
      const says = read?.(cell) ?? null;
      if (says !== null) return [problem('cell-unreadable', spot, says)];
      const today = dayToCome?.(cell) ?? null;
      return today === null ? [] : [problem('date-in-future', spot, cell, today)];
    }),
  );
  return [...unknown, ...missing, ...cells];
}

/** Whether a heading of the ledger is one of the keeper's own, and no slip in the name of a column that is read. */
export function isOwnColumn(heading: string): boolean {
  return heading !== '' && nearestName(heading, LEDGER_COLUMNS) === null;
}

function sentence(outcome: { ok: true } | { ok: false; problem: string }): string | null {
  return outcome.ok ? null : outcome.problem;
}
