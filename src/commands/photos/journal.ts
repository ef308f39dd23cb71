import { createHash } from 'node:crypto';
import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { writeWhole } from '../parts/write-whole.ts';

/** Files that one run wrote, each with the digest of what it wrote. */
export type Run = { readonly files: readonly { readonly file: string; readonly digest: string }[] };

/** In the private folder, because it names what came in when. */
const JOURNAL = 'private/photographs-brought.json';

export function digestOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

export async function readRuns(cabinet: string): Promise<readonly Run[]> {
  try {
    return JSON.parse(await readFile(join(cabinet, JOURNAL), 'utf8')) as readonly Run[];
  } catch {
    return [];
  }
}

export async function writeRuns(cabinet: string, runs: readonly Run[]): Promise<void> {
  await writeWhole(
    join(cabinet, JOURNAL),
    `${JSON.stringify(runs, null, 2)}
`,
  );
}

/** Takes away what the last run wrote, but for files that have been changed since; those are named. */
export async function undoLast(
  cabinet: string,
): Promise<{ readonly removed: number; readonly kept: readonly string[] } | null> {
  const runs = await readRuns(cabinet);
  const last = runs.at(-1);
  if (last === undefined) return null;
  const kept: string[] = [];
  let removed = 0;
  for (const { file, digest } of last.files) {
    const bytes = await readFile(join(cabinet, file)).catch(() => null);
    if (bytes === null) continue;
    if (digestOf(bytes) === digest) {
      await rm(join(cabinet, file));
      removed += 1;
    } else kept.push(file);
  }
  await writeRuns(cabinet, runs.slice(0, -1));
  return { removed, kept };
}
