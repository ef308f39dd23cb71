import { execFile } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cp, mkdir, readdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import type { RouteData } from 'astro';
import type { PathWithRoute, StaticPathsApp } from 'astro/runtime/prerender/static-paths.js';
import { StaticPaths } from 'astro/runtime/prerender/static-paths.js';
import { programDigest } from './last-site.ts';

/** A route's page, and the styles that its head refers to. */
export type StyledPage = {
  readonly key: string;
  readonly route: RouteData;
  readonly component: string;
  readonly styles: readonly unknown[];
};

/** What was bundled: the module to begin with, and the styles of every page. */
export type PagesProgram = { readonly entry: string; readonly pages: readonly StyledPage[] };

/** In the folder of a program: the bundled pages, the files that are in every site, and what is told of both. */
export const PARTS = { program: 'program', files: 'files', told: 'pages.json' } as const;

/** The app of Astro in a bundle of pages, as its own builder uses it. */
type PagesApp = Required<StaticPathsApp> & {
  readonly setInternals: (internals: unknown) => void;
  readonly setOptions: (options: unknown) => void;
  readonly render: (request: Request, options: { readonly routeData: RouteData }) => Promise<Response>;
};

/** A page that is due: the route that makes it, its address on the web, and its file in the site. */
type DuePage = { readonly route: RouteData; readonly address: string; readonly file: string } & DueProps;

/** What of a page's props is for a build: whether the page is as it was, which `isTaken` says of its key (`site/keyed.ts`). */
type DueProps = { readonly isKept?: (isTaken: (key: string) => boolean) => Promise<boolean> };

const DAY = 24 * 3600 * 1000;
const PROGRAMS = resolve('.cache/program');

/**
 * The folder of the bundled pages for this place on the web, kept under the digest of the program. They are bundled only when no
 * build of this digest did it before, for that takes as long as making some thousand pages; `signal` ends it.
 */
export async function bundledPages(site: string, base: string, signal?: AbortSignal): Promise<string> {
  const digest = programDigest(site, base);
  const folder = join(PROGRAMS, digest);
  if (existsSync(join(folder, PARTS.told))) return folder;
  const coming = `${folder}.${process.pid}`;
  await rm(coming, { recursive: true, force: true });
  await mkdir(coming, { recursive: true });
  try {
    const bundler = fileURLToPath(new URL('bundle-pages.ts', import.meta.url));
    const words = ['--disable-warning=ExperimentalWarning', bundler, coming, site, base];
    await promisify(execFile)(process.execPath, words, { maxBuffer: 2 ** 26, ...(signal !== undefined && { signal }) });
    // Two builds at once: the other's is as good.
    await rename(coming, folder).catch(() => undefined);
  } finally {
    await rm(coming, { recursive: true, force: true });
  }
  await forgetOlder(digest);
  return folder;
}

/** Removes what was bundled of other programs; not at once, for a build that goes on may still read of it. */
async function forgetOlder(digest: string): Promise<void> {
  for (const name of await readdir(PROGRAMS)) {
    const old = await stat(join(PROGRAMS, name)).catch(() => null);
    if (name !== digest && old !== null && Date.now() - old.mtimeMs > DAY)
      await rm(join(PROGRAMS, name), { recursive: true, force: true });
  }
}

/** How many pages are under way at once: those with pictures wait for them. */
const AT_ONCE = 8;

/** Whether a page of this key is in the site already. */
type IsTaken = (file: string, key: string) => boolean;

/**
 * Makes the pages of the cabinet that was handed over, in the folder `into`, by what was bundled of them. `isTaken` is asked of
 * each page that has a key, and may answer that the page is there already.
 */
export async function makePages(bundled: string, into: string, isTaken: IsTaken): Promise<void> {
  await cp(join(bundled, PARTS.files), into, { recursive: true });
  const app = await appOf(bundled);
  const seen = new Set<string>();
  // Route by route: what the pages of one show is forgotten before the next.
  for (const route of app.manifest.routes) {
    const due = (await pagesOf(app, route)).values();
    const makeNext = async (): Promise<void> => {
      for (const page of due) {
        // Of two routes to one page Astro takes the first.
        if (seen.has(page.file)) continue;
        seen.add(page.file);
        await makePage(app, page, into, isTaken).catch((fault: unknown) => {
          throw ofPage(route.routeData.component, fault);
        });
      }
    };
    await Promise.all(Array.from({ length: AT_ONCE }, makeNext));
    app.routeCache.clearAll();
  }
}

/** The pages of one route. */
async function pagesOf(app: PagesApp, route: PagesApp['manifest']['routes'][number]): Promise<readonly DuePage[]> {
  const { manifest, routeCache } = app;
  const paths = await new StaticPaths({
    manifest: { ...manifest, routes: [route] },
    routeCache,
    getComponentByRoute: (data) => app.getComponentByRoute(data),
  }).getAll();
  // In the same order: it makes one of each of these.
  const all = routeCache.get(route.routeData)?.staticPaths ?? [];
  return paths.map((path, place) => duePage(app, path, all[place]?.props));
}

function duePage({ manifest }: PagesApp, { pathname, route }: PathWithRoute, props: DueProps = {}): DuePage {
  const path = pathname.replace(/^\/+|\/+$/g, '');
  const address = `${manifest.base}${path}${route.type === 'page' && path !== '' ? '/' : ''}`;
  const due = { route, address: new URL(address, manifest.site ?? '').href, file: fileOf(path, route) };
  return props.isKept === undefined ? due : { ...due, isKept: props.isKept };
}

/** The bundled app, as Astro's own builder would begin with it. */
async function appOf(bundled: string): Promise<PagesApp> {
  const { entry, pages } = JSON.parse(readFileSync(join(bundled, PARTS.told), 'utf8')) as PagesProgram;
  const { app } = (await import(pathToFileURL(join(bundled, PARTS.program, entry)).href)) as { readonly app: PagesApp };
  // What it would write of a page that fails may hold what is private.
  const write = (): void => undefined;
  app.setInternals({ pagesByKeys: new Map(pages.map((page) => [page.key, page])) });
  app.setOptions({ settings: { scripts: [] }, logger: { options: { destination: { write } } } });
  // Another cabinet may have been made by it in this process.
  app.routeCache.clearAll();
  return app;
}

/** A fault of a page, with the file that makes it before the places where it failed. */
function ofPage(component: string, fault: unknown): unknown {
  if (fault instanceof Error) fault.stack = `    at ${component}:1\n${fault.stack ?? ''}`;
  return fault;
}

async function makePage(app: PagesApp, page: DuePage, into: string, isTaken: IsTaken): Promise<void> {
  const { route, address, file } = page;
  if ((await page.isKept?.((key) => isTaken(file, key))) === true) return;
  const made = await app.render(new Request(address), { routeData: route });
  // The page of an error is no page of the site.
  if (made.status >= 500) throw new Error('The page could not be made.');
  if (made.body === null) return;
  mkdirSync(dirname(join(into, file)), { recursive: true });
  writeFileSync(join(into, file), Buffer.from(await made.arrayBuffer()));
}

function fileOf(path: string, { type }: RouteData): string {
  if (type !== 'page') return path;
  return path === '404' ? '404.html' : path === '' ? 'index.html' : `${path}/index.html`;
}
