import { expect, test } from 'vitest';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { publicPiece, publicPieces } from '../../src/publish/public-piece.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';

const FULL = `---
number: "0099"
title: A full piece
kind: token
publish: unlisted
status: sold
ruler: [plain-king, hidden-king]
struck-for: hidden-king
issuer: A town
mint: plain-town
makers: [{ name: Davi, role: moneyer }]
denomination: penny
date: 1281
dated: "1281"
references: [plain-book 12, new-book 7]
metal: silver
fineness: 1/2
weight: 2 g
diameter: 18 mm
thickness: 1 mm
axis: 6h
made: struck
faces: incuse-reverse
shape: round
treatments: [pierced]
peculiarities: [off-centre]
grade: VF details
grade-scale: uk
graded-by: dealer
obverse: { legend: REX, design: A bust }
reverse: { legend: LEX }
edge: { design: Milled }
altered: { host: Another, done: [{ what: engraved }] }
sure: { mint: probable }
provenance: [{ when: 1934, how: auction }]
found: { area: Plainshire }
dies: { obverse: A1 }
photographs: { obverse: { by: Me, licence: CC0-1.0, alt: A king }, reverse: { by: You } }
tags: [first]
as-written: { weight: UNREAD }
formerly: full-of-old
prefer: 2
metal-value: yes
---
Its story.
`;
const folder = changed(await markedCabinet(), {
  'works/new-book.yaml': 'author: Somebody\ntitle: A new book\n',
  'pieces/full/piece.md': FULL,
  'pieces/full/obverse.jpg': '',
  'pieces/full/detail-1.jpg': '',
  'pieces/bare/piece.md': '---\nnumber: "0100"\ntitle: A bare piece\nkind: coin\n---\n',
  'pieces/blank/piece.md': '---\nnumber: "0101"\ntitle: A blank piece\nkind: coin\nruler: none\nmint: unknown\ndenomination: none\ndate: unknown\nmetal: none\nweight: unknown\nfineness: 1/2\n---\n', // prettier-ignore
});
const catalogue = linkRecords(readCabinet(folder).records);
const shown = (id: string) => {
  const piece = catalogue.pieces.find((one) => one.id === id);
  return piece === undefined ? expect.fail(id) : publicPiece(piece, catalogue);
};

test('of a piece with every field its projection has each under its own name, and nothing that is published nowhere', () => {
  const full = shown('full');
  expect(full).toMatchObject({
    id: 'full', number: '0099', title: 'A full piece', kind: 'token', listed: false, status: 'sold', issuer: 'A town',
    rulers: [{ id: 'plain-king', name: 'Plain king' }, { id: 'hidden-king' }], struckFor: [{ id: 'hidden-king' }],
    mint: { id: 'plain-town', name: 'Plain Town', area: 'Plainshire' }, makers: [{ name: 'Davi', role: 'moneyer' }],
    denomination: { id: 'penny' }, dated: '1281', type: null, types: [], fromType: [], elsewhere: [], metal: 'silver', axis: { hours: 6 },
    made: 'struck', faces: 'incuse-reverse', shape: 'round', treatments: ['pierced'], peculiarities: ['off-centre'], gradedBy: 'dealer',
    obverse: { design: 'A bust' }, edge: { design: 'Milled' }, altered: { host: 'Another' }, sure: { mint: 'probable' },
    provenance: [{ how: 'auction' }], found: { area: 'Plainshire' }, dies: { obverse: 'A1' }, tags: ['first'], formerly: ['full-of-old'],
    prefer: 2, metalValue: 'yes', story: 'Its story.', years: { low: 1281, high: 1281 },
    pictures: [{ face: 'detail-1', alt: null, by: null, licence: null }, { face: 'obverse', alt: 'A king', by: 'Me', licence: 'CC0-1.0' }],
  }); // prettier-ignore
  expect(
    [full?.rulers, full?.struckFor]
      .flat()
      .every((one) => typeof one === 'object' && one !== null && / king$/i.test(one.name)),
  ).toBe(true);
  expect(full?.mayBe).toEqual(catalogue.pieces.find(({ id }) => id === 'full')?.mayBe);
  // Two grams, half of it fine (an interval, because the weight is given to the gram).
  expect(full?.fineGrams?.low).toBeLessThanOrEqual(1);
  expect(full?.fineGrams?.high).toBeGreaterThanOrEqual(1);
  expect(full?.references.map(({ cited }) => cited)).toEqual([expect.any(String), 'Somebody']);
  expect([full?.reverse, full?.date, full?.size, full?.thickness, full?.weight, full?.fineness, full?.grade].includes(null)).toBe(false); // prettier-ignore
  expect(JSON.stringify(full)).not.toContain('UNREAD');
});

test('the faces that have a photograph are credited each with its own', () => {
  const faces = ['obverse', 'reverse', 'edge'];
  const credits = faces.map((face) => `${face}: { by: By ${face}, alt: Of ${face} }`).join(', ');
  const of = changed(folder, {
    'pieces/bare/piece.md': `---\nnumber: "0100"\ntitle: A bare piece\nkind: coin\nphotographs: { ${credits} }\n---\n`,
    ...Object.fromEntries(faces.map((face) => [`pieces/bare/${face}.jpg`, ''])),
  });
  const all = linkRecords(readCabinet(of).records);
  const pictures = all.pieces.filter(({ id }) => id === 'bare').map((piece) => publicPiece(piece, all)?.pictures)[0];
  expect(pictures?.map(({ face, by, alt }) => [face, by, alt]).sort()).toEqual(
    faces.map((face) => [face, `By ${face}`, `Of ${face}`]).sort(),
  );
});

