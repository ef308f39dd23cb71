import { beforeAll, describe, expect, test, vi } from 'vitest';
import { NO_ADDRESSES } from '../../../src/catalogue/addresses.ts';
import { readFolder } from '../../../src/catalogue/files.ts';
import type { CabinetFolder } from '../../../src/catalogue/files.ts';
import { handOver } from '../../../src/catalogue/handed-over.ts';
import { readCabinet } from '../../../src/catalogue/read-cabinet.ts';
import { loadCabinet } from '../../../src/site/cabinet.ts';
import type { Cabinet } from '../../../src/site/cabinet.ts';
import { attributionRows } from '../../../src/site/models/piece/attribution.ts';
import { sidesOf } from '../../../src/site/models/piece/legends.ts';
import { measureRows } from '../../../src/site/models/piece/measures.ts';
import { ticketOf } from '../../../src/site/models/shared/ticket.ts';
import { pieceWords } from '../../../src/site/words/piece.ts';
import { typesWords } from '../../../src/site/words/types.ts';
import { concordancePage, concordancePaths } from '../../../src/site/models/types/concordance-page.ts';
import { diePaths, diesPage } from '../../../src/site/models/types/dies-page.ts';
import { keyFile, keyPage, keyPaths } from '../../../src/site/models/types/key-page.ts';
import { furtherSeriesPaths, seriesPage } from '../../../src/site/models/types/series-page.ts';
import type { TypeBranch } from '../../../src/site/models/types/series-page.ts';
import { marksOf } from '../../../src/site/models/types/marks.ts';
import { typeWells } from '../../../src/site/models/types/type-wells.ts';
import { typePage } from '../../../src/site/models/types/type-page.ts';
import { changed, markedCabinet } from '../../catalogue/small-cabinet.ts';

/** Ten varieties to a class; every class and variety has a number in two books, every variety a pair of dies. */
const CLASSES = 50;
const VARIETIES = 10;
const ids = Array.from({ length: CLASSES }, (_, c) => [
  `c${c}`,
  ...Array.from({ length: VARIETIES }, (__, v) => `c${c}-${v}`),
]);

vi.stubEnv('SITE', 'https://example.org');

/** A folder given to the pages as a command does; no photographs were made of it. */
function handed(folder: CabinetFolder): Promise<Cabinet> {
  handOver({ records: readCabinet(folder).records, photographs: '', hasAddress: true, addresses: NO_ADDRESSES });
  return loadCabinet();
}

async function largeCabinet(): Promise<Cabinet> {
  const all = ids.flat();
  const leaves = all.filter((id) => id.includes('-'));
  return handed(
    changed(await markedCabinet(), {
      'works/new-book.yaml': 'title: A newer book\nyear: 2001\n',
      'types/many/series.yaml':
        'title: Many\nlevels: [class, variety]\ncharacters: [{ id: crown, states: [plain, jewelled] }]\n',
      'types/many/types.csv': `id,broader,level,label,crown\n${ids
        .flatMap(([top = '', ...under]) => [
          `${top},,class,Class ${top},plain/jewelled`,
          ...under.map((id) => `${id},${top},variety,Class ${id},${id.endsWith('1') ? 'plain' : ''}`),
        ])
        .join('\n')}\n`,
      'types/many/concordance.csv': `type,relation,reference\n${all
        .flatMap((id, at) => [`${id},equal,plain-book ${at + 1}`, `${id},equal,new-book ${at + 1}`])
        .join('\n')}\n`,
      'types/many/dies.csv': `obverse,reverse,type,coins\n${leaves.map((id, at) => `O${at},r${at},${id},1`).join('\n')}\n`,
      'pieces/typed/piece.md': '---\nnumber: "9001"\ntitle: A typed penny\nkind: coin\ntype: c7-3\n---\n',
    }),
  );
}

const namesIn = (branches: readonly TypeBranch[]): readonly string[] =>
  branches.flatMap(({ name, under }) => [name, ...namesIn(under)]);
const pages = (paths: readonly { params: { page: string | undefined } }[]): readonly number[] =>
  paths.map(({ params }) => Number(params.page ?? 1));

