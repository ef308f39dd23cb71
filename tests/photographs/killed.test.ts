import { spawn } from 'node:child_process';
import { mkdtemp, readdir, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { segmentsOf } from '../../src/privacy/picture-segments.ts';
import { makePhotographs } from '../../src/photographs/render/make-photographs.ts';
import { tries } from '../tries.ts';
import { piece } from './small-cabinet.ts';

const PICTURES = 24;
const KILLS = tries(20, 6);
const LANES = 2;

/** The step alone in a process of its own, which writes a point for each photograph. */
const STEP = `
  import { makePhotographs } from ${JSON.stringify(new URL('../../src/photographs/render/make-photographs.ts', import.meta.url).href)};
  const [cabinet, out, count] = process.argv.slice(1);
  const pieces = Array.from({ length: Number(count) }, (_, at) => ({
    id: 'p' + at, file: '', story: '', fields: { publish: 'yes' }, pictures: [{ face: 'obverse', file: 'p' + at + '.jpg' }],
  }));
  await makePhotographs(pieces, cabinet, out, () => process.stdout.write('.'));
`;

/** Starts the step and ends it so many milliseconds after so many photographs, as pulling the plug would. */
async function killAfter(photographs: number, milliseconds: number, cabinet: string, out: string): Promise<void> {
  const words = ['--disable-warning=ExperimentalWarning', '--input-type=module', '-e', STEP, cabinet, out, String(PICTURES)]; // prettier-ignore
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<void>((end) => child.once('exit', () => end()));
  const reached = new Promise<void>((reach) => {
    let points = 0;
    child.stdout.on('data', (bytes: Buffer) => {
      points += bytes.length;
      if (points > photographs) reach();
    });
  });
  await Promise.race([reached, ended]);
  await new Promise((later) => setTimeout(later, milliseconds));
  child.kill('SIGKILL');
  await ended;
}

async function everything(folder: string): Promise<ReadonlyMap<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const read = await Promise.all(files.map(async (file) => [file.slice(folder.length), await readFile(file, 'base64')] as const)); // prettier-ignore
  return new Map(read.sort(([a], [b]) => (a < b ? -1 : 1)));
}

test(
  'the step killed again and again, at any moment, leaves nothing half-written in use and ends as if it never had been',
  { timeout: 120_000 },
  async () => {
    const room = (name: string): Promise<string> => mkdtemp(join(tmpdir(), name));
    const [cabinet, undisturbed] = [await room('cabinet-'), await room('undisturbed-')];
    const pieces = Array.from({ length: PICTURES }, (_, at) => piece(`p${at}`, `p${at}.jpg`));
    for (let at = 0; at < PICTURES; at += 1) {
      const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="260" height="220"><rect width="260" height="220" fill="#8f9294"/><circle cx="${110 + at / 2}" cy="110" r="${60 + at / 2}" fill="#c8a24a"/></svg>`;
      await sharp(Buffer.from(svg))
        .jpeg()
        .toFile(join(cabinet, `p${at}.jpg`));
    }
    await makePhotographs(pieces, cabinet, undisturbed);
    const wanted = await everything(undisturbed);

    const kills = async (lane: number): Promise<number> => {
      const out = await room('killed-');
      for (let kill = 0; kill < KILLS / LANES; kill += 1) {
        // Moments spread over the step without a pattern, by the golden ratio; the same in every run.
        const chance = ((kill * LANES + lane) * 0.618034) % 1;
        await killAfter(kill + Math.floor(3 * chance), 40 * chance, cabinet, out);
        for (const [file, bytes] of await everything(out))
          if (/\.(?:webp|jpg)$/.test(file)) expect(segmentsOf(Buffer.from(bytes, 'base64')), file).toEqual([]);
      }
      const last = await makePhotographs(pieces, cabinet, out);
      expect(last).toMatchObject({ pictures: PICTURES, problems: [] });
      expect(await everything(out)).toEqual(wanted);
      return last.made;
    };
    const left = await Promise.all(Array.from({ length: LANES }, (_, lane) => kills(lane)));
    // What the killed runs had made was not made again.
    expect(Math.min(...left)).toBeLessThan(PICTURES);
  },
);
