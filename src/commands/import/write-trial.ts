import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { PRIVATE_FILE, writeWhole } from '../../catalogue/keep/flush.ts';
import { formatInLine } from '../../catalogue/write/write-yaml.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { columnKeys, readingsOf } from '../../import/columns/column-key.ts';
import type { Mapping } from '../../import/columns/mapping.ts';
import { formatReading } from '../../import/columns/parse-column-rule.ts';
import type { ImportPlan } from '../../import/plan/plan-import.ts';
import type { BroughtIn } from '../../import/reimport/last-import.ts';
import { flatFacts } from '../../import/reimport/flat-facts.ts';
import type { Sheet, SheetRow } from '../../import/sheets/sheet.ts';

/** Rows on one page. */
const PAGE = 500;

/**
 * Writes what an import would do as pages to be read in a browser: the questions first, then every row of the sheet, 500 a page.
 * They hold private cells and lie under `private/`. Returns the first page. Each page is whole, whenever this is stopped.
 */
export async function writeTrial(folder: string, trial: Trial): Promise<string> {
  const { many, some } = trialRows(trial);
  const all = Math.ceil(many / PAGE);
  const put = (name: string, html: string): Promise<void> => writeWhole(join(folder, name), html, PRIVATE_FILE);
  const pages: TrialPage[] = [];
  for (let page = 1; page <= all; page += 1) {
    const rows = some((page - 1) * PAGE, page * PAGE);
    pages.push({ from: rows[0]?.row, to: rows.at(-1)?.row, look: rows.filter(isToLookAt).length });
    await put(`rows-${page}.html`, rowsPage(rows, page, all));
  }
  await put('index.html', questionsPage(trial, many, pages));
  for (const name of await readdir(folder))
    if (Number(/^rows-(\d+)\.html$/.exec(name)?.[1] ?? 0) > all) await rm(join(folder, name));
  return join(folder, 'index.html');
}

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
type TrialRow = {
  readonly row: number;
  /** The piece it becomes, and whether that is new; null for a row that becomes none. */
  readonly piece: { readonly id: string; readonly state: 'new' | 'changed' | 'same' } | null;
  /** Why it becomes no piece; empty otherwise. */
  readonly because: string;
  /** Rows of a table: what each cell says and becomes. Made as they are, because a large sheet has half a million of them. */
  readonly cells: string;
  /** Rows of a table: what will be in the piece and, with `ledger`, in the ledger; the value it has now where that changes. */
  readonly facts: string;
  /** Whether a fact is another than the time before. */
  readonly isChanged: boolean;
  /** What is to be looked at. */
  readonly asked: readonly string[];
};

/**
 * Every row below the headings, and every other row that holds something, in the order of the sheet: how many, and any stretch of
 * them. The rows of a large sheet are made a page at a time.
 */
function trialRows({ sheet, mapping, plan, before }: Trial): {
  readonly many: number;
  readonly some: (from: number, to: number) => readonly TrialRow[];
} {
  const keys = columnKeys(sheet);
  const columns = readingsOf(sheet, mapping).map((readings, at) => ({
    heading: `<tr><th>${escaped(keys[at] ?? '')}<td>`,
    becomes: `<td>${escaped(readings.map(formatReading).join('; '))}`,
  }));
  const placed = new Map(plan.pieces.map((piece) => [piece.row, piece]));
  const because = new Map(plan.setAside.map((one) => [one.row, one]));
  const earlier = new Map(before.map((piece) => [piece.id, piece]));
  const unread = new Map<number, string[]>();
  for (const { row, heading, text, because: why } of plan.unread)
    unread.set(row, [...(unread.get(row) ?? []), `${heading}: "${text}". ${why}`]);
  const rowOf = ({ row, cells }: SheetRow): TrialRow => {
    const piece = placed.get(row);
    const was = piece === undefined ? undefined : earlier.get(piece.id);
    const facts = piece === undefined ? null : factRows(piece, was);
    let inWords = '';
    for (const [at, { text }] of cells.entries())
      if (text !== '') inWords += `${columns[at]?.heading ?? ''}${escaped(text)}${columns[at]?.becomes ?? ''}`;
    return {
      row,
      piece: piece === undefined ? null : { id: piece.id, state: piece.state },
      because: piece === undefined ? (because.get(row)?.because ?? '') : '',
      cells: inWords,
      facts: facts?.rows ?? '',
      isChanged: facts?.isChanged ?? false,
      asked: [
        ...(unread.get(row) ?? []),
        ...(piece?.conflicts ?? []).map(
          ({ path, inSheet, inFile }) =>
            `${path}: the sheet says ${shown(inSheet)}, the file ${inFile === null ? 'nothing' : shown(inFile)}; the file is left as it is.`,
        ),
        ...(piece?.emptied ?? []).map((path) => `${path} is empty in the sheet now; the piece keeps it.`),
      ],
    };
  };
  const inSheet = new Set(sheet.rows.map(({ row }) => row));
  const others = plan.setAside
    .filter(({ row }) => !inSheet.has(row))
    .map(({ row, text, because: why }): TrialRow => {
      const cells = `<tr><th><td>${escaped(text)}<td>`;
      return { row, piece: null, because: why, cells, facts: '', isChanged: false, asked: [] };
    });
  const order = [...sheet.rows, ...others].toSorted((a, b) => a.row - b.row);
  return {
    many: order.length,
    some: (from, to) => order.slice(from, to).map((one) => ('piece' in one ? one : rowOf(one))),
  };
}

