import { html } from 'hono/html';
import { contextOf } from '../../catalogue/piece-schemas.ts';
import { LIST_ROWS } from '../../catalogue/fields/list-fields.ts';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import type { FactsTable, FieldFacts, List, ReadAs } from '../../catalogue/fields/row.ts';
import type { Records } from '../../catalogue/records.ts';
import { reignsOf } from '../../catalogue/for-core/reigns.ts';
import { isBlank } from '../../catalogue/schema/fields.ts';
import { citedWorks } from '../../catalogue/types/cited-works.ts';
import { readTypes, seriesNamed, typeNamed } from '../../catalogue/types/types-of.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { onceFor } from '../../site/once-for.ts';
import type { CabinetState } from '../cabinet-state.ts';
import type { Html } from '../frame.ts';
import { idOf, namesIn, unknownName } from '../new-names.ts';
import { ledgerRow, withCurrency } from './ledger-rows.ts';
import { formatYear, formatDate } from '../../core/dating/format-date.ts';
import type { DateContext, Dating } from '../../core/dating/dating.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { formatGrade } from '../../core/grade/grade.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import { isScaleId } from '../../core/grade/scales.ts';
import { normalLegend } from '../../core/legends/normal-legend.ts';
import { parseLegend } from '../../core/legends/parse-legend.ts';
import { suggestReading } from '../../core/legends/suggest-reading.ts';
import { formatAxis, parseAxis } from '../../core/measures/parse-axis.ts';
import { formatLength, parseLength } from '../../core/measures/parse-length.ts';
import { parseSize } from '../../core/measures/parse-size.ts';
import { formatWeight, parseWeight } from '../../core/measures/parse-weight.ts';
import { formatFineness, parseFineness } from '../../core/metal/parse-fineness.ts';
import { formatMoneyRange, parseMoneyRange } from '../../core/money/money-range.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import { formatReference } from '../../core/references/reference.ts';
import type { CitedWork } from '../../core/references/reference.ts';

/** What else a form says that settles how one of its boxes is read: the scale of a grade, the rulers of a date. */
export type SaidBeside = { readonly scale: string | null; readonly ruler: string | null };

/** How the words of a box are read, in a sentence; empty where there is nothing to say, a problem where they cannot be. */
export function aloudIn(records: Records, row: FieldFacts, words: string, said: SaidBeside): Outcome<string> {
  if (words.trim() === '') return good('');
  if (row.list !== undefined)
    return namesAloud(records, row.list, row.several === true ? partsOf(words) : [words.trim()]);
  if (row.completes === 'types') return typeAloud(records, words);
  const as = row.reads;
  if (as === undefined) return good('');
  const beside = besideOf(records, said);
  const lines = row.control === 'lines' ? words.split('\n').filter((one) => one.trim() !== '') : [words];
  const read = lines.flatMap((line) =>
    row.blanks === true && isBlank(line.trim()) ? [] : [sayReading(as, line, beside)],
  );
  const slip = read.find(({ ok }) => !ok);
  return slip ?? good(read.flatMap((one) => (one.ok ? [one.value] : [])).join(' '));
}

/** What the cabinet knows that helps to read a text; that of its rulers and books is gathered once for the records as they are. */
function besideOf(records: Records, { scale, ruler }: SaidBeside): Beside {
  const named = partsOf(ruler ?? '').flatMap((said) => idOf('rulers', said, records) ?? []);
  const { reigns, works } = consulted(records);
  const { gr, currency } = records.cabinet?.fields ?? {};
  const rulers = records.rulers.filter(({ id }) => named.includes(id));
  return { dates: { ...contextOf(rulers, true), reigns }, works, gr, currency, scale: scale ?? '' };
}

const consulted = onceFor((records: Records) => ({
  reigns: records.rulers.flatMap(reignsOf),
  works: citedWorks(records.works).map((work, at) => ({ ...work, title: records.works[at]?.fields.title ?? work.id })),
}));

