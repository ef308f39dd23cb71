import { posix } from 'node:path';

/** The file an offline copy is opened by: the exhibit, or the first page of the whole catalogue. */
export const FRONT = 'open-me.html';
/** The folder beside it that holds everything else. */
export const REST = 'catalogue';

/**
 * What of a site goes into an offline copy: the path it stands under (`/` or `/coins/`), and the exhibit that is shown first; null
 * for the whole catalogue.
 */
export type HallPlan = { readonly base: string; readonly exhibit: string | null };

/** A file of a site, by its path under the base, and what an address says after it (`?words=penny`, `#case-1`). */
export type Meant = { readonly file: string; readonly after: string };

// Stands for whichever host the site has; an address that leads elsewhere has another.
const HOST = 'https://this.site';

/** The file of the site that an address on one of its pages means; null for what lies elsewhere, and for a mere `#place`. */
export function fileMeant(address: string, from: string, { base }: HallPlan): Meant | null {
  if (address === '' || address.startsWith('#') || !URL.canParse(address, `${HOST}${base}${from}`)) return null;
  const { origin, pathname, search, hash } = new URL(address, `${HOST}${base}${from}`);
  if (origin !== HOST || !pathname.startsWith(base)) return null;
  const path = decodeURIComponent(pathname.slice(base.length));
  return { file: path === '' || path.endsWith('/') ? `${path}index.html` : path, after: `${search}${hash}` };
}

/** Where a file of the site lies in the hall copy. */
export function placeInHall(file: string, { exhibit }: HallPlan): string {
  return file === frontPage(exhibit) ? FRONT : `${REST}/${file}`;
}

/** The page that a copy begins with, as a file of the site. */
export function frontPage(exhibit: string | null): string {
  return exhibit === null ? 'index.html' : `exhibits/${exhibit}/index.html`;
}

/** The way from one file of the hall copy to another: a relative address that names its file in full. */
export function wayTo(to: string, from: string): string {
  return encodeURI(posix.relative(posix.dirname(from), to));
}
