import type { z } from 'zod';
import { pieceSchemas } from './date-contexts.ts';
import type { CabinetFile, CabinetFolder } from './files.ts';
import { isText } from './files.ts';
import { isReserved, LONGEST_NAME } from '../core/file-id.ts';
import { brokenEnd, splitFrontMatter } from './front-matter.ts';
import { slipsOfTyping } from './slips-of-typing.ts';
import { readLife, statusesIn } from './life.ts';
import type { Problem } from './problem.ts';
import { problem } from './problem.ts';
import { readForm } from './read-fields.ts';
import { NAMED_FOLDERS } from './records.ts';
import type { Filed, NamedFolder, Picture, Records } from './records.ts';
import { cabinetSchema } from './schema/cabinet.ts';
import type { CabinetFields } from './schema/cabinet.ts';
import { exhibitSchema } from './schema/exhibit.ts';
import { eraSchema, setSchema } from './schema/goals.ts';
import { denominationSchema, mintSchema, rulerSchema, workSchema } from './schema/lists.ts';
import type { RulerFields } from './schema/lists.ts';
import type { PieceFields } from './schema/piece.ts';
import { seriesSchema } from './schema/series.ts';
import { withTables } from './types/read-tables.ts';
import { isTableFile } from './types/series-tables.ts';

export type ReadCabinet = { readonly records: Records; readonly problems: readonly Problem[] };

const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const LIST = /^(rulers|mints|denominations|eras|sets|works)\/([^/]+)\.yaml$/;
const FOLDER = /^(pieces|exhibits|types)\/([^/]+)\/([^/]+)$/;
const PICTURE = /^(obverse|reverse|edge|detail-[a-z0-9-]+)\.(jpe?g|png|tiff?|webp|avif)$/i;

/** Reads every file of a cabinet against its form, and says everything that is wrong with any of them. */
export function readCabinet(folder: CabinetFolder): ReadCabinet {
  return cabinetReader()(folder);
}

/** Reads a cabinet time and again; a file that is the same object as before is not read anew. */
export function cabinetReader(): (folder: CabinetFolder) => ReadCabinet {
  const known: KnownFiles = new WeakMap();
  const pieceForm = pieceSchemas();
  return (folder) => readWith(folder, known, pieceForm);
}

/** What came of reading a file, and the form it was read against. */
type KnownFiles = WeakMap<CabinetFile, { readonly form: object; readonly read: ReadFile }>;
type ReadFile = { readonly filed: readonly Filed<unknown>[]; readonly problems: readonly Problem[] };
type PieceForm = (
  rulers: readonly Filed<RulerFields>[],
  gr?: CabinetFields['gr'],
) => (facts: string) => z.ZodType<PieceFields>;

function readWith(folder: CabinetFolder, known: KnownFiles, pieceForm: PieceForm): ReadCabinet {
  const problems: Problem[] = [];
  const once = <T>(
    held: CabinetFile,
    form: z.ZodType<T>,
    read: (problems: Problem[]) => readonly Filed<T>[],
  ): readonly Filed<T>[] => {
    const before = known.get(held);
    if (before?.form === form) {
      problems.push(...before.read.problems);
      return before.read.filed as readonly Filed<T>[];
    }
    const own: Problem[] = [];
    const filed = read(own);
    known.set(held, { form, read: { filed, problems: own } });
    problems.push(...own);
    return filed;
  };
  for (const { file, text } of folder.files) {
    if (isText(file) && text === null) problems.push(problem('file-not-utf-8', { file }));
    else if (!isKnown(file)) problems.push(unknownFile(file));
  }
  const texts = new Map(folder.files.map((held) => [held.file, held]));
  const list = <T>(kind: string, form: z.ZodType<T>): readonly Filed<T>[] =>
    folder.files.flatMap((held) => {
      const { file, text } = held;
      const match = LIST.exec(file);
      if (match?.[1] !== kind || text === null) return [];
      return once(held, form, (own) => filed(form, match[2] ?? '', file, text, 1, '', own));
    });
  const folders = <T>(kind: string, name: string, formFor: (facts: string) => z.ZodType<T>): readonly Filed<T>[] =>
    foldersOf(folder.files, kind).flatMap((id) => {
      const file = `${kind}/${id}/${name}`;
      const found = texts.get(file);
      if (found === undefined) problems.push(problem('file-missing', { file: `${kind}/${id}` }, name));
      if (found === undefined || found.text === null) return [];
      const halves = splitFrontMatter(found.text);
      if (halves !== null) {
        const form = formFor(halves.facts);
        return once(found, form, (own) => filed(form, id, file, halves.facts, halves.factsFrom, halves.story, own));
      }
      const line = brokenEnd(found.text);
      problems.push(
        line === null
          ? problem('front-matter-missing', { file, line: 1 })
          : problem('front-matter-open', { file, line }),
      );
      return [];
    });

  const series = foldersOf(folder.files, 'types').flatMap((id) => {
    const file = `types/${id}/series.yaml`;
    const text = texts.get(file)?.text;
    if (!texts.has(file)) problems.push(problem('file-missing', { file: `types/${id}` }, 'series.yaml'));
    if (typeof text !== 'string') return [];
    const before = problems.length;
    const read = filed(seriesSchema, id, file, text, 1, '', problems);
    return read.map((one) => ({ ...withTables(one, texts), whole: problems.length === before }));
  });

  const cabinetFile = texts.get('cabinet.yaml');
  if (cabinetFile === undefined) problems.push(problem('file-missing', { file: 'cabinet.yaml' }, 'cabinet.yaml'));
  const cabinet =
    typeof cabinetFile?.text === 'string'
      ? (filed(cabinetSchema, 'cabinet', 'cabinet.yaml', cabinetFile.text, 1, '', problems)[0] ?? null)
      : null;
  const rulers = list('rulers', rulerSchema);
  const pictures = picturesIn(folder.files);
  const statuses = statusesIn(readLife(folder, foldersOf(folder.files, 'pieces')));
  // Where its life tells where a piece is, that wins; a file that says otherwise is told as a problem.
  const pieces = folders('pieces', 'piece.md', pieceForm(rulers, cabinet?.fields.gr)).map((piece) => ({
    ...piece,
    fields: { ...piece.fields, status: statuses.get(piece.id) ?? piece.fields.status },
    pictures: pictures.get(piece.id) ?? [],
  }));
  return {
    records: {
      named: namedIn(folder.files),
      cabinet,
      pieces,
      rulers,
      mints: list('mints', mintSchema),
      denominations: list('denominations', denominationSchema),
      eras: list('eras', eraSchema),
      sets: list('sets', setSchema),
      exhibits: folders('exhibits', 'exhibit.md', () => exhibitSchema),
      works: list('works', workSchema),
      series,
    },
    problems,
  };
}

