import { createHash } from 'node:crypto';
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Problem } from '../../catalogue/problem.ts';
import { orderProblems, problem } from '../../catalogue/problem.ts';
import type { FiledPiece, Picture } from '../../catalogue/records.ts';
import type { Index, Known } from '../cache/picture-cache.ts';
import {
  filesOf,
  madeFiles,
  prune,
  readIndex,
  remember,
  seenOf,
  writeIndex,
  writeManifest,
  writeWhole,
} from '../cache/picture-cache.ts';
import { known } from '../../catalogue/schema/fields.ts';
import { sizeSpan } from '../../core/measures/parse-size.ts';
import { shareBoard } from './share-board.ts';
import type { LaidPicture } from './share-board.ts';
import { makeFace } from './make-face.ts';
import { facesShared, sharedFile, trueWidth } from '../cache/manifest.ts';
import type { FacePictures, PhotographManifest } from '../cache/manifest.ts';
import { settingsName } from '../cache/picture-settings.ts';
import type { PhotographRemark } from '../verify/remarks.ts';
import { photographRemarks } from '../verify/remarks.ts';
import { requestFor, requestInWords } from './picture-request.ts';
import type { PictureRequest } from './picture-request.ts';

/** What one run did: how many pictures there are, how many were made now, what could not be opened, what could be better. */
export type PhotographRun = {
  readonly pictures: number;
  readonly made: number;
  readonly problems: readonly Problem[];
  readonly remarks: readonly PhotographRemark[];
};

type Wanted = { readonly id: string; readonly picture: Picture; readonly request: PictureRequest };
type Place = { readonly cabinet: string; readonly folder: string; readonly recipe: string };

const AT_ONCE = 2;
/** Pixels across from which a face fills its half of a shared picture well. */
const FINE_ENOUGH = 480;

/**
 * Makes the pictures of every piece that is published into a folder, and the manifest that names them.
 * A photograph that has not changed since the last run is not opened; one that cannot be read is told of, and left out.
 */
export async function makePhotographs(
  pieces: readonly FiledPiece[],
  cabinet: string,
  folder: string,
  onProgress: (done: number, all: number) => void = () => undefined,
): Promise<PhotographRun> {
  // Every photograph is another: what sharp would keep of the last only takes room.
  sharp.cache(false);
  await mkdir(folder, { recursive: true });
  const place = { cabinet, folder, recipe: await settingsName() };
  const before: Index = await readIndex(folder);
  const there = madeFiles(folder);
  const published = pieces.filter(({ fields }) => fields.publish !== 'no');
  const wanted = published.flatMap((piece) =>
    piece.pictures.map((picture) => ({ id: piece.id, picture, request: requestFor(piece, picture.face) })),
  );
  const after: Record<string, Known> = {};
  const problems: Problem[] = [];
  let [made, done] = [0, 0];
  const waiting = wanted.values();
  const worker = async (): Promise<void> => {
    for (const one of waiting) {
      const { file } = one.picture;
      const whole = stillWhole(before[file], there.get(one.id));
      const known = await makeOne(one, place, whole);
      if (known === null) problems.push(problem('picture-broken', { file }));
      else after[file] = known;
      if (known !== null && known.pictures !== whole?.pictures) {
        made += 1;
        await remember(folder, file, known);
      }
      done += 1;
      onProgress(done, wanted.length);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  const manifest = manifestOf(wanted, after);
  const shared = await shareAll(published, manifest, folder, there);
  await prune(folder, made + shared === 0 ? there : madeFiles(folder), manifest);
  // In the order of the pieces, however the work was shared.
  const inOrder = wanted.flatMap(({ picture: { file } }) =>
    after[file] === undefined ? [] : [[file, after[file]] as const],
  );
  await writeIndex(folder, Object.fromEntries(inOrder));
  await writeManifest(folder, manifest);
  return {
    pictures: wanted.length,
    made,
    problems: orderProblems(problems),
    remarks: photographRemarks(published, manifest),
  };
}

/** Makes the pictures that pieces are shared by and which are not there yet; how many. */
async function shareAll(
  pieces: readonly FiledPiece[],
  manifest: PhotographManifest,
  folder: string,
  there: ReadonlyMap<string, ReadonlySet<string>>,
): Promise<number> {
  const wanting = pieces.flatMap((piece) => {
    const faces = manifest[piece.id] ?? [];
    const name = sharedFile(faces);
    return name === null || there.get(piece.id)?.has(name) === true ? [] : [{ piece, name, faces: facesShared(faces) }];
  });
  const waiting = wanting.values();
  const worker = async (): Promise<void> => {
    for (const { piece, name, faces } of waiting) {
      const size = known(piece.fields.diameter ?? null);
      const extent = size === null ? null : sizeSpan(size);
      const laid = faces.map((face): LaidPicture => {
        const { file, width, height } =
          face.webp.find((one) => one.width >= FINE_ENOUGH) ?? face.webp.at(-1) ?? face.jpeg;
        const wide = trueWidth(face, extent ?? { width: 1, height: 1 }, (size?.shape ?? 'round') === 'round');
        return { file: join(folder, piece.id, file), wide, high: (wide * height) / width };
      });
      await writeWhole(
        join(folder, piece.id, name),
        await shareBoard(laid, { largest: Infinity, hasRule: extent !== null }),
      );
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  return wanting.length;
}

/** What was made, by piece. */
function manifestOf(wanted: readonly Wanted[], known: Readonly<Record<string, Known>>): PhotographManifest {
  const manifest: Record<string, FacePictures[]> = {};
  for (const { id, picture } of wanted) {
    const pictures = known[picture.file]?.pictures;
    if (pictures !== undefined) (manifest[id] ??= []).push(pictures);
  }
  return manifest;
}

/** What is known of a photograph, if everything that was made of it still lies there. */
function stillWhole(known: Known | undefined, there: ReadonlySet<string> | undefined): Known | null {
  return known !== undefined && filesOf(known.pictures).every((file) => there?.has(file) === true) ? known : null;
}

/** What is known of a photograph after this run; null when it cannot be read. */
async function makeOne({ id, picture, request }: Wanted, place: Place, before: Known | null): Promise<Known | null> {
  const file = join(place.cabinet, picture.file);
  const now = { seen: seenOf(file), recipe: place.recipe, request: requestInWords(request) };
  const isSame = before?.recipe === now.recipe && before.request === now.request;
  if (isSame && before.seen === now.seen) return before;
  const digest = digestOf(await readFile(file));
  if (isSame && before.digest === digest) return { ...before, ...now };
  const stamp = digestOf(`${now.recipe} ${now.request} ${digest}`).slice(0, 10);
  const folder = join(place.folder, id);
  try {
    return {
      ...now,
      digest,
      pictures: await makeFace({ photograph: file, face: picture.face, request, folder, stamp }),
    };
  } catch {
    return null;
  }
}

function digestOf(what: string | Uint8Array): string {
  return createHash('sha256').update(what).digest('hex').slice(0, 12);
}
