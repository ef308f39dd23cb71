/** Text made safe inside XML; letters that XML 1.0 (§2.2) does not know are left out. */
export function escape(text: string): string {
  return (
    text
      // eslint-disable-next-line no-control-regex
      .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, '')
      .replace(/&/g, '&amp;')
      .replace(/</g, '&lt;')
      .replace(/>/g, '&gt;')
      .replace(/"/g, '&quot;')
  );
}

export type FeedEntry = { readonly title: string; readonly address: string; readonly says: string };

/** An RSS 2.0 feed of the newest pieces. Entries carry no day: the cabinet does not publish when a piece came. */
export function rssFeed(
  feed: { title: string; address: string; own: string; says: string; language: string; licence: string | null },
  entries: readonly FeedEntry[],
): string {
  const items = entries.map(
    ({ title, address, says }) =>
      `<item><title>${escape(title)}</title><link>${escape(address)}</link><guid isPermaLink="true">${escape(address)}</guid><description>${escape(says)}</description></item>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<rss version="2.0" xmlns:atom="http://www.w3.org/2005/Atom"><channel><title>${escape(feed.title)}</title><link>${escape(feed.address)}</link><description>${escape(feed.says)}</description><language>${escape(feed.language)}</language>${feed.licence === null ? '' : `<copyright>${escape(feed.licence)}</copyright>`}<atom:link href="${escape(feed.own)}" rel="self" type="application/rss+xml"/>
${items.join('\n')}
</channel></rss>
`;
}

/** A sitemap of these addresses. Source: the sitemaps.org protocol 0.9. */
export function sitemap(addresses: readonly string[]): string {
  return `<?xml version="1.0" encoding="UTF-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${addresses.map((address) => `<url><loc>${escape(address)}</loc></url>`).join('\n')}
</urlset>
`;
}

/** The most entries a feed holds. */
export const FEED_LENGTH = 20;
