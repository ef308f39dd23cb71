import { sitemap } from '../../../publish/xml.ts';
import type { Cabinet } from '../../cabinet.ts';
import { seriesIds, seriesWithDies, seriesWithKey, seriesWithNumbers, typePaths } from '../types/types-page.ts';
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
    ...typesOfSite(cabinet),
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

/**
 * What search engines are told: whether they may read, and where the sitemap is. They read the file only at the root of a host
 * (RFC 9309): under a path the pages say it themselves.
 */
export function robotsText(cabinet: Cabinet): string {
  const mayRead = cabinet.lists.cabinet.robots === 'all';
  const lines = ['User-agent: *', mayRead ? 'Allow: /' : 'Disallow: /'];
  if (hasPublicAddress() && mayRead) lines.push(`Sitemap: ${inFull(urls.sitemapAtRoot())}`);
  return `${lines.join('\n')}\n`;
}

/** The pages of every series: its types, and its concordance, key and dies where it has them. */
function typesOfSite(cabinet: Cabinet): readonly string[] {
  const ids = seriesIds(cabinet);
  if (ids.length === 0) return [];
  return [
    urls.types(),
    ...ids.map((id) => urls.series(id)),
    ...seriesWithNumbers(cabinet).map((id) => urls.concordance(id)),
    ...seriesWithKey(cabinet).map((id) => urls.typeKey(id)),
    ...seriesWithDies(cabinet).map((id) => urls.dieChart(id)),
    ...typePaths(cabinet).map(({ series, id }) => urls.type(series, id)),
  ];
}
