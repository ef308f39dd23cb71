import { spawnSync } from 'node:child_process';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { stringify } from 'yaml';
import { FILE_KINDS, jsonSchemaOf } from '../../catalogue/schema/json-schemas.ts';
import type { FileKind } from '../../catalogue/schema/json-schemas.ts';
import { startersOf } from './starters.ts';
import type { NewFile } from './starters.ts';

/** What a keeper answers when a cabinet is begun. */
export type FirstAnswers = {
  readonly title: string;
  /** The name the site prints. */
  readonly keeper: string;
  /** `en`, `de`, `pt-BR`. */
  readonly language: string;
  /** Three capitals: `GBP`. */
  readonly currency: string;
  /** Where the site will stand; null when that is not known yet. */
  readonly address: string | null;
  /** Whether the lists of the demo are wanted as well. */
  readonly withLists: boolean;
};

const HERE = fileURLToPath(new URL('new-cabinet', import.meta.url));
const PROGRAM = fileURLToPath(new URL('../../..', import.meta.url)).replace(/[/\\]$/, '');
const DEMO = fileURLToPath(new URL('../../../content', import.meta.url));
/** What the example piece names. */
const NAMED_BY_EXAMPLE = [
  'rulers/edward-i.yaml',
  'mints/york.yaml',
  'denominations/penny.yaml',
  'works/north.yaml',
  'eras/heritage-data.yaml',
];
/** Files that cannot lie here under their own names. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  gitignore: '.gitignore',
  gitattributes: '.gitattributes',
  'publish.yaml': '.github/workflows/publish.yaml',
};
const LISTS = ['rulers', 'mints', 'denominations', 'works', 'eras'];

/** Every file of a new cabinet, with its text. Paths use forward slashes. */
export async function filesOfNewCabinet(answers: FirstAnswers): Promise<readonly NewFile[]> {
  const own = await textsIn(HERE);
  const reference = { file: 'README.md', text: await readFile(join(DEMO, 'README.md'), 'utf8') };
  const lent = answers.withLists
    ? (await Promise.all(LISTS.map(async (list) => textsIn(join(DEMO, list), `${list}/`)))).flat()
    : await Promise.all(
        NAMED_BY_EXAMPLE.map(async (file) => ({ file, text: await readFile(join(DEMO, file), 'utf8') })),
      );
  const { version } = JSON.parse(await readFile(join(PROGRAM, 'package.json'), 'utf8')) as { readonly version: string };
  // Packages may not hold a .gitignore that is meant for another folder: it would be obeyed in this one.
  const origin = originOf(PROGRAM);
  const named = own.map(({ file, text }) => ({
    file: ELSEWHERE[file] ?? file,
    text: text
      .replaceAll('GBP', answers.currency)
      .replace('PROGRAM: OWNER/NAME', `PROGRAM: ${origin.repository ?? 'OWNER/NAME'}`)
      .replace('COMMIT: WHICH', `COMMIT: ${origin.commit ?? `v${version}`}`),
  }));
  return [
    { file: 'cabinet.yaml', text: cabinetFile(answers) },
    reference,
    ...startersOf({ folder: PROGRAM, version }),
    ...FILE_KINDS.map((kind) => ({
      file: `.schemas/${kind}.json`,
      text: `${JSON.stringify(jsonSchemaOf(kind), null, 2)}\n`,
    })),
    ...[...named, ...lent].map(withSchema),
  ];
}

/** The folders whose files are of one kind each, and are YAML from their first line. */
const KIND_IN: Readonly<Record<string, FileKind>> = {
  rulers: 'ruler', mints: 'mint', denominations: 'denomination', works: 'work', eras: 'era', sets: 'set',
}; // prettier-ignore

/** A list file with the line by which an editor finds its schema, and completes and explains what is typed. */
function withSchema({ file, text }: NewFile): NewFile {
  const kind = /^[^/]+\/[^/]+\.yaml$/.test(file) ? KIND_IN[file.slice(0, file.indexOf('/'))] : undefined;
  return {
    file,
    text: kind === undefined ? text : `# yaml-language-server: $schema=../.schemas/${kind}.json\n${text}`,
  };
}

/** Where the program came from, for a git host that builds the site: owner and name of its repository, and its commit. */
function originOf(program: string): { readonly repository: string | null; readonly commit: string | null } {
  const said = (...words: readonly string[]): string | null => {
    const { status, stdout } = spawnSync('git', ['-C', program, ...words], { encoding: 'utf8' });
    return status === 0 ? stdout.trim() : null;
  };
  const [, repository = null] =
    /[/:]([\w.-]+\/[\w.-]+?)(?:\.git)?\/?$/.exec(said('remote', 'get-url', 'origin') ?? '') ?? [];
  return { repository, commit: said('rev-parse', 'HEAD') };
}

/** The first file, with a note on each line in the keeper's words. */
function cabinetFile({ title, keeper, language, currency, address }: FirstAnswers): string {
  const line = (field: string, value: string, note: string): string =>
    `${stringify({ [field]: value }, { lineWidth: 0 })
      .trimEnd()
      .padEnd(44)} # ${note}`;
  return [
    '# yaml-language-server: $schema=.schemas/cabinet.json',
    line('title', title, 'the name of the site'),
    line('keeper', keeper, 'your public name: a first name, initials or a club will do'),
    line('language', language, 'the language of your texts: en, de, fr, nl'),
    address === null
      ? `${'# address: https://example.org/coins/'.padEnd(44)} # where the site will stand; write it here when you know it`
      : line('address', address, 'where the site will stand'),
    line('currency', currency, 'the money your ledger is kept in'),
    `${'units: metric'.padEnd(44)} # or grains: weights are shown in both, this one first`,
    `${'areas:'.padEnd(44)} # what lies in what: a set or an era scheme of the wider place finds the narrower`,
    '  - { name: England, in: Great Britain }',
    '# about: What this cabinet is, in a few sentences, for the first page.',
    '# metal-prices:                             # your own, for the value of the metal; each is printed with its day and source',
    '#   - { metal: silver, price: a troy ounce with its currency, date: the day, source: where you read it }',
    '',
  ].join('\n');
}

async function textsIn(folder: string, prefix = ''): Promise<readonly NewFile[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
  return Promise.all(
    files.map(async (file) => ({ file: `${prefix}${file}`, text: await readFile(join(folder, file), 'utf8') })),
  );
}
