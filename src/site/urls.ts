import process from 'node:process';

/** Where the site stands: `/` or `/coins/`. */
const BASE = import.meta.env.BASE_URL.replace(/\/?$/, '/');

const at = (path: string): string => `${BASE}${path}`;

/** Every address of the site, from the root of its host. Nothing else spells one. */
export const urls = {
  home: at(''),
  pieces: at('pieces/'),
  piece: (id: string): string => at(`pieces/${id}/`),
  /** A facet's page: every piece of one mint, one ruler … */
  facet: (facet: string, value: string): string => at(`pieces/by/${facet}/${value}/`),
  piecesPage: (page: number): string => at(page === 1 ? 'pieces/' : `pieces/page/${page}/`),
  rulers: at('rulers/'),
  ruler: (id: string): string => at(`rulers/${id}/`),
  mints: at('mints/'),
  mint: (id: string): string => at(`mints/${id}/`),
  sets: at('sets/'),
  set: (id: string): string => at(`sets/${id}/`),
  wanted: (id: string): string => at(`sets/${id}/wanted/`),
  eras: at('eras/'),
  era: (id: string): string => at(`eras/${id}/`),
  measures: at('measures/'),
  exhibits: at('exhibits/'),
  exhibit: (id: string): string => at(`exhibits/${id}/`),
  exhibitPrint: (id: string): string => at(`exhibits/${id}/print/`),
  exhibitAnonymous: (id: string): string => at(`exhibits/${id}/print/anonymous/`),
  works: at('works/'),
  /** A book in the list of works. */
  work: (id: string): string => at(`works/#${id}`),
  about: at('about/'),
  readings: at('about/readings/'),
  /** The cautions, by their own names: `finds`, `copies`, `cleaning`, `lead`, `value`, `publishing`. */
  caution: (name: string): string => at(`about/#${name}`),
  data: at('data/'),
  piecesJson: at('data/pieces.json'),
  piecesCsv: at('data/pieces.csv'),
  searchJson: at('data/search.json'),
  setJson: (id: string): string => at(`data/sets/${id}.json`),
  pieceJson: (id: string): string => at(`data/pieces/${id}.json`),
  iiif: (id: string): string => at(`data/iiif/${id}/manifest.json`),
  feed: at('data/feed.xml'),
  sitemap: at('data/sitemap.xml'),
  photograph: (piece: string, file: string): string => at(`photographs/${piece}/${file}`),
  icon: at('icon.svg'),
} as const;

/** An address with its host in front, for what leaves the site: feeds, linked data, citations. */
export function absolute(address: string): string {
  return new URL(address, import.meta.env.SITE).href;
}

/** Whether the cabinet says where the site will stand; without it an absolute address means nothing. */
export const hasPublicAddress = process.env['HAS_ADDRESS'] !== 'no';
