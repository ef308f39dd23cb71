import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { privateIn, searchFor, whereStands } from '../catalogue/private-search.ts';
import type { PrivateSearch } from '../catalogue/private-search.ts';
import { privateValues } from '../catalogue/private-values.ts';
import { readFolder } from '../catalogue/files.ts';
import type { Problem } from '../catalogue/problem.ts';
import { orderProblems, problem } from '../catalogue/problem.ts';
import type { Records } from '../catalogue/records.ts';
import { segmentsOf } from '../photographs/inspect-picture.ts';

const PICTURE = /\.(jpe?g|png|webp|avif|gif|tiff?|hei[cf])$/i;
const TEXT = /\.(html|css|m?js|json|csv|xml|txt|svg|webmanifest|ics|map)$/i;
const FONT = /\.woff2?$/i;

/**
 * Reads every byte of a built site and says what must not be in it: a value of `private/`, anything of a piece that is
 * not published, an unlisted piece outside its own page, a path of this machine, or anything a picture carries besides pixels.
 */
export async function inspectBuilt(built: string, records: Records, cabinet: string): Promise<readonly Problem[]> {
  const folder = await readFolder(cabinet);
  const secrets = searchFor(folder === null ? [] : privateValues(folder, records));
  const hidden = records.pieces.filter(({ fields }) => fields.publish === 'no');
  const unlisted = records.pieces.filter(({ fields }) => fields.publish === 'unlisted');
  const entries = await readdir(built, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  const problems: Problem[] = [];
  for (const path of files) {
    const file = relative(built, path).split(sep).join('/');
    for (const { id } of hidden) if (hasWord(file, id)) problems.push(problem('leak-unpublished', { file }, id));
    if (PICTURE.test(file)) problems.push(...inspectPicture(file, await readFile(path)));
    else if (TEXT.test(file)) {
      const text = plain(await readFile(path, 'utf8'));
      problems.push(...inspectText(file, text, secrets, { hidden, unlisted }, cabinet));
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
  text: string,
  secrets: PrivateSearch,
  pieces: { hidden: Records['pieces']; unlisted: Records['pieces'] },
  cabinet: string,
): readonly Problem[] {
  const found: Problem[] = [];
  const small = text.toLowerCase();
  for (const { from, column } of privateIn(small, secrets)) found.push(problem('leak-private', { file }, column, from));
  for (const { id, fields } of pieces.hidden)
    if ([id, ...(fields.formerly ?? [])].some((name) => hasWord(text, name)) || namesPiece(small, fields))
      found.push(problem('leak-unpublished', { file }, id));
  for (const { id, fields } of pieces.unlisted) {
    const own =
      file.startsWith(`pieces/${id}/`) ||
      (fields.formerly ?? []).some((old) => file.startsWith(`pieces/${old}/`)) ||
      file.includes(`/${id}/`) ||
      file.includes(`/${id}.`);
    if (!own && hasWord(text, id)) found.push(problem('leak-unlisted', { file }, id));
  }
  for (const path of [process.cwd(), cabinet])
    if (path.length > 5 && text.includes(`${path}/`)) found.push(problem('leak-path', { file }, path));
  return found;
}

/** A text with the escapes of HTML and JSON undone, so that a value is found however it was written. */
function plain(text: string): string {
  return text
    .replace(/&(?:quot|#34|#x22);/g, '"')
    .replace(/&(?:#39|#x27|apos);/g, "'")
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/\\"/g, '"')
    .replace(/\\u([0-9a-f]{4})/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    .replace(/&(?:amp|#38);/g, '&');
}

/** Whether a text of small letters holds the title of a hidden piece, or its number where that could be told from any other. */
function namesPiece(small: string, { title, number }: { title: string; number: string }): boolean {
  const telling = /\p{L}/u.test(number) && number.length >= 4 ? [title, number] : [title];
  return telling.some((one) => whereStands(small, one.toLowerCase()) !== -1);
}

/** Whether an id stands in a text as itself and not as a part of a longer id. */
function hasWord(text: string, id: string): boolean {
  for (let at = text.indexOf(id); at !== -1; at = text.indexOf(id, at + 1)) {
    const around = `${text[at - 1] ?? ' '}${text[at + id.length] ?? ' '}`;
    if (!/[a-z0-9-]/.test(around)) return true;
  }
  return false;
}
