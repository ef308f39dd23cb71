import { formatYear, formatDate } from '../../core/dating/format-date.ts';
import type { DateContext, Dating } from '../../core/dating/dating.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import type { ReadAs } from '../../catalogue/fields/row.ts';
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
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { withCurrency } from './ledger-rows.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import { formatReference } from '../../core/references/reference.ts';
import type { CitedWork } from '../../core/references/reference.ts';

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
