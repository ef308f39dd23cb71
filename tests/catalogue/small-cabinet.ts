import { readFolder } from '../../src/catalogue/files.ts';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';
import type { Problem } from '../../src/catalogue/problem.ts';
import { orderProblems } from '../../src/catalogue/problem.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { checkAll } from '../../src/catalogue/check-records.ts';

/** The day on which the small cabinets are checked. */
export const TODAY = '2026-11-30';

let marked: Promise<CabinetFolder | null> | null = null;

/** What is done to the marked cabinet before it is read: a file's new text, or null to take it away. */
export type Change = Readonly<Record<string, string | null | ((text: string) => string)>>;

export async function markedCabinet(): Promise<CabinetFolder> {
  const folder = await (marked ??= readFolder('tests/cabinets/marked'));
  if (folder === null) throw new Error('tests/cabinets/marked is not there.');
  return folder;
}

export function changed(folder: CabinetFolder, change: Change): CabinetFolder {
  const files = new Map(folder.files.map(({ file, text }) => [file, text]));
  for (const [file, to] of Object.entries(change)) {
    if (typeof to === 'function') files.set(file, to(files.get(file) ?? ''));
    else if (to === null) files.delete(file);
    else files.set(file, to);
  }
  return {
    ...folder,
    files: [...files].map(([file, text]) => ({ file, text })).sort((a, b) => (a.file < b.file ? -1 : 1)),
  };
}

export function problemsOf(folder: CabinetFolder): readonly Problem[] {
  return problemsIn(folder, readCabinet(folder));
}

/** The same of a cabinet that has been read. */
export function problemsIn(
  folder: CabinetFolder,
  { records, problems }: ReturnType<typeof readCabinet>,
): readonly Problem[] {
  return orderProblems([...problems, ...checkAll(records, folder, PRIVACY, TODAY)]);
}
