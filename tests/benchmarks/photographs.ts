// The photograph step against a bare loop that makes the same files, a cached cabinet of 2,000 photographs, the memory of
// both, and telephone pictures of 12 megapixels in every format. Ends with 1 when a bound is passed.
import { spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import type { Region, Sharp } from 'sharp';
import { inspectBuilt } from '../../src/privacy/inspect-built.ts';
import { readFolder } from '../../src/catalogue/files.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import type { FiledPiece } from '../../src/catalogue/records.ts';
import { linkPhotographs } from '../../src/photographs/cache/link-photographs.ts';
import { makePhotographs } from '../../src/photographs/render/make-photographs.ts';
import { readManifest } from '../../src/photographs/cache/manifest.ts';
import type { FacePictures } from '../../src/photographs/cache/manifest.ts';
import { BOARD } from '../../src/photographs/render/open-photograph.ts';
import { PICTURE_SETTINGS } from '../../src/photographs/cache/picture-settings.ts';
import { CARRIED, seenByExiftool, writeLaden } from '../photographs/laden.ts';
import { photographOf, SCENES } from '../photographs/locate/scenes.ts';
import { piece } from '../photographs/small-cabinet.ts';

const room = (name: string): Promise<string> => mkdtemp(join(tmpdir(), `bench-${name}-`));
const seconds = async (work: () => Promise<unknown>): Promise<number> => {
  const from = performance.now();
  await work();
  return (performance.now() - from) / 1000;
};
const cost = async (work: () => Promise<unknown>): Promise<{ clock: number; processor: number }> => {
  const before = process.cpuUsage();
  const clock = await seconds(work);
  const { user, system } = process.cpuUsage(before);
  return { clock, processor: (user + system) / 1e6 };
};
const middle = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;
const kept: boolean[] = [];
const told = (what: string, found: string, bound: string, isKept: boolean): void => {
  kept.push(isKept);
  process.stdout.write(
    `  ${what.padEnd(38)}${found.padEnd(38)}bound ${bound.padEnd(9)}${isKept ? 'kept' : 'EXCEEDED'}\n`,
  );
};

/** A scene as a telephone would bring it, 4,032 by 3,024. */
async function large(at: number): Promise<Sharp> {
  const { rgb, width, height } = await photographOf(SCENES[at % 40] ?? SCENES[0] ?? fail());
  const bytes = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .resize(4032, 3024)
    .raw()
    .toBuffer();
  // Grains again: what was enlarged is smoother than a sensor makes it.
  for (let one = 0; one < bytes.length; one += 1) bytes[one] = Math.min(255, (bytes[one] ?? 0) + ((one * 7919) % 5));
  return sharp(bytes, { raw: { width: 4032, height: 3024, channels: 3 } });
}

/** What is made of one photograph, and what is known of it already: for the bare loop, which seeks nothing. */
type Ready = { readonly file: string; readonly made: FacePictures; readonly box: Region; readonly mask: Buffer };

/** The same files by nothing but sharp: decoded once, cropped, masked with a ready mask, resized, written, two at a time. */
async function bareLoop(ready: readonly Ready[], folder: string): Promise<void> {
  const waiting = ready.values();
  const worker = async (): Promise<void> => {
    for (const { file, made, box, mask } of waiting) {
      const { data, info } = await sharp(file).autoOrient().toColourspace('srgb').removeAlpha().raw().toBuffer({ resolveWithObject: true }); // prettier-ignore
      const { width, height } = made.webp.at(-1) ?? made.jpeg;
      const raw = { width: info.width, height: info.height, channels: 3 as const };
      const colour = await sharp(data, { raw }).extract(box).resize(width, height, { fit: 'fill' }).raw().toBuffer();
      const cut = await sharp(colour, { raw: { width, height, channels: 3 } })
        .joinChannel(mask, { raw: { width, height, channels: 1 } })
        .raw()
        .toBuffer();
      const whole = { raw: { width, height, channels: 4 as const } };
      for (const one of made.webp)
        await writeFile(
          join(folder, one.file),
          await sharp(cut, whole).resize(one.width).webp(PICTURE_SETTINGS.webp).toBuffer(),
        );
      const share = sharp(cut, whole).resize(PICTURE_SETTINGS.share, PICTURE_SETTINGS.share, {
        fit: 'inside',
        withoutEnlargement: true,
      });
      await writeFile(join(folder, made.jpeg.file), await share.flatten({ background: BOARD }).jpeg(PICTURE_SETTINGS.jpeg).toBuffer()); // prettier-ignore
    }
  };
  await Promise.all([worker(), worker()]);
}

async function readyFor(file: string, folder: string, id: string, made: FacePictures): Promise<Ready> {
  const largest = made.webp.at(-1) ?? fail();
  const mask = await sharp(join(folder, id, largest.file))
    .ensureAlpha()
    .extractChannel(3)
    .raw()
    .toBuffer();
  const { photograph, piece: found } = made.seen;
  const side = Math.min(photograph.height, photograph.width, Math.round(Math.max(found.width, found.height) * 1.14));
  const box = { left: (photograph.width - side) >> 1, top: (photograph.height - side) >> 1, width: side, height: side };
  return { file, made, box, mask };
}

async function againstBare(
  name: string,
  cabinet: string,
  pieces: readonly FiledPiece[],
  rounds: number,
): Promise<void> {
  const first = await room('first');
  await makePhotographs(pieces, cabinet, first);
  const manifest = await readManifest(first);
  const ready = await Promise.all(
    pieces.map(({ id, pictures }) => readyFor(join(cabinet, pictures[0]?.file ?? ''), first, id, manifest[id]?.[0] ?? fail())), // prettier-ignore
  );
  const [clock, processor, times]: [number[], number[], number[]] = [[], [], []];
  for (let round = 0; round < rounds; round += 1) {
    const [step, bare] = [await room('step'), await room('bare')];
    const ours = await cost(() => makePhotographs(pieces, cabinet, step));
    const theirs = await cost(() => bareLoop(ready, bare));
    clock.push(ours.clock / theirs.clock);
    processor.push(ours.processor / theirs.processor);
    times.push((ours.clock * 1000) / pieces.length);
    await Promise.all([step, bare].map((folder) => rm(folder, { recursive: true })));
  }
  // Judged by the work of the processor: the clock also tells of what else the machine does. Both are told.
  const ratio = middle(processor);
  told(`${name}: step by bare loop`, `${ratio.toFixed(2)}; by the clock ${middle(clock).toFixed(2)}, ${middle(times).toFixed(0)} ms each`, '1.6', ratio <= 1.6); // prettier-ignore
}

/** 2,000 photographs of 1,000 pieces, all made: what they add to a build, and that no original is opened. */
async function cached(): Promise<void> {
  const [cabinet, out] = [await room('cabinet'), await room('cached')];
  const bytes = await sharp({ create: { width: 240, height: 240, channels: 3, background: '#8f9294' } })
    .composite([{ input: Buffer.from('<svg width="240" height="240"><circle cx="120" cy="120" r="90" fill="#c8a24a"/></svg>') }])
    .jpeg()
    .toBuffer(); // prettier-ignore
  const pieces = Array.from({ length: 1000 }, (_, at) => ({
    ...piece(`p${at}`, ''),
    pictures: ['obverse', 'reverse'].map((face) => ({ face, file: `p${at}-${face}.jpg` })),
  }));
  const files = pieces.flatMap(({ pictures }) => pictures.map(({ file }) => join(cabinet, file)));
  const put = async (file: string, what: Buffer): Promise<void> => {
    await writeFile(file, what);
    await utimes(file, 1_600_000_000, 1_600_000_000);
  };
  for (const file of files) await put(file, bytes);
  await makePhotographs(pieces, cabinet, out);
  // Other bytes of the same length and the same day: a run that opened them would fail.
  for (const file of files) await put(file, Buffer.alloc(bytes.length));
  const folder = await readFolder('tests/cabinets/marked');
  const { records } = readCabinet(folder ?? fail());
  const times: number[] = [];
  for (let round = 0; round < 5; round += 1) {
    const built = await room('built');
    const ours = await seconds(async () => {
      const run = await makePhotographs(pieces, cabinet, out);
      if (run.made !== 0 || run.problems.length > 0) throw new Error('A photograph was opened.');
      await linkPhotographs(out, built);
    });
    const inspection = await seconds(() => Promise.resolve(inspectBuilt(built, records, folder ?? fail())));
    times.push(ours + inspection);
    if (round === 4) process.stdout.write(`  2,000 cached: step and links ${ours.toFixed(2)} s, inspection of ${files.length * 3} pictures ${inspection.toFixed(2)} s\n`); // prettier-ignore
    await rm(built, { recursive: true });
  }
  told('2,000 photographs, all made', `${middle(times).toFixed(2)} s, none opened`, '1 s', middle(times) < 1);
  await Promise.all([cabinet, out].map((one) => rm(one, { recursive: true })));
}

/** The step in a process of its own, as the door of the commands starts it: the most memory it ever held. */
async function memory(cabinet: string, count: number): Promise<void> {
  const out = await room('memory');
  const code = `
    import { makePhotographs } from ${JSON.stringify(new URL('../../src/photographs/render/make-photographs.ts', import.meta.url).href)};
    const pieces = Array.from({ length: ${count} }, (_, at) => ({ id: 'p' + at, file: '', story: '', fields: { publish: 'yes' }, pictures: [{ face: 'obverse', file: 'large-' + at % 8 + '.jpg' }] }));
    await makePhotographs(pieces, ${JSON.stringify(cabinet)}, ${JSON.stringify(out)});
    process.stdout.write(String(process.resourceUsage().maxRSS / 1024));`;
  const words = ['--disable-warning=ExperimentalWarning', '--input-type=module', '-e', code];
  const run = spawnSync(process.execPath, words, { encoding: 'utf8', env: { ...process.env, MALLOC_ARENA_MAX: '2' }, cwd: fileURLToPath(new URL('../..', import.meta.url)) }); // prettier-ignore
  const most = Number(run.stdout);
  told(`memory, ${count} of 12 megapixels`, `${most.toFixed(0)} MB`, '600 MB', most > 0 && most < 600);
  await rm(out, { recursive: true });
}

/** Telephone pictures of 12 megapixels in five formats, with all a telephone puts in. */
async function laden(): Promise<void> {
  const [cabinet, out] = [await room('laden'), await room('clean')];
  const files = await writeLaden(await large(0), cabinet);
  const pieces = files.map((file) => piece(file.replace('.', '-'), file));
  const run = await makePhotographs(pieces, cabinet, out);
  const manifest = await readManifest(out);
  const upright = Object.values(manifest).flat().every(({ seen, placed }) => seen.photograph.width === 4032 && placed === 'found'); // prettier-ignore
  const before = seenByExiftool(files.map((file) => join(cabinet, file))).filter(({ seen }) => CARRIED.test(seen));
  const after = seenByExiftool([out]).filter(({ file, seen }) => !file.endsWith('.json') && CARRIED.test(seen));
  told('12 megapixels in five formats', `${before.length} laden, ${after.length} of what was made`, '0 laden', before.length === 5 && after.length === 0 && run.problems.length === 0); // prettier-ignore
  told('the same, taken on their side', upright ? 'all upright and found' : 'not all', 'all', upright);
  await Promise.all([cabinet, out].map((one) => rm(one, { recursive: true })));
}

function fail(): never {
  throw new Error('The measurement is not set up as it was.');
}

const cabinet = await room('large');
await mkdir(cabinet, { recursive: true });
for (let at = 0; at < 8; at += 1)
  await (await large(at)).jpeg({ quality: 92 }).toFile(join(cabinet, `large-${at}.jpg`));
const bytes = (await readFile(join(cabinet, 'large-0.jpg'))).length;
process.stdout.write(`  a photograph of 12 megapixels: ${(bytes / 1e6).toFixed(1)} MB\n`);
const demo = ['york-penny-3b', 'meiji-sen', 'hadrian-as', 'victoria-sovereign-1872', 'elizabeth-sixpence', 'jeton-rose-orb', 'mary-groat', 'vespasian-denarius']; // prettier-ignore
await againstBare('0.8 megapixels', 'content', demo.map((id) => piece(id, `pieces/${id}/obverse.jpg`)), 5); // prettier-ignore
await againstBare('12 megapixels', cabinet, Array.from({ length: 8 }, (_, at) => piece(`p${at}`, `large-${at}.jpg`)), 3); // prettier-ignore
await memory(cabinet, 24);
await laden();
await cached();
await rm(cabinet, { recursive: true });

process.exitCode = kept.every((one) => one) ? 0 : 1;
