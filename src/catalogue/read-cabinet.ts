import type { z } from 'zod';
import { ADDRESSES } from './addresses.ts';
import { onScaleOf } from './grade-of.ts';
import { madeOf, pieceSchemas } from './piece-schemas.ts';
import { NOT_EARLIER } from './kept-answers.ts';
import type { Earlier } from './kept-answers.ts';
import type { CabinetFile, CabinetFolder } from './files.ts';
import { isText } from './files.ts';
import { isReserved, LONGEST_NAME } from '../core/file-id.ts';
import { brokenEnd, splitFrontMatter } from './front-matter.ts';
import { readLife, statusesIn } from './life-file.ts';
import type { Problem } from './problem.ts';
import { problem } from './problem.ts';
import { readForm } from './read-fields.ts';
import { NAMED_FOLDERS } from './records.ts';
import type { FiledSeries, Filed, NamedFolder, Picture, Records } from './records.ts';
import { cabinetSchema } from './schema/cabinet.ts';
import type { CabinetFields } from './schema/cabinet.ts';
import { exhibitSchema } from './schema/exhibit.ts';
import { eraSchema, setSchema } from './schema/sets-and-eras.ts';
import { denominationSchema, mintSchema, rulerSchema, workSchema } from './schema/lists.ts';
import type { RulerFields } from './schema/lists.ts';
import type { PieceFields } from './schema/piece.ts';
import { seriesSchema } from './schema/series.ts';
import { withTables } from './types/read-tables.ts';
import { isDrawingFile, isTableFile } from './types/series-tables.ts';

export type ReadCabinet = { readonly records: Records; readonly problems: readonly Problem[] };

const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const LIST = /^(rulers|mints|denominations|eras|sets|works)\/([^/]+)\.yaml$/;
const FOLDER = /^(pieces|exhibits|types)\/([^/]+)\/([^/]+)$/;
const PICTURE = /^(obverse|reverse|edge|detail-[a-z0-9-]+)\.(jpe?g|png|tiff?|webp|avif)$/i;

/** Reads every file of a cabinet against its schema, and says everything that is wrong with any of them. */
export function readCabinet(folder: CabinetFolder, earlier: Earlier = NOT_EARLIER): ReadCabinet {
  return cabinetReader(earlier)(folder);
}

/** Reads a cabinet time and again; a file that is the same object as before is not read anew. */
export function cabinetReader(earlier: Earlier = NOT_EARLIER): (folder: CabinetFolder) => ReadCabinet {
  const known: KnownFiles = new WeakMap();
  const pieceSchemaFor = pieceSchemas();
  return (folder) => readWith(folder, { known, earlier }, pieceSchemaFor);
}

/** What came of reading a file, and the schema it was read against. */
type KnownFiles = WeakMap<CabinetFile, { readonly schema: object; readonly read: ReadFile }>;
type ReadFile = { readonly filed: readonly Filed<unknown>[]; readonly problems: readonly Problem[] };
type PieceSchemas = (
  rulers: readonly Filed<RulerFields>[],
  gr?: CabinetFields['gr'],
) => (facts: string) => z.ZodType<PieceFields>;

/** A folder while it is read: its files by name, what is known of them from before, and what is wrong so far. */
type Reading = {
  readonly files: readonly CabinetFile[];
  readonly texts: ReadonlyMap<string, CabinetFile>;
  readonly known: KnownFiles;
  readonly earlier: Earlier;
  readonly problems: Problem[];
};

/** The text of a file that is read against a schema: its facts, the line they begin on, and the story below them. */
type Halves = { readonly facts: string; readonly factsFrom: number; readonly story: string };

