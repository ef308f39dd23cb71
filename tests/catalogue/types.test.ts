import { describe, expect, test } from 'vitest';
import { linkRecords } from '../../src/catalogue/link.ts';
import { gatherProblems } from '../../src/catalogue/problem.ts';
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

  // Common practice: a doubt needs something to be doubted, and a type that states the ruler gives it.
  test('may doubt what it leaves to its type, and nothing that neither states', async () => {
    const doubts = async (rest: string) =>
      problemsOf((await cabinetWith(typed('type: 3a', rest))).folder).map(({ kind }) => kind).filter((kind) => kind === 'doubt-about-nothing');
    expect(await doubts('sure: { metal: probable }')).toEqual([]);
    expect(await doubts('sure: { issuer: probable }')).toEqual(['doubt-about-nothing']);
    const { piece: found } = await cabinetWith(typed('type: 3a', 'sure: { metal: probable }'));
    expect(found?.sure).toEqual({ metal: 'probable' });
  }); // prettier-ignore

  // A copy repeats what is to be seen on its model; where, when and of what it was made is its own affair.
  test.for(['counterfeit', 'replica'])('that is a %s has only what is to be seen on its model', async (kind) => {
    const { piece: found, records } = await cabinetWith({
      'pieces/typed/piece.md': piece('type: 3a', 'metal: lead').replace('kind: coin', `kind: ${kind}`),
    });
    expect(found?.fromType).toEqual(['denomination', 'reverse.design']);
    expect([found?.mint, found?.date, found?.metal]).toEqual([null, null, 'lead']);
    const light = readCabinet(
      changed(await markedCabinet(), {
        ...SERIES,
        'pieces/typed/piece.md': piece('type: 3a', 'weight: 0.7 g').replace('kind: coin', `kind: ${kind}`),
      }),
    );
    expect(typeRemarks(light.records)).toEqual([]);
    expect(typeRemarks(records)).toEqual([]);
  });

  // What is known no nearer than a broader type may be any type below it, one that says otherwise included.
  test('known no nearer than a broader type only may have what a narrower one says otherwise', async () => {
    const { piece: found, records } = await cabinetWith({
      ...typed('type: "3"'),
      'mints/other-town.yaml': 'name: Other town\n',
      'types/pence/types.csv': SERIES['types/pence/types.csv']
        .replace('Class 3a,,,plain,,,', 'Class 3a,other-town,1280,plain,,A star,')
        .replace('?,-,jewelled', ',,jewelled'),
    });
    // The narrower date lies within the broader, which stays true; a design has no word of doubt, and is left out.
    expect(found?.sure).toEqual({ mint: 'possible' });
    expect(found?.fromType).toEqual(['denomination', 'metal', 'mint', 'date']);
    expect(typeRemarks(records)).toEqual([]);
  });

  test('is found by its reference when its file names no type, and then inherits nothing', async () => {
    const { piece: found } = await cabinetWith(typed('references: [plain-book 10]'));
    expect(found?.types).toMatchObject([{ series: 'pence', id: '3a', how: 'reference', sure: 'certain' }]);
    expect([found?.mint, found?.elsewhere.map(({ work, number }) => `${work} ${number}`)]).toEqual([
      null,
      ['new-book 7'],
    ]);
  });

  // Common practice: an entry that is a part of a type describes pieces of that type and of no other.
  test.for([
    ['a part of a type', '3a,narrower,new-book 6,', 'references: [new-book 6]', ['3a certain']],
    ['one of a run of numbers', '3a,equal,new-book 6-9,', 'references: [new-book 7]', ['3a certain']],
    [
      'of a class and of a type under it',
      '3a,equal,new-book 6,\n3,equal,plain-book 4,',
      'references: [plain-book 4, new-book 6]',
      ['3a certain'],
    ],
    ['only like it', '3a,equal,new-book 6,', 'references: [cf. new-book 6]', []],
    ['wider than a type', '3a,broader,new-book 6,', 'references: [new-book 6]', []],
    [
      'its own, and the keeper does not know the type',
      '3a,equal,new-book 6,',
      'references: [new-book 6]\ntype: unknown',
      [],
    ],
    ['its own, and the keeper says it is of none', '3a,equal,new-book 6,', 'references: [new-book 6]\ntype: none', []],
  ] as const)('by a number that is %s', async ([, lines, rest, of]) => {
    const change = { ...typed(rest), 'types/pence/concordance.csv': `type,relation,reference,sure\n${lines}\n` };
    const { piece: found, folder } = await cabinetWith(change);
    expect(problemsOf(folder).filter(({ file }) => file.startsWith('pieces/typed'))).toEqual([]);
    expect(found?.types.map(({ id, sure }) => `${id} ${sure}`)).toEqual(of);
  });

  test('is told of where it contradicts its type, and built all the same', async () => {
    const { records } = await cabinetWith(typed('type: 3a', 'metal: gold\ndate: 1300'));
    expect(typeRemarks(records).map(({ file, says }) => [file, says.split(',')[0]])).toEqual([
      ['pieces/typed/piece.md', 'metal: this piece says gold'],
      ['pieces/typed/piece.md', 'date: this piece says 1300'],
    ]);
  });
});

