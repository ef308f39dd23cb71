import { execFile } from 'node:child_process';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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
export type Printed = { readonly file: string; readonly sheets: readonly string[] };

export async function printed(site: OpenSite, path: string): Promise<Printed> {
  const page = await site.browser.newPage();
  await page.goto(site.address + path, { waitUntil: 'networkidle' });
  await page.evaluate('document.fonts.ready');
  const sheets = await page.locator('main figure').evaluateAll((all) => all.map((one) => one.ariaLabel ?? ''));
  const file = join(await mkdtemp(join(tmpdir(), 'printed-')), 'forms.pdf');
  await page.pdf({ path: file, preferCSSPageSize: true });
  await page.close();
  return { file, sheets };
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
  const { stdout } = await run('pdftotext', [...pages(sheet), file, '-'], LARGE);
  return stdout.replace(/\s+/g, ' ');
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

export async function wordsOf({ file }: Printed, sheet: number): Promise<readonly PrintedWord[]> {
  const { stdout } = await run('pdftotext', ['-bbox', ...pages(sheet), file, '-'], LARGE);
  const word = /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)<\/word>/g;
  return [...stdout.matchAll(word)].map(([, left, top, right, bottom, text]) => ({
    text: text ?? '',
    left: Number(left) * POINT,
    top: Number(top) * POINT,
    right: Number(right) * POINT,
    bottom: Number(bottom) * POINT,
  }));
}

/** A sheet as a printer would lay it down; a dot is dark when more than half of it is ink. */
export type Dots = {
  readonly isDark: (x: number, y: number) => boolean;
  readonly width: number;
  readonly height: number;
};

export async function dotsOf({ file }: Printed, sheet: number): Promise<Dots> {
  const { data, info } = await sharp(await pictureOf(file, sheet))
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
  const { stdout } = await run('zbarimg', ['--quiet', '-Sdisable', '-Sqrcode.enable', await pictureOf(file, sheet)]);
  return stdout
    .split('\n')
    .filter((line) => line.startsWith('QR-Code:'))
    .map((line) => line.slice('QR-Code:'.length));
}

async function pictureOf(file: string, sheet: number): Promise<string> {
  const into = `${file}-${sheet}`;
  await run('pdftoppm', ['-png', '-gray', '-r', String(DOTS_PER_INCH), '-singlefile', ...pages(sheet), file, into]);
  return `${into}.png`;
}

function pages(sheet?: number): readonly string[] {
  return sheet === undefined ? [] : ['-f', String(sheet), '-l', String(sheet)];
}
