import { createHash } from 'node:crypto';
import type { CabinetFolder } from './files.ts';
import { splitFrontMatter } from './front-matter.ts';
import type { Problem } from './problem.ts';
import { problem } from './problem.ts';
import { NAMED_FOLDERS } from './records.ts';
import type { Records } from './records.ts';

/** The file of a cabinet that holds every address its site ever published. */
export const ADDRESSES = 'addresses.txt';

/**
 * What the list says of one address (`pieces/york-penny/`, below the path of the site): that it is a page, with the day of its
 * record's last change and a digest of that record; where the page has moved; or that the keeper has let it go.
 */
export type Listed =
  | { readonly is: 'page'; readonly date: string | null; readonly digest: string | null }
  | { readonly is: 'moved'; readonly to: string }
  | { readonly is: 'withdrawn' };

/** The list: every address, and every place at which the site has stood, the present one last. */
export type AddressList = {
  readonly addresses: ReadonlyMap<string, Listed & { readonly line: number }>;
  readonly stoodAt: readonly string[];
  /** What the public texts of the cabinet were, each time it was built beside its private folder (see `textsDigest`). */
  readonly inspected: readonly string[];
  readonly problems: readonly Problem[];
};

/** What answers at addresses that are no page now, and when each record was last changed (`2026-11-29`), by address. */
export type LastingAddresses = {
  readonly moved: Readonly<Record<string, string>>;
  readonly withdrawn: readonly string[];
  readonly changed: Readonly<Record<string, string>>;
  /** Where on the web the site has stood, the present place included. */
  readonly stoodAt: readonly string[];
};

export const NO_ADDRESSES: LastingAddresses = { moved: {}, withdrawn: [], changed: {}, stoodAt: [] };

const HEADING = `# Every address that the site of this cabinet has published. npm run build keeps it; keep it with the cabinet.
# The day is that of the last change of what stands there. Take no line out: somebody may have kept that link.
# Where a page has moved:   pieces/old-name/ now pieces/new-name/      (for a piece, formerly: in its file says the same)
# To let an address go:     pieces/old-name/ withdrawn                 (its page then says that it was withdrawn)
# What is said of a series, types/old-name/, is said of its types as well.
# "at" is where the site stands; "inspected" marks the texts that were last looked through beside private/.
`;

const ADDRESS = /^[a-z0-9-]+\/(?:[a-z0-9-]+\/){1,2}$/;
const DAY = /^\d{4}-\d{2}-\d{2}$/;
const DIGEST = /^[0-9a-f]{12}$/;

/** Reads the list. Where one address stands twice, as after a merge, what was decided about it counts, and then the later day. */
export function readAddresses(folder: CabinetFolder): AddressList {
  const text = folder.files.find(({ file }) => file === ADDRESSES)?.text ?? '';
  const addresses = new Map<string, Listed & { readonly line: number }>();
  const stoodAt: string[] = [];
  const inspected: string[] = [];
  const problems: Problem[] = [];
  for (const [index, written] of text
    .replace(/^\uFEFF/, '')
    .split(/\r\n?|\n/)
    .entries()) {
    const words = written.trim().split(/\s+/);
    const [address = '', ...said] = words;
    if (address === '' || address.startsWith('#')) continue;
    if (said.length === 1 && (address === 'at' || address === 'inspected')) {
      (address === 'at' ? stoodAt : inspected).push(said[0] ?? '');
      continue;
    }
    const listed = ADDRESS.test(address) ? listedIn(said) : null;
    if (listed === null) {
      problems.push(problem('address-unreadable', { file: ADDRESSES, line: index + 1 }, written.trim()));
      continue;
    }
    const earlier = addresses.get(address);
    if (earlier === undefined || weightOf(listed) >= weightOf(earlier))
      addresses.set(address, { ...listed, line: index + 1 });
  }
  return { addresses, stoodAt: [...new Set(stoodAt)], inspected, problems };
}

/** What stands behind an address. A keeper may write `withdrawn` or `now …` in the place of the day or behind it. */
function listedIn(said: readonly string[]): Listed | null {
  const isDated = DAY.test(said[0] ?? '') && DIGEST.test(said[1] ?? '');
  const rest = isDated ? said.slice(2) : said;
  if (rest.length === 0) return { is: 'page', date: isDated ? (said[0] ?? null) : null, digest: said[1] ?? null };
  if (rest.length === 1 && rest[0] === 'withdrawn') return { is: 'withdrawn' };
  const [now, to = ''] = rest;
  const target = to.replace(/\/?$/, '/');
  return rest.length === 2 && now === 'now' && ADDRESS.test(target) ? { is: 'moved', to: target } : null;
}

function weightOf(listed: Listed): string {
  return listed.is === 'page' ? `1 ${listed.date ?? ''}` : '2';
}

