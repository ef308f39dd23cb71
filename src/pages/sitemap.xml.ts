// By the protocol a sitemap speaks only for addresses below its own folder, so it also lies at the root of the site.
export { GET } from './data/sitemap.xml.ts';
