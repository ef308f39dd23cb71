import { copyFile, mkdir, readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join, posix, relative, sep } from 'node:path';
import { plainPage } from '../host-files.ts';
import { classicScript, dataScript } from './classic-script.ts';
import { fileMeant, FRONT, placeInHall, frontPage, wayTo, REST } from './places.ts';
import type { HallPlan } from './places.ts';
import { rewritePage, rewriteStyle, rewriteRecords } from './rewrite-page.ts';
import type { Use } from './rewrite-page.ts';

/** How much a hall copy holds. */
type HallCopy = { readonly pages: number; readonly bytes: number };

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

/** What of a site can be reached from the page that a copy begins with, found while its files are gone through. */
type Reach = {
  /** The next file to go through; undefined when there is none left. */
  readonly next: () => string | undefined;
  /** The most that is asked of a file so far. */
  readonly useOf: (file: string) => Use;
  /** What to write in a file for an address found in it; from then on what it leads to is reached as well. */
  readonly way: (from: string, address: string, use: Use) => string;
};

/** Beside the file of what can be found lies a folder of this name, with a file for each piece that can be laid side by side. */
const COMPARED = 'pieces';

/** Begins at the page that the copy begins with. `there` holds every file of the site. */
function reachFromFront(there: ReadonlySet<string>, plan: HallPlan): Reach {
  const uses = new Map<string, Use>();
  const waiting: string[] = [];
  const need = (file: string, use: Use): void => {
    // What was only linked may turn out to be read by a script too; then it is gone through again and made for both.
    if (uses.has(file) && (use === 'file' || uses.get(file) === use)) return;
    uses.set(file, use);
    waiting.push(file);
  };
  const needCompared = (): void => {
    const files = [...uses.keys()];
    const folders = new Set(files.filter((file) => uses.get(file) === 'read').map((file) => posix.dirname(file)));
    for (const folder of folders)
      for (const piece of piecesAmong(files)) {
        const compared = `${folder}/${COMPARED}/${piece}.json`;
        if (there.has(compared)) need(compared, 'read');
      }
  };
  need(frontPage(plan.exhibit), 'file');
  return {
    next: () => {
      if (waiting.length === 0) needCompared();
      return waiting.pop();
    },
    useOf: (file) => uses.get(file) ?? 'file',
    way: (from, address, use) => {
      const meant = fileMeant(address, from, plan);
      if (meant === null || !there.has(meant.file)) return address;
      need(meant.file, use);
      return wayTo(placeInHall(meant.file, plan), placeInHall(from, plan)) + meant.after;
    },
  };
}

/** The pieces whose own pages are among these files. */
function piecesAmong(files: readonly string[]): readonly string[] {
  return files.flatMap((file) => /^pieces\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? []);
}

/** What the note in an offline copy says of it. */
type ShownInHall = {
  readonly title: string;
  readonly cabinet: string;
  /** What it shows on the web; null when it is not there. */
  readonly address: string | null;
  /** Whether it is the whole catalogue, without an exhibit before it, and whether pieces that are on no list are in it. */
  readonly whole?: 'listed' | 'with unlisted';
};

/** The note that lies in a hall copy, for whoever is handed the folder: lines as every editor of plain text takes them. */
function readMe({ title, cabinet, address, whole }: ShownInHall): string {
  const lines = [
    title,
    whole === undefined ? `An exhibit from ${cabinet}, with its whole catalogue behind it.` : 'The whole catalogue.',
    '',
    `TO OPEN IT       Double-click ${FRONT}. It opens in the web browser.`,
    '                 Nothing is installed and no network is needed.',
    '',
    'THE WHOLE SCREEN Press F11; on a Mac, Ctrl + Cmd + F. The same again ends it.',
    '',
    'TO FIND A PIECE  Choose Pieces at the top of any page. The name of the cabinet,',
    '                 beside it, leads to the whole catalogue.',
    '',
    'AT TRUE SIZE     A screen has to be measured once, with a bank card, on the page',
    '                 of any piece. Do it when you set up.',
    '',
    `TO COPY IT       Copy the whole folder. ${FRONT} needs the folder`,
    `                 "${REST}" beside it.`,
    '',
    'WHAT IS IN IT    What the keeper publishes and nothing else. What was paid and where',
    whole === 'with unlisted'
      ? '                 things are kept is not in it. Pieces that are on no list on the web are.'
      : '                 things are kept is not in it, nor is any piece that is on no list.',
    ...(whole === 'with unlisted' ? ['                 It is for whom it was given to: do not pass it on.'] : []),
    ...(address === null ? [] : ['', 'ON THE WEB', address]),
    '',
  ];
  return lines.join('\r\n');
}
