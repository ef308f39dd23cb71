import { today } from '../../catalogue/check-cabinet.ts';
import { dirname } from 'node:path/posix';
import Papa from 'papaparse';
import { checkAll } from '../../catalogue/check-records.ts';
import { readCsv } from '../../catalogue/csv.ts';
import { guarded } from '../../catalogue/csv-guard.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';
import { fileId, freeId } from '../../core/file-id.ts';
import type { Problem } from '../../catalogue/problem.ts';
import { orderProblems } from '../../catalogue/problem.ts';
import { PRIVACY } from '../../privacy/privacy.ts';
import { readCabinet } from '../../catalogue/read-cabinet.ts';
import { LEDGER_COLUMNS } from '../../catalogue/fields/ledger-columns.ts';
import { formatPieceFile } from '../../catalogue/write/write-piece.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { QUESTIONS } from './questions.ts';

/** What was answered, by flag; a list for what a piece may have several of. */
export type Answers = Readonly<Record<string, string | readonly string[]>>;
export type NewFile = { readonly file: string; readonly text: string };

/** The file of a new piece. Names in lists are ids by now. */
export function pieceFile(id: string, answers: Answers, story: string): NewFile {
  const fields: Record<string, Written> = {};
  const put = (path: readonly string[], answer: Written): void => {
    const [first = '', second] = path;
    if (second === undefined) fields[first] = answer;
    else fields[first] = { ...(fields[first] as Readonly<Record<string, Written>> | undefined), [second]: answer };
  };
  for (const flag of ['number', 'title', 'kind', 'mint', 'denomination'])
    if (typeof answers[flag] === 'string') put([flag], answers[flag]);
  const rulers = [answers['ruler'] ?? []].flat();
  if (rulers.length > 0) put(['ruler'], rulers.length === 1 ? (rulers[0] ?? '') : rulers);
  for (const { flag, field = [flag], isPrivate } of QUESTIONS) {
    const answer = answers[flag];
    if (answer !== undefined && answer.length > 0 && isPrivate !== true) put(field, answer);
  }
  return { file: `pieces/${id}/piece.md`, text: formatPieceFile(fields, story) };
}

/** The ledger with a row for the new piece; null when nothing private was said. Rows and columns that are there stay as they are. */
export function ledgerWith(ledger: string | null, id: string, answers: Answers): NewFile | null {
  const told = QUESTIONS.filter(({ flag, isPrivate }) => isPrivate === true && typeof answers[flag] === 'string');
  if (told.length === 0) return null;
  const before = ledger === null || ledger.trim() === '' ? `${LEDGER_COLUMNS.join(',')}\n` : ledger;
  const { headings } = readCsv(before);
  const end = before.includes('\r\n') ? '\r\n' : '\n';
  const wanting = told.map(({ flag }) => flag).filter((flag) => !headings.includes(flag));
  const widened = wanting.length === 0 ? before : before.replace(/^[^\r\n]*/, (line) => `${line},${wanting.join(',')}`);
  const row = [...headings, ...wanting].map((heading) =>
    heading === 'piece' ? id : guarded([answers[heading] ?? ''].flat().join(' ')),
  );
  const line = Papa.unparse([row], { newline: end });
  return { file: 'private/ledger.csv', text: `${widened}${widened.endsWith('\n') ? '' : end}${line}${end}` };
}

/** What is wrong with the new files, and with nothing that was there before. */
export function problemsOfNew(folder: CabinetFolder, files: readonly NewFile[]): readonly Problem[] {
  const fresh = new Map(files.map(({ file, text }) => [file, text]));
  const kept = folder.files.filter(({ file }) => !fresh.has(file));
  const whole = { ...folder, files: [...kept, ...files].sort((a, b) => (a.file < b.file ? -1 : 1)) };
  const before = new Set(problemsIn(folder).map(key));
  return orderProblems(problemsIn(whole)).filter((found) => !before.has(key(found)));
}

function problemsIn(folder: CabinetFolder): readonly Problem[] {
  const { records, problems } = readCabinet(folder);
  return [...problems, ...checkAll(records, folder, PRIVACY, today())];
}

function key({ file, field, says }: Problem): string {
  return `${file} ${field} ${says}`;
}

/** The flag an answer was given by, for a problem in a new file. */
export function flagOf({ file, field }: Problem): string | null {
  if (field === null) return null;
  if (dirname(file) === 'private') return field;
  const path = field.split('.').filter((step) => !/^\d+$/.test(step));
  const question = QUESTIONS.find(({ flag, field: at = [flag] }) => at.join('.') === path.join('.'));
  return question?.flag ?? (path[0] === 'reigns' ? 'reign' : (path[0] ?? null));
}

/** A name for a folder or file from words, in small letters with hyphens, that none of these has yet. */
export function newId(words: string, taken: readonly string[]): string {
  return freeId(fileId(words.replace(/(?<=\d)(?=[¼½¾])/g, ' ')), (id) => taken.includes(id));
}

/**
 * The next free number: after the highest of those that begin as most do, in as many figures: `0178` after `0177`, `B-13` after
 * `B-12`.
 */
export function nextNumber(numbers: readonly string[]): string {
  const parts = numbers.flatMap((number) => {
    const [, head = '', figures] = /^(.*?)(\d+)$/.exec(number) ?? [];
    return figures === undefined ? [] : [{ head, figures }];
  });
  const uses = (head: string): number => parts.filter((one) => one.head === head).length;
  const heads = [...new Set(parts.map(({ head }) => head))].toSorted((a, b) => uses(b) - uses(a));
  const head = heads[0] ?? '';
  const highest = parts
    .filter((one) => one.head === head)
    .reduce((most, { figures }) => (BigInt(figures) > BigInt(most) ? figures : most), '0');
  return `${head}${String(BigInt(highest) + 1n).padStart(parts.length === 0 ? 1 : highest.length, '0')}`;
}
