import { parse, serialize } from 'parse5';
import type { DefaultTreeAdapterTypes } from 'parse5';

type Node = DefaultTreeAdapterTypes.Node;
type Element = DefaultTreeAdapterTypes.Element;

/** What an address is for: to go to or to load, a script to run, or a file that a script reads. */
export type Use = 'file' | 'script' | 'read';
/** Gives the address to write in place of one found; the same again where nothing is to be changed. */
export type Readdress = (address: string, use: Use) => string;

/** The attributes that hold one address. */
const ADDRESSES: ReadonlySet<string> = new Set(['href', 'src', 'action', 'poster', 'xlink:href']);

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