/** What is meant by names of a list; those it does not have are told, with the one that may be meant. */
function namesAloud(records: Records, list: List, said: readonly string[]): Outcome<string> {
  const told: string[] = [];
  for (const words of said) {
    const id = idOf(list, words, records);
    if (id === null) return refuse(unknownName(records, list, words));
    const name = namesIn(list, records).find((one) => one.id === id)?.names[0] ?? id;
    const reigns = list === 'rulers' ? (records.rulers.find((one) => one.id === id)?.fields.reigns ?? []) : [];
    const years = reigns.map(({ from, to }) => `${from.text} to ${to.text}`).join(', ');
    if (years !== '' || name !== words) told.push(`${name}${years === '' ? '' : `, ${years}`}.`);
  }
  return good(told.join(' '));
}

/** Which type is meant: `Class 3b, Pence of Edward I`. */
function typeAloud(records: Records, words: string): Outcome<string> {
  const { types } = readTypes(records);
  const named = typeNamed(types, words.trim());
  if (!named.ok) return named;
  const series = seriesNamed(types, named.value.series);
  return good(
    `${series?.types.get(named.value.id)?.label ?? named.value.id}, ${series?.fields.title ?? named.value.series}.`,
  );
}

/** The types that boxes complete. */
export function typesList(records: Records): Html {
  const { types } = readTypes(records);
  const all = types.series.flatMap((series) =>
    [...series.types.values()].map(({ id, label }) => ({
      id: types.holders.get(id)?.length === 1 ? id : `${series.id}/${id}`,
      label,
    })),
  );
  return html`<datalist id="list-types">
    ${all.slice(0, 2000).map(({ id, label }) => html`<option value="${id}">${label}</option>`)}
  </datalist>`;
}

/** Names with commas or semicolons between them. */
export function partsOf(words: string): readonly string[] {
  return words.split(/[,;]/).flatMap((one) => (one.trim() === '' ? [] : [one.trim()]));
}

/** The row of a box by its name: `obverse.legend`, `provenance.0.when`, `ledger.cost`; `kind` is the folder of its file. */
export function rowNamed(name: string, kind: string): FieldFacts | null {
  const path = name.split('.').filter((step) => !/^\d+$/.test(step));
  if (path[0] === 'ledger') return ledgerRow(path[1] ?? '');
  let rows: FactsTable = Object.hasOwn(LIST_ROWS, kind) ? LIST_ROWS[kind as keyof typeof LIST_ROWS] : PIECE_ROWS;
  let row: FieldFacts | null = null;
  for (const step of path) {
    const next: FieldFacts | undefined = Object.hasOwn(rows, step) ? rows[step] : undefined;
    // A face of `photographs` is a choice of its field and no row.
    if (next === undefined) continue;
    row = next;
    rows = next.parts ?? {};
  }
  return row;
}

/** The names of lists that boxes complete: what a thing is called, or its id where several are called the same. */
export function datalists(state: CabinetState, lists: readonly List[]): Html {
  const most = 2000;
  return html`${lists.map((list) => {
    const named = namesIn(list, state.records()).slice(0, most);
    const times = new Map<string, number>();
    for (const { names } of named) times.set(names[0] ?? '', (times.get(names[0] ?? '') ?? 0) + 1);
    return html`<datalist id="list-${list}">
      ${named.map(({ id, names: [name = id, other = id] }) => (times.get(name) === 1 ? html`<option value="${name}">${list === 'pieces' ? other : ''}</option>` : html`<option value="${id}">${name}</option>`))}
    </datalist>`;
  })}`;
}

/** What is known beside a text and helps to read it. */
export type Beside = {
  readonly dates: DateContext;
  readonly works: readonly (CitedWork & { readonly title: string })[];
  /** What `gr` means in this cabinet. */
  readonly gr: 'grains' | 'grams' | undefined;
  /** The money of this cabinet. */
  readonly currency: string | undefined;
  /** The scale the grade is on; empty where none was said. */
  readonly scale: string;
};

/** How a text is understood, in one short sentence, by the parsers that read the files; what to write instead where it is not. */
export function sayReading(as: ReadAs, text: string, beside: Beside): Outcome<string> {
  return SAY[as](text, beside);
}

