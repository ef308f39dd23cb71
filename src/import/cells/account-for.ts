import type { Sheet } from '../sheets/sheet.ts';
import type { Draft } from '../plan/draft.ts';
import { blankIn } from './blank.ts';
import { columnKeys, readingsOf } from '../columns/column-key.ts';
import type { Mapping, Reading } from '../columns/mapping.ts';
import { parseReading } from '../columns/parse-column-rule.ts';
import { partsOf } from '../columns/pattern.ts';

/** Where every cell with something in it went. The figures add up: `cells` is the sum of the rest, `lost` included. */
export type Account = {
  readonly rows: number;
  readonly pieces: number;
  readonly rowsSetAside: number;
  readonly cells: number;
  readonly inFields: number;
  readonly inLedger: number;
  readonly unread: number;
  /** A dash, "n/a" and the like. */
  readonly blanks: number;
  /** Of columns the mapping leaves out. */
  readonly leftOut: number;
  readonly inRowsSetAside: number;
  readonly lost: readonly { readonly row: number; readonly heading: string; readonly text: string }[];
};

type Place = 'inFields' | 'inLedger' | 'unread' | 'blanks' | 'leftOut' | 'inRowsSetAside' | 'lost';

/** Looks every cell up in the drafts, by what is in them and not by what the reader says it did. */
export function accountFor(sheet: Sheet, drafts: readonly Draft[], mapping: Mapping): Account {
  const keys = columnKeys(sheet);
  const readings = readingsOf(sheet, mapping);
  const byRow = new Map(drafts.map((draft) => [draft.row, draft]));
  const count: Record<Place, number> = {
    inFields: 0,
    inLedger: 0,
    unread: 0,
    blanks: 0,
    leftOut: 0,
    inRowsSetAside: 0,
    lost: 0,
  };
  const lost: { row: number; heading: string; text: string }[] = [];
  for (const { row, cells } of sheet.rows) {
    const draft = byRow.get(row);
    const held = draft === undefined ? '' : digitsOf(JSON.stringify(draft));
    cells.forEach(({ text, value }, at) => {
      if (text === '') return;
      const figure = value?.kind === 'number' || value?.kind === 'money' ? value.figure : text;
      const heading = keys[at] ?? '';
      const found =
        draft === undefined
          ? 'inRowsSetAside'
          : placeOf(draft, heading, text, figure, readings[at] ?? [], held, mapping);
      count[found] += 1;
      if (found === 'lost') lost.push({ row, heading, text });
    });
  }
  return {
    rows: sheet.rows.length,
    pieces: drafts.length,
    rowsSetAside: sheet.rows.length - byRow.size,
    cells: Object.values(count).reduce((sum, one) => sum + one, 0),
    ...count,
    lost,
  };
}

function placeOf(
  draft: Draft,
  heading: string,
  text: string,
  figure: string,
  readings: readonly Reading[],
  held: string,
  mapping: Mapping,
): Place {
  if (draft.unread.some((cell) => cell.heading.split(' + ').includes(heading))) return 'unread';
  if (readings.every(({ kind }) => kind === 'nothing')) return 'leftOut';
  const places = readings.flatMap((reading) =>
    reading.kind === 'pattern' ? partsOf(reading.pattern).flatMap(partReading) : [reading],
  );
  if (places.some((reading) => reading.kind === 'ledger' && isInLedger(draft, reading, heading, text)))
    return 'inLedger';
  const isTold = places.some((reading) => fieldsOf(reading).some((field) => stands(draft, field)));
  // Every figure of the cell stands somewhere in the draft: a field that is there for another reason proves nothing.
  if (isTold && figuresIn(figure).every((digits) => held.includes(digits))) return 'inFields';
  return blankIn(text, mapping.blanks) === null ? 'lost' : 'blanks';
}

function partReading(part: string): readonly Reading[] {
  const read = parseReading(part);
  return read.ok ? [read.value] : [];
}

function isInLedger(
  draft: Draft,
  reading: Extract<Reading, { kind: 'ledger' }>,
  heading: string,
  text: string,
): boolean {
  const own = Object.entries(draft.ledger).some(([column, held]) => column.startsWith(heading) && held.includes(text));
  const held = reading.column === undefined ? undefined : draft.ledger[reading.column];
  return own || (held !== undefined && figuresIn(text).every((digits) => digitsOf(held).includes(digits)));
}

/** Where in a draft a reading shows. */
function fieldsOf(reading: Reading): readonly string[] {
  if (reading.kind === 'reference') return ['references'];
  if (reading.kind !== 'field') return [];
  const { field } = reading;
  if (field.startsWith('date')) return ['date', 'dated'];
  if (field.startsWith('reference')) return ['references'];
  if (field === 'height' || field === 'width') return ['diameter'];
  if (field === 'metal') return ['metal', 'fineness'];
  if (field === 'measures') return ['weight', 'diameter', 'thickness', 'axis', 'fineness'];
  if (['moneyer', 'engraver', 'medallist', 'die-sinker', 'artist'].includes(field)) return ['makers'];
  return [/^(?:obverse|reverse) die$/.test(field) ? 'dies' : (field.split(' ')[0] ?? field)];
}

function stands(draft: Draft, field: string): boolean {
  if (field === 'story') return draft.story !== '';
  if (field === 'id') return draft.id !== undefined;
  return field in draft.facts || field in draft.names;
}

/** Runs of figures, a decimal mark counting for nothing: `1,38` is `138`. */
function figuresIn(text: string): readonly string[] {
  return (
    digitsOf(text)
      .match(/\d+/g)
      ?.map((digits) => digits.replace(/^0+(?=\d)/, '')) ?? []
  );
}

function digitsOf(text: string): string {
  return text.replace(/(\d)[.,'’\u00a0\u202f ](?=\d)/g, '$1');
}
