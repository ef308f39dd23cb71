/** What loads something: by its element and the attribute that holds the address. A mere link to elsewhere loads nothing. */
const LOADING =
  /<(?:img|script|iframe|source|video|audio|track|embed|object|input|image|use|frame)\b[^>]*?\s(?:src|srcset|data|poster|href|xlink:href)\s*=\s*["']?\s*((?:https?:)?\/\/[^\s"'<>]+)/gi;
const LINKED = /<link\b[^>]*>/gi;
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
  const styles = [...text.matchAll(/<style\b[^>]*>([^<]*)|\sstyle="([^"]*)"/gi)].map(
    ([, whole, own]) => whole ?? own ?? '',
  );
  return first(text, LOADING) ?? linked ?? first(styles.join('\n'), STYLED);
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
  const policy =
    /content="([^"]*)"/i.exec(head.slice(at))?.[1]?.replaceAll('&#39;', "'").replaceAll('&#x27;', "'") ?? '';
  const missing = RULES.find(([, rule]) => !rule.test(policy))?.[0];
  if (missing !== undefined) return missing;
  if (LAX.test(policy)) return 'strict content security policy';
  return /<meta\b[^>]*name="?referrer"?[^>]*content="?no-referrer["\s>/]/i.test(head) ? null : 'referrer policy';
}
