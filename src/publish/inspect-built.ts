import { readFileSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { PrivateGuard } from '../catalogue/private-guard.ts';
import { guardOf, guarded } from '../catalogue/private-guard.ts';
import { lettersOf, pageText, unescaped } from '../catalogue/private-letters.ts';
import { whereStands } from '../catalogue/private-search.ts';
import { readFolder } from '../catalogue/files.ts';
import type { Problem } from '../catalogue/problem.ts';
import { orderProblems, problem } from '../catalogue/problem.ts';
import type { Records } from '../catalogue/records.ts';
import { segmentsOf } from '../photographs/inspect-picture.ts';

const PICTURE = /\.(jpe?g|png|webp|avif|gif|tiff?|hei[cf])$/i;
const TEXT = /\.(html|css|m?js|json|csv|xml|txt|svg|webmanifest|ics|map)$/i;
const MARKED_UP = /\.(html|svg|xml)$/i;
const FONT = /\.woff2?$/i;

/**
 * Reads every byte of a built site and says what must not be in it: a value of `private/`, anything of a piece that is
 * not published, an unlisted piece outside its own page, a path of this machine, or anything a picture carries besides pixels.
 */
export async function inspectBuilt(built: string, records: Records, cabinet: string): Promise<readonly Problem[]> {
  const folder = await readFolder(cabinet);
  const guard = guardOf(folder ?? { at: cabinet, files: [] }, records);
  const hidden = records.pieces.filter(({ fields }) => fields.publish === 'no');
  const unlisted = records.pieces.filter(({ fields }) => fields.publish === 'unlisted');
  const titles = records.pieces
    .filter(({ fields }) => fields.publish === 'yes')
    .map(({ fields }) => lettersOf(fields.title));
  const entries = await readdir(built, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  const problems: Problem[] = [];
  for (const path of files) {
    const file = relative(built, path).split(sep).join('/');
    for (const { from, column, line, hint } of guarded(lettersOf(file), guard))
      problems.push(problem('leak-private', { file }, column, from, line, hint));
    for (const { id } of hidden) if (tellsId(file, id)) problems.push(problem('leak-unpublished', { file }, id));
    // Waiting for each of thousands of small files would take several times as long as reading it.
    if (PICTURE.test(file)) problems.push(...inspectPicture(file, readFileSync(path)));
    else if (TEXT.test(file)) {
      problems.push(...inspectText(file, readFileSync(path, 'utf8'), guard, { hidden, unlisted, titles }, cabinet));
    } else if (!FONT.test(file)) problems.push(problem('leak-unknown-file', { file }));
  }
  return orderProblems(problems);
}

function inspectPicture(file: string, bytes: Uint8Array): readonly Problem[] {
  const segments = segmentsOf(bytes);
  if (segments === null) return [problem('leak-picture-unread', { file })];
  return segments.map(({ name }) => problem('leak-in-picture', { file }, name));
}

function inspectText(
  file: string,
  written: string,
  guard: PrivateGuard,
  pieces: { hidden: Records['pieces']; unlisted: Records['pieces']; titles: readonly string[] },
  cabinet: string,
): readonly Problem[] {
  const found: Problem[] = [];
  const text = unescaped(written);
  const letters = lettersOf(MARKED_UP.test(file) ? pageText(written) : written);
  const secrets = guarded(letters, guard).map(({ from, column, line, hint }) =>
    problem('leak-private', { file }, column, from, line, hint),
  );
  found.push(...new Map(secrets.map((one) => [one.says, one])).values());
  for (const { id, fields } of pieces.hidden)
    if (
      [id, ...(fields.formerly ?? [])].some((name) => tellsId(text, name)) ||
      namesPiece(letters, fields, pieces.titles)
    )
      found.push(problem('leak-unpublished', { file }, id));
  for (const { id, fields } of pieces.unlisted) {
    const own =
      file.startsWith(`pieces/${id}/`) ||
      (fields.formerly ?? []).some((old) => file.startsWith(`pieces/${old}/`)) ||
      file.includes(`/${id}/`) ||
      file.includes(`/${id}.`);
    if (!own && tellsId(text, id)) found.push(problem('leak-unlisted', { file }, id));
  }
  for (const path of [process.cwd(), cabinet])
    if (path.length > 5 && text.includes(`${path}/`)) found.push(problem('leak-path', { file }, path));
  return found;
}

/**
 * Whether a text in plain letters holds the title of a hidden piece, or its number where that could be told from any other.
 * A title that a listed piece has as well, or has as a part of its own, gives nothing away.
 */
function namesPiece(letters: string, fields: { title: string; number: string }, titles: readonly string[]): boolean {
  const title = lettersOf(fields.title);
  const number = lettersOf(fields.number);
  const telling = [
    ...(titles.some((listed) => listed.includes(title)) ? [] : [title]),
    ...(/\p{L}/u.test(number) && number.length >= 4 ? [number] : []),
  ];
  return telling.some((one) => whereStands(letters, one) !== -1);
}

/** The places where an id stands that is too short or too plain a word to be looked for by itself: `12` is in every text. */
const ADDRESSES = ['pieces/', 'photographs/', 'iiif/', 'compare/', '"id":"', '"id": "'];

/** Whether a text, or the path of a file, tells of the piece with this id, and not of one with a longer id. */
function tellsId(text: string, id: string): boolean {
  if (/[a-z]/.test(id) && id.length >= 4) return hasWord(text, id);
  return ADDRESSES.some((before) => hasWord(text, id, before)) || hasWord(text, id, '\n', ',');
}

/** Whether a word stands in a text as itself and not as a part of a longer one, with this before and after it. */
function hasWord(text: string, id: string, before = '', after = ''): boolean {
  const word = `${before}${id}${after}`;
  for (let at = text.indexOf(word); at !== -1; at = text.indexOf(word, at + 1)) {
    const around = `${before === '' ? (text[at - 1] ?? ' ') : ' '}${after === '' ? (text[at + word.length] ?? ' ') : ' '}`;
    if (!/[a-z0-9-]/.test(around)) return true;
  }
  return false;
}
