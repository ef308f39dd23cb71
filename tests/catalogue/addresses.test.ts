import { describe, expect, test } from 'vitest';
import { ADDRESSES, lastingAddresses, listAfter, pagesNow, readAddresses } from '../../src/catalogue/addresses.ts';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import type { Change } from './small-cabinet.ts';
import { changed, markedCabinet, problemsOf } from './small-cabinet.ts';

const AT = 'https://example.org/marked/';
const PENNY = 'pieces/plain-penny/piece.md';
const MEDAL = 'pieces/old-medal/piece.md';
const fact = (line: string) => (text: string) => text.replace(/^---\n/, `---\n${line}\n`);
const text = (folder: CabinetFolder, file: string): string =>
  folder.files.find((held) => held.file === file)?.text ?? expect.fail(`no ${file}`);

/** The cabinet with its list as a build of this day leaves it. */
function built(folder: CabinetFolder, today: string, at = AT): CabinetFolder {
  return changed(folder, { [ADDRESSES]: listAfter(readCabinet(folder).records, folder, today, at) });
}
const begun = async (): Promise<CabinetFolder> =>
  built(changed(await markedCabinet(), { [ADDRESSES]: null }), '2026-01-02');
const told = (folder: CabinetFolder): readonly string[] =>
  problemsOf(folder).flatMap(({ file, says }) => (file === ADDRESSES ? [says] : []));
const lineFor = (folder: CabinetFolder, address: string): string =>
  text(folder, ADDRESSES)
    .split('\n')
    .find((line) => line.startsWith(`${address} `)) ?? 'no line';

/** What answers at an address: a page, another address, or the page of what was withdrawn. */
function answer(folder: CabinetFolder, address: string): string {
  const { records } = readCabinet(folder);
  const { moved, withdrawn } = lastingAddresses(records, folder, '2036-01-01');
  const formerly = records.pieces.find(
    ({ fields }) => fields.publish !== 'no' && fields.formerly?.includes(address.split('/')[1] ?? ''),
  );
  if (pagesNow(records, folder).has(address)) return 'page';
  if (formerly !== undefined) return `pieces/${formerly.id}/`;
  return moved[address] ?? (withdrawn.includes(address) ? 'withdrawn' : 'nothing');
}

/** Ten years of one cabinet: what the keeper does, and what `check` says before it is put right. */
const YEARS: readonly { readonly year: number; readonly does: string; readonly change: (now: CabinetFolder) => Change; readonly says?: string; readonly puts?: (now: CabinetFolder) => Change }[] = [
  { year: 2027, does: 'gives a piece a new folder', change: (now) => ({ [PENNY]: null, 'pieces/king-penny/piece.md': text(now, PENNY) }), says: 'write formerly: plain-penny in pieces/king-penny/piece.md, which says the same',
    puts: () => ({ 'pieces/king-penny/piece.md': (held) => held.replace('formerly: penny-one', 'formerly: [penny-one, plain-penny]'), 'exhibits/small-show/exhibit.md': (held) => held.replaceAll('plain-penny', 'king-penny'), 'private/ledger.csv': (held) => held.replaceAll('plain-penny', 'king-penny') }) },
  { year: 2028, does: 'sells a piece', change: () => ({ [MEDAL]: fact('status: sold') }) },
  { year: 2029, does: 'makes a piece private', change: () => ({ 'pieces/unlisted-groat/piece.md': (held) => held.replace('publish: unlisted', 'publish: no') }), says: 'To let the address go, write here: pieces/unlisted-groat/ withdrawn',
    puts: () => ({ [ADDRESSES]: (held) => held.replace(/^(pieces\/unlisted-groat\/ .*)$/m, '$1 withdrawn') }) },
  { year: 2030, does: 'renames a mint', change: (now) => ({ 'mints/plain-town.yaml': null, 'mints/plain-city.yaml': text(now, 'mints/plain-town.yaml'), 'pieces/king-penny/piece.md': (held) => held.replace('mint: plain-town', 'mint: plain-city') }), says: 'mints/plain-town/ now mints/plain-city/',
    puts: () => ({ [ADDRESSES]: (held) => held.replace(/^mints\/plain-town\/ .*$/m, 'mints/plain-town/ now mints/plain-city/') }) },
  { year: 2031, does: 'merges two pieces', change: () => ({ [MEDAL]: null, 'private/ledger.csv': (held) => held.replace(/^old-medal.*\n/m, '') }), says: 'pieces/old-medal/ was published',
    puts: () => ({ 'pieces/king-penny/piece.md': (held) => held.replace('formerly: [', 'formerly: [old-medal, ') }) },
  { year: 2032, does: 'takes an exhibit down', change: () => ({ 'exhibits/small-show/exhibit.md': null }), says: 'exhibits/small-show/ was published',
    puts: () => ({ [ADDRESSES]: (held) => held.replace(/^(exhibits\/small-show\/).*$/m, '$1 withdrawn') }) },
  { year: 2033, does: 'renames the mint again', change: (now) => ({ 'mints/plain-city.yaml': null, 'mints/plainton.yaml': text(now, 'mints/plain-city.yaml'), 'pieces/king-penny/piece.md': (held) => held.replace('mint: plain-city', 'mint: plainton') }), says: 'mints/plain-city/ now mints/plainton/',
    puts: () => ({ [ADDRESSES]: (held) => held.replace(/^mints\/plain-city\/ .*$/m, 'mints/plain-city/ now mints/plainton/') }) },
  { year: 2036, does: 'drops the line formerly of a piece', change: () => ({ 'pieces/king-penny/piece.md': (held) => held.replace(/^formerly:.*\n/m, '') }) },
]; // prettier-ignore

