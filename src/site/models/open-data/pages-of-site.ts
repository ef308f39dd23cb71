import { sitemap } from '../../../publish/xml.ts';
import type { Cabinet } from '../../cabinet.ts';
import { hasPublicAddress, inFull, urls } from '../../urls.ts';

/** The address of every page a search engine may show: no unlisted piece, no paper form, no page of a facet. */
export function pagesOfSite(cabinet: Cabinet): readonly string[] {
  const { rulers, mints, sets, eras, exhibits } = cabinet.lists;
  return [
    urls.home(),
    urls.pieces(),
    ...cabinet.listed.map(({ id }) => urls.piece(id)),
    urls.rulers(),
    ...Object.keys(rulers).map(urls.ruler),
    urls.mints(),
    ...Object.keys(mints).map(urls.mint),
    urls.sets(),
    ...sets.map(({ id }) => urls.set(id)),
    urls.eras(),
    ...eras.map(({ id }) => urls.era(id)),
    urls.measures(),
    ...(exhibits.length === 0 ? [] : [urls.exhibits()]),
    ...exhibits.map(({ id }) => urls.exhibit(id)),
    urls.compare(),
    urls.works(),
    urls.about(),
    urls.readings(),
    urls.data(),
  ];
}

/** The sitemap: `sitemap.xml`. */
export function sitemapOf(cabinet: Cabinet): string {
  return sitemap(pagesOfSite(cabinet).map(inFull));
}

/** What search engines are told at the door: they may read everything, and where the sitemap lies. */
export function robotsText(): string {
  const lines = ['User-agent: *', 'Allow: /'];
  if (hasPublicAddress()) lines.push(`Sitemap: ${inFull(urls.sitemapAtRoot())}`);
  return `${lines.join('\n')}\n`;
}