describe('What speaks against the type a piece names is told, and nothing else', () => {
  const remarks = async (change: Change): Promise<readonly string[]> => {
    const { records } = readCabinet(changed(await markedCabinet(), { ...SERIES, ...change }));
    return typeRemarks(records).map(({ says }) => says);
  };
  test.for([
    ['the number of another type of the series', 'references: [plain-book 11]', /plain-book 11 is the number of 3b, and this piece says type 3a/],
    ['a number of its own', 'references: [plain-book 10]', null],
    ['a number that its type is only a part of', 'references: [new-book 6]', null],
    ['a number that is only like it', 'references: [cf. plain-book 11]', null],
    ['a weight that wear does not explain', 'weight: 5.2 g', /has 5\.2 g, and its type 3a 1\.40-1\.46 g/],
    ['a weight that no wear explains', 'weight: 0.4 g', /has 0\.4 g/],
    ['a low weight, of a cut half', 'denomination: halfpenny\nweight: 0.68 g\nshape: cut half', null],
    ['a weight it has with its mount', 'weight: 2.9 g\ntreatments: [mounted]', null],
    ['a nearer word for its metal', 'metal: base silver', null],
    ['another denomination', 'denomination: halfpenny', /says halfpenny, its type 3a says penny/],
    ['a low weight, of a clipped piece', 'weight: 0.9 g\ntreatments: [clipped]', null],
    ['a worn one', 'weight: 1.34 g', null],
    ['letters of another legend', 'obverse: { legend: HENRICVS REX }', /reads HENRICVS REX, and its type 3a has EDW R ANGL/],
    ['what is left of its own legend', 'obverse: { legend: "+EDW… [R A]NGL" }', null],
    ['a longer form of its own legend', "obverse: { legend: \"+EDW R' ANGL' DNS hYB'\" }", null],
  ] as const)('%s', async ([, rest, says]) => {
    const found = await remarks(typed('type: 3a', rest));
    if (says === null) expect(found).toEqual([]);
    else expect(found.join('\n')).toMatch(says);
  }); // prettier-ignore

  test('dies that are not in the chart, states of dies that no row names, and dates outside those of the broader type', async () => {
    const found = await remarks({
      ...typed('type: 3a', 'dies: { obverse: A1, reverse: q9 }'),
      'types/pence/dies.csv': 'obverse,reverse,type,coins\nA1,a1,3a,2\n',
      'types/pence/die-states.csv': 'die,state,after,sign\nobverse A1,1,,sharp\nobverse A7,1,,sharp\n',
      'types/pence/types.csv': SERIES['types/pence/types.csv'].replace('Class 3a,,,', 'Class 3a,,1282/1284,'),
    });
    expect(found.map((says) => says.slice(0, 40))).toEqual([
      'dies: the reverse die q9 of this piece i',
      'dies.csv has no die obverse A7. Write it',
      '3a is dated 1282/1284, and 3, which it i',
    ]);
  });

  test('a series that has no types, and a character that no type fills in', async () => {
    const found = await remarks({
      'types/empty/series.yaml': 'title: Nothing yet\n',
      'types/pence/types.csv': 'id,crown,weight\n3,plain,1.4 g\n3a,plain,1.4 g\n3b,jewelled,1.4 g\n',
    });
    expect(found.join('\n')).toMatch(/This series has no types yet/);
    expect(found.join('\n')).toMatch(/No type says anything of the character obverse legend/);
  });
});

