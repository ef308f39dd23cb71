import { distance } from 'fastest-levenshtein';
import type { CabinetFolder } from '../catalogue/files.ts';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';

/** The tables of `private/` that are read, and so can be guarded. */
const TABLES = ['ledger', 'guide', 'prices', 'fees', 'indices', 'life', 'deleted', 'not-secret'];
/** What the program writes there, and what it keeps for itself. */
const OWN = /^private\/((inventory|tickets|photographs|plan)\.\w+$|(import|desk|undo)\/)/;
const SHEET = /\.(csv|tsv|txt|xlsx?|xlsm|ods|numbers)$/i;
/** What else may hold a table: other programs' files, lists written as texts, and copies that programs leave beside a sheet. */
const LISTED = /\.(tab|xlsb|xltx?|xml|fods|sxc|wk[1-4s]|dif|slk|json|docx?|odt|rtf|html?|mdb|accdb|dbf|db|sqlite3?)$/i;
const COPY = /(?:~|\.(?:bak|old|orig|save|tmp|csv\.\w+))$/i;

/** A file that is nearly a table of `private/` is read by nobody, and nothing in it is guarded: `Ledger.csv`, `ledger.xlsx`. */
export function checkPrivateFiles({ files }: Pick<CabinetFolder, 'files'>): readonly Problem[] {
  return files.flatMap(({ file }) => {
    const meant = meantBy(file);
    return meant === null ? [] : [problem('private-misspelt', { file }, file.slice('private/'.length), meant)];
  });
}

/** The sheets in `private/` that are read by nobody: what is in them is looked for nowhere. */
export function unreadSheets({ files }: Pick<CabinetFolder, 'files'>): readonly string[] {
  return files
    .map(({ file }) => file)
    .filter((file) => file.startsWith('private/') && !OWN.test(file))
    .filter((file) => SHEET.test(file) || LISTED.test(file) || COPY.test(file))
    .filter((file) => !isTable(file) && meantBy(file) === null);
}

/** The name a file of `private/` should have; null when it has it, or is something else. */
function meantBy(file: string): string | null {
  const name = /^private\/([^/]+)$/i.exec(file)?.[1] ?? '';
  if (!SHEET.test(name) || isTable(file)) return null;
  const stem = name.toLowerCase().replace(/(\.[a-z]+)+$/, '');
  const near = TABLES.find((table) => stem === table || (table.length > 4 && distance(stem, table) === 1));
  return near === undefined ? null : `${near}.csv`;
}

function isTable(file: string): boolean {
  return TABLES.some((table) => file === `private/${table}.csv`);
}