function readWith(
  folder: CabinetFolder,
  before: Pick<Reading, 'known' | 'earlier'>,
  pieceSchemaFor: PieceSchemas,
): ReadCabinet {
  const { files } = folder;
  const reading: Reading = { ...before, files, texts: new Map(files.map((held) => [held.file, held])), problems: [] };
  for (const { file, text } of files) {
    if (isText(file) && text === null) reading.problems.push(problem('file-not-utf-8', { file }));
    else if (!isKnown(file)) reading.problems.push(unknownFile(file));
  }
  const series = seriesIn(reading);
  const cabinet = cabinetIn(reading);
  const rulers = listIn(reading, 'rulers', rulerSchema);
  const pictures = picturesIn(files);
  const statuses = statusesIn(readLife(folder, foldersOf(files, 'pieces')));
  // Where its life tells where a piece is, that wins; a file that says otherwise is told as a problem.
  const pieces = foldersIn(reading, 'pieces', 'piece.md', pieceSchemaFor(rulers, cabinet?.fields.gr)).map((piece) => ({
    ...piece,
    fields: {
      ...onScaleOf(cabinet?.fields['grade-scale'], piece.fields),
      status: statuses.get(piece.id) ?? piece.fields.status,
    },
    pictures: pictures.get(piece.id) ?? [],
  }));
  return {
    records: {
      named: namedIn(files),
      cabinet,
      pieces,
      rulers,
      mints: listIn(reading, 'mints', mintSchema),
      denominations: listIn(reading, 'denominations', denominationSchema),
      eras: listIn(reading, 'eras', eraSchema),
      sets: listIn(reading, 'sets', setSchema),
      exhibits: foldersIn(reading, 'exhibits', 'exhibit.md', () => exhibitSchema),
      works: listIn(reading, 'works', workSchema),
      series,
    },
    problems: reading.problems,
  };
}

/** The records of one list: `rulers/<id>.yaml`. */
function listIn<T>(reading: Reading, kind: string, schema: z.ZodType<T>): readonly Filed<T>[] {
  return reading.files.flatMap((held) => {
    const match = LIST.exec(held.file);
    if (match?.[1] !== kind || held.text === null) return [];
    const { text: facts } = held;
    return onceRead(reading, held, schema, match[2] ?? '', { facts, factsFrom: 1, story: '' });
  });
}

/** The records of files that lie in folders of their own: `pieces/<id>/piece.md`. */
function foldersIn<T>(
  reading: Reading,
  kind: string,
  name: string,
  schemaFor: (facts: string) => z.ZodType<T>,
): readonly Filed<T>[] {
  const { problems } = reading;
  return foldersOf(reading.files, kind).flatMap((id) => {
    const file = `${kind}/${id}/${name}`;
    const found = reading.texts.get(file);
    if (found === undefined) problems.push(problem('file-missing', { file: `${kind}/${id}` }, name));
    if (found === undefined || found.text === null) return [];
    const halves = splitFrontMatter(found.text);
    if (halves !== null) return onceRead(reading, found, schemaFor(halves.facts), id, halves);
    const line = brokenEnd(found.text);
    problems.push(
      line === null ? problem('front-matter-missing', { file, line: 1 }) : problem('front-matter-open', { file, line }),
    );
    return [];
  });
}

/** What a file holds, read only when neither it nor its schema is that of the time before. */
function onceRead<T>(
  reading: Reading,
  held: CabinetFile,
  schema: z.ZodType<T>,
  id: string,
  halves: Halves,
): readonly Filed<T>[] {
  const before = reading.known.get(held);
  if (before?.schema === schema) {
    reading.problems.push(...before.read.problems);
    return before.read.filed as readonly Filed<T>[];
  }
  const work = (): ReadFile => {
    const problems: Problem[] = [];
    return { filed: filed(schema, id, held.file, halves, problems), problems };
  };
  const made = madeOf(schema);
  // Pieces are many, and what their schema depends on is known. What is not published is kept nowhere.
  const read =
    made === undefined
      ? work()
      : reading.earlier.once(() => ['read', made, held.file, held.text ?? ''], work, isPublished);
  reading.known.set(held, { schema, read });
  reading.problems.push(...read.problems);
  return read.filed as readonly Filed<T>[];
}

