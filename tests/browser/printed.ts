import { execFile } from 'node:child_process';
import { mkdtemp, readdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import sharp from 'sharp';
import type { OpenSite } from './open-site.ts';

const run = promisify(execFile);
const LARGE = { maxBuffer: 64 * 1024 * 1024 };

/** Millimetres in a point of PDF: 1/72 inch (ISO 32000-1, §8.3.2.3). */
export const POINT = 25.4 / 72;
const DOTS_PER_INCH = 300;
const DOT = 25.4 / DOTS_PER_INCH;

/** A page of a site, printed by Chromium to a PDF as its own style sheet wants it. */
export type Printed = {
  readonly file: string;
  readonly sheets: readonly string[];
  /** Of each sheet, whether it is drawn on the paper laid across; it is measured as if it lay before the reader. */
  readonly across: readonly boolean[];
  /** Of the upright paper, in millimetres. */
  readonly width: number;
};

/** `chosen` is what is chosen on the page's form before it is printed: a box to untick, an option by its count or value. */
export async function printed(
  site: OpenSite,
  path: string,
  chosen: Readonly<Record<string, false | number | string>> = {},
): Promise<Printed> {
  // Without JavaScript: the form works by style alone.
  const context = await site.browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(site.address + path, { waitUntil: 'networkidle' });
  for (const [id, value] of Object.entries(chosen))
    if (value === false) await page.uncheck(`#${id}`);
    else await page.selectOption(`#${id}`, typeof value === 'number' ? { index: value - 1 } : value);
  // A screen shows the first sheet of each kind alone.
  await page.emulateMedia({ media: 'print' });
  const figures = await page
    .locator('main figure')
    .evaluateAll((all) =>
      all
        .filter((one) => one.getClientRects().length > 0)
        .map((one) => ({ name: one.ariaLabel ?? '', isAcross: one.classList.contains('across') })),
    );
  const width = Number.parseFloat((await page.locator('main figure svg').first().getAttribute('width')) ?? '');
  const file = join(await mkdtemp(join(tmpdir(), 'printed-')), 'forms.pdf');
  await page.pdf({ path: file, preferCSSPageSize: true });
  await context.close();
  return { file, sheets: figures.map(({ name }) => name), across: figures.map(({ isAcross }) => isAcross), width };
}

/** What pdfinfo says, by its own names. */
export async function infoOf({ file }: Printed): Promise<ReadonlyMap<string, string>> {
  const { stdout } = await run('pdfinfo', ['-l', '-1', file]);
  const lines = stdout.split('\n').flatMap((line) => {
    const [, name, value] = /^([^:]+):\s+(.*)$/.exec(line) ?? [];
    return name === undefined || value === undefined ? [] : [[name.replace(/\s+/g, ' '), value] as const];
  });
  return new Map(lines);
}

/** The text of one sheet, or of all, in reading order, with single spaces. */
export async function textOf({ file }: Printed, sheet?: number): Promise<string> {
  const all = await once(`${file} text`, async () => {
    // In the order of the file itself, which is that of a screen reader; a sheet laid across has its lines in no other.
    const { stdout } = await run('pdftotext', ['-raw', file, '-'], LARGE);
    return stdout.split('\f');
  });
  return (sheet === undefined ? all.join(' ') : (all[sheet - 1] ?? '')).replace(/\s+/g, ' ');
}

const done = new Map<string, Promise<unknown>>();

/** What was read of a file is read once, however many tests ask. */
function once<T>(name: string, read: () => Promise<T>): Promise<T> {
  const held = done.get(name) ?? read();
  done.set(name, held);
  return held as Promise<T>;
}

/** The fonts of a PDF, and whether each is embedded. */
export async function fontsOf({ file }: Printed): Promise<readonly { name: string; embedded: boolean }[]> {
  const { stdout } = await run('pdffonts', [file]);
  return stdout
    .split('\n')
    .slice(2)
    .filter((line) => line.trim() !== '')
    .map((line) => ({
      name: line.slice(0, 36).trim(),
      embedded: / (yes|no) +(yes|no) +(yes|no) /.exec(line)?.[1] === 'yes',
    }));
}

/** A word of a sheet and where it stands, in millimetres. */
export type PrintedWord = {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
};

export async function wordsOf({ file, across, width }: Printed, sheet: number): Promise<readonly PrintedWord[]> {
  const { stdout } = await run('pdftotext', ['-bbox', ...pageOf(sheet), file, '-'], LARGE);
  const word = /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)<\/word>/g;
  return [...stdout.matchAll(word)].map(([, ...found]) => {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = found.slice(0, 4).map((points) => Number(points) * POINT);
    const text = found[4] ?? '';
    return across[sheet - 1] === true
      ? { text, left: y1, right: y2, top: width - x2, bottom: width - x1 }
      : { text, left: x1, right: x2, top: y1, bottom: y2 };
  });
}