const SAY: Readonly<Record<ReadAs, (text: string, beside: Beside) => Outcome<string>>> = {
  date: (text, { dates }) => said(parseDate(text, dates), sayDate),
  event: (text, { dates }) => said(parseDate(text, { ...dates, dateOf: 'event' }), sayDate),
  weight: (text, { gr }) =>
    said(parseWeight(text, { gr }), (read) => {
      const written = formatWeight(read);
      return / g\b/.test(written) ? written : `${written}, which is ${figure(read.grams)} g`;
    }),
  length: (text) => said(parseLength(text), formatLength),
  size: (text) =>
    said(parseSize(text), (size) =>
      size.shape === 'rectangle'
        ? `${size.height} mm high and ${size.width} mm wide`
        : `${formatLength({ low: size.low, high: size.high })} across`,
    ),
  fineness: (text) =>
    said(parseFineness(text), (read) => {
      const [low, high] = [figure(read.low * 1000), figure(read.high * 1000)];
      return `${formatFineness(read)}: ${low === high ? low : `${low} to ${high}`} parts in a thousand`;
    }),
  axis: (text) =>
    said(parseAxis(text), (read) =>
      read.hours === null
        ? 'no die axis, as for a cast or one-sided piece'
        : `${formatAxis(read)}: the reverse is turned ${(read.hours % 12) * 30} degrees`,
    ),
  legend: (text) =>
    said(parseLegend(text), (read) => {
      const reading = suggestReading(read);
      return `${normalLegend(text)}${reading === null ? '' : `; perhaps ${reading.text}`}`;
    }),
  grade: (text, { scale }) =>
    said(parseGrade(text, isScaleId(scale) ? { scale } : {}), (read) => {
      if (read.low === null || read.high === null) return formatGrade(read);
      const years = new Set(read.mappings.map(({ low, high }) => `${low} ${high}`));
      const differ = years.size > 1 ? ', where published tables differ' : '';
      return `${formatGrade(read)}: ${read.low} to ${read.high} on the numeric scale${differ}`;
    }),
  reference: sayReference,
  money: (text, { currency }) =>
    said(parseMoneyRange(withCurrency(text, currency), { dollar: currency }), formatMoneyRange),
};

/** A reference in the title of its book; a book that is in no list is a problem, and offered to be made. */
function sayReference(text: string, { works }: Beside): Outcome<string> {
  const listed = parseReferences(text, { works });
  const foreign = listed.ok
    ? undefined
    : known(parseReferences(text)).find((one) => works.every(({ id }) => id !== one.work));
  if (foreign !== undefined)
    return refuse(`“${foreign.named}” is not in your list of books. You can add it when you save.`);
  return said(listed, (all) =>
    all
      .map((read) => {
        const title = works.find(({ id }) => id === read.work)?.title ?? read.named;
        return `${read.doubtful === true ? 'perhaps ' : ''}${formatReference(read)} in ${title}`;
      })
      .join('; '),
  );
}

function known<T>(read: Outcome<readonly T[]>): readonly T[] {
  return read.ok ? read.value : [];
}

function said<T>(read: Outcome<T>, say: (value: T) => string): Outcome<string> {
  return read.ok ? good(`${say(read.value)}.`) : read;
}

/** `c. 1279–81: about 1279 to 1281`; the days where the text settles them. */
function sayDate(read: Dating): string {
  const written = formatDate(read);
  const doubts = [read.doubtful ? 'perhaps' : '', read.about ? 'about' : ''].filter((word) => word !== '');
  const span = spanOf(read);
  const years = span === null ? written : [...doubts, span].join(' ');
  const days = read.from === undefined || read.to === undefined || read.from === read.to ? '' : ` (${read.from} to ${read.to})`; // prettier-ignore
  return written === years || read.from !== undefined ? `${written}${days}` : `${written}: ${years}`;
}

/** The years from first to last; null where one of them is not known or is open, and the words say it best. */
function spanOf({ earliest, latest, years = [] }: Dating): string | null {
  if (typeof earliest !== 'number' || typeof latest !== 'number') return null;
  if (years.length > 1 && years.every(([low, high]) => low === high))
    return years.map(([low]) => formatYear(low)).join(' or ');
  return earliest === latest ? formatYear(earliest) : `${formatYear(earliest)} to ${formatYear(latest)}`;
}

function figure(value: number): string {
  return String(Math.round(value * 1e4) / 1e4);
}
