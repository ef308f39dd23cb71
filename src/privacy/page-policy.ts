import { decodeHTMLAttribute } from 'entities';
import { parse } from 'parse5';
import type { DefaultTreeAdapterMap } from 'parse5';

/** What is in a tag before one of its attributes: its other attributes, and of a text in quotation marks the whole. */
const WITHIN = String.raw`(?:[^>"']|"[^"]*"|'[^']*')*?`;
const ELSEWHERE = String.raw`((?:https?:)?\/\/[^\s"'<>]+)`;
const LOADERS = 'img|script|iframe|source|video|audio|track|embed|object|input|image|use|frame';
const ADDRESS = 'src|srcset|data|poster|href|xlink:href';
/** What loads something: by its element and the attribute that holds the address. A mere link to elsewhere loads nothing. */
const LOADING = new RegExp(`<(?:${LOADERS})\\b${WITHIN}\\s(?:${ADDRESS})\\s*=\\s*["']?\\s*${ELSEWHERE}`, 'gi');
const LINKED = new RegExp(`<link\\b${WITHIN}>`, 'gi');
const STYLE = /<style\b[^>]*>([^<]*)/gi;
const OWN_STYLE = new RegExp(`<[a-z][a-z0-9-]*\\b${WITHIN}\\sstyle="([^"]*)"`, 'gi');
/** What a `<link>` is for when a browser fetches it. */
const FETCHED =
  /\brel=["']?[^"'>]*\b(?:stylesheet|preload|prefetch|preconnect|dns-prefetch|modulepreload|icon|manifest)\b/i;
const STYLED = /(?:url\(\s*["']?|@import\s+["'])\s*((?:https?:)?\/\/[^\s"')]+)/gi;

/** The first address outside the site from which a page or a style sheet would load something; null when there is none. */
export function loadsFrom(file: string, text: string): string | null {
  if (file.endsWith('.css')) return first(text, STYLED);
  if (!/\.(html|svg|xml)$/i.test(file)) return null;
  const links = [...text.matchAll(LINKED)].map(([link]) => link).filter((link) => FETCHED.test(link));
  const linked = links.map((link) => /\bhref=["']?((?:https?:)?\/\/[^\s"'>]+)/i.exec(link)?.[1]).find(Boolean);
  const ways = /\sstyle="/i.test(text) ? [STYLE, OWN_STYLE] : [STYLE];
  const styles = ways.flatMap((way) => [...text.matchAll(way)].map(([, style = '']) => style));
  const likely = first(text, LOADING) ?? linked ?? first(styles.join('\n'), STYLED);
  // Words within an attribute may look like an element: a browser's own way of reading a page settles it.
  return likely === null || !file.endsWith('.html') ? likely : loadedBy(parse(text));
}

/** What an element of a page, or one within it, would load from elsewhere. */
function loadedBy(node: DefaultTreeAdapterMap['node']): string | null {
  if ('tagName' in node) {
    const { tagName } = node;
    const at = new Map(node.attrs.map(({ name, value }) => [name, value]));
    const loads =
      LOADERS.split('|').includes(tagName) || (tagName === 'link' && FETCHED.test(`rel="${at.get('rel')}"`));
    const addresses = loads ? ADDRESS.split('|').flatMap((name) => at.get(name)?.split(/[\s,]+/) ?? []) : [];
    const style = `${at.get('style') ?? ''}${tagName === 'style' ? node.childNodes.map((one) => ('value' in one ? one.value : '')).join('') : ''}`;
    const found = addresses.find((one) => /^(?:https?:)?\/\//i.test(one)) ?? first(style, STYLED);
    if (found !== null) return found;
  }
  const within = [...('childNodes' in node ? node.childNodes : []), ...('content' in node ? [node.content] : [])];
  for (const one of within) {
    const found = loadedBy(one);
    if (found !== null) return found;
  }
  return null;
}

function first(text: string, pattern: RegExp): string | null {
  return [...text.matchAll(pattern)][0]?.[1] ?? null;
}

/** The rules a policy must have, word for word, whatever else it has. Source: W3C, Content Security Policy Level 3. */
const RULES: readonly (readonly [string, RegExp])[] = [
  ["rule default-src 'none' in its content security policy", /(?:^|; ?)default-src 'none'(?:;|$)/],
  ["rule base-uri 'none' in its content security policy", /(?:^|; ?)base-uri 'none'(?:;|$)/],
  ['rule form-action in its content security policy', /(?:^|; ?)form-action '(?:self|none)'(?: file:)?(?:;|$)/],
];
/** What a policy must not let in. */
const LAX = /unsafe-|\*|\bhttps?:|\bws:|\bblob:/;

/** What a page lacks that keeps what is foreign away: a strict policy before anything it could load, and silence to other hosts. */
export function lacksIn(page: string): string | null {
  if (!/^\s*<!doctype html/i.test(page)) return null;
  const head = /^[^]*?<\/head>/i.exec(page)?.[0] ?? page.slice(0, 4000);
  const at = head.search(/<meta\b[^>]*http-equiv=["']?content-security-policy/i);
  if (at === -1) return 'content security policy';
  if (/<(?:script|link|style|img|base)\b/i.test(head.slice(0, at)))
    return 'content security policy before what it loads';
  const policy = decodeHTMLAttribute(/content="([^"]*)"/i.exec(head.slice(at))?.[1] ?? '');
  const missing = RULES.find(([, rule]) => !rule.test(policy))?.[0];
  if (missing !== undefined) return missing;
  if (LAX.test(policy)) return 'strict content security policy';
  return /<meta\b[^>]*name="?referrer"?[^>]*content="?no-referrer["\s>/]/i.test(head) ? null : 'referrer policy';
}
