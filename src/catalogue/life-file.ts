import { parseDate } from '../core/dating/parse-date.ts';
import type { Dating } from '../core/dating/dating.ts';
import { dealFaults } from '../core/life/money-by-year.ts';
import type { Deal } from '../core/life/money-by-year.ts';
import { isToCome } from '../core/dating/interval.ts';
import { courseOf, daysOf, LIFE_EVENTS, statusOf } from '../core/life/life.ts';
import type { Course, LifeEvent, LifeEventName } from '../core/life/life.ts';
import { parseMoney } from '../core/money/money.ts';
import type { Money } from '../core/money/money.ts';
import type { Outcome } from '../core/outcome.ts';
import { readCsv } from './csv.ts';
import type { CabinetFolder } from './files.ts';
import { splitFrontMatter } from './front-matter.ts';
import type { Problem } from './problem.ts';
import { problem } from './problem.ts';
import type { Records } from './records.ts';

export const LIFE = 'private/life.csv';
const LEDGER = 'private/ledger.csv';

/** The columns of `private/life.csv`: what became of pieces. A row without a piece gives the price of a whole deal. */
export const LIFE_COLUMNS = ['piece', 'date', 'event', 'amount', 'costs', 'with', 'due', 'deal', 'note'] as const;

/** What the table tells, and what of it cannot be read. */
export type Life = {
  readonly events: readonly LifeEvent[];
  readonly deals: readonly Deal[];
  readonly courses: ReadonlyMap<string, Course>;
  readonly problems: readonly Problem[];
};

type Row = Readonly<Record<string, string>>;

/** Reads `private/life.csv`; where there is none, nothing is told. */
export function readLife(folder: Pick<CabinetFolder, 'files'>, pieces: readonly string[]): Life {
  const text = folder.files.find(({ file }) => file === LIFE)?.text ?? '';
  const { headings, rows, lines } = readCsv(text);
  const known = new Set(pieces);
  const problems: Problem[] = headings
    .filter((heading) => !LIFE_COLUMNS.some((column) => column === heading))
    .map((heading) => problem('column-unknown', { file: LIFE, line: 1, field: heading }, heading, LIFE_COLUMNS));
  const events: LifeEvent[] = [];
  const deals: Deal[] = [];
  for (const [index, row] of rows.entries()) {
    const line = lines[index] ?? 0;
    const spot = (field: string) => ({ file: LIFE, line, field });
    const read = <T>(field: string, parse: (cell: string) => Outcome<T>): T | null => {
      const cell = (row[field] ?? '').trim();
      if (cell === '') return null;
      const outcome = parse(cell);
      if (outcome.ok) return outcome.value;
      problems.push(problem('cell-unreadable', spot(field), outcome.problem));
      return null;
    };
    const [piece, deal] = [(row['piece'] ?? '').trim(), (row['deal'] ?? '').trim()];
    const amount = read<Money>('amount', parseMoney);
    if (piece === '' && deal !== '') {
      deals.push({ deal, total: amount, line });
      continue;
    }
    if (!known.has(piece)) {
      problems.push(problem('row-names-nothing', spot('piece'), piece, 'pieces', pieces, null));
      continue;
    }
    const event = eventIn(row);
    if (event === null)
      problems.push(problem('choice-unknown', spot('event'), row['event'] ?? '', Object.keys(LIFE_EVENTS)));
    const [date, due] = [read<Dating>('date', eventDate), read<Dating>('due', eventDate)];
    if ((row['date'] ?? '').trim() === '') problems.push(problem('field-missing', spot('date'), 'date'));
    const costs = read<Money>('costs', parseMoney);
    if (event !== null && date !== null)
      events.push({ piece, event, date, amount, costs, due, deal: deal === '' ? null : deal, line });
  }
  const byPiece = new Map<string, LifeEvent[]>();
  for (const event of events) byPiece.set(event.piece, [...(byPiece.get(event.piece) ?? []), event]);
  return { events, deals, courses: new Map([...byPiece].map(([id, own]) => [id, courseOf(own)])), problems };
}

/** A day of an event: `2003-05` is a month. */
function eventDate(cell: string): Outcome<Dating> {
  return parseDate(cell, { dateOf: 'event' });
}

function eventIn(row: Row): LifeEventName | null {
  const said = (row['event'] ?? '').trim().toLowerCase();
  return said in LIFE_EVENTS ? (said as LifeEventName) : null;
}

