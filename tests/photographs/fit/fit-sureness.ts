// Fits the weights of `src/photographs/locate/sureness.ts` to photographs whose coin is known, and tells how it does on the
// background it was not fitted to: node tests/photographs/fit/fit-sureness.ts FOLDER SCRATCH [FROM TO]
// FOLDER has the photographs and their truth.csv; SCRATCH keeps what was measured, so that a run may be taken up again;
// with FROM and TO only these photographs are measured.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { candidatesIn, findPiece } from '../../../src/photographs/locate/find-piece.ts';
import { copyOf, placedBy } from '../../../src/photographs/locate/place-piece.ts';
import type { Signs, Sureness, Weights } from '../../../src/photographs/locate/sureness.ts';
import { surenessBy } from '../../../src/photographs/locate/sureness.ts';
import { cutOut } from '../../../src/photographs/render/cut-out.ts';
import { boxIn, PHOTOGRAPH, photographOf, SCENES } from '../locate/scenes.ts';
import { fitLogistic } from './logistic.ts';
import { off, offBy, readTaken } from './real.ts';
import { CUT, variantsOf } from './variants.ts';
import type { Variant } from './variants.ts';

/** What the coins lie on, by the picture of many coins each was cut from; white and yellowish paper otherwise. */
const BACKGROUNDS: Readonly<Record<string, string>> = {
  'IMG_4184.JPG': 'wood', 'IMG_4187.JPG': 'wood', 'IMG_4190.JPG': 'wood', 'IMG_4197.JPG': 'wood',
  'IMG_4201.JPG': 'wood', 'IMG_4203.JPG': 'wood', 'IMG_4194.JPG': 'red cloth', 'IMG_4205.JPG': 'towel', 'test_21.JPG': 'stone',
}; // prettier-ignore
/** A rim further off than this is none; the bound of what is right is 1, and measured in a smaller copy. */
const NEARLY = 1.1;
/** How far off everything is where nothing is to be found; kept in JSON, which has no infinity. */
const NOTHING = 99;
const TAKEN = 'as taken';

const SIGNS = ['unlike', 'outside', 'oval', 'onIt'] as const;

type Measured = { readonly kind: string; readonly signs: Signs; readonly off: number };
type Verdict = { readonly kind: string; readonly says: 'right' | 'whole' | 'wrong'; readonly sure: number; readonly doubt: string | null }; // prettier-ignore

const [folder = '', scratch = '', from = '0', to = 'Infinity'] = process.argv.slice(2);
mkdirSync(scratch, { recursive: true });
const taken = await readTaken(folder);
const backgroundOf = (source: string): string => BACKGROUNDS[source] ?? 'paper';

/** A photograph and all its variants. */
async function allOf(at: number): Promise<readonly Variant[]> {
  const one = taken[at] ?? fail();
  const others = taken.filter(({ source }) => source !== one.source);
  return [{ kind: TAKEN, picture: one, coin: one.coin }, ...(await variantsOf(one, others, at))];
}

/** What one kept from an earlier run, or what is measured now. */
async function kept<Result>(name: string, measure: () => Promise<Result>): Promise<Result> {
  const file = join(scratch, `${name}.json`);
  if (existsSync(file)) return JSON.parse(readFileSync(file, 'utf8')) as Result;
  const result = await measure();
  writeFileSync(file, JSON.stringify(result));
  return result;
}

/** The signs of everything in a photograph and its variants that could be the piece, and how far off each is. */
async function measured(at: number): Promise<readonly Measured[]> {
  const all: Measured[] = [];
  for (const { kind, picture, coin } of await allOf(at)) {
    const { look, times } = await copyOf(picture, { ...picture, left: 0, top: 0 });
    for (const { signs, box } of candidatesIn(look))
      if (signs !== null) all.push({ kind, signs, off: coin === null ? NOTHING : offBy(box, times, coin) });
  }
  return all;
}

