import { resolve } from 'node:path';
import { readFolder } from '../../catalogue/files.ts';
import type { Types } from '../../catalogue/types/types-of.ts';
import { readTypes } from '../../catalogue/types/types-of.ts';
import { citedWorks } from '../../catalogue/types/cited-works.ts';
import { readCabinet } from '../../catalogue/read-cabinet.ts';
import { reignsOf } from '../../catalogue/for-core/reigns.ts';
import type { Reign } from '../../core/dating/dating.ts';
import type { CitedWork } from '../../core/references/reference.ts';

/** A book of the cabinet, as it may be cited and as it is named to a reader. */
export type KnownWork = CitedWork & { readonly title: string };

/** What a cabinet knows that helps to read a text: reigns for dates, works for references. */
export type Consulted = {
  readonly reigns: readonly Reign[];
  readonly works: readonly KnownWork[];
  readonly types: Types | null;
};

export const NOTHING: Consulted = { reigns: [], works: [], types: null };

/** The reigns and works in a cabinet's files; null when there is no such folder. */
export async function consult(cabinet: string): Promise<Consulted | null> {
  const folder = await readFolder(resolve(cabinet));
  if (folder === null) return null;
  const { records } = readCabinet(folder);
  return {
    reigns: records.rulers.flatMap(reignsOf),
    types: readTypes(records).types,
    works: citedWorks(records.works).map((work, at) => {
      const { author, title } = records.works[at]?.fields ?? { title: work.id };
      return { ...work, title: author === undefined ? title : `${author}, ${title}` };
    }),
  };
}