/** A sheet as a printer would lay it down; a dot is dark when more than half of it is ink. */
export type Dots = {
  readonly isDark: (x: number, y: number) => boolean;
  readonly width: number;
  readonly height: number;
};

export async function dotsOf({ file, across }: Printed, sheet: number): Promise<Dots> {
  const { data, info } = await sharp(await pictureOf(file, sheet))
    .rotate(across[sheet - 1] === true ? 270 : 0)
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return {
    width: info.width,
    height: info.height,
    isDark: (x, y) => (data[y * info.width + x] ?? 255) < 128,
  };
}

/** The ends of every dark stretch along a row at `y` millimetres, in millimetres; thin lines a dot or two to either side count. */
export function darkAlongRow(dots: Dots, y: number): readonly (readonly [from: number, to: number])[] {
  const row = Math.round(y / DOT);
  return stretches(dots.width, (x) => [-2, -1, 0, 1, 2].some((by) => dots.isDark(x, row + by)));
}

/** The same down a column at `x` millimetres. */
export function darkDownColumn(dots: Dots, x: number): readonly (readonly [from: number, to: number])[] {
  const column = Math.round(x / DOT);
  return stretches(dots.height, (y) => [-2, -1, 0, 1, 2].some((by) => dots.isDark(column + by, y)));
}

function stretches(long: number, isDark: (at: number) => boolean): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (let at = 0; at < long; at += 1) {
    if (!isDark(at)) continue;
    const last = found.at(-1);
    if (last !== undefined && Math.round(last[1] / DOT) === at) last[1] = (at + 1) * DOT;
    else found.push([at * DOT, (at + 1) * DOT]);
  }
  return found;
}

/** What every QR code of a sheet says. */
export async function codesOn({ file }: Printed, sheet: number): Promise<readonly string[]> {
  // The reader misses a sound code where the dots of a picture and the squares of the code fall badly on each other.
  const read = await Promise.all(
    [DOTS_PER_INCH, DOTS_PER_INCH * 1.5].map(async (dots) => {
      const picture = await pictureOf(file, sheet, dots);
      return (await run('zbarimg', ['--quiet', '-Sdisable', '-Sqrcode.enable', picture])).stdout;
    }),
  );
  const lines = read.join('\n').split('\n');
  return [...new Set(lines.filter((line) => line.startsWith('QR-Code:')).map((line) => line.slice('QR-Code:'.length)))];
}

async function pictureOf(file: string, sheet: number, dots = DOTS_PER_INCH): Promise<string> {
  const into = `${file}-${sheet}-${dots}`;
  await once(into, () =>
    run('pdftoppm', ['-png', '-gray', '-r', String(dots), '-singlefile', ...pageOf(sheet), file, into]),
  );
  return `${into}.png`;
}

const pageOf = (sheet: number): readonly string[] => ['-f', String(sheet), '-l', String(sheet)];

/** The longest stroke along the foot of every sheet, 8 mm from its edge, in millimetres. `height` is that of the upright paper. */
export async function rulesOf({ file, across, width }: Printed, height: number): Promise<readonly number[]> {
  const dots = (long: number): string => String(Math.round(long / DOT));
  const strip = async (name: string, x: number, y: number, wide: number, high: number): Promise<readonly string[]> => {
    const crop = ['-x', dots(x), '-y', dots(y), '-W', dots(wide), '-H', dots(high)];
    await run('pdftoppm', ['-png', '-gray', '-r', String(DOTS_PER_INCH), ...crop, file, `${file}-${name}`]);
    const all = await readdir(dirname(file));
    return all.filter((one) => one.startsWith(`forms.pdf-${name}-`)).toSorted();
  };
  const feet = await strip('foot', 0, height - 9, width, 2);
  const sides = await strip('side', 7, 0, 2, height);
  return Promise.all(
    across.map(async (isAcross, at) => {
      const picture = sharp(join(dirname(file), (isAcross ? sides : feet)[at] ?? '')).rotate(isAcross ? 270 : 0);
      const { data, info } = await picture.greyscale().raw().toBuffer({ resolveWithObject: true });
      const isDark = (x: number, y: number): boolean => (data[y * info.width + x] ?? 255) < 128;
      const along = darkAlongRow({ isDark, width: info.width, height: info.height }, 1);
      return Math.max(...along.map(([from, to]) => to - from));
    }),
  );
}