describe('A series of 550 types', () => {
  let cabinet: Cabinet;
  beforeAll(async () => {
    cabinet = await largeCabinet();
  });

  test('is cut into pages on which every type stands, under the types it belongs to', () => {
    const all = [1, ...pages(furtherSeriesPaths(cabinet))];
    expect(all).toEqual([1, 2, 3]);
    const shown = all.map((page) => seriesPage(cabinet, 'many', page));
    for (const { tree, pager } of shown) {
      expect(namesIn(tree).length).toBeLessThanOrEqual(202);
      expect(pager?.pages.map(({ to }) => to)).toEqual(['/types/many/', '/types/many/page/2/', '/types/many/page/3/']);
      // At the top of each page stand classes, also where it begins within one.
      expect(tree.filter(({ name }) => !/^Class c\d+$/.test(name))).toEqual([]);
    }
    expect(new Set(shown.flatMap(({ tree }) => namesIn(tree))).size).toBe(550);
    expect(shown.map(({ head }) => head.title)).toEqual(['Many', 'Many, page 2', 'Many, page 3']);
  });

  test('has every type on one page of its concordance and one of the table of its key', () => {
    const concordance = pages(concordancePaths(cabinet)).map((page) => concordancePage(cabinet, 'many', page));
    const rows = concordance.flatMap((page) => page.table.rows);
    expect([concordance.length, rows.length, new Set(rows.map(({ type }) => type?.href)).size]).toEqual([4, 550, 550]);
    // A column for each book, and in it the numbers of that book alone.
    expect(concordance.map(({ table }) => table.books.length)).toEqual([2, 2, 2, 2]);
    expect(rows.every(({ cells }) => cells.every((cell) => cell.flatMap(({ numbers }) => numbers).length === 1))).toBe(
      true,
    );
    const key = pages(keyPaths(cabinet)).map((page) => keyPage(cabinet, 'many', page));
    expect([key.length, new Set(key.flatMap((page) => page.rows.map(({ type }) => type.href))).size]).toEqual([5, 500]);
    // The questions are on the first page alone.
    expect(key.map(({ data }) => data)).toEqual(['/data/types/many.json', null, null, null, null]);
  });

  test('has every group of dies on one page, and its states on the first', () => {
    const dies = pages(diePaths(cabinet)).map((page) => diesPage(cabinet, 'many', page));
    // None shares a die with another, so each is a line and no chart.
    expect(dies.map(({ groups, lone }) => [groups.length, lone.length])).toEqual([80, 80, 80, 80, 80, 80, 20].map((count) => [0, count])); // prettier-ignore
    expect(dies.slice(1).flatMap(({ coverage, states }) => [...coverage, ...states])).toEqual([]);
  });

  test('gives the key cells as types.csv has them, and no board of so many', () => {
    const { types } = keyFile(cabinet, 'many');
    expect(types.find(({ id }) => id === 'c7-1')?.shown).toEqual(['plain']);
    expect(types.find(({ id }) => id === 'c7-3')?.shown).toEqual(['plain/jewelled']);
    // Five hundred wells are no board; of few the board has the piece.
    expect(keyPage(cabinet, 'many', 1).board).toEqual([]);
  });
});

// A book's numbers and the doubts of its lines are told where they contradict each other, whoever wrote them.
test('a concordance tells every way in which its lines disagree, and a type every rarity published of it', async () => {
  const cabinet = await handed(
    changed(await markedCabinet(), {
      'types/one/series.yaml': 'title: One\nlevels: [class]\n',
      'types/one/types.csv': 'id,level,label,rarity,rarity scale,rarity source\na1,class,First,R,letters,an old list\nb1,class,Second,,,\n',
      'types/one/concordance.csv':
        'type,relation,reference,sure\na1,equal,plain-book 1,\na1,equal,plain-book 2,\nb1,close,plain-book 3,\nb1,broader,plain-book 3,\n' +
        'a1,equal,plain-book 4,\nb1,equal,plain-book 4,\nb1,narrower,plain-book 5,\nb1,narrower,plain-book 5,probable\n',
      'types/one/rarities.csv':
        'type,rarity,scale,source,date\na1,URS-4,universal,a census,2001\na1,R3,RIC IV,the volume,1936\n',
    }),
  );
  expect(concordancePage(cabinet, 'one', 1).disagreements.map((says) => says.replaceAll('\u00a0', ' '))).toEqual([
    expect.stringMatching(/ 3 is said to stand to Second in several ways: nearly the same; covers more than this type\.$/),
    expect.stringMatching(/ 4 is given as the number of First and Second\./),
    expect.stringMatching(/^How surely .* 5 stands to Second is said differently\.$/),
    expect.stringMatching(/^First is called the equal of .* 1 and .* 2 and .* 4\./),
  ]);
  const { rarity } = await typePage(cabinet, 'one', 'a1');
  expect(rarity.map(({ name, values, note }) => [name, values[0]?.text, note])).toEqual([
    ['Letters of rarity', 'R', 'an old list'],
    ['Universal Rarity Scale 1992', 'URS-4', 'a census, 2001'],
    ['RIC IV', 'R3', 'the volume, 1936'],
  ]);
}); // prettier-ignore

