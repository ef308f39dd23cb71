import { copyFile, mkdir, readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { plainPage } from '../host-files.ts';
import { classicScript, dataScript } from './classic-script.ts';
import type { HallPlan } from './places.ts';
import { fileMeant, FRONT, placeInHall } from './places.ts';
import { reachFromFront } from './reach.ts';
import { readMe } from './read-me.ts';
import type { ShownInHall } from './read-me.ts';
import type { Use } from './rewrite-page.ts';
import { rewritePage, rewriteStyle, rewriteRecords } from './rewrite-page.ts';

/** How much a hall copy holds. */
export type HallCopy = { readonly pages: number; readonly bytes: number };

/**
 * Makes a copy of a finished site that opens from a folder, without a server and without a network. It holds what can be
 * reached by links from the page it begins with, and nothing else: what is on no list is not in it, for a folder can be looked into.
 */
export async function makeHallCopy(built: string, into: string, plan: HallPlan, shown: ShownInHall): Promise<HallCopy> {
  const there = new Set(await filesOf(built));
  const reach = reachFromFront(there, plan);
  for (let file = reach.next(); file !== undefined; file = reach.next()) {
    const from = file;
    await putFile(join(built, file), join(into, placeInHall(file, plan)), reach.useOf(file), {
      base: plan.base,
      way: (address, use = 'file') => reach.way(from, address, use),
      fontAt: async (address) => {
        const meant = fileMeant(address, from, plan)?.file ?? '';
        return meant.endsWith('.woff2') && there.has(meant) ? readFile(join(built, meant), 'base64') : null;
      },
    });
  }
  // A laptop that serves the folder looks for it by this name.
  await writeFile(join(into, 'index.html'), plainPage(FRONT));
  await writeFile(join(into, 'READ-ME.txt'), readMe(shown));
  return measure(into);
}

/** What the site that a file belongs to answers: what to write for an address in it, and the bytes of a font in base64. */
type Site = {
  readonly base: string;
  readonly way: (address: string, use?: Use) => string;
  readonly fontAt: (address: string) => Promise<string | null>;
};

/** Puts one file of the site where it belongs, changed as far as it must be. */
async function putFile(file: string, to: string, use: Use, { base, way, fontAt }: Site): Promise<void> {
  await mkdir(dirname(to), { recursive: true });
  if (file.endsWith('.html')) await writeFile(to, rewritePage(await readFile(file, 'utf8'), way));
  else if (file.endsWith('.css')) await writeFile(to, await rewriteStyle(await readFile(file, 'utf8'), way, fontAt));
  else if (use === 'script') await writeFile(to, await classicScript(file));
  else if (use === 'read' && file.endsWith('.json')) {
    const json = JSON.stringify(rewriteRecords(JSON.parse(await readFile(file, 'utf8')), base, way));
    await writeFile(to, json);
    await writeFile(`${to}.js`, dataScript(json));
  } else await copyFile(file, to);
}

async function filesOf(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'));
}

async function measure(folder: string): Promise<HallCopy> {
  const files = await filesOf(folder);
  const sizes = await Promise.all(files.map(async (file) => (await stat(join(folder, file))).size));
  return {
    pages: files.filter((file) => file.endsWith('.html')).length,
    bytes: sizes.reduce((all, one) => all + one, 0),
  };
}
