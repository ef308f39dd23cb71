/** A file of a built site: its path, with forward slashes, and its text. */
export type HostFile = { readonly file: string; readonly text: string };

/** What a host must know of a site. Addresses are counted from the site (`pieces/york-penny/`). */
export type Hosted = {
  /** The path the site stands under, with a slash at either end. */
  readonly base: string;
  /** Its place on the web, in full; null when it has none. */
  readonly address: string | null;
  /** Every place it has stood at. */
  readonly stoodAt: readonly string[];
  /** Every address that was ever published, the home page (an empty one) included, and where each of them leads now. */
  readonly leads: ReadonlyMap<string, string | null>;
  /** Addresses that are in no list, and are named in none here. */
  readonly unlisted: ReadonlySet<string>;
};

/** What everybody's browser is told of every file; a policy on pages alone cannot say who may frame them. Source: W3C, CSP Level 3. */
const EVERYWHERE = [
  'X-Content-Type-Options: nosniff',
  'Referrer-Policy: no-referrer',
  "Content-Security-Policy: frame-ancestors 'none'",
  'Permissions-Policy: camera=(), geolocation=(), microphone=()',
  'Cross-Origin-Opener-Policy: same-origin',
];
const FOREVER = 'Cache-Control: public, max-age=31536000, immutable';
/** Other people's viewers and tools may read these from their own pages. Source: WHATWG Fetch; IIIF Image API 3.0, §7.1. */
const FOR_ALL = 'Access-Control-Allow-Origin: *';

/**
 * The files that some hosts read beside a site: `.nojekyll` (take the files as they are), `_headers` and `_redirects`. Others
 * ignore them. What moved has a page that leads on in any case.
 */
export function hostFiles({ base, address, stoodAt, leads, unlisted }: Hosted): readonly HostFile[] {
  const rules: readonly (readonly [path: string, ...headers: readonly string[]])[] = [
    ['*', ...EVERYWHERE],
    // Their names change with what is in them.
    ['_astro/*', FOREVER],
    ['photographs/*', FOREVER, FOR_ALL],
    ['data/*', FOR_ALL],
  ];
  const moved = [...leads].flatMap(([from, to]) =>
    to === null || to === from || unlisted.has(to) ? [] : [`${base}${from} ${base}${to} 301`],
  );
  // Pages lead on by themselves; data and pictures at a place below this one cannot.
  const own = [...leads.keys()];
  for (const { below } of placesBefore(address, stoodAt))
    if (below !== null && !own.some((page) => page.startsWith(below))) moved.push(`${base}${below}* ${base}:splat 301`);
  return [
    { file: '.nojekyll', text: '' },
    {
      file: '_headers',
      text: rules.map(([path, ...said]) => `${base}${path}\n${said.map((one) => `  ${one}\n`).join('')}`).join(''),
    },
    ...(moved.length === 0 ? [] : [{ file: '_redirects', text: `${moved.join('\n')}\n` }]),
  ];
}

/**
 * For each place the site stood at and stands at no longer, a page for every address, which leads to the new one. `inside` lie in
 * the site itself, where the old place is below the new one; the others are by their place, to be put there.
 */
export function forwardPages({ base, address, stoodAt, leads }: Hosted): {
  readonly inside: readonly HostFile[];
  readonly outside: ReadonlyMap<string, readonly HostFile[]>;
} {
  const inside: HostFile[] = [];
  const outside = new Map<string, readonly HostFile[]>();
  for (const { place, below, now } of placesBefore(address, stoodAt)) {
    const way = (to: string | null): string | null => (to === null ? null : `${below === null ? now : base}${to}`);
    const pages = [...leads].map(([from, to]) => ({ file: `${from}index.html`, text: plainPage(way(to)) }));
    if (below === null) outside.set(place, pages);
    else inside.push(...pages.map(({ file, text }) => ({ file: `${below}${file}`, text })));
  }
  return { inside, outside };
}

/** The places where a site stood and stands no longer, with the path of each below the present one (`now`); null where it is not. */
function placesBefore(
  address: string | null,
  stoodAt: readonly string[],
): readonly { readonly place: string; readonly below: string | null; readonly now: string }[] {
  if (address === null) return [];
  const now = sameFolder(new URL(address));
  return stoodAt.flatMap((place) => {
    const old = URL.canParse(place) ? sameFolder(new URL(place)) : now;
    return old === now ? [] : [{ place, below: old.startsWith(now) ? old.slice(now.length) : null, now }];
  });
}

/** An address as that of a folder: with a slash at its end. */
function sameFolder({ origin, pathname }: URL): string {
  return `${origin}${pathname.replace(/\/?$/, '/')}`;
}

/** A page that leads on to another and loads nothing; with null, one that says that what stood here was withdrawn. */
export function plainPage(to: string | null): string {
  const policy = "default-src 'none'; base-uri 'none'; form-action 'none'";
  const head = `<!doctype html><html lang="en"><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><meta name="referrer" content="no-referrer"><meta name="viewport" content="width=device-width">`;
  return to === null
    ? `${head}<meta name="robots" content="noindex"><title>Withdrawn</title><h1>Withdrawn</h1><p>What stood at this address has been withdrawn by the keeper.</p></html>\n`
    : `${head}<title>Moved</title><meta http-equiv="refresh" content="0; url=${to}"><h1>Moved</h1><p><a href="${to}">${to}</a></p></html>\n`;
}