test('in ten years every address ever published answers', async () => {
  let now = await begun();
  const ever = new Set(readAddresses(now).addresses.keys());
  expect(ever).toContain('pieces/unlisted-groat/');
  for (const { year, does, change, says, puts } of YEARS) {
    now = changed(now, change(now));
    if (says !== undefined) expect(told(now).join('\n'), `${year}: ${does}`).toContain(says);
    now = changed(now, puts?.(now) ?? {});
    expect(told(now), `${year}: ${does}`).toEqual([]);
    now = built(now, `${year}-06-01`, year < 2034 ? AT : 'https://example.org/');
    for (const address of readAddresses(now).addresses.keys()) ever.add(address);
    expect(
      [...ever].filter((address) => answer(now, address) === 'nothing'),
      `${year}: ${does}`,
    ).toEqual([]);
  }
  expect([...ever].sort()).toEqual([...readAddresses(now).addresses.keys()].sort());
  expect(readAddresses(now).stoodAt).toEqual([AT, 'https://example.org/']);
  const answers = Object.fromEntries(
    [
      'pieces/penny-one/',
      'pieces/plain-penny/',
      'pieces/old-medal/',
      'pieces/unlisted-groat/',
      'mints/plain-town/',
      'exhibits/small-show/',
    ].map((address) => [address, answer(now, address)]),
  );
  expect(answers).toEqual({
    'pieces/penny-one/': 'pieces/king-penny/',
    'pieces/plain-penny/': 'pieces/king-penny/',
    'pieces/old-medal/': 'pieces/king-penny/',
    'pieces/unlisted-groat/': 'withdrawn',
    'mints/plain-town/': 'mints/plainton/',
    'exhibits/small-show/': 'withdrawn',
  });
});

test('a series that has another name takes its types with it, by one line', async () => {
  const series = { 'types/old-pence/series.yaml': 'title: Pence\ntypes: [{ id: one }, { id: two }]\n' };
  const before = built(changed(await begun(), series), '2027-01-01');
  expect(told(before)).toEqual([]);
  const renamed = changed(before, {
    'types/old-pence/series.yaml': null,
    'types/new-pence/series.yaml': text(before, 'types/old-pence/series.yaml'),
  });
  expect(told(renamed)).toHaveLength(1);
  expect(told(renamed)[0]).toContain('types/old-pence/ now types/new-pence/');
  const led = changed(renamed, {
    [ADDRESSES]: (held) => held.replace(/^types\/old-pence\/ .*$/m, 'types/old-pence/ now types/new-pence/'),
  });
  expect(told(led)).toEqual([]);
  expect(answer(built(led, '2028-01-01'), 'types/old-pence/two/')).toBe('types/new-pence/two/');
  const gone = changed(renamed, {
    'types/new-pence/series.yaml': null,
    [ADDRESSES]: (held) => held.replace(/^(types\/old-pence\/) .*$/m, '$1 withdrawn'),
  });
  expect(told(gone)).toEqual([]);
  expect(answer(gone, 'types/old-pence/two/')).toBe('withdrawn');
});