test('what is not recorded is null, and what was written as a blank is that blank', () => {
  expect(shown('bare')).toMatchObject({
    listed: true, status: 'kept', rulers: null, struckFor: [], issuer: null, mint: null, makers: [], denomination: null, date: null,
    dated: null, references: [], metal: null, fineness: null, weight: null, size: null, thickness: null, axis: null, made: null,
    faces: 'two', shape: null, treatments: [], peculiarities: [], grade: null, gradedBy: null, problem: null, obverse: null,
    reverse: null, edge: null, altered: null, sure: {}, provenance: [], found: null, dies: null, tags: [], formerly: [], prefer: null, metalValue: null,
    story: '', pictures: [], years: null, fineGrams: null,
  }); // prettier-ignore
  expect(shown('blank')).toMatchObject({ rulers: 'none', mint: 'unknown', denomination: 'none', date: 'unknown', metal: 'none', weight: 'unknown', years: null, fineGrams: null }); // prettier-ignore
});

test('a hidden piece has no projection, and is in no list of them', () => {
  expect(shown('hidden-noble')).toBeNull();
  expect(publicPieces(catalogue).map(({ id }) => id)).toEqual(['plain-penny', 'unlisted-groat', 'old-medal', 'full', 'bare', 'blank']); // prettier-ignore
});

test('where it falls in an era goes by where it was made or found, and how sure that is', () => {
  expect(Object.keys(shown('full')?.eras ?? {})).toEqual(['plain-eras']);
  expect(shown('full')?.eras['plain-eras']).not.toEqual(shown('bare')?.eras['plain-eras']);
});

// A scheme of one place, with a period that is its ruler's; in 1290 another began.
const LOCAL = `title: Local
source: A plain book
applies-to: [Plainshire]
ends: inclusive
periods:
  - { id: theirs, name: Theirs, from: 1280, to: 1290, rulers: [plain-king] }
  - { id: later, name: Later, from: 1290, to: 1400 }
`;
test.for([
  ['ruler: plain-king\nmint: plain-town\n', ['theirs'], undefined],
  ['mint: plain-town\n', ['theirs', 'later'], undefined],
  ['ruler: none\nmint: plain-town\n', ['theirs', 'later'], undefined],
  ['ruler: plain-king\nsure: { ruler: probable }\nmint: plain-town\n', ['theirs', 'later'], undefined],
  ['ruler: plain-king\nstruck-for: hidden-king\nmint: plain-town\n', ['theirs', 'later'], undefined],
  ['ruler: hidden-king\nstruck-for: plain-king\nmint: plain-town\n', ['theirs'], undefined],
  ['ruler: hidden-king\nstruck-for: plain-king\nsure: { struck-for: possible }\nmint: plain-town\n', ['theirs', 'later'], undefined],
  ['ruler: plain-king\nmint: plain-town\nsure: { mint: possible }\n', ['theirs'], undefined],
  ['mint: plain-town\nsure: { mint: possible }\n', ['theirs', 'later'], 'perhaps'],
  ['ruler: plain-king\nmint: other-town\n', ['theirs'], 'perhaps'],
  ['ruler: plain-king\nfound: { area: Plainshire }\n', ['theirs'], undefined],
] as const)('with %j it is of the periods %j, and that scheme applies %s', ([facts, periods, applies]) => {
  const of = changed(folder, {
    'eras/local.yaml': LOCAL,
    'mints/other-town.yaml': 'name: Other Town\n',
    'pieces/bare/piece.md': `---\nnumber: "0100"\ntitle: B\nkind: coin\ndate: 1290\n${facts}---\n`,
  });
  const all = linkRecords(readCabinet(of).records);
  const piece = all.pieces.find(({ id }) => id === 'bare') ?? expect.fail('none');
  const placed = publicPiece(piece, all)?.eras['local'];
  expect(placed?.periods.map(({ id }) => id)).toEqual(periods);
  expect(placed?.applies).toBe(applies);
}); // prettier-ignore

test('a drawing is said to be one, and a type has its label, its series, and whether that has dies and a key', () => {
  const typed = (dies: string, characters = '') => {
    const of = changed(folder, {
      'pieces/bare/piece.md': '---\nnumber: "0100"\ntitle: B\nkind: coin\ntype: 3b\nphotographs: { obverse: { what: drawing }, reverse: { by: Me } }\n---\n',
      'pieces/bare/obverse.jpg': '',
      'pieces/bare/reverse.jpg': '',
      'types/pence/series.yaml': 'title: Plain pence\nsource: { work: plain-book }\nshared: { denomination: penny }\nlevels: [class]\n' + characters,
      'types/pence/types.csv': 'id,broader,level,label\n3b,,class,Class 3b\n',
      ...(dies === '' ? {} : { 'types/pence/dies.csv': `obverse,reverse,type,coins\n${dies}` }),
    });
    const all = linkRecords(readCabinet(of).records);
    return publicPiece(all.pieces.find(({ id }) => id === 'bare') ?? expect.fail('none'), all);
  };
  expect(typed('', 'characters: [{ id: crown, states: [plain, jewelled] }]\n')?.types).toMatchObject([{ hasKey: true }]);
  const plain = { series: 'pence', id: '3b', label: 'Class 3b', seriesTitle: 'Plain pence', sure: 'certain', how: 'said' };
  expect(typed('')?.types).toEqual([plain]);
  expect(typed('A1,b2,3b,4\n')?.types).toEqual([{ ...plain, hasDies: true }]);
  expect(typed('')?.pictures.map(({ face, what }) => [face, what])).toEqual([['obverse', 'drawing'], ['reverse', undefined]]);
}); // prettier-ignore