test('a series is refused whose rows are in two places, or whose characters and states have names that cells cannot tell', async () => {
  const yaml = SERIES['types/pence/series.yaml'];
  for (const [change, says] of [
    [`${yaml}types: [{ id: x-1 }]\n`, /These rows are in types\.csv as well/],
    [yaml.replace('id: crown,', 'id: mint,'), /A character cannot be called mint/],
    [yaml.replace('id: crown,', 'id: Label,'), /A character cannot be called Label/],
    [yaml.replace('jewelled]', 'jewelled, plain]'), /Two states are called "plain"/],
    [yaml.replace('jewelled]', 'jewelled, a/b]'), /A state cannot be called "a\/b"/],
    [yaml.replace('jewelled]', 'jewelled, "-"]'), /A state cannot be called "-"/],
  ] as const) {
    const found = problemsOf(changed(await markedCabinet(), { ...SERIES, 'types/pence/series.yaml': change }));
    expect(found.map((one) => one.says).join('\n')).toMatch(says);
  }
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

  // Common practice: a gold piece known no nearer than by its reverse is not the silver coin with that reverse.
  test('asks of a piece known no nearer than the class what its own facts leave of the varieties', async () => {
    const set = 'title: Varieties\none-per: type\nseries: pence\nlevel: variety\n';
    const two = {
      'mints/other-town.yaml': 'name: Other town\n',
      'types/pence/types.csv': SERIES['types/pence/types.csv'].replace('?,-,jewelled', 'other-town,,jewelled'),
    };
    const states = async (rest: string) =>
      (await state(set, { ...two, ...typed('type: "3"', rest) }))?.places.map(({ state: how, others }) => [how, ...(others ?? [])].join(' '));
    expect(await states('mint: other-town')).toEqual(['wanted', 'possible']);
    expect(await states('mint: plain-town')).toEqual(['possible', 'wanted']);
    expect((await states('mint: unknown'))?.filter((how) => how.startsWith('possible'))).toHaveLength(1);
    // What is only probable rules nothing out.
    expect(await states('mint: other-town\nsure: { mint: probable }')).toEqual(['possible', 'wanted typed']);
  }); // prettier-ignore

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

describe('A place named by the number of a book', () => {
  const filled = async (numbers: string, type: string, concordance: string) => {
    const { linked, pieces } = await cabinetWith({
      ...typed(type),
      'sets/types.yaml': `title: T\none-per: listed\nplaces: [${numbers}]\n`,
      'types/pence/concordance.csv': `type,relation,reference,sure\n${concordance}\n`,
    });
    return setStates(linked, pieces).find(({ id }) => id === 'types')?.places.map(({ state }) => state).join(' ');
  };
  // What holds of all pieces of a class holds of each of them; what holds of a part of it need not.
  test.for([
    ['the equal of the class, by a piece of a variety', 'new-book 6', 'type: 3a', '3,equal,new-book 6,', 'filled'],
    ['wider than the class, by a piece of a variety', 'new-book 6', 'type: 3a', '3,broader,new-book 6,', 'filled'],
    ['wider than the variety', 'new-book 6', 'type: 3a', '3a,broader,new-book 6,', 'filled'],
    ['a part of the variety', 'new-book 6', 'type: 3a', '3a,narrower,new-book 6,', 'possible'],
    ['that of a variety, by a piece of the class', 'new-book 6', 'type: "3"', '3a,equal,new-book 6,', 'possible'],
    ['nearly the same', 'new-book 6', 'type: 3a', '3a,close,new-book 6,', 'wanted'],
    ['claimed by two varieties', 'new-book 6', 'type: 3a', '3a,equal,new-book 6,\n3b,equal,new-book 6,', 'possible'],
    ['one of two that a variety claims', 'new-book 6', 'type: 3a', '3a,equal,new-book 6,\n3a,equal,new-book 7,', 'possible'],
    ['one of two, by a piece that cites the other', 'new-book 6', 'references: [new-book 7]', '3a,equal,new-book 6,\n3a,equal,new-book 7,', 'possible'],
  ] as const)('%s', async ([, numbers, type, concordance, state]) => {
    expect(await filled(numbers, type, concordance)).toBe(state);
  });

  test('that is disputed is so called where the piece has it', async () => {
    const { piece: found } = await cabinetWith({ ...typed('type: 3a'), 'types/pence/concordance.csv': 'type,relation,reference\n3a,equal,new-book 6\n3b,equal,new-book 6\n' });
    expect(found?.elsewhere).toMatchObject([{ number: '6', doubtful: true, disputed: true }]);
  });
}); // prettier-ignore

// Two types that exclude each other cannot both be certain of one piece.
test('a piece with the numbers of two types is told of, and each type is only possible', async () => {
  const { piece: found, records, linked, pieces } = await cabinetWith({
    ...typed('references: [plain-book 10, new-book 9]'),
    'types/pence/concordance.csv': 'type,relation,reference\n3a,equal,plain-book 10\n3b,equal,new-book 9\n',
    'sets/types.yaml': 'title: T\none-per: type\nseries: pence\nlevel: variety\n',
  });
  expect(found?.types.map(({ id, sure }) => [id, sure])).toEqual([['3a', 'possible'], ['3b', 'possible']]);
  expect(typeRemarks(records).map(({ says }) => says).join()).toMatch(/numbers of 3a and 3b, and a piece is of one/);
  expect(setStates(linked, pieces).find(({ id }) => id === 'types')?.filled).toEqual({ low: 0, high: 1 });
}); // prettier-ignore

test.for([
  ['of its own type', 'A1', 'a1', null],
  ['of another type alone', 'A2', 'a2', /gives the dies A2 and a2 to 3b/],
  ['that no row has together', 'A1', 'a2', /no row of the dies A1 and a2 together/],
] as const)('a pair of dies %s', async ([, obverse, reverse, says]) => {
  const { records } = await cabinetWith({
    ...typed('type: 3a', `dies: { obverse: ${obverse}, reverse: ${reverse} }`),
    'types/pence/dies.csv': 'obverse,reverse,type,coins\nA1,a1,3a,2\nA2,a2,3b,1\n',
  });
  const found = typeRemarks(records).map((one) => one.says).join();
  if (says === null) expect(found).toBe('');
  else expect(found).toMatch(says);
}); // prettier-ignore

describe('A rule that names a type', () => {
  const other = {
    'types/other/series.yaml':
      'title: Others\nlevels: [variety]\ntypes: [{ id: 3a, label: Another 3a, level: variety }, { id: x-1, label: First, level: variety }]\n',
  };
  const places = async (set: string, change: Change = {}) => {
    const { linked, pieces, folder } = await cabinetWith({ 'sets/types.yaml': set, ...typed('type: pence/3a'), ...change });
    expect(problemsOf(folder).filter(({ file }) => file.startsWith('sets'))).toEqual([]);
    return setStates(linked, pieces).find(({ id }) => id === 'types')?.places.map(({ id, state }) => `${id} ${state}`);
  }; // prettier-ignore

  test('has no place for what it leaves out, by its own name or that of what it is under', async () => {
    const set = 'title: T\none-per: type\nseries: pence\nlevel: variety\nwhere: ';
    expect(await places(`${set}{ type: "3" }\n`)).toEqual(['3a filled', '3b wanted']);
    expect(await places(`${set}{ type: 3b }\n`)).toEqual(['3b wanted']);
    expect(await places(`${set}{ not: { type: pence/3b } }\n`)).toEqual(['3a filled']);
  });

  // A place that no piece of its type could fill is no place; a type that does not know is one.
  test('has no place for a type whose own facts the rule leaves out', async () => {
    const set = 'title: T\none-per: type\nseries: pence\nlevel: variety\nwhere: ';
    expect(await places(`${set}{ mint: plain-town }\n`)).toEqual(['3a filled', '3b wanted']);
    expect(await places(`${set}{ not: { mint: plain-town } }\n`)).toEqual(['3b wanted']);
    expect(await places(`${set}{ date: 1400/1410 }\n`)).toEqual(['3b wanted']);
    const whole = 'title: T\none-per: type\nseries: pence\nlevel: class\nwhere: ';
    // Of 3b the mint is not known, so the class may be of either.
    expect(await places(`${whole}{ not: { mint: plain-town } }\n`)).toEqual(['3 wanted']);
  });

  test('does not take the type of one series for that of another, and asks where two have it', async () => {
    expect(await places('title: T\none-per: type\nseries: other\nlevel: variety\n', other)).toEqual(['3a wanted', 'x-1 wanted']);
    for (const rule of ['one-per: type\nplaces: [3a]', 'one-per: listed\nplaces: [{ is: a, label: A, where: { type: 3a } }]', 'one-per: listed\nplaces: [{ is: a, label: A, where: { type: 3z } }]']) {
      const { folder } = await cabinetWith({ ...other, 'sets/types.yaml': `title: T\n${rule}\n` });
      expect(problemsOf(folder).filter(({ file }) => file.startsWith('sets')).map(({ says }) => says).join()).toMatch(/3a is in other and in pence|a type of other and of pence|no type "3z"/);
    }
  }); // prettier-ignore
});

test('a type that is called by its label is refused with its id', async () => {
  const { linked } = await cabinetWith({});
  expect(typeNamed(linked.types, 'Class 3a')).toMatchObject({ ok: false, problem: 'There is no type "Class 3a" in types/. Write 3a.' });
}); // prettier-ignore

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

describe('One slip in a table of types', () => {
  const rows = (cells: string): string =>
    `id,broader,level,label,mint,date\n${['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((id) => `${id},,class,Class ${id},${cells}\n`).join('')}`;
  const foundIn = async (change: Change) => {
    const found = problemsOf(
      changed(await markedCabinet(), { ...SERIES, 'types/pence/concordance.csv': null, ...change }),
    );
    return gatherProblems(found.filter(({ file }) => file.startsWith('types/') || file.startsWith('private/')));
  };

  test('is told once, with the lines it stands in', async () => {
    const found = await foundIn({ 'types/pence/types.csv': rows('plain-twon,sometime') });
    expect(found).toMatchObject([
      {
        line: 2,
        field: 'date',
        says: expect.stringMatching(/The same in lines 3, 4, 5, 6, 7 and 2 more\.$/) as string,
      },
      {
        line: 2,
        field: 'mint',
        says: expect.stringMatching(/The same in lines 3, 4, 5, 6, 7 and 2 more\.$/) as string,
      },
    ]);
  });

  test('and a fact that all share is told where they share it', async () => {
    const series = SERIES['types/pence/series.yaml'].replace('shared: {', 'shared: { mint: plain-twon,');
    const found = await foundIn({ 'types/pence/series.yaml': series, 'types/pence/types.csv': rows(',1280') });
    expect(found).toMatchObject([{ file: 'types/pence/series.yaml', field: 'shared.mint' }]);
    expect(found[0]?.says).not.toContain('The same');
  });

  test.for(['ruler: none', 'ruler: unknown', 'mint: none'])(
    'a blank that all share, %s, names no file',
    async (blank) => {
      const series = SERIES['types/pence/series.yaml'].replace('shared: {', `shared: { ${blank},`);
      expect(await foundIn({ 'types/pence/series.yaml': series, 'types/pence/types.csv': rows(',1280') })).toEqual([]);
    },
  );

  test.for([
    ['types/pence/types.csv', rows(',2030'), 'made-in-future'],
    ['types/pence/concordance.csv', 'type,relation,reference,date\n3a,equal,plain-book 10,2030\n', 'date-in-future'],
    ['types/pence/specimens.csv', 'type,specimen,date\n3a,York 1,2030-01\n', 'date-in-future'],
    ['private/prices.csv', 'piece,price,date\nplain,5 GBP,2026-12-24\n', 'date-in-future'],
  ] as const)('%s has no date that is still to come', async ([file, text, kind]) => {
    expect((await foundIn({ [file]: text })).map((one) => one.kind)).toEqual([kind]);
  });
});