describe('The census of a type', () => {
  const pieceOf = (number: number, rest: string): string =>
    `---\nnumber: "${number}"\ntitle: Penny ${number}\n${rest}\n---\n`;
  const two = {
    'types/one/series.yaml': 'title: One\nlevels: [class]\n',
    'types/one/types.csv': 'id,level,label\na1,class,First\na2,class,Second\n',
    'types/one/concordance.csv': 'type,relation,reference,sure\na1,equal,plain-book 501,\n',
    'types/one/specimens.csv': 'type,specimen,grade,grade scale\na1,A tray,F,uk\n',
    'types/two/series.yaml': 'title: Two\nlevels: [class]\n',
    'types/two/types.csv': 'id,level,label\nb1,class,Another first\n',
    'types/two/concordance.csv': 'type,relation,reference,sure\nb1,equal,plain-book 501,probable\n',
    'types/two/specimens.csv': 'type,specimen,grade,grade scale\nb1,Another tray,F,uk\n',
  };
  const recorded = (standings: readonly string[]) => standings.map((one) => /of (\d+) recorded/.exec(one)?.[1]);

  // Common practice: a census counts specimens, and a counterfeit or a replica is none.
  test('leaves copies out, and the board calls them what they are', async () => {
    const cabinet = await handed(
      changed(await markedCabinet(), {
        ...two,
        'pieces/typed/piece.md': pieceOf(9001, 'kind: coin\ntype: a1\ngrade: VF\ngrade-scale: uk'),
        'pieces/false/piece.md': pieceOf(9002, 'kind: counterfeit\ntype: a1\ngrade: EF\ngrade-scale: uk'),
      }),
    );
    const page = await typePage(cabinet, 'one', 'a1');
    expect(recorded(page.standings)).toEqual(['2']);
    expect(page.head.description).toBe('First: 1 piece.');
    expect(page.inHand?.href).toBe('/pieces/typed/');
    expect(page.board?.laid.map(({ id, note }) => [id, note])).toEqual([['false', 'Counterfeit']]);
  }); // prettier-ignore

  // A piece certain of the type of one series may be only probable of its equal in another.
  test('asks how sure the piece is of the type of the page, not of another', async () => {
    const cabinet = await handed(
      changed(await markedCabinet(), { ...two, 'pieces/typed/piece.md': pieceOf(9001, 'kind: coin\ntype: a1\ngrade: VF\ngrade-scale: uk') }),
    );
    expect(recorded((await typePage(cabinet, 'one', 'a1')).standings)).toEqual(['2']);
    expect((await typePage(cabinet, 'two', 'b1')).standings).toEqual([]);
  }); // prettier-ignore
});

