import type { Document, Element } from '@xmldom/xmldom';
import { elements, readXml, texts } from './read-xml.ts';

/** What is wrong with a text by the rules of its format; nothing when it keeps them all. */
export type Faults = readonly string[];

const childrenOf = (element: Element): readonly Element[] =>
  [...element.childNodes].filter((node): node is Element => node.nodeType === 1);
const isAbsolute = (text: string): boolean => /^https?:\/\/[^\s<>"{}|\\^`]+$/.test(text) && URL.canParse(text);

function opened(text: string): Document | string {
  try {
    return readXml(text);
  } catch (fault) {
    return `not well formed: ${String(fault)}`;
  }
}

const MOST_ADDRESSES = 50_000;
const SITEMAP = 'http://www.sitemaps.org/schemas/sitemap/0.9';

/**
 * The sitemap protocol 0.9 (sitemaps.org/protocol.html) and its schema of 2008: one urlset of its namespace; at least one url and
 * at most 50,000, 50 MB in all; each with loc first and once, then lastmod, changefreq, priority at most once and in that order; a
 * loc of 12 to 2,048 signs, absolute, below `within`, no address twice.
 */
export function sitemapFaults(text: string, within: string): Faults {
  const faults: string[] = [];
  const read = opened(text);
  if (typeof read === 'string') return [read];
  const root = read.documentElement;
  if (root?.localName !== 'urlset' || root.namespaceURI !== SITEMAP) return ['the root is no urlset of the protocol'];
  if (Buffer.byteLength(text) > 50 * 1024 ** 2) faults.push('more than 50 MB');
  const urls = childrenOf(root);
  if (urls.length === 0 || urls.length > MOST_ADDRESSES) faults.push(`${urls.length} addresses`);
  const seen = new Set<string>();
  for (const url of urls) {
    const names = childrenOf(url).map(({ localName }) => localName);
    if (url.localName !== 'url' || !/^loc( lastmod)?( changefreq)?( priority)?$/.test(names.join(' ')))
      faults.push(`an entry of ${names.join(', ')}`);
    const [loc = ''] = texts(url, 'loc');
    if (loc.length < 12 || loc.length > 2048 || !isAbsolute(loc)) faults.push(`no address: ${loc}`);
    else if (!loc.startsWith(within)) faults.push(`outside ${within}: ${loc}`);
    if (seen.has(loc)) faults.push(`twice: ${loc}`);
    seen.add(loc);
  }
  return faults;
}

const ONCE_IN_CHANNEL = ['title', 'link', 'description'];
const IN_CHANNEL = [
  ...ONCE_IN_CHANNEL, 'language', 'copyright', 'pubDate', 'lastBuildDate', 'generator', 'docs', 'ttl', 'image', 'item',
  'atom:link',
]; // prettier-ignore
const IN_ITEM = ['title', 'link', 'description', 'guid', 'pubDate', 'author', 'category', 'enclosure', 'source'];

/**
 * RSS 2.0 (rssboard.org/rss-specification) with what the RSS profile of its board asks besides: version, one channel, title, link
 * and description once in it; an item has a title or a description, each element once, and a guid that is its own and an address
 * unless it says otherwise; atom:link with rel, type and an absolute href (RFC 4287, §4.2.7); nothing else that has no namespace.
 */
export function feedFaults(text: string): Faults {
  const faults: string[] = [];
  const read = opened(text);
  if (typeof read === 'string') return [read];
  const root = read.documentElement;
  if (root?.nodeName !== 'rss' || root.getAttribute('version') !== '2.0') return ['the root is not rss, version 2.0'];
  const channels = childrenOf(root);
  const [channel] = channels;
  if (channel?.nodeName !== 'channel' || channels.length !== 1) return ['not one channel'];
  const own = childrenOf(channel);
  const named = (name: string): readonly Element[] => own.filter(({ nodeName }) => nodeName === name);
  for (const name of ONCE_IN_CHANNEL)
    if (named(name).length !== 1 || named(name)[0]?.textContent?.trim() === '') faults.push(`the channel's ${name}`);
  faults.push(...own.filter(({ nodeName }) => !IN_CHANNEL.includes(nodeName)).map(({ nodeName }) => `${nodeName} in the channel`));
  if (!isAbsolute(named('link')[0]?.textContent ?? '')) faults.push('the link of the channel is no address');
  const atom = named('atom:link').filter((link) => link.getAttribute('rel') === 'self');
  if (atom.length !== 1 || !isAbsolute(atom[0]?.getAttribute('href') ?? '') || atom[0]?.getAttribute('type') !== 'application/rss+xml')
    faults.push('the feed does not say its own address');
  if (atom[0]?.namespaceURI !== 'http://www.w3.org/2005/Atom') faults.push('atom:link is of no namespace');
  const guids = new Set<string>();
  for (const item of elements(channel, 'item')) {
    const names = childrenOf(item).map(({ nodeName }) => nodeName);
    if (!names.includes('title') && !names.includes('description')) faults.push('an item without title and description');
    if (new Set(names).size !== names.length) faults.push(`an item with ${names.join(', ')}`);
    faults.push(...names.filter((name) => !IN_ITEM.includes(name)).map((name) => `${name} in an item`));
    const guid = elements(item, 'guid')[0];
    const said = guid?.textContent ?? '';
    if (guid === undefined || guids.has(said)) faults.push(`a guid that is missing or not its own: ${said}`);
    if (guid?.getAttribute('isPermaLink') !== 'false' && !isAbsolute(said)) faults.push(`a guid that is no address: ${said}`);
    const link = texts(item, 'link')[0];
    if (link !== undefined && !isAbsolute(link)) faults.push(`a link that is no address: ${link}`);
    guids.add(said);
  }
  return faults;
} // prettier-ignore
