import type { CabinetFolder } from '../../catalogue/files.ts';
import { parseBroughtIn } from '../../import/reimport/last-import.ts';
import type { Draft } from '../../import/plan/draft.ts';
import { pathIn } from './place-of.ts';
import { readIfThere } from '../../catalogue/keep/flush.ts';

const BROUGHT_IN = /^private\/import\/([^/]+)\/brought-in\.jsonl$/;

/** The import that most numbers of this sheet were imported by, under another name; null when there is none. */
export async function earlierImport(folder: CabinetFolder, drafts: readonly Draft[]): Promise<string | null> {
  const numbers = new Set(drafts.map(({ facts }) => facts['number']));
  for (const { file } of folder.files) {
    const name = BROUGHT_IN.exec(file)?.[1];
    if (name === undefined) continue;
    const before = parseBroughtIn((await readIfThere(pathIn(folder.at, file))) ?? '');
    const shared = before.filter(({ number }) => numbers.has(number)).length;
    if (shared > 0 && shared * 2 >= Math.min(numbers.size, before.length)) return name;
  }
  return null;
}
