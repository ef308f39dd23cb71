import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Loader } from 'astro/loaders';
import { checkCabinet } from './check-cabinet.ts';
import type { CheckedCabinet } from './check-cabinet.ts';
import type { PrivacyRules } from './check-records.ts';
import { formatProblem } from './problem.ts';
import { cabinetFolder } from './cabinet-folder.ts';
import type { Filed, Records } from './records.ts';

export const COLLECTIONS = ['pieces', 'rulers', 'mints', 'denominations', 'eras', 'sets', 'exhibits', 'works'] as const;
export type CollectionName = (typeof COLLECTIONS)[number] | 'cabinet';

// One reading serves all the collections of one run; a change on the disk begins another.
let reading: { key: string; checked: Promise<CheckedCabinet> } | null = null;

/** Reads one kind of file of the cabinet through our own reader, and stores what it found. */
export function cabinetLoader(collection: CollectionName, privacy: PrivacyRules): Loader {
  return {
    name: `cabinet-${collection}`,
    async load({ store, meta, logger, watcher }) {
      const folder = cabinetFolder();
      const fill = async (): Promise<void> => {
        const { records, problems, digest } = await read(folder, privacy);
        if (problems.length > 0) {
          const text = problems.map((found) => formatProblem(found, folder)).join('\n');
          if (watcher === undefined) throw new Error(`The cabinet has problems:\n${text}`);
          if (collection === 'cabinet') logger.error(`\n${text}`);
          return;
        }
        if (meta.get('digest') === digest) return;
        store.clear();
        for (const filed of filedUnder(records, collection)) {
          store.set({ id: filed.id, data: filed, digest });
        }
        meta.set('digest', digest);
      };
      await fill();
      watcher?.add(folder);
      for (const event of ['add', 'change', 'unlink'] as const) {
        watcher?.on(event, (path: string) => {
          if (path.startsWith(folder)) void fill();
        });
      }
    },
  };
}

function filedUnder(records: Records, collection: CollectionName): readonly Filed<unknown>[] {
  if (collection === 'cabinet') return records.cabinet === null ? [] : [records.cabinet];
  return records[collection];
}

/** The cabinet, read once for as long as neither its texts nor the code that reads them change. */
async function read(folder: string, privacy: PrivacyRules): Promise<CheckedCabinet & { digest: string }> {
  const key = await digestOf([folder, ...SOURCES.map((source) => fileURLToPath(new URL(source, import.meta.url)))]);
  if (reading?.key !== key) reading = { key, checked: checkCabinet(folder, privacy) };
  return { ...(await reading.checked), digest: key };
}

const SOURCES = ['../core/', '../catalogue/', '../privacy/'];

/** A digest over the names and bytes of every text in some folders. */
async function digestOf(folders: readonly string[]): Promise<string> {
  const hash = createHash('sha256');
  for (const folder of folders) {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
    for (const path of paths.sort()) {
      hash.update(path);
      if (/\.(md|ya?ml|csv|ts)$/.test(path)) hash.update(await readFile(path));
    }
  }
  return hash.digest('hex');
}
