import { hash } from 'node:crypto';
import { existsSync, lstatSync, readdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import type { PrivateGuard } from './guard.ts';
import { builtGuardOf, guarded, lookedFor } from './guard.ts';
import { lettersOf, pageParts, spokenText, styleWords, unescaped } from './letters.ts';
import type { PageParts } from './letters.ts';
import { machinePathIn } from './machine-paths.ts';
import type { PieceSearch } from './hidden-pieces.ts';
import { pieceSearch, piecesIn } from './hidden-pieces.ts';
import { lacksIn, loadsFrom } from './page-policy.ts';
import { searchFor, whereStands } from './find-values.ts';
import { sumsFor } from './sums.ts';
import { withdrawnIn } from '../catalogue/addresses.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import type { Problem } from '../catalogue/problem.ts';
import { orderProblems, problem } from '../catalogue/problem.ts';
import type { Records } from '../catalogue/records.ts';
import { segmentsOf } from './picture-segments.ts';

const PICTURE = /\.(jpe?g|png|webp|avif|gif|tiff?|hei[cf])$/i;
const TEXT =
  /\.(html|css|m?js|json|jsonld|csv|xml|txt|svg|webmanifest|ics|map)$|(?:^|\/)(?:\.nojekyll|_headers|_redirects)$/i;
/** A picture written into a text, in base 64 (RFC 2397). */
const WITHIN_TEXT = /data:image\/(?!svg)[a-z+.-]+(?:;[a-z]+=[^;,]*)*;base64,([A-Za-z0-9+/=]*)/gi;
/** The forms of an exhibit that are printed without the keeper's name, and the page their codes lead to. */
const WITHOUT_NAME = /(?:^|\/)exhibits\/[^/]+\/print\/(?:.+\/)?(?:anonymous|set-up)\//;
const MARKED_UP = /\.(html|svg|xml)$/i;
const FONT = /\.woff2?$/i;

/**
 * Reads every byte of a built site and says what must not be in it: a value of `private/`, anything of a piece that is
 * not published, an unlisted piece outside its own page, the keeper's name where it is withheld, a path of a machine, or anything a picture carries besides pixels.
 */
export function inspectBuilt(built: string, records: Records, cabinet: CabinetFolder): readonly Problem[] {
  return inspectAgain(built, records, cabinet, null).problems;
}

/** The bytes of a file as a digest, and its length and when it was last written: a file of the same stamp has not changed. */
export type Looked = { readonly bytes: string; readonly stamp: string };

/** What an inspection found wrong, and what it found clean. */
export type Inspection = { readonly problems: readonly Problem[]; readonly clean: Clean };

/** What an inspection found clean: the files by their paths, and a digest of all that was looked for. */
export type Clean = { readonly of: string; readonly files: ReadonlyMap<string, Looked> };

/**
 * As `inspectBuilt`, but a file that was found clean of the very same things is not read again when it was not written since, and
 * not looked through again when its bytes are the same. Every name of a file is looked at in any case. What is byte for byte a file
 * of the folder `program`, which was made without a cabinet, tells nothing of one: there words of the program are no leak.
 */
export function inspectAgain(
  built: string,
  records: Records,
  cabinet: CabinetFolder,
  before: Clean | null,
  program: string | null = null,
): Inspection {
  const guard = builtGuardOf(cabinet, records);
  const search = pieceSearch(records);
  const formerly = new Map(records.pieces.map(({ id, fields }) => [id, fields.formerly ?? []]));
  const withdrawn = withdrawnIn(cabinet).map((address) => `${address}index.html`);
  const keeper = lettersOf(records.cabinet?.fields.keeper ?? '');
  const own = records.pieces.flatMap(({ id, fields }) => (fields.publish === 'yes' ? [] : [[id, fields.formerly]]));
  const of = digestOf(guard, search, [own, withdrawn, keeper, cabinet.at]);
  const known = before?.of === of ? before.files : new Map<string, Looked>();
  const looked = new Map<string, Looked>();
  const files = filesIn(built, '').sort();
  const problems: Problem[] = [];
  const sought: Sought = { guard, search, formerly, keeper, cabinet: cabinet.at, clean: noneClean() };
  for (const file of files) {
    const path = `${built}/${file}`;
    for (const { from, column, line, hint } of guarded(lettersOf(file), guard))
      problems.push(problem('leak-private', { file }, column, from, line, hint));
    // What was published once and withdrawn keeps its bare address.
    const named = withdrawn.some((bare) => file === bare || file.endsWith(`/${bare}`)) ? '' : file;
    for (const { id, publish } of piecesIn(search, '', named))
      if (publish === 'no') problems.push(problem('leak-unpublished', { file }, id));
    // Waiting for each of thousands of small files would take several times as long as reading it.
    const stamp = stampOf(path);
    const knownAs = known.get(file);
    if (knownAs?.stamp === stamp) {
      looked.set(file, knownAs);
      continue;
    }
    const bytes = readFileSync(path);
    const digest = hash('sha256', bytes, 'base64url');
    looked.set(file, { bytes: digest, stamp });
    if (knownAs?.bytes === digest) continue;
    if (PICTURE.test(file)) problems.push(...inspectPicture(file, bytes));
    else if (TEXT.test(file)) {
      const isOwn = program !== null && isSame(join(program, file), bytes);
      problems.push(...inspectText(file, bytes.toString('utf8'), isOwn ? { ...sought, ...NOTHING } : sought));
    } else if (!FONT.test(file)) problems.push(problem('leak-unknown-file', { file }));
  }
  return { problems: orderProblems(problems), clean: { of, files: looked } };
}

/** The files of a folder and of those in it, by their paths in it. */
function filesIn(folder: string, path: string): string[] {
  return readdirSync(`${folder}/${path}`, { withFileTypes: true }).flatMap((entry) => {
    const inner = `${path}${entry.name}`;
    return entry.isDirectory() ? filesIn(folder, `${inner}/`) : entry.isFile() ? [inner] : [];
  });
}

/** Nothing to look for. */
const NOTHING = {
  guard: { values: searchFor([]), sums: sumsFor([]) },
  search: pieceSearch({ pieces: [] }),
  clean: noneClean(),
};

function isSame(path: string, bytes: Buffer): boolean {
  return existsSync(path) && readFileSync(path).equals(bytes);
}

function stampOf(path: string): string {
  const { size, mtimeMs } = lstatSync(path);
  return `${size} ${mtimeMs}`;
}

/** A digest of everything a file is looked through for: of the same digest, the same file is as clean as it was. */
function digestOf(guard: PrivateGuard, { byId, plain, byName }: PieceSearch, others: readonly unknown[]): string {
  const hidden = [[...byId], plain, [...byName]];
  return hash('sha256', JSON.stringify([lookedFor(guard), hidden, others, homedir(), process.cwd()]), 'base64url');
}

function inspectPicture(file: string, bytes: Uint8Array): readonly Problem[] {
  const segments = segmentsOf(bytes);
  if (segments === null) return [problem('leak-picture-unread', { file })];
  return segments.map(({ name }) => problem('leak-in-picture', { file }, name));
}

/** What a text of a site is looked through for, and the elements of pages that were found clean of it. */
type Sought = {
  readonly guard: PrivateGuard;
  readonly search: PieceSearch;
  readonly formerly: ReadonlyMap<string, readonly string[]>;
  readonly keeper: string;
  readonly cabinet: string;
  readonly clean: { readonly ofPieces: Set<string>; readonly others: Set<string> };
};

/** Below `pieces/` the same address may be that of another page. */
function noneClean(): Sought['clean'] {
  return { ofPieces: new Set(), others: new Set() };
}

/** So many elements are remembered: those that all pages have are met again soon. */
const REMEMBERED = 20_000;

function inspectText(file: string, written: string, sought: Sought): readonly Problem[] {
  const { guard, search, formerly, keeper, cabinet } = sought;
  const found: Problem[] = [];
  const clean = file.startsWith('pieces/') ? sought.clean.ofPieces : sought.clean.others;
  const { seen, elements, texts, styles } = partsOf(file, written);
  // What is in an element ends with it: one that another page has as well is looked through once.
  const fresh = elements.filter((element) => !clean.has(element));
  const freshStyles = styles.filter((style) => !clean.has(style));
  const letters = lettersOf([seen, ...fresh].join('\n'));
  const text = unescaped([...texts, ...fresh, ...freshStyles].join('<>'));
  const secrets = guarded(letters, guard).map(({ from, column, line, hint }) =>
    problem('leak-private', { file }, column, from, line, hint),
  );
  found.push(...new Map(secrets.map((one) => [one.says, one])).values());
  const told = piecesIn(search, file, text, letters);
  for (const { id, publish } of told)
    if (publish === 'no') found.push(problem('leak-unpublished', { file }, id));
    else if (!isOwn(file, [id, ...(formerly.get(id) ?? [])])) found.push(problem('leak-unlisted', { file }, id));
  for (const [, encoded = ''] of text.matchAll(WITHIN_TEXT))
    found.push(...inspectPicture(file, Buffer.from(encoded, 'base64')));
  if (WITHOUT_NAME.test(file) && keeper !== '' && whereStands(lettersOf(spokenText(written)), keeper) !== -1)
    found.push(problem('leak-keeper', { file }));
  const loaded = loadsFrom(file, written);
  if (loaded !== null) found.push(problem('leak-remote', { file }, loaded));
  const lacks = file.endsWith('.html') ? lacksIn(written) : null;
  if (lacks !== null) found.push(problem('leak-policy', { file }, lacks));
  const path = machinePathIn(text, cabinet);
  if (path !== null) found.push(problem('leak-path', { file }, path));
  if (found.length + told.length === 0) remember([...fresh, ...freshStyles], clean);
  return found;
}

function partsOf(file: string, written: string): PageParts {
  if (MARKED_UP.test(file)) return pageParts(written);
  return { seen: file.endsWith('.css') ? styleWords(written) : written, elements: [], texts: [written], styles: [] };
}

function remember(elements: readonly string[], clean: Set<string>): void {
  if (clean.size > REMEMBERED) clean.clear();
  // A copy: a part of a page would keep the whole of it in memory.
  for (const element of elements) clean.add(Buffer.from(element).toString());
}

/** Whether a file is one of those an unlisted piece has for itself, under one of its names. */
function isOwn(file: string, [id = '', ...old]: readonly string[]): boolean {
  return (
    [id, ...old].some((name) => `/${file}`.includes(`/pieces/${name}/`)) ||
    file.includes(`/${id}/`) ||
    file.includes(`/${id}.`)
  );
}