function filed<T>(
  form: z.ZodType<T>,
  id: string,
  file: string,
  facts: string,
  factsFrom: number,
  story: string,
  problems: Problem[],
): readonly Filed<T>[] {
  if (!ID.test(id)) problems.push(problem('folder-name', { file }, id));
  else if (id.length > LONGEST_NAME) problems.push(problem('name-long', { file }, id.length, LONGEST_NAME));
  else if (isReserved(id)) problems.push(problem('name-reserved', { file }, id));
  problems.push(...slipsOfTyping(file, facts, factsFrom));
  const read = readForm(form, facts, file, factsFrom);
  problems.push(...read.problems);
  return read.fields === null ? [] : [{ id, file, fields: read.fields, story }];
}

function namedIn(files: readonly CabinetFile[]): Records['named'] {
  const listed = (kind: NamedFolder): readonly string[] =>
    files.flatMap(({ file }) => {
      const match = LIST.exec(file);
      return match?.[1] === kind ? [match[2] ?? ''] : [];
    });
  const entries = NAMED_FOLDERS.map((kind) => [kind, [...listed(kind), ...foldersOf(files, kind)]] as const);
  return Object.fromEntries(entries) as Records['named'];
}

function foldersOf(files: readonly CabinetFile[], kind: string): readonly string[] {
  const names = files.flatMap(({ file }) => {
    const match = FOLDER.exec(file);
    return match?.[1] === kind ? [match[2] ?? ''] : [];
  });
  return [...new Set(names)];
}

/** The photographs of each piece, by its id. */
function picturesIn(files: readonly CabinetFile[]): ReadonlyMap<string, readonly Picture[]> {
  const pictures = new Map<string, Picture[]>();
  for (const { file } of files) {
    const [, kind, id = '', name = ''] = FOLDER.exec(file) ?? [];
    const picture = kind === 'pieces' ? PICTURE.exec(name) : null;
    if (picture === null) continue;
    pictures.set(id, [...(pictures.get(id) ?? []), { face: (picture[1] ?? '').toLowerCase(), file }]);
  }
  return pictures;
}

const ANY_PICTURE = /\.(jpe?g|png|tiff?|webp|avif|hei[cf]|gif|bmp)$/i;

function unknownFile(file: string): Problem {
  const name = file.split('/').at(-1) ?? file;
  const isPicture = file.startsWith('pieces/') && ANY_PICTURE.test(name);
  return problem(isPicture ? 'picture-name-unknown' : 'file-unknown', { file }, name);
}

function isKnown(file: string): boolean {
  if (file === 'cabinet.yaml' || LIST.test(file) || file.startsWith('private/')) return true;
  const [kind, , name] = FOLDER.exec(file)?.slice(1) ?? [];
  if (kind === 'types') return name === 'series.yaml' || isTableFile(name ?? '');
  return kind === 'pieces'
    ? name === 'piece.md' || PICTURE.test(name ?? '')
    : kind === 'exhibits' && name === 'exhibit.md';
}
