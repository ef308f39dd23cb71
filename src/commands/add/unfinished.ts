import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { PRIVATE_FILE, readIfThere, writeWhole } from '../../catalogue/keep/flush.ts';
import type { Answers, NewFile } from './new-piece.ts';

/** What was answered before somebody broke off, and the list files made on the way. */
export type Unfinished = { readonly answers: Answers; readonly made: readonly NewFile[] };

const form = z.object({
  answers: z.record(z.string(), z.union([z.string(), z.array(z.string())])),
  made: z.array(z.object({ file: z.string(), text: z.string() })),
});
const placeIn = (cabinet: string): string => join(cabinet, 'private', 'add-unfinished.json');

/** The piece that was broken off; null where there is none, or where its file cannot be read. */
export async function readUnfinished(cabinet: string): Promise<Unfinished | null> {
  const text = await readIfThere(placeIn(cabinet));
  if (text === null) return null;
  try {
    return form.safeParse(JSON.parse(text)).data ?? null;
  } catch {
    return null;
  }
}

export async function keepUnfinished(cabinet: string, unfinished: Unfinished): Promise<void> {
  await writeWhole(placeIn(cabinet), JSON.stringify(unfinished, null, 1), PRIVATE_FILE);
}

export async function forgetUnfinished(cabinet: string): Promise<void> {
  await rm(placeIn(cabinet), { force: true });
}
