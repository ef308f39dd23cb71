import { copyFile, mkdir, readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join, posix, relative, sep } from 'node:path';
import { plainPage } from '../host-files.ts';
import { classicScript, dataScript } from './classic-script.ts';
import { fileMeant, FRONT, placeInHall, frontPage, wayTo, REST } from './places.ts';
import type { HallPlan } from './places.ts';
import { parse, serialize } from 'parse5';
import type { DefaultTreeAdapterTypes } from 'parse5';

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

type Node = DefaultTreeAdapterTypes.Node;
type Element = DefaultTreeAdapterTypes.Element;

/** What an address is for: to go to or to load, a script to run, or a file that a script reads. */
export type Use = 'file' | 'script' | 'read';
/** Gives the address to write in place of one found; the same again where nothing is to be changed. */
export type Readdress = (address: string, use: Use) => string;

/** The attributes that hold one address. */
const ADDRESSES: ReadonlySet<string> = new Set(['href', 'src', 'action']);

/**
 * A page of a site as it must be to open from a folder, without a server: every address as `readdress` says; scripts that
 * run in their turn, because a browser loads no module from a folder; and a policy that knows files.
 */
export function rewritePage(html: string, readdress: Readdress): string {
  const page = parse(html);
  walk(page, (element) => {
    for (const attribute of element.attrs)
      attribute.value = rewritten(element, attribute.name, attribute.value, readdress);
    if (element.tagName === 'script' && valueOf(element, 'type') === 'module') {
      element.attrs = element.attrs.filter(({ name }) => name !== 'type' && name !== 'crossorigin');
      element.attrs.push({ name: 'defer', value: '' });
    }
  });
  return serialize(page);
}

function rewritten(element: Element, name: string, value: string, readdress: Readdress): string {
  if (ADDRESSES.has(name)) return readdress(value, element.tagName === 'script' ? 'script' : 'file');
  if (name.startsWith('data-')) return value.startsWith('/') ? readdress(value, 'read') : value;
  if (name === 'srcset')
    return value
      .split(',')
      .map((candidate) => candidate.trim().split(/\s+/))
      .map(([address = '', ...size]) => [readdress(address, 'file'), ...size].join(' '))
      .join(', ');
  if (name === 'content') {
    const equivalent = valueOf(element, 'http-equiv').toLowerCase();
    if (equivalent === 'refresh')
      return value.replace(/(url=)(.*)$/i, (_, said: string, address: string) => said + readdress(address, 'file'));
    if (equivalent === 'content-security-policy') return policyForFiles(value);
  }
  return value;
}

/** Not every browser counts a file beside the page as the page's own; and a font comes inside its style sheet. */
function policyForFiles(policy: string): string {
  return policy
    .split('; ')
    .map((rule) => rule.replace("'self'", "'self' file:").replace(/^font-src.*$/, '$& data:'))
    .join('; ');
}

function valueOf(element: Element, wanted: string): string {
  return element.attrs.find(({ name }) => name === wanted)?.value ?? '';
}

/** A font comes inside its style sheet, so nothing is fetched before it; and a folder is nobody's home screen. */
function isNeedless(node: Node): boolean {
  return 'tagName' in node && node.tagName === 'link' && ['preload', 'manifest'].includes(valueOf(node, 'rel'));
}

function walk(node: Node, visit: (element: Element) => void): void {
  if ('tagName' in node) visit(node);
  if ('childNodes' in node) node.childNodes = node.childNodes.filter((child) => !isNeedless(child));
  if ('childNodes' in node) for (const child of node.childNodes) walk(child, visit);
  if ('content' in node) walk(node.content, visit);
}

const ADDRESS = /url\((["']?)([^"')]+)\1\)/g;

/**
 * A style sheet with its fonts inside it and every other address as `readdress` says. Some browsers take a font that lies
 * in another folder for a stranger's. `fontAt` gives the bytes of a font in base64, null for what is none.
 */
export async function rewriteStyle(
  style: string,
  readdress: (address: string) => string,
  fontAt: (address: string) => Promise<string | null>,
): Promise<string> {
  const fonts = new Map<string, string | null>();
  for (const [, , address = ''] of style.matchAll(ADDRESS)) fonts.set(address, await fontAt(address));
  return style.replace(ADDRESS, (_, __, address: string) => {
    const font = fonts.get(address) ?? null;
    return font === null ? `url("${readdress(address)}")` : `url(data:font/woff2;base64,${font})`;
  });
}

/** What JSON holds, with every text that is an address under the base rewritten. */
export function rewriteRecords(held: unknown, base: string, readdress: (address: string) => string): unknown {
  if (typeof held === 'string') return held.startsWith(base) ? readdress(held) : held;
  if (Array.isArray(held)) return held.map((one) => rewriteRecords(one, base, readdress));
  if (typeof held !== 'object' || held === null) return held;
  return Object.fromEntries(
    Object.entries(held).map(([name, value]) => [name, rewriteRecords(value, base, readdress)]),
  );
}