/** Pieces whose life says where they are, with the status that it gives them. */
export function statusesIn({ courses }: Life): ReadonlyMap<string, ReturnType<typeof statusOf>> {
  return new Map([...courses].map(([id, course]) => [id, statusOf(course)]));
}

/**
 * What is wrong in the life of pieces on a day: what cannot have been yet or at all, deals whose shares do not come to their price, and where it
 * contradicts the status in a piece's file or the ledger.
 */
export function checkLife(records: Records, folder: CabinetFolder, day: string): readonly Problem[] {
  const life = readLife(folder, records.named.pieces);
  const faults = [...life.courses.values()].flatMap((course) => course.faults);
  const impossible = [...faults, ...dealFaults(life.events, life.deals)].map(({ line, says }) =>
    problem('life-impossible', { file: LIFE, line, field: 'event' }, says),
  );
  const early = life.events.flatMap(({ date, line }) =>
    isToCome(date, day) ? [problem('date-in-future', { file: LIFE, line, field: 'date' }, date.text, day)] : [],
  );
  const statuses = [...statusesIn(life)].flatMap(([id, status]) => {
    const said = statusWritten(folder, id);
    return said === undefined || status === null || said === status
      ? []
      : [problem('life-status', { file: `pieces/${id}/piece.md`, field: 'status' }, said, status)];
  });
  return [...life.problems, ...early, ...impossible, ...statuses, ...againstLedger(life, folder)];
}

/** The status that the file of a piece states; undefined where it is silent. */
function statusWritten({ files }: CabinetFolder, id: string): string | undefined {
  const text = files.find(({ file }) => file === `pieces/${id}/piece.md`)?.text ?? '';
  return /^status:[ \t]*["']?([a-z]+)/m.exec(splitFrontMatter(text)?.facts ?? '')?.[1];
}

/** Where the ledger says another cost or day than the event by which a piece came. */
function againstLedger({ courses }: Life, folder: CabinetFolder): readonly Problem[] {
  if (courses.size === 0) return [];
  const { rows, lines } = readCsv(folder.files.find(({ file }) => file === LEDGER)?.text ?? '');
  return rows.flatMap((row, index): readonly Problem[] => {
    const came =
      courses.get(row['piece']?.trim() ?? '')?.events.filter(({ event }) => LIFE_EVENTS[event] === 'comes') ?? [];
    const last = came.at(-1);
    if (last === undefined) return [];
    const spot = (field: string) => ({ file: LEDGER, line: lines[index] ?? 0, field });
    const [cost, acquired] = [parseMoney(row['cost'] ?? ''), eventDate(row['acquired'] ?? '')];
    const { amount, date } = last;
    const isOtherSum =
      cost.ok && amount !== null && (cost.value.minor !== amount.minor || cost.value.currency !== amount.currency);
    const isOtherDay =
      acquired.ok &&
      (daysOf(acquired.value).last < daysOf(date).first || daysOf(acquired.value).first > daysOf(date).last);
    return [
      ...(isOtherSum ? [problem('life-ledger', spot('cost'), 'cost', last.line)] : []),
      ...(isOtherDay ? [problem('life-ledger', spot('acquired'), 'day', last.line)] : []),
    ];
  });
}

/** The event as which the ledger counts where a piece's life tells of no arrival: bought, on the day and for the sum it says. */
export function boughtByLedger(folder: Pick<CabinetFolder, 'files'>, life: Life): readonly LifeEvent[] {
  const { rows, lines } = readCsv(folder.files.find(({ file }) => file === LEDGER)?.text ?? '');
  return rows.flatMap((row, index): readonly LifeEvent[] => {
    const piece = row['piece']?.trim() ?? '';
    const came = life.courses.get(piece)?.events.some(({ event }) => LIFE_EVENTS[event] === 'comes') ?? false;
    const acquired = eventDate(row['acquired'] ?? '');
    const cost = parseMoney(row['cost'] ?? '');
    if (came || !acquired.ok || piece === '') return [];
    const amount = cost.ok ? cost.value : null;
    return [
      {
        piece,
        event: 'bought',
        date: acquired.value,
        amount,
        costs: null,
        due: null,
        deal: null,
        line: -(lines[index] ?? 0),
      },
    ];
  });
}
