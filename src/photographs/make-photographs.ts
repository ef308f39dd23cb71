import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import type { FiledPiece, Picture } from '../catalogue/records.ts';
import { makeFace } from './make-face.ts';
import type { FacePictures } from './manifest.ts';
import { recipeName } from './recipe.ts';

/** What one run did. */
export type PhotographRun = { readonly pictures: number; readonly made: number };

/** What is known of a photograph without opening it. */
type Known = {
  readonly seen: string;
  readonly digest: string;
  readonly recipe: string;
  readonly pictures: FacePictures;
};
type Index = Readonly<Record<string, Known>>;

const AT_ONCE = 2;
const KEPT_EVERY = 10;

/**
 * Makes the pictures of every piece that is published into a folder, and the manifest that names them.
 * A photograph that has not changed since the last run is not opened.
 */
export async function makePhotographs(
  pieces: readonly FiledPiece[],
  cabinet: string,
  folder: string,
  onProgress: (done: number, all: number) => void = () => undefined,
): Promise<PhotographRun> {
  await mkdir(folder, { recursive: true });
  const recipe = await recipeName();
  const before = await readIndex(folder);
  const wanted = pieces
    .filter(({ fields }) => fields.publish !== 'no')
    .flatMap(({ id, pictures }) => pictures.map((picture) => ({ id, picture })));
  const after: Record<string, Known> = {};
  let [made, done, next] = [0, 0, 0];
  const worker = async (): Promise<void> => {
    for (let at = next; at < wanted.length; at = next) {
      next += 1;
      const { id, picture } = wanted[at] ?? fail();
      const known = await makeOne(id, picture, { cabinet, folder, recipe }, before[picture.file]);
      after[picture.file] = known;
      if (known.pictures !== before[picture.file]?.pictures) {
        made += 1;
        // What is made is remembered now and then, so that a run that is ended goes on from there.
        if (made % KEPT_EVERY === 0)
          await writeWhole(join(folder, 'index.json'), JSON.stringify({ ...before, ...after }));
      }
      done += 1;
      onProgress(done, wanted.length);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  const manifest: Record<string, FacePictures[]> = {};
  for (const { id, picture } of wanted) (manifest[id] ??= []).push((after[picture.file] ?? fail()).pictures);
  await prune(folder, manifest);
  await writeWhole(join(folder, 'index.json'), JSON.stringify(after));
  await writeWhole(join(folder, 'manifest.json'), JSON.stringify(manifest));
  return { pictures: wanted.length, made };
}

async function makeOne(
  id: string,
  picture: Picture,
  { cabinet, folder, recipe }: { cabinet: string; folder: string; recipe: string },
  before?: Known,
): Promise<Known> {
  const file = join(cabinet, picture.file);
  const { mtimeMs, size } = await stat(file);
  const seen = `${size} ${mtimeMs}`;
  const into = join(folder, id);
  const isWhole = before?.recipe === recipe && (await hasAll(into, before.pictures));
  if (before !== undefined && isWhole && before.seen === seen) return before;
  const digest = createHash('sha256')
    .update(await readFile(file))
    .digest('hex')
    .slice(0, 12);
  if (before !== undefined && isWhole && before.digest === digest) return { ...before, seen };
  const stamp = createHash('sha256').update(`${recipe} ${digest}`).digest('hex').slice(0, 10);
  return { seen, digest, recipe, pictures: await makeFace(file, picture.face, into, stamp) };
}

async function hasAll(folder: string, { webp, jpeg }: FacePictures): Promise<boolean> {
  const found = await Promise.allSettled([...webp, jpeg].map(({ file }) => stat(join(folder, file))));
  return found.every(({ status }) => status === 'fulfilled');
}

async function readIndex(folder: string): Promise<Index> {
  try {
    return JSON.parse(await readFile(join(folder, 'index.json'), 'utf8')) as Index;
  } catch {
    return {};
  }
}

/** Removes what no photograph stands behind any more. */
async function prune(folder: string, manifest: Readonly<Record<string, readonly FacePictures[]>>): Promise<void> {
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    if (!entry.isDirectory()) continue;
    const kept = new Set(
      (manifest[entry.name] ?? []).flatMap(({ webp, jpeg }) => [...webp, jpeg].map(({ file }) => file)),
    );
    const into = join(folder, entry.name);
    const files = await readdir(into);
    await Promise.all(files.filter((file) => !kept.has(file)).map((file) => rm(join(into, file), { force: true })));
    if (kept.size === 0) await rm(into, { recursive: true, force: true });
  }
}

async function writeWhole(file: string, text: string): Promise<void> {
  const unfinished = `${file}.${process.pid}.${performance.now()}.unfinished`;
  await writeFile(unfinished, text);
  await rename(unfinished, file);
}

function fail(): never {
  throw new Error('A photograph was asked for that is not in the list.');
}
