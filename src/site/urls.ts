import { fileId } from '../core/file-id.ts';

/** The build's settings; none where the desk draws with the same models outside a build. */
const BUILD = import.meta.env as Partial<ImportMetaEnv> | undefined;
/** Where the site stands: `/` or `/coins/`. */
const BASE = (BUILD?.BASE_URL ?? '/').replace(/\/?$/, '/');

const at = (path: string): string => `${BASE}${path}`;

/** Every address of the site, from the root of its host. Nothing else spells one. */
export const urls = {
  home: (): string => at(''),
  pieces: (): string => at('pieces/'),
  piece: (id: string): string => at(`pieces/${id}/`),
  /** The list of pieces with something sought in it. */
  search: (words: string): string => at(`pieces/?words=${encodeURIComponent(words)}`),
  /** A facet's page: every piece of one mint, one ruler … */
  facet: (facet: string, value: string, page = 1): string =>
    at(`pieces/by/${facet}/${value}/${page === 1 ? '' : `${page}/`}`),
  piecesPage: (page: number): string => at(page === 1 ? 'pieces/' : `pieces/page/${page}/`),
  rulers: (): string => at('rulers/'),
  ruler: (id: string): string => at(`rulers/${id}/`),
  mints: (): string => at('mints/'),
  mint: (id: string): string => at(`mints/${id}/`),
  sets: (page = 1): string => at(page === 1 ? 'sets/' : `sets/page/${page}/`),
  set: (id: string, page = 1): string => at(`sets/${id}/${page === 1 ? '' : `page/${page}/`}`),
  /** What a set is shared by: pieces of it at one scale. */
  setPicture: (id: string): string => at(`sets/${id}/picture.jpg`),
  wanted: (id: string): string => at(`sets/${id}/wanted/`),
  eras: (): string => at('eras/'),
  era: (id: string): string => at(`eras/${id}/`),
  measures: (): string => at('measures/'),
  exhibits: (): string => at('exhibits/'),
  exhibit: (id: string): string => at(`exhibits/${id}/`),
  /** One case of an exhibit, counted from 1, for whoever stands before it. */
  exhibitCase: (id: string, number: number): string => at(`exhibits/${id}/case/${String(number)}/`),
  /** What an exhibit is shared by: its pieces at one scale. */
  exhibitPicture: (id: string): string => at(`exhibits/${id}/picture.jpg`),
  /** The printed forms of an exhibit: A4 with the keeper's name, `anonymous`, `letter`, `letter/anonymous`. */
  exhibitPrint: (id: string, form: '' | 'anonymous' | 'letter' | 'letter/anonymous' = ''): string =>
    at(`exhibits/${id}/print/${form === '' ? '' : `${form}/`}`),
  /** Pieces laid side by side; which, in their order, is told behind the question mark. */
  compare: (...pieces: readonly string[]): string =>
    at(`compare/${pieces.length === 0 ? '' : `?pieces=${pieces.join(',')}`}`),
  /** A page for whoever lays the pieces of an exhibit; it names nobody. `key` is the number of a piece in the exhibit. */
  exhibitSetUp: (id: string, key?: number): string =>
    at(`exhibits/${id}/print/set-up/${key === undefined ? '' : `#piece-${key}`}`),
  types: (): string => at('types/'),
  series: (series: string, page = 1): string => at(`types/${series}/${page === 1 ? '' : `page/${page}/`}`),
  type: (series: string, id: string): string => at(`types/${series}/${id}/`),
  concordance: (series: string, page = 1): string => at(`types/${series}/concordance/${page === 1 ? '' : `${page}/`}`),
  typeKey: (series: string, page = 1): string => at(`types/${series}/key/${page === 1 ? '' : `${page}/`}`),
  dieChart: (series: string, page = 1): string => at(`types/${series}/dies/${page === 1 ? '' : `${page}/`}`),
  /** What the key of a series works on. */
  seriesJson: (series: string): string => at(`data/types/${series}.json`),
  works: (): string => at('works/'),
  /** A book in the list of works. */
  work: (id: string): string => at(`works/#${id}`),
  /** A page of the numbers cited from a book, where they are too many for the list of works. */
  citations: (id: string, page = 1): string => at(`works/${id}/${page === 1 ? '' : `${page}/`}`),
  about: (): string => at('about/'),
  readings: (): string => at('about/readings/'),
  /** The cautions, by their own names: `finds`, `copies`, `cleaning`, `lead`, `value`, `publishing`. */
  caution: (name: string): string => at(`about/#${name}`),
  data: (): string => at('data/'),
  piecesJson: (): string => at('data/pieces.json'),
  piecesCsv: (): string => at('data/pieces.csv'),
  /** Everything as linked data. */
  linkedWhole: (): string => at('data/catalogue.jsonld'),
  piecesSchema: (): string => at('data/pieces.schema.json'),
  piecesCsvMetadata: (): string => at('data/pieces.csv-metadata.json'),
  searchJson: (): string => at('data/search.json'),
  searchTexts: (): string => at('data/search-texts.json'),
  setJson: (id: string): string => at(`data/sets/${id}.json`),
  /** A piece as linked data, and what is laid of it for comparing. */
  pieceJson: (id: string): string => at(`data/pieces/${id}.json`),
  iiif: (id: string): string => at(`data/iiif/${id}/manifest.json`),
  /** The pictures of an exhibit, by case and group. */
  exhibitManifest: (id: string): string => at(`data/iiif/exhibits/${id}/manifest.json`),
  feed: (): string => at('data/feed.xml'),
  sitemap: (): string => at('data/sitemap.xml'),
  sitemapAtRoot: (): string => at('sitemap.xml'),
  photograph: (piece: string, file: string): string => at(`photographs/${piece}/${file}`),
  icon: (): string => at('icon.svg'),
  touchIcon: (): string => at('touch-icon.png'),
  largeIcon: (): string => at('icon-512.png'),
  /** What a telephone calls the site on its home screen. */
  webManifest: (): string => at('site.webmanifest'),
} as const;

/** An address of the cabinet's list, which is counted from the site (`pieces/york-penny/`), from the root of its host. */
export const inSite = at;

/** The reverse of `inSite`. */
export function pathInSite(address: string): string {
  return address.slice(BASE.length);
}

/** An address with its host in front, for what leaves the site: feeds, linked data, citations. */
export function inFull(address: string): string {
  return new URL(address, import.meta.env.SITE).href;
}

/** Whether the cabinet says where the site will stand; without it an absolute address means nothing. */
export { hasPublicAddress } from '../catalogue/handed-over.ts';

/** A name as it is in an address: `Copper alloy` is copper-alloy. */
export const slug = fileId;
