import { posix } from 'node:path';

/** The file a hall copy is opened by: the exhibit itself. */
export const FRONT = 'open-me.html';
/** The folder beside it that holds everything else. */
export const REST = 'catalogue';

/** What of a site goes into a hall copy: the path it stands under (`/` or `/coins/`), and the exhibit that is shown first. */
export type HallPlan = { readonly base: string; readonly exhibit: string };

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
  return file === exhibitPage(exhibit) ? FRONT : `${REST}/${file}`;
}

/** The page of an exhibit, as a file of the site. */
export function exhibitPage(exhibit: string): string {
  return `exhibits/${exhibit}/index.html`;
}

/** The way from one file of the hall copy to another: a relative address that names its file in full. */
export function wayTo(to: string, from: string): string {
  return encodeURI(posix.relative(posix.dirname(from), to));
}
