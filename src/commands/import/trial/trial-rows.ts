import { columnKeys, readingsOf } from '../../../import/columns/column-key.ts';
import type { Mapping } from '../../../import/columns/mapping.ts';
import { formatReading } from '../../../import/columns/parse-column-rule.ts';
import type { ImportPlan } from '../../../import/plan/plan-import.ts';
import type { BroughtIn } from '../../../import/reimport/base.ts';
import { flatFacts } from '../../../import/reimport/flat-facts.ts';
import type { Sheet } from '../../../import/sheets/sheet.ts';
import { formatInLine } from '../../../catalogue/write/write-yaml.ts';
import type { Written } from '../../../catalogue/yaml.ts';

/** What an import would do, before it is done. */
export type Trial = {
  readonly sheet: Sheet;
  readonly mapping: Mapping;
  readonly plan: ImportPlan;
  readonly before: readonly BroughtIn[];
  /** What is asked, in words, a text each. */
  readonly questions: readonly string[];
};

/** One row of the sheet as the trial shows it. */
export type TrialRow = {
  readonly row: number;
  /** The piece it becomes, and whether that is new; null for a row that becomes none. */
  readonly piece: { readonly id: string; readonly state: 'new' | 'changed' | 'same' } | null;
  /** Why it becomes no piece; empty otherwise. */
  readonly because: string;
  readonly cells: readonly { readonly heading: string; readonly text: string; readonly becomes: string }[];
  /** What will be in the piece and, with `ledger`, in the ledger; the value it has now where that changes. */
  readonly facts: readonly { readonly field: string; readonly value: string; readonly was: string | null }[];
  /** What is to be looked at. */
  readonly asked: readonly string[];
};

/** Every row below the headings, and every other row that holds something, in the order of the sheet. */
export function trialRows({ sheet, mapping, plan, before }: Trial): readonly TrialRow[] {
  const keys = columnKeys(sheet);
  const becomes = readingsOf(sheet, mapping).map((readings) => readings.map(formatReading).join('; '));
  const placed = new Map(plan.pieces.map((piece) => [piece.row, piece]));
  const because = new Map(plan.setAside.map((one) => [one.row, one]));
  const earlier = new Map(before.map((piece) => [piece.id, piece]));
  const unread = new Map<number, string[]>();
  for (const { row, heading, text, because: why } of plan.unread)
    unread.set(row, [...(unread.get(row) ?? []), `${heading}: "${text}". ${why}`]);
  const records = sheet.rows.map(({ row, cells }): TrialRow => {
    const piece = placed.get(row);
    const was = piece === undefined ? undefined : earlier.get(piece.id);
    const old = was === undefined ? null : flatFacts(was.facts);
    const facts = piece === undefined ? [] : [...flatFacts(piece.base.facts)];
    return {
      row,
      piece: piece === undefined ? null : { id: piece.id, state: piece.state },
      because: piece === undefined ? (because.get(row)?.because ?? '') : '',
      cells: cells.flatMap(({ text }, at) =>
        text === '' ? [] : [{ heading: keys[at] ?? '', text, becomes: becomes[at] ?? '' }],
      ),
      facts: [
        ...facts.map(([field, value]) => ({ field, value: shown(value), was: wasShown(old?.get(field), value) })),
        ...(piece === undefined || piece.base.story === ''
          ? []
          : [{ field: 'story', value: piece.base.story, was: null }]),
        ...Object.entries(piece?.base.ledger ?? {}).map(([column, value]) => ({
          field: `ledger ${column}`,
          value,
          was: wasShown(was?.ledger[column], value),
        })),
      ],
      asked: [
        ...(unread.get(row) ?? []),
        ...(piece?.conflicts ?? []).map(
          ({ path, inSheet, inFile }) =>
            `${path}: the sheet says ${shown(inSheet)}, the file ${inFile === null ? 'nothing' : shown(inFile)}; the file is left as it is.`,
        ),
        ...(piece?.emptied ?? []).map((path) => `${path} is empty in the sheet now; the piece keeps it.`),
      ],
    };
  });
  const inSheet = new Set(sheet.rows.map(({ row }) => row));
  const others = plan.setAside
    .filter(({ row }) => !inSheet.has(row))
    .map(({ row, text, because: why }): TrialRow => {
      return { row, piece: null, because: why, cells: [{ heading: '', text, becomes: '' }], facts: [], asked: [] };
    });
  return [...records, ...others].sort((a, b) => a.row - b.row);
}

function shown(value: Written): string {
  if (typeof value === 'string') return value;
  return Array.isArray(value) ? (value as readonly Written[]).map(shown).join('; ') : formatInLine(value);
}

/** What a field was before, where that is something else. */
function wasShown(was: Written | undefined, now: Written): string | null {
  if (was === undefined) return null;
  const text = shown(was);
  return text === shown(now) ? null : text;
}