/** Every address that is a page, with the digest of the record it shows. Unpublished pieces have none. */
export function pagesNow(records: Records, folder: CabinetFolder): ReadonlyMap<string, string> {
  const texts = new Map(folder.files.map(({ file, text }) => [file, text ?? '']));
  const pages = new Map<string, string>();
  for (const { id, file, fields, pictures } of records.pieces)
    if (fields.publish !== 'no')
      pages.set(`pieces/${id}/`, digestOf([recordIn(texts.get(file) ?? ''), ...pictures.map(({ face }) => face)]));
  for (const kind of ['rulers', 'mints', 'sets', 'eras', 'exhibits'] as const)
    for (const { id, file } of records[kind]) pages.set(`${kind}/${id}/`, digestOf([recordIn(texts.get(file) ?? '')]));
  for (const { id, file, tables } of records.series) {
    pages.set(`types/${id}/`, digestOf([recordIn(texts.get(file) ?? '')]));
    for (const { cells } of tables.types?.rows ?? [])
      if ((cells['id'] ?? '') !== '') pages.set(`types/${id}/${cells['id'] ?? ''}/`, digestOf([JSON.stringify(cells)]));
  }
  return pages;
}

/** Lines of a record that are published nowhere, with what is indented below them. */
const UNSEEN = /^(?:as-written|publish|formerly|prefer):.*\n(?:[ \t-].*\n)*/gm;