// Whatever follows from a type is no surer than the type, whether or not a keeper could doubt it by itself.
test('a piece that is only probably of its type shows nothing after it without that doubt', async () => {
  const cabinet = await handed(
    changed(await markedCabinet(), {
      'types/one/series.yaml': 'title: One\nlevels: [class]\n',
      'types/one/types.csv':
        'id,level,label,denomination,made,obverse design,metal,fineness,mint\na1,class,First,penny,hammered,Crowned head,silver,925/1000,?\n',
      'pieces/typed/piece.md':
        '---\nnumber: "9001"\ntitle: A penny\nkind: coin\ntype: a1\nweight: 1.4 g\nsure: { type: probable }\n---\n',
    }),
  );
  const piece = cabinet.listed.find(({ id }) => id === 'typed') ?? expect.fail('no piece');
  expect(ticketOf(piece).lines[0]).toMatch(/\(probable\)$/);
  expect(sidesOf(piece).map(({ design }) => design)).toEqual(['Crowned head (inferred from the type, probably)']);
  expect(attributionRows(piece).find(({ name }) => name === pieceWords.field.made)).toMatchObject({
    doubt: 'probably',
  });
  // What is worked out from a doubtful fineness is doubtful; that the mint is not known is not.
  expect(measureRows(piece, cabinet).find(({ name }) => name === pieceWords.field.fine)?.doubt).toBe('probably');
  expect(attributionRows(piece).find(({ name }) => name === pieceWords.field.mint)?.doubt).toBe('');
});

