import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { parse } from 'parse5';
import type { DefaultTreeAdapterTypes } from 'parse5';

type Node = DefaultTreeAdapterTypes.Node;

/** A page of a built site: its path under the base, the addresses it points to, and the anchors it holds. */
export type BuiltPage = {
  readonly path: string;
  readonly to: readonly string[];
  readonly anchors: ReadonlySet<string>;
};

const ADDRESSES: Readonly<Record<string, readonly string[]>> = {
  a: ['href'], area: ['href'], link: ['href'], img: ['src', 'srcset'], source: ['src', 'srcset'], script: ['src'],
  form: ['action'], image: ['href', 'xlink:href'], use: ['href', 'xlink:href'],
}; // prettier-ignore

/** Every page of a built site. */
export async function builtPages(built: string): Promise<readonly BuiltPage[]> {
  const files = await builtFiles(built);
  return Promise.all(
    files
      .filter((file) => file.endsWith('.html'))
      .map(async (file) => ({
        path: file.replace(/index\.html$/, ''),
        ...linksIn(await readFile(join(built, file), 'utf8')),
      })),
  );
}

/** What a page points to, and the anchors it holds. */
export function linksIn(html: string): Omit<BuiltPage, 'path'> {
  const to: string[] = [];
  const anchors = new Set<string>();
  walk(parse(html), (tag, attributes) => {
    for (const [name, value] of attributes) {
      if (name === 'id') anchors.add(value);
      if (name === 'content' && attributes.some(([other, how]) => other === 'http-equiv' && how === 'refresh'))
        to.push(value.replace(/^.*url=/i, ''));
      if (name === 'content' && attributes.some(([other, what]) => other === 'property' && what === 'og:image'))
        to.push(value);
      if (ADDRESSES[tag]?.includes(name) === true)
        to.push(...(name === 'srcset' ? value.split(',').map((one) => one.trim().split(/\s+/)[0] ?? '') : [value]));
    }
  });
  return { to, anchors };
}

/** Every file of a built site, by its path with forward slashes. */
export async function builtFiles(built: string): Promise<readonly string[]> {
  const entries = await readdir(built, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(built, join(entry.parentPath, entry.name)).split(sep).join('/'));
}

function walk(node: Node, visit: (tag: string, attributes: readonly (readonly [string, string])[]) => void): void {
  if ('tagName' in node)
    visit(
      node.tagName,
      node.attrs.map(({ name, value }) => [name, value] as const),
    );
  if ('childNodes' in node) for (const child of node.childNodes) walk(child, visit);
  if ('content' in node) walk(node.content, visit);
}

/** What each page points to that is not there, under this base path. Addresses of other sites are distinguished by `elsewhere`. */
export async function brokenLinks(built: string, base: string, origin: string): Promise<readonly string[]> {
  const pages = await builtPages(built);
  const files = new Set(await builtFiles(built));
  const anchors = new Map(pages.map(({ path, anchors: held }) => [path, held]));
  const broken: string[] = [];
  for (const page of pages) {
    for (const to of page.to) {
      if (/^(mailto|data):/.test(to)) continue;
      const url = new URL(to, `${origin}${base}${page.path}`);
      if (url.origin !== origin) continue;
      const path = decodeURIComponent(url.pathname);
      if (!path.startsWith(base)) broken.push(`${page.path} → ${to} (outside ${base})`);
      const inside = path.slice(base.length);
      const file = inside === '' || inside.endsWith('/') ? `${inside}index.html` : inside;
      if (!files.has(file)) broken.push(`${page.path} → ${to}`);
      else if (
        url.hash !== '' &&
        !anchors.get(file.replace(/index\.html$/, ''))?.has(decodeURIComponent(url.hash.slice(1)))
      )
        broken.push(`${page.path} → ${to} (no such anchor)`);
    }
  }
  return broken;
}