/** What of a file a visitor may come to read: without comments, and without what no page shows. */
function recordIn(text: string): string {
  const halves = splitFrontMatter(text) ?? { facts: text, story: '' };
  const facts = `${halves.facts.replace(/\r\n?/g, '\n')}\n`.replace(UNSEEN, '').replace(/^\s*(?:#.*)?\n/gm, '');
  return `${facts}\n${halves.story}`;
}

/** A digest of every public text of a cabinet and of the names of its photographs, whatever the system ends its lines with. */
function textsDigest({ files }: CabinetFolder): string {
  const shown = files.filter(({ file }) => file !== ADDRESSES && !file.startsWith('private/'));
  return digestOf(shown.flatMap(({ file, text }) => [file, (text ?? '').replace(/\r\n?/g, '\n')]));
}

/**
 * Whether this is the cabinet that was last built where its private folder is. Without that folder nothing private can be looked
 * for, so a machine that never sees it publishes only what was looked through where it is.
 */
export function wasInspected(folder: CabinetFolder): boolean {
  return readAddresses(folder).inspected.includes(textsDigest(folder));
}

function digestOf(parts: readonly string[]): string {
  return createHash('sha256').update(JSON.stringify(parts)).digest('hex').slice(0, 12);
}

/** Where old ids of pieces lead, by the `formerly` of pieces that have a page. */
function formerlyIn({ pieces }: Pick<Records, 'pieces'>): ReadonlyMap<string, string> {
  return new Map(
    pieces
      .filter(({ fields }) => fields.publish !== 'no')
      .flatMap(({ id, fields }) => (fields.formerly ?? []).map((old) => [`pieces/${old}/`, `pieces/${id}/`] as const)),
  );
}

type Answer = { readonly is: 'page' | 'withdrawn' | 'nothing'; readonly address: string };

/** What a visitor comes to in the end who asks for an address. */
function answerAt(
  address: string,
  { addresses }: AddressList,
  pages: ReadonlyMap<string, string>,
  formerly: ReadonlyMap<string, string>,
): Answer {
  const passed = new Set<string>();
  let at = address;
  while (!passed.has(at)) {
    passed.add(at);
    if (pages.has(at)) return { is: 'page', address: at };
    const listed = decisionOn(at, addresses);
    const to = formerly.get(at) ?? (listed?.is === 'moved' ? listed.to : undefined);
    if (to === undefined) return { is: listed?.is === 'withdrawn' ? 'withdrawn' : 'nothing', address: at };
    at = to;
  }
  return { is: 'nothing', address: at };
}

/** The address of a type as that of its series, and the rest; an address of anything else as two empty ones. */
function inSeries(address: string): readonly [series: string, type: string] {
  const [, series = '', type = ''] = /^([^/]+\/[^/]+\/)([^/]+\/)$/.exec(address) ?? [];
  return [series, type];
}

/** What the keeper decided about an address: by itself or, of a type in a series, with its series. */
function decisionOn(address: string, addresses: AddressList['addresses']): Listed | undefined {
  const listed = addresses.get(address);
  const [series, type] = inSeries(address);
  const above = addresses.get(series);
  if (listed?.is === 'moved' || listed?.is === 'withdrawn' || above === undefined || above.is === 'page') return listed;
  return above.is === 'moved' ? { is: 'moved', to: `${above.to}${type}` } : above;
}

/** No address that was ever published is lost without a word. */
export function checkAddresses(records: Records, folder: CabinetFolder): readonly Problem[] {
  const list = readAddresses(folder);
  if (list.addresses.size === 0) return list.problems;
  const pages = pagesNow(records, folder);
  const formerly = formerlyIn(records);
  const published = new Set(records.pieces.map(({ id }) => `pieces/${id}/`));
  const lost = [...list.addresses].flatMap(([address, { line, ...listed }]): readonly Problem[] => {
    const answer = answerAt(address, list, pages, formerly);
    // A file with a slip is told of by itself.
    if (answer.is !== 'nothing' || isUnread(address, records)) return [];
    // A series that is lost is told of once.
    const [series] = inSeries(address);
    if (list.addresses.has(series) && answerAt(series, list, pages, formerly).is === 'nothing') return [];
    const spot = { file: ADDRESSES, line };
    if (listed.is === 'moved') return [problem('address-leads-nowhere', spot, address, listed.to)];
    if (published.has(address)) return [problem('address-hidden', spot, address)];
    const [kind = '', id = ''] = address.split('/');
    const same = [...pages].find(
      ([other, digest]) =>
        listed.is === 'page' && digest === listed.digest && other.startsWith(`${kind}/`) && !list.addresses.has(other),
    )?.[0];
    if (kind === 'pieces') return [problem('address-lost-piece', spot, address, id, same?.split('/')[1] ?? null)];
    return [problem('address-lost', spot, address, same ?? `${kind}/new-name/`)];
  });
  return [...list.problems, ...lost];
}

/** Whether there is a file for an address that could not be read. */
function isUnread(address: string, records: Records): boolean {
  const [name = '', id = ''] = address.split('/');
  const kind = NAMED_FOLDERS.find((folder) => folder === name);
  if (kind === undefined || !records.named[kind].includes(id)) return false;
  return !records[kind === 'types' ? 'series' : kind].some((read) => read.id === id);
}

/** What the pages must answer besides themselves; `today` is the day of what has changed since the list was kept. */
export function lastingAddresses(records: Records, folder: CabinetFolder, today: string): LastingAddresses {
  const list = readAddresses(folder);
  const pages = pagesNow(records, folder);
  const formerly = formerlyIn(records);
  const moved: Record<string, string> = {};
  const withdrawn: string[] = [];
  for (const address of new Set([...list.addresses.keys(), ...formerly.keys()])) {
    const answer = answerAt(address, list, pages, formerly);
    if (answer.is === 'withdrawn') withdrawn.push(address);
    else if (answer.is === 'page' && answer.address !== address) moved[address] = answer.address;
  }
  const changed = [...pages].map(([address, digest]) => [address, dayOf(list, address, digest, today)] as const);
  return { moved, withdrawn, changed: Object.fromEntries(changed), stoodAt: list.stoodAt };
}

/** The addresses that the keeper let go. */
export function withdrawnIn(folder: CabinetFolder): readonly string[] {
  return [...readAddresses(folder).addresses].flatMap(([address, { is }]) => (is === 'withdrawn' ? [address] : []));
}

/**
 * The list with an address let go, and those that lead to it; every other line stays as it is. `letGo` are the
 * addresses that were published and answer no more. One that leads on to another page goes only where that `isDecided`.
 */
export function withdraw(
  text: string,
  address: string,
  isDecided = false,
): { readonly text: string; readonly letGo: readonly string[] } {
  const { addresses } = readAddresses({ at: '', files: [{ file: ADDRESSES, text }] });
  const letGo = new Set(isDecided && addresses.has(address) ? [address] : []);
  const follow = (to: string): void => {
    for (const [from, listed] of addresses)
      if (!letGo.has(from) && (from === to ? listed.is === 'page' : listed.is === 'moved' && listed.to === to)) {
        letGo.add(from);
        follow(from);
      }
  };
  follow(address);
  const lines = text.split(/(?<=\n)/).map((line) => {
    const [said = ''] = line.trim().split(/\s+/);
    return letGo.has(said) ? `${said} withdrawn${/\r?\n?$/.exec(line)?.[0] ?? ''}` : line;
  });
  return { text: lines.join(''), letGo: [...letGo] };
}

function dayOf({ addresses }: AddressList, address: string, digest: string, today: string): string {
  const listed = addresses.get(address);
  return listed?.is === 'page' && listed.digest === digest ? (listed.date ?? today) : today;
}

/**
 * The list as it is after a site was built: new addresses come to it, changed records get the day of today, old ids lead to
 * where they lead now, and of what was let go the address alone stays.
 */
export function listAfter(records: Records, folder: CabinetFolder, today: string, standsAt: string): string {
  const list = readAddresses(folder);
  const pages = pagesNow(records, folder);
  const formerly = formerlyIn(records);
  const lines = new Map([...list.addresses].map(([address, listed]) => [address, lineOf(address, listed)]));
  for (const [old, to] of formerly) lines.set(old, `${old} now ${to}`);
  for (const [address, digest] of pages)
    lines.set(address, `${address} ${dayOf(list, address, digest, today)} ${digest}`);
  const places = [...list.stoodAt.filter((place) => place !== standsAt), standsAt];
  const hasPrivate = folder.files.some(({ file }) => file.startsWith('private/'));
  const inspected = hasPrivate ? [textsDigest(folder)] : list.inspected;
  const above = [...places.map((place) => `at ${place}`), ...inspected.map((digest) => `inspected ${digest}`)];
  return `${HEADING}${[...above, ...[...lines.values()].sort()].join('\n')}\n`;
}

function lineOf(address: string, listed: Listed): string {
  if (listed.is === 'withdrawn') return `${address} withdrawn`;
  if (listed.is === 'moved') return `${address} now ${listed.to}`;
  return [address, listed.date, listed.digest].filter((word) => word !== null).join(' ');
}