describe('what the list tells', () => {
  test('a piece that was never published is not in it', async () => {
    expect(text(await begun(), ADDRESSES)).not.toMatch(/hidden-noble/i);
  });

  test('of an address that was let go nothing stays but itself', async () => {
    const before = await begun();
    const hidden = changed(before, {
      'pieces/unlisted-groat/piece.md': (held) => held.replace('publish: unlisted', 'publish: no'),
      [ADDRESSES]: (held) => held.replace(/^(pieces\/unlisted-groat\/ .*)$/m, '$1 withdrawn'),
    });
    expect(lineFor(built(hidden, '2027-01-01'), 'pieces/unlisted-groat/')).toBe('pieces/unlisted-groat/ withdrawn');
  });

  test('a piece that is published again is a page again', async () => {
    const gone = changed(await begun(), {
      [ADDRESSES]: (held) => held.replace(/^(pieces\/plain-penny\/).*$/m, '$1 withdrawn'),
    });
    expect(told(gone)).toEqual([]);
    expect(lineFor(built(gone, '2027-01-01'), 'pieces/plain-penny/')).toMatch(
      /^pieces\/plain-penny\/ 2027-01-01 [0-9a-f]{12}$/,
    );
  });

  test('moves that lead in a circle, or to nothing, are told', async () => {
    const list = `${text(await begun(), ADDRESSES)}sets/a/ now sets/b/\nsets/b/ now sets/a/\nsets/c/ now sets/d/\nsets/e/ later\n`;
    const said = told(changed(await begun(), { [ADDRESSES]: list })).join('\n');
    for (const what of [
      'sets/a/ leads to sets/b/',
      'sets/b/ leads to sets/a/',
      'sets/c/ leads to sets/d/',
      '"sets/e/ later"',
    ])
      expect(said).toContain(what);
  });

  test('after a merge of two copies a decision counts before a day, and a later day before an earlier one', async () => {
    const twice = `${text(await begun(), ADDRESSES)}sets/x/ withdrawn\nsets/x/ 2027-01-01 0123456789ab\nsets/y/ 2028-01-01 0123456789ab\nsets/y/ 2027-01-01 0123456789aa\n`;
    const { addresses } = readAddresses(changed(await begun(), { [ADDRESSES]: twice }));
    expect(addresses.get('sets/x/')).toMatchObject({ is: 'withdrawn' });
    expect(addresses.get('sets/y/')).toMatchObject({ date: '2028-01-01' });
  });

  test('a file that cannot be read is not taken for one that went', async () => {
    const slip = changed(await begun(), { 'rulers/plain-king.yaml': 'name: [' });
    expect(told(slip)).toEqual([]);
  });
});

/** What is done to the file of a piece, and whether that is a change of its record. */
const CHANGES: readonly (readonly [says: string, change: (text: string) => string, isChange: boolean])[] = [
  ['another weight', (held) => held.replace('1.38 g', '1.39 g'), true],
  ['another word in the story', (held) => `${held}\nMore of it.`, true],
  ['a note to oneself', (held) => held.replace(/^---\n/, '---\n# look this up\n'), false],
  ['a blank line', (held) => held.replace(/^---\n/, '---\n\n'), false],
  ['line ends of another system', (held) => held.replaceAll('\n', '\r\n'), false],
  ['what a sheet said', fact('as-written:\n  weight: about 1,4'), false],
  ['an old id', (held) => held.replace('formerly: penny-one', 'formerly: [penny-one, penny-two]'), false],
];

test.for(CHANGES)('%s', async ([, change, isChange]) => {
  const folder = changed(await begun(), { [PENNY]: change });
  const { changed: days } = lastingAddresses(readCabinet(folder).records, folder, '2027-03-04');
  expect(days['pieces/plain-penny/']).toBe(isChange ? '2027-03-04' : '2026-01-02');
});

test('a photograph more is a change of its piece, and of none other', async () => {
  const folder = changed(await begun(), { 'pieces/plain-penny/edge.jpg': '' });
  const { changed: days } = lastingAddresses(readCabinet(folder).records, folder, '2027-03-04');
  expect(days['pieces/plain-penny/']).toBe('2027-03-04');
  expect(days['pieces/old-medal/']).toBe('2026-01-02');
});

test('the list of an unchanged cabinet is the same, byte for byte, on any day', async () => {
  const folder = await begun();
  expect(text(built(folder, '2031-01-01'), ADDRESSES)).toBe(text(folder, ADDRESSES));
});
