import { describe, expect, test } from 'vitest';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { typeRemarks } from '../../src/catalogue/types/remarks.ts';
import { typeNamed } from '../../src/catalogue/types/types-of.ts';
import { publicPieces } from '../../src/publish/public-piece.ts';
import { setStates } from '../../src/publish/set-states.ts';
import { changed, markedCabinet, problemsOf } from './small-cabinet.ts';
import type { Change } from './small-cabinet.ts';

const SERIES = {
  'types/pence/series.yaml': `title: Plain pence
source: { work: plain-book }
shared: { denomination: penny, metal: silver }
levels: [class, variety]
characters:
  - { id: crown, states: [plain, jewelled] }
  - { id: obverse legend, kind: legend }
  - { id: weight, kind: weight, wear: 0.05 g }
`,
  'types/pence/types.csv': `id,broader,level,label,mint,date,crown,obverse legend,reverse design,weight
3,,class,Class 3,plain-town,1280/1282,plain/jewelled,EDW R ANGL,A cross,1.40-1.46 g
3a,3,variety,Class 3a,,,plain,,,
3b,3,variety,Class 3b,?,-,jewelled,EDWAR R / EDWARD R,,
`,
  'types/pence/concordance.csv': `type,relation,reference,sure
3a,equal,plain-book 10,
3b,equal,plain-book 11,
3a,equal,new-book 7,probable
3,broader,new-book 6,
`,
  'works/new-book.yaml': 'title: A newer book\nyear: 2001\n',
} as const;

const piece = (type: string, rest = ''): string => `---
number: "900${type.length}"
title: A plain penny
kind: coin
${type}
${rest}
---
`;

async function cabinetWith(change: Change) {
  const folder = changed(await markedCabinet(), { ...SERIES, ...change });
  const { records } = readCabinet(folder);
  const linked = linkRecords(records);
  const pieces = publicPieces(linked);
  return { folder, records, linked, pieces, piece: pieces.find(({ id }) => id === 'typed') };
}

const typed = (type: string, rest = ''): Change => ({ 'pieces/typed/piece.md': piece(type, rest) });

describe('A piece of a type', () => {
  test('has what the type tells, field by field, and says that it comes from there', async () => {
    const { piece: found, folder } = await cabinetWith(typed('type: 3a', 'reverse: { legend: VILLA }'));
    expect(problemsOf(folder).filter(({ file }) => !file.startsWith('denominations'))).toEqual([]);
    expect(found).toMatchObject({ mint: { id: 'plain-town' }, metal: 'silver', date: { text: '1280/1282' } });
    expect(found?.reverse).toMatchObject({ design: 'A cross', legend: { text: 'VILLA' } });
    expect(found?.fromType).toEqual(['denomination', 'metal', 'mint', 'date', 'reverse.design']);
    // A legend that is described is not one that was read, and no type has a weight.
    expect([found?.obverse?.legend, found?.weight]).toEqual([undefined, null]);
  });

  test('leaves unknown what the type does not know, and keeps its own word', async () => {
    const { piece: found } = await cabinetWith(typed('type: 3b', 'metal: gold'));
    expect([found?.mint, found?.date, found?.metal]).toEqual(['unknown', 'none', 'gold']);
  });

  test('is no surer of a fact than of the type', async () => {
    const { piece: found } = await cabinetWith(typed('type: pence/3a', 'sure: { type: probable }'));
    expect(found?.sure).toMatchObject({ type: 'probable', mint: 'probable', metal: 'probable' });
  });

  test('is found by its reference when its file names no type, and then inherits nothing', async () => {
    const { piece: found } = await cabinetWith(typed('references: [plain-book 10]'));
    expect(found?.types).toMatchObject([{ series: 'pence', id: '3a', how: 'reference', sure: 'certain' }]);
    expect([found?.mint, found?.elsewhere.map(({ work, number }) => `${work} ${number}`)]).toEqual([
      null,
      ['new-book 7'],
    ]);
  });

  test('is told of where it contradicts its type, and built all the same', async () => {
    const { records } = await cabinetWith(typed('type: 3a', 'metal: gold\ndate: 1300'));
    expect(typeRemarks(records).map(({ file, says }) => [file, says.split(',')[0]])).toEqual([
      ['pieces/typed/piece.md', 'metal: this piece says gold'],
      ['pieces/typed/piece.md', 'date: this piece says 1300'],
    ]);
  });
});

describe('A set of types', () => {
  const state = async (set: string, change: Change) => {
    const { linked, pieces } = await cabinetWith({ 'sets/types.yaml': set, ...change });
    return setStates(linked, pieces).find(({ id }) => id === 'types');
  };

  test('has a place for each type of a level, and a piece known no nearer than the class is possible for its varieties', async () => {
    const varieties = 'title: Varieties\none-per: type\nseries: pence\nlevel: variety\n';
    expect(await state(varieties, typed('type: "3"'))).toMatchObject({ of: 2, filled: { low: 0, high: 1 } });
    expect(await state(varieties, typed('type: 3b'))).toMatchObject({ filled: { low: 1, high: 1 } });
    const classes = 'title: Classes\none-per: type\nseries: pence\nlevel: class\n';
    expect(await state(classes, typed('type: 3b'))).toMatchObject({ of: 1, filled: { low: 1, high: 1 } });
  });

  test('has places named by any book, filled by pieces known by another', async () => {
    const set = 'title: Numbers\none-per: type\nplaces: [3b, new-book 7]\n';
    const found = await state(set, typed('references: [plain-book 10]'));
    // The newer book's number is only probably that of the type.
    expect(found?.places.map(({ state: how }) => how)).toEqual(['wanted', 'possible']);
    const sure = await state(set, {
      ...typed('references: [plain-book 10]'),
      'types/pence/concordance.csv': SERIES['types/pence/concordance.csv'].replace('probable', ''),
    });
    expect(sure?.places.map(({ state: how }) => how)).toEqual(['wanted', 'filled']);
  });
});

test('a type is named by its id, or with its series where two have it', async () => {
  const { linked } = await cabinetWith({
    'types/other/series.yaml': 'title: Others\ntypes: [{ id: 3a, label: Another 3a }, { id: x-1, label: First }]\n',
  });
  expect(typeNamed(linked.types, 'x-1')).toEqual({ ok: true, value: { series: 'other', id: 'x-1' } });
  expect(typeNamed(linked.types, '3b')).toMatchObject({ ok: true });
  const both = typeNamed(linked.types, '3a');
  expect(both.ok ? '' : both.problem).toBe('3a is in other and in pence. Write other/3a or pence/3a.');
});

test('what a hidden piece is called may not be in a census', async () => {
  const { folder } = await cabinetWith({
    'types/pence/specimens.csv': 'type,specimen,same as\n3a,A tray,hidden-noble\n',
  });
  expect(problemsOf(folder).map(({ kind, file }) => [kind, file])).toContainEqual([
    'hidden-in-text',
    'types/pence/specimens.csv',
  ]);
});