/** The same of the drawn scenes: what lies in them has rings and motifs as plain as a rim. */
async function measuredScenes(): Promise<readonly Measured[]> {
  const all: Measured[] = [];
  for (const { name, pieces, ...scene } of SCENES) {
    const picture = await photographOf({ name, pieces, ...scene });
    const { look, times } = await copyOf(picture, { ...PHOTOGRAPH, left: 0, top: 0 });
    const coins = pieces.map((piece) => {
      const { left, top, width, height } = boxIn(piece);
      return { x: left + width / 2, y: top + height / 2, rx: width / 2, ry: height / 2 };
    });
    for (const { signs, box } of candidatesIn(look))
      if (signs !== null)
        all.push({ kind: name, signs, off: Math.min(...coins.map((coin) => offBy(box, times, coin))) });
  }
  return all;
}

function fitted(lessons: readonly Measured[]): Weights {
  const { base, weights } = fitLogistic(
    lessons.map(({ signs, off: by }) => ({ values: SIGNS.map((name) => signs[name]), isSo: by < NEARLY })),
  );
  const [unlike = 0, outside = 0, oval = 0, onIt = 0] = weights;
  return { base, unlike, outside, oval, onIt };
}

/** How a photograph and its variants are cut out by a rule that was not fitted to anything on their background. */
async function verdictsOn(at: number, by: Sureness): Promise<readonly Verdict[]> {
  const all: Verdict[] = [];
  for (const { kind, picture, coin } of await allOf(at)) {
    const { look, times } = await copyOf(picture, { ...picture, left: 0, top: 0 });
    const placed = placedBy(findPiece(look, 'nothing', by), { left: 0, top: 0, times }, picture);
    const isRight = async (): Promise<boolean> => coin !== null && off(await cutOut(picture, placed, 1280), coin) < 1;
    all.push({ kind, says: placed.how === 'whole' ? 'whole' : (await isRight()) ? 'right' : 'wrong', sure: placed.sure, doubt: placed.doubt }); // prettier-ignore
  }
  return all;
}

function table<One extends Verdict>(name: string, all: readonly One[], groupOf: (one: One) => string): void {
  process.stdout.write(`\n${name.padEnd(18)}  right  whole  wrong\n`);
  for (const group of new Set(all.map(groupOf))) {
    const among = all.filter((one) => groupOf(one) === group);
    const count = (says: Verdict['says']): string =>
      String(among.filter((one) => one.says === says).length).padStart(7);
    process.stdout.write(`${group.padEnd(18)}${count('right')}${count('whole')}${count('wrong')}\n`);
  }
}

const scenes = await kept('scenes', measuredScenes);
const lessons: { at: number; background: string; all: readonly Measured[] }[] = [];
for (const [at, { file, source }] of taken.entries())
  if (at >= Number(from) && at < Number(to))
    lessons.push({ at, background: backgroundOf(source), all: await kept(`signs-${file}`, () => measured(at)) });
if (lessons.length < taken.length) process.exit();

const verdicts: (Verdict & { background: string; file: string })[] = [];
for (const left of new Set(lessons.map(({ background }) => background))) {
  const others = lessons.filter(({ background }) => background !== left).flatMap(({ all }) => all);
  const by = surenessBy(fitted([...scenes, ...others]));
  for (const { at, background } of lessons) {
    const file = taken[at]?.file ?? '';
    if (background !== left) continue;
    verdicts.push(
      ...(await kept(`verdicts-${file}`, () => verdictsOn(at, by))).map((one) => ({ ...one, background, file })),
    );
  }
}
const coins = verdicts.filter(({ kind }) => kind !== CUT);
const [takenSo, varied] = [coins.filter(({ kind }) => kind === TAKEN), coins.filter(({ kind }) => kind !== TAKEN)];
table('as taken', takenSo, ({ background }) => background);
table('variants', varied, ({ background }) => background);
table('by kind', verdicts, ({ kind }) => kind);
for (const { file, kind, says, sure, doubt } of verdicts.filter((one) => one.says !== 'right' && one.kind !== CUT))
  process.stdout.write(`${says} ${file} ${kind}, sure ${sure.toFixed(2)}, ${doubt ?? 'cut out'}\n`);
const all = fitted([...scenes, ...lessons.flatMap((one) => one.all)]);
process.stdout.write(`\nfitted to all: ${JSON.stringify(all, (_, value: unknown) => (typeof value === 'number' ? Math.round(value * 100) / 100 : value))}\n`); // prettier-ignore

function fail(): never {
  throw new Error('There is no such photograph.');
}
