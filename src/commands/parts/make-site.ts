import { today } from '../../catalogue/check-cabinet.ts';
import { readFile, rm } from 'node:fs/promises';
import { join, relative } from 'node:path';
import process from 'node:process';
import { lastingAddresses, pagesNow } from '../../catalogue/addresses.ts';
import type { LastingAddresses } from '../../catalogue/addresses.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';
import type { Problem } from '../../catalogue/problem.ts';
import { formatProblem } from '../../catalogue/problem.ts';
import type { Records } from '../../catalogue/records.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { PhotographRun } from '../../photographs/render/make-photographs.ts';
import { makePhotographs } from '../../photographs/render/make-photographs.ts';
import { formatRemarks } from '../../photographs/verify/remarks.ts';
import { forwardPages, hostFiles } from '../../publish/host-files.ts';
import type { Hosted } from '../../publish/host-files.ts';
import { inspectBuilt } from '../../privacy/inspect-built.ts';
import { cacheFolder } from './cache-folder.ts';
import { checkWhole } from './check-whole.ts';
import { cabinetFlag } from './command-line.ts';
import type { MeantCabinet } from './command-line.ts';
import { inspectedWith } from '../../privacy/guard.ts';
import { growFrom } from './grow-site.ts';
import type { Growing } from './grow-site.ts';
import { forgetSite, lastSiteOf, programDigest, readLastSite, rememberSite } from './last-site.ts';
import { bundledPages } from './pages-program.ts';
import { progressLine } from './progress-line.ts';

/** A site that was made and inspected, and what it was made of. */
export type MadeSite = {
  /** The folder it grew in, an absolute one of our own. */
  readonly grown: string;
  readonly folder: CabinetFolder;
  readonly records: Records;
  readonly photographs: PhotographRun;
  /** The path it expects to stand under. */
  readonly base: string;
  /** What the inspection can say of it. */
  readonly inspected: string;
  /** How many of its pages were taken from the last site. */
  readonly taken: number;
  /** Keeps what the next build needs to know of it, once it is in its place. */
  readonly remember: () => Promise<void>;
  /** Its host and path on the web; null when it has no public address. */
  readonly address: string | null;
  /** Pages that lead on from places where it stood before and which are not below this one. */
  readonly outside: ReturnType<typeof forwardPages>['outside'];
};

/** Which cabinet, at which address; `withUnlisted` lists what is on no list, for a copy that is handed to one person. */
type SiteRequest = {
  readonly cabinet: MeantCabinet;
  readonly address: string | null;
  readonly withUnlisted?: boolean;
};

function listAll(records: Records): Records {
  const pieces = records.pieces.map((piece) =>
    piece.fields.publish === 'unlisted' ? { ...piece, fields: { ...piece.fields, publish: 'yes' as const } } : piece,
  );
  return { ...records, pieces };
}

/**
 * Checks a cabinet, makes its pictures and pages, and inspects every byte of what was made, on its way to the absolute folder
 * `into`. `mayNot` can still refuse, once the cabinet has been read, with a sentence.
 */
export async function makeSite(
  request: SiteRequest,
  into: string,
  mayNot: (records: Records, folder: CabinetFolder) => string | null = () => null,
): Promise<Outcome<MadeSite>> {
  // The pages are bundled beside the check, where an address can be read that both will agree on.
  const ends = new AbortController();
  const where = addressOf(request.address ?? (await addressSaid(request.cabinet.at)));
  const bundling = where.ok ? bundledPages(where.value.origin, where.value.base, ends.signal) : Promise.resolve('');
  const bundled = bundling.catch(() => '');
  try {
    return await checkAndMake(request, into, mayNot, bundled);
  } finally {
    ends.abort();
    await bundled;
  }
}