/** The first and the last row of a page, and how many of its rows are to be looked at. */
type TrialPage = { readonly from: number | undefined; readonly to: number | undefined; readonly look: number };

/** What a piece and its row of the ledger will say, and what they said when the sheet was imported before. */
function factRows(
  { base }: ImportPlan['pieces'][number],
  was: BroughtIn | undefined,
): Pick<TrialRow, 'isChanged'> & { readonly rows: string } {
  const old = was === undefined ? null : flatFacts(was.facts);
  let [rows, isChanged] = ['', false];
  const add = (field: string, value: string, before: string | null): void => {
    const gone = before === null ? '' : `<span class="was">${escaped(before)}</span> `;
    rows += `<tr><th>${escaped(field)}<td>${gone}${escaped(value)}`;
    isChanged ||= before !== null;
  };
  for (const [field, value] of flatFacts(base.facts)) add(field, shown(value), wasShown(old?.get(field), value));
  if (base.story !== '') add('story', base.story, null);
  for (const [column, value] of Object.entries(base.ledger))
    add(`ledger ${column}`, value, wasShown(was?.ledger[column], value));
  return { rows, isChanged };
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

const STYLE = `body{font:16px/1.45 system-ui,sans-serif;margin:1.5rem auto;max-width:70rem;padding:0 1rem;color:#222;background:#fff}
h1{font-size:1.4rem}h2{font-size:1.1rem}article{border-top:1px solid #bbb;padding:.6rem 0}table{border-collapse:collapse;width:100%}
td,th{text-align:left;vertical-align:top;padding:.1rem .6rem .1rem 0;font-weight:400}th{color:#555;width:14rem}td:last-child{color:#555}
pre{white-space:pre-wrap;font:inherit}.asked{background:#fff3d6;padding:.3rem .6rem;margin:.3rem 0}.was{text-decoration:line-through}
#only:checked~article:not(.look){display:none}nav a{margin-right:.6rem}`;

function page(title: string, body: string): string {
  return `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="robots" content="noindex"><title>${escaped(title)}</title><style>${STYLE}</style>\n<h1>${escaped(title)}</h1>\n${body}\n</html>\n`;
}

/** The first page: what is asked, then what the sheet comes to, then where each row is. */
function questionsPage({ sheet, plan, questions }: Trial, many: number, pages: readonly TrialPage[]): string {
  const asked = questions.filter((text) => text !== '');
  const count = (state: string): number => plan.pieces.filter((piece) => piece.state === state).length;
  const figures = [
    `${many} rows`,
    `${count('new')} new pieces`,
    `${count('changed')} changed`,
    `${count('same')} as they were`,
    `${plan.setAside.length} rows that become no piece`,
    `${plan.unread.length} cells that could not be read`,
    `${pages.reduce((sum, { look }) => sum + look, 0)} rows to be looked at`,
  ];
  return page(
    `Trial of ${sheet.name}`,
    [
      '<p>Nothing of this has been written to the cabinet. These pages hold private cells; show them to nobody.</p>',
      '<h2>What is asked</h2>',
      asked.length === 0
        ? '<p>Nothing.</p>'
        : asked.map((text) => `<pre class="asked">${escaped(text)}</pre>`).join('\n'),
      `<h2>What the sheet comes to</h2>\n<ul>${figures.map((figure) => `<li>${figure}</li>`).join('')}</ul>`,
      plan.remarks.length === 0
        ? ''
        : `<h2>To look at</h2>\n<ul>${plan.remarks.map((remark) => `<li>${escaped(remark)}</li>`).join('')}</ul>`,
      `<h2>Every row</h2>\n<nav>${pages.map(pageLink).join('\n')}</nav>`,
    ].join('\n'),
  );
}

function pageLink({ from, to, look }: TrialPage, at: number): string {
  return `<a href="rows-${at + 1}.html">rows ${from ?? ''} to ${to ?? ''}${look === 0 ? '' : ` (${look} to be looked at)`}</a>`;
}

/** Up to 500 rows, each with its cells, what they become, and what is asked. */
function rowsPage(rows: readonly TrialRow[], at: number, pages: number): string {
  const links = [
    '<a href="index.html">Questions</a>',
    at > 1 ? `<a href="rows-${at - 1}.html">Earlier rows</a>` : '',
    at < pages ? `<a href="rows-${at + 1}.html">Later rows</a>` : '',
  ].join('');
  const filter = '<input type="checkbox" id="only"> <label for="only">Only what is to be looked at</label>';
  const title = `Rows ${rows[0]?.row ?? ''} to ${rows.at(-1)?.row ?? ''}`;
  return page(title, `<nav>${links}</nav>\n${filter}\n${rows.map(rowInWords).join('\n')}`);
}

function isToLookAt({ asked, because, isChanged }: TrialRow): boolean {
  return asked.length > 0 || because !== '' || isChanged;
}

function rowInWords(row: TrialRow): string {
  const becomes = row.piece === null ? `no piece: ${row.because}` : `${row.piece.id} (${row.piece.state})`;
  const tables = [
    `<table>${row.cells}</table>`,
    row.facts === '' ? '' : `<h3>What will be in the cabinet</h3><table>${row.facts}</table>`,
  ];
  return `<article${isToLookAt(row) ? ' class="look"' : ''}><h2>Row ${row.row}: ${escaped(becomes)}</h2>${row.asked
    .map((text) => `<p class="asked">${escaped(text)}</p>`)
    .join('')}${tables.join('')}</article>`;
}

function escaped(text: string): string {
  if (!/[&<>"]/.test(text)) return text;
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
