import { hash } from 'node:crypto';
import { homedir } from 'node:os';
import process from 'node:process';
import { NOT_EARLIER } from '../catalogue/kept-answers.ts';
import type { Earlier } from '../catalogue/kept-answers.ts';
import type { Rule } from '../catalogue/rules/rule.ts';
import { lettersOf, readMarkdown, unescaped } from './letters.ts';
import { machinePathIn } from './machine-paths.ts';
import { pieceSearch, piecesIn } from './hidden-pieces.ts';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';
import type { Records } from '../catalogue/records.ts';

/** Fields that are published nowhere, or of which another rule tells: what an exhibit shows. */
const LEFT = new Set(['as-written', 'piece']);

/** Every file whose texts are published. */
function filesOf({ pieces, cabinet, series, ...lists }: Records) {
  const { rulers, mints, denominations, eras, sets, exhibits, works } = lists;
  const tables = series.flatMap((one) => Object.values(one.tables).map((table) => cellsOf(one.id, table)));
  const shown = pieces.filter(({ fields }) => fields.publish !== 'no');
  return [
    shown,
    rulers,
    mints,
    denominations,
    eras,
    sets,
    exhibits,
    works,
    series,
    tables,
    cabinet === null ? [] : [cabinet],
  ].flat();
}

/** The cells of a table, a line each. */
function cellsOf(id: string, { file, rows }: NonNullable<Records['series'][number]['tables']['types']>) {
  return { id, file, fields: {}, story: rows.flatMap(({ cells }) => Object.values(cells)).join('\n') };
}

type PublishedFile = ReturnType<typeof filesOf>[number];

/** The problems of every published file by itself: `asked` is all that they depend on besides what the file says. */
export function inEachFile(
  records: Records,
  asked: readonly string[],
  earlier: Earlier,
  problemsOf: (file: PublishedFile) => readonly Problem[],
): readonly Problem[] {
  return filesOf(records).flatMap((one) => {
    const says = (): readonly string[] => [...asked, one.id, one.file, one.story, JSON.stringify(one.fields)];
    return earlier.once(says, () => problemsOf(one), isNone);
  });
}

const isNone = (found: readonly Problem[]): boolean => found.length === 0;

/** A piece that is not published, or is in no list, is named in no other text. */
export const checkHidden: Rule = (records, place, _, earlier = NOT_EARLIER) => {
  const search = pieceSearch(records);
  const { byId, plain, byName } = search;
  if (byId.size + plain.length + byName.size === 0) return [];
  const asked = hash('sha256', JSON.stringify([[...byId], plain, [...byName]]), 'base64url');
  return inEachFile(records, ['hidden', asked], earlier, ({ id: own, file, fields, story }) => {
    const isOwn = (id: string): boolean => file.startsWith('pieces/') && id === own;
    const told = (text: string) =>
      piecesIn(search, file, unescaped(text), `${lettersOf(text)}\n${lettersOf(readMarkdown(text))}`).filter(
        ({ id }) => !isOwn(id),
      );
    return [
      ...textsIn(fields, [], LEFT).flatMap(({ path, text }) =>
        told(text).map((one) => ({ ...one, spot: place(file, path) })),
      ),
      ...told(story).map((one) => ({
        ...one,
        spot: place(
          file,
          [],
          story.split('\n').find((line) => told(line).some(({ id }) => id === one.id)),
        ),
      })),
    ].map(({ id, publish, spot }) => problem(publish === 'no' ? 'hidden-in-text' : 'unlisted-in-text', spot, id));
  });
};

/** No text names a folder of a machine: it tells whose it is, and where the cabinet's files lie. */
export const checkPaths: Rule = (records, place, _, earlier = NOT_EARLIER) =>
  inEachFile(records, ['paths', homedir(), process.cwd()], earlier, ({ file, fields, story }) => [
    ...textsIn(fields, [], LEFT).flatMap(({ path, text }) => {
      const what = pathIn(text);
      return what === null ? [] : [problem('path-in-text', place(file, path), what)];
    }),
    ...story.split('\n').flatMap((line) => {
      const what = pathIn(line);
      return what === null ? [] : [problem('path-in-text', place(file, [], line), what)];
    }),
  ]);

/** What a link in Markdown or of a page leads to, where that is in the private folder. */
const PRIVATE_LINK = /(?:\]\(<?|\bhref\s*=\s*["']?)(?:[^\s)"'>:]*\/)?private\//i;

function pathIn(text: string): string | null {
  const plain = unescaped(text);
  return machinePathIn(plain, null) ?? (PRIVATE_LINK.test(plain) ? 'a file of the private folder' : null);
}

/** A text in the fields of a file, and the way to it. */
export type Text = { readonly path: readonly (string | number)[]; readonly text: string };

/** Every text in the fields of a file, but for those of some fields. */
export function textsIn(held: unknown, path: Text['path'], left: ReadonlySet<string>): readonly Text[] {
  const texts: Text[] = [];
  addTexts(held, path, left, texts);
  return texts;
}

function addTexts(held: unknown, path: Text['path'], left: ReadonlySet<string>, texts: Text[]): void {
  if (typeof held === 'string') texts.push({ path, text: held });
  else if (Array.isArray(held))
    for (let at = 0; at < held.length; at += 1) addTexts(held[at], [...path, at], left, texts);
  else if (typeof held === 'object' && held !== null)
    for (const [field, one] of Object.entries(held)) if (!left.has(field)) addTexts(one, [...path, field], left, texts);
}