describe('The page of a type of the demo', () => {
  let demo: Cabinet;
  beforeAll(async () => {
    demo = await handed((await readFolder('content')) ?? expect.fail('no demo'));
  }, 60_000);

  test('says of each fact whose word it is, in words and not in the signs of a format', async () => {
    const { facts, marks } = await typePage(demo, 'edward-i-pence', 'lc-10cf');
    const row = (name: string) => facts.flatMap(({ rows }) => rows).find((one) => one.name === name);
    const from = (name: string, groups: typeof facts) =>
      groups.find(({ rows }) => rows.some((one) => one.name === name))?.from;
    expect(row('Date')?.values).toMatchObject([{ text: 'from about 1305 to 1310' }]);
    expect(row('Metal')).toMatchObject({ values: [{ text: 'Silver' }] });
    expect([from('Metal', facts), from('Date', facts)]).toEqual(['As the whole series', 'Its own']);
    // Struck under Edward I and Edward II alike, so the series' ruler is not inherited.
    expect(row('Ruler')?.values).toEqual([{ text: 'Left open by the list', to: undefined, isBlank: false }]);
    expect(marks.telling.map(({ label, says }) => [label, says])).toContainEqual([
      'The crown',
      'Side fleurs of two leaves instead of three',
    ]);
  });

  // What a board and a page show of a type has to tell it from every other whose characters differ.
  test('no two types whose characters differ are known by the same marks, or shown alike in their wells', () => {
    const [series] = demo.lists.types.series.filter(({ id }) => id === 'edward-i-pence');
    const { types, shown } = series ?? expect.fail('no series');
    const leaves = [...shown.keys()].flatMap((id) => types.get(id) ?? []);
    const known = leaves.map((type) => marksOf(series ?? expect.fail('no series'), type).telling.map(({ label, says }) => `${label}: ${says}`).join('; ')); // prettier-ignore
    expect(new Set(leaves.map(({ id }) => JSON.stringify(shown.get(id)))).size).toBe(leaves.length);
    expect(new Set(known).size).toBe(leaves.length);
    const wells = typeWells(demo, series ?? expect.fail('no series'), leaves.map(({ id }) => id)); // prettier-ignore
    expect(new Set(wells.map(({ drawings, mark }) => [...drawings, mark].join('; '))).size).toBe(leaves.length);
    // What all types show alike tells none of them.
    expect(leaves.flatMap((type) => marksOf(series ?? expect.fail('no series'), type).common).map(({ label }) => label)).not.toContain('Weight'); // prettier-ignore
  });

  // Two recorded specimens, and two pieces of the demo that no line names: four objects.
  test('counts the other pieces here among those known, and no object twice', async () => {
    const two = await typePage(demo, 'edward-i-pence', 'lc-3e');
    expect(two.standings.map((standing) => /of (\d+) recorded/.exec(standing)?.[1])).toEqual(['4', '4']);
    // A list of a common type is never whole, so nothing is ranked in it.
    const one = await typePage(demo, 'edward-i-pence', 'lc-3b');
    expect(one.standings).toEqual([typesWords.isCommon]);
  });

  // As a reader of the page takes it: what a class is recognised by holds for every coin of it.
  test('gives a class every state that one of its varieties shows, and no variety’s own as the class’s', () => {
    const [series] = demo.lists.types.series.filter(({ id }) => id === 'edward-i-pence');
    const { types, characters } = series ?? expect.fail('no series');
    for (const type of types.values()) {
      if (type.narrower.length === 0) continue;
      for (const { id, kind } of characters) {
        if (kind !== 'states') continue;
        const states = (of: string): readonly string[] =>
          (types.get(of)?.says.get(id)?.text ?? '?').split('/').map((state) => state.replace(/ \(seldom\)$/, ''));
        const below = type.narrower.flatMap(states);
        if (below.includes('?')) expect.soft([type.id, id, states(type.id).length === 1 && !states(type.id).includes('?')]).toEqual([type.id, id, false]); // prettier-ignore
        else expect.soft([type.id, id, states(type.id).toSorted()]).toEqual([type.id, id, [...new Set(below)].toSorted()]); // prettier-ignore
      }
    }
  });

  test('tells a book’s narrower entries from its own', async () => {
    const { numbers } = await typePage(demo, 'edward-i-pence', 'lc-9b');
    expect(numbers.rows.flatMap((row) => row.numbers.map(({ text, relation }) => [text, relation]))).toEqual([
      ['North 1037', 'probably the same type'],
      ['North 1037/1', 'probably covers a part of this type'],
      ['North 1037/2', 'probably covers a part of this type'],
      ['Fox class IXb', ''],
    ]);
  });

  test('names each source of the numbers once, by a letter', async () => {
    const { numbers } = await typePage(demo, 'edward-i-pence', 'lc-9b');
    const named = new Set(numbers.rows.flatMap((row) => row.numbers.map(({ source }) => source?.mark ?? '')));
    expect(numbers.sources.map(({ mark }) => mark)).toEqual(['a', 'b', 'c'].slice(0, numbers.sources.length));
    expect(named).toEqual(new Set(numbers.sources.map(({ mark }) => mark)));
    expect(new Set(numbers.sources.map(({ says }) => says)).size).toBe(numbers.sources.length);
  });

  test('a concordance has each book in a column, says once what most was taken from, and marks the rest', () => {
    const { books, rows, sources } = concordancePage(demo, 'edward-i-pence', 1).table;
    expect(books.map(({ name }) => name)).toEqual(['North', 'Fox']);
    expect(books.map(({ says }) => says)).toEqual([
      expect.stringMatching(/^North: .*not checked against the book, but for the numbers with a letter\.$/),
      expect.stringMatching(/^Fox: .*not checked against the book, but for the numbers with a letter\.$/),
    ]);
    const texts = (name: string): readonly string[] =>
      (rows.find(({ type }) => type?.name === name)?.cells ?? []).map((cell) =>
        cell.flatMap(({ numbers }) => numbers.map(({ text, mark }) => text + (mark === null ? '' : '*'))).join(' '),
      );
    expect(texts('Class 9b')).toEqual(['1037* 1037/1* 1037/2*', 'class IXb']);
    expect(texts('Class 3b')).toEqual(['1017', 'class IIIb*']);
    expect(sources.map(({ mark }) => mark)).toEqual(['a', 'b']);
  });

  test('the page of dies says once who recorded them, the mint of every pair, and which are of pieces here', () => {
    const { groups, lone, source } = diesPage(demo, 'edward-i-pence', 1);
    expect(source).toBe('invented');
    expect(JSON.stringify([groups.map(({ remarks, columns }) => [remarks, columns]), lone])).not.toMatch(
      /invented|source/,
    );
    // A reverse die belongs to one mint, so a pair without it could be of any town.
    for (const { title, columns, pairs } of groups)
      expect(columns.includes('mints') || pairs.every(({ mints }) => title.includes(mints[0]?.name ?? '?'))).toBe(true);
    expect(lone.map(({ says }) => says.replaceAll('\u00a0', ' '))).toContainEqual(
      'C2 with c1, Class 9b, York, 1 coin.',
    );
    // A piece of the cabinet is named where its dies are.
    expect([...groups.flatMap(({ pairs }) => pairs), ...lone].flatMap(({ pieces }) => pieces.map(({ name }) => name))).toContain('Penny of Edward I, York, class 9b'); // prettier-ignore
  });
});