const isPublished = ({ filed, problems }: ReadFile): boolean =>
  problems.length === 0 && filed.every(({ fields }) => (fields as PieceFields).publish !== 'no');

function seriesIn({ files, texts, problems }: Reading): Records['series'] {
  return foldersOf(files, 'types').flatMap((id) => {
    const file = `types/${id}/series.yaml`;
    const text = texts.get(file)?.text;
    if (!texts.has(file)) problems.push(problem('file-missing', { file: `types/${id}` }, 'series.yaml'));
    if (typeof text !== 'string') return [];
    const before = problems.length;
    const read = filed(seriesSchema, id, file, { facts: text, factsFrom: 1, story: '' }, problems);
    return read.map((one) => ({
      ...withTables(one, texts),
      drawn: drawnIn(id, texts),
      whole: problems.length === before,
    }));
  });
}

/** The drawings in the folder of a series, by their names, as they are written. */
function drawnIn(id: string, texts: Reading['texts']): FiledSeries['drawn'] {
  return new Map(
    [...texts.values()].flatMap(({ file, text }): [string, string][] => {
      const [, kind, folder, name = ''] = FOLDER.exec(file) ?? [];
      return kind === 'types' && folder === id && isDrawingFile(name) && text !== null ? [[name, text]] : [];
    }),
  );
}

function cabinetIn({ texts, problems }: Reading): Records['cabinet'] {
  const file = 'cabinet.yaml';
  const found = texts.get(file);
  if (found === undefined) problems.push(problem('file-missing', { file }, file));
  if (typeof found?.text !== 'string') return null;
  return filed(cabinetSchema, 'cabinet', file, { facts: found.text, factsFrom: 1, story: '' }, problems)[0] ?? null;
}

function filed<T>(
  schema: z.ZodType<T>,
  id: string,
  file: string,
  { facts, factsFrom, story }: Halves,
  problems: Problem[],
): readonly Filed<T>[] {
  if (!ID.test(id)) problems.push(problem('folder-name', { file }, id));
  else if (id.length > LONGEST_NAME) problems.push(problem('name-long', { file }, id.length, LONGEST_NAME));
  else if (isReserved(id)) problems.push(problem('name-reserved', { file }, id));
  problems.push(...slipsOfTyping(file, facts, factsFrom));
  const read = readForm(schema, facts, file, factsFrom);
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
  if (file === 'cabinet.yaml' || file === ADDRESSES || LIST.test(file) || file.startsWith('private/')) return true;
  const [kind, , name] = FOLDER.exec(file)?.slice(1) ?? [];
  if (kind === 'types') return name === 'series.yaml' || isTableFile(name ?? '') || isDrawingFile(name ?? '');
  return kind === 'pieces'
    ? name === 'piece.md' || PICTURE.test(name ?? '')
    : kind === 'exhibits' && name === 'exhibit.md';
}

/** A value that stands whole in the quotation marks of a book, which YAML takes for letters. */
const CURLY = /^(\s*(?:- )?[\w-]+):\s+(?:[“”„«‟][^“”„«»‟]*[“”»‟]|[‘’‚][^‘’‚]*[‘’])\s*$/;
/** What no text holds: signs that steer a terminal or turn the direction of what follows (Unicode, Cc and the bidirectional controls). */
// eslint-disable-next-line no-control-regex -- it is what is looked for
const STEERING = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

/** Slips that a word processor or a copied text makes, line by line. */
export function slipsOfTyping(file: string, facts: string, from: number): readonly Problem[] {
  return facts.split('\n').flatMap((line, index) => {
    const spot = { file, line: from + index };
    const field = CURLY.exec(line)?.[1]?.replace(/^[\s-]+/, '');
    return [
      ...(field === undefined ? [] : [problem('curly-quotes', { ...spot, field })]),
      ...(STEERING.test(line) ? [problem('control-character', spot)] : []),
    ];
  });
}