/** What `address` in cabinet.yaml says at first sight; null where it says nothing. */
async function addressSaid(at: string): Promise<string | null> {
  const text = await readFile(join(at, 'cabinet.yaml'), 'utf8').catch(() => '');
  return /^address: *["']?([^\s"']+)/m.exec(text)?.[1] ?? null;
}

async function checkAndMake(
  { cabinet, address, withUnlisted = false }: SiteRequest,
  into: string,
  mayNot: (records: Records, folder: CabinetFolder) => string | null,
  bundling: Promise<unknown>,
): Promise<Outcome<MadeSite>> {
  const { records, problems, folder } = await checkWhole(cabinet.at, withUnlisted ? listAll : undefined);
  const refusal = mayNot(records, folder);
  if (refusal !== null) return refuse(refusal);
  if (problems.length > 0) return refuse(toFixFirst(problems, cabinet.shown));

  const where = addressOf(address ?? records.cabinet?.fields.address ?? null);
  if (!where.ok) return where;
  const { origin, base, isPublic } = where.value;
  const pictures = cacheFolder('photographs', cabinet.at);
  const photographs = await makePhotographs(records.pieces, cabinet.at, pictures, progressLine('Photographs'));
  if (photographs.problems.length > 0) return refuse(toFixFirst(photographs.problems, cabinet.shown));
  process.stdout.write(formatRemarks(photographs.remarks, cabinet.shown, cabinetFlag(cabinet)));

  // Among our own files: what is built elsewhere shares one folder of Astro's with every other build that goes on.
  const grows = cacheFolder('growing', cabinet.at, into);
  const addresses = lastingAddresses(records, folder, today());
  const standsAt = isPublic ? `${origin}${base}` : null;
  const hosted = { base, address: standsAt, ...whereAllLeads(records, folder, addresses) };
  const { inside, outside } = forwardPages(hosted);
  const store = cacheFolder('last-site', cabinet.at, into);
  const madeBy = programDigest(origin, base, String(isPublic));
  const last = readLastSite(store, madeBy);
  const growing: Growing = {
    handed: { records, photographs: pictures, hasAddress: isPublic, addresses },
    folder,
    bundled: await bundling.then(() => bundledPages(origin, base)),
    grows,
    into,
    tiles: tilesWanted(records, cabinet.at),
    hosted,
    texts: [...inside, ...hostFiles(hosted)],
  };
  const { kept, problems: leaks, clean } = await growFrom(last, growing);
  if (leaks.length > 0) {
    forgetSite(store);
    return refuse(await tellLeaks(leaks, grows, into));
  }
  return good({
    grown: grows,
    folder,
    records,
    photographs,
    base,
    inspected: inspectedWith(folder, records),
    address: standsAt,
    outside,
    taken: kept.taken.size,
    remember: () => rememberSite(store, lastSiteOf(madeBy, clean, kept)),
  });
}

function toFixFirst(problems: readonly Problem[], shown: string): string {
  return `${inFull(problems, shown)}\n\nNothing was built: fix the ${counted(problems.length, 'problem')} above first.`;
}

/** What may be listed alone: no manifest names the tiles of an unlisted piece. */
function tilesWanted({ cabinet, pieces }: Records, at: string): Growing['tiles'] {
  if (cabinet?.fields.tiles !== 'yes') return null;
  const listed = pieces.flatMap(({ id, fields }) => (fields.publish === 'yes' ? [id] : []));
  return { pieces: listed, store: cacheFolder('tiles', at) };
}

/** The pages that are no record's and that every site has. */
const LISTS = [
  '', 'pieces/', 'rulers/', 'mints/', 'sets/', 'eras/', 'exhibits/', 'types/', 'works/', 'measures/', 'compare/',
  'about/', 'about/readings/', 'data/',
] as const; // prettier-ignore

/** Every address that was ever published, and where it leads now; null where it was withdrawn. */
function whereAllLeads(
  records: Records,
  folder: CabinetFolder,
  { moved, withdrawn, stoodAt }: LastingAddresses,
): Pick<Hosted, 'leads' | 'unlisted' | 'stoodAt'> {
  const pages = [...LISTS, ...pagesNow(records, folder).keys()];
  const leads = new Map<string, string | null>(pages.map((page) => [page, page]));
  for (const [from, to] of Object.entries(moved)) leads.set(from, to);
  for (const address of withdrawn) leads.set(address, null);
  const unlisted = records.pieces
    .filter(({ fields }) => fields.publish === 'unlisted')
    .map(({ id }) => `pieces/${id}/`);
  // In an order of their own: the list in the cabinet, which the build itself writes, has another than the pieces.
  const ordered = new Map([...leads].toSorted(([one], [other]) => (one < other ? -1 : 1)));
  return { leads: ordered, unlisted: new Set(unlisted), stoodAt };
}

/** Inspects what grew; when anything private is in it, removes it and says what and where. */
export async function leaksIn(
  grows: string,
  into: string,
  records: Records,
  cabinet: CabinetFolder,
): Promise<string | null> {
  const found = inspectBuilt(grows, records, cabinet);
  return found.length === 0 ? null : tellLeaks(found, grows, into);
}

async function tellLeaks(found: readonly Problem[], grows: string, into: string): Promise<string> {
  await rm(grows, { recursive: true, force: true });
  const shown = shownFolder(into);
  return `${inFull(found, shown)}\n\nNothing was published, and ${shown} is as it was: fix the ${counted(found.length, 'leak')} above first.`;
}

/** A folder as a keeper would write it. */
export function shownFolder(folder: string): string {
  return relative(process.cwd(), folder) || '.';
}

export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

function inFull(problems: readonly Problem[], folder: string): string {
  return problems.map((found) => formatProblem(found, folder)).join('\n\n');
}

/** An address in its two halves: `https://example.org` and `/coins/`. */
function addressOf(address: string | null): Outcome<{ origin: string; base: string; isPublic: boolean }> {
  if (address === null) return good({ origin: 'http://localhost:4321', base: '/', isPublic: false });
  if (!URL.canParse(address) || !/^https?:$/.test(new URL(address).protocol))
    return refuse(`An address begins with https://; this says "${address}". Write https://example.org/coins/.`);
  const { origin, pathname } = new URL(address);
  return good({ origin, base: pathname.endsWith('/') ? pathname : `${pathname}/`, isPublic: true });
}
