import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Draft } from '../../../src/import/plan/draft.ts';
import { changed, problemsOf } from '../../catalogue/small-cabinet.ts';
import { texts } from '../../catalogue/write/texts.ts';
import { bring, cited, draft, EMPTY, textOf } from './bring.ts';
import { tries } from '../../tries.ts';

describe('a row becomes a piece', () => {
  test('whose composed title has the names of the lists, and whose own title stays as the sheet has it', () => {
    const lists = changed(EMPTY, {
      'rulers/edward-i.yaml': 'name: Edward I\nreigns: [{ from: 1272, to: 1307 }]\n',
      'denominations/penny.yaml': 'name: penny\n',
    });
    const names = { ruler: [{ name: 'Edw. I' }], denomination: { name: 'PENNY' } };
    const { plan } = bring(
      [
        draft(2, { title: 'PENNY of Edw. I' }, { names, titledBy: '{denomination} of {ruler}' }),
        draft(3, { title: 'PENNY of Edw. I, mine' }, { names }),
        draft(4, { mint: 'none' }, { names, titledBy: '{denomination} of {ruler}, {mint}' }),
      ],
      lists,
    );
    expect(plan.pieces.map(({ text }) => /^title: (.*)$/m.exec(text)?.[1])).toEqual([
      'Penny of Edward I',
      'PENNY of Edw. I, mine',
      'Penny of Edward I',
    ]);
  });

  test('with its facts in the order of the form, its names as files, and its private cells in the ledger alone', () => {
    const { plan, folder } = bring([
      draft(2, { weight: '1.38 g', obverse: { legend: '+EDW R' } }, {
        names: {
          ruler: [{ name: 'Edward I', years: '1272-1307' }],
          mint: { name: 'York' },
          denomination: { name: 'Penny' },
          references: cited('North 1018; cf. North 1019'),
        },
        story: 'Told.',
        ledger: { cost: '45 GBP', Schrank: 'B 7', Value: '60?' },
      }),
    ]); // prettier-ignore
    expect(textOf(folder, 'pieces/a-2/piece.md')).toBe(`---
number: "A.2"
title: Coin A.2
kind: coin
ruler: edward-i
mint: york
denomination: penny
references: [north 1018, cf. north 1019]
weight: 1.38 g
obverse: { legend: "+EDW R" }
---

Told.
`);
    expect(textOf(folder, 'rulers/edward-i.yaml')).toBe('name: Edward I\nreigns: [{ from: 1272, to: 1307 }]\n');
    expect(textOf(folder, 'mints/york.yaml')).toBe('name: York\n');
    expect(textOf(folder, 'works/north.yaml')).toBe('title: North\nshort: North\n');
    expect(textOf(folder, 'private/ledger.csv').split('\r\n')).toEqual([
      '\uFEFFpiece,cost,value,insured,acquired,seller,storage,find-spot,certificate,notes,Schrank,Value (in the sheet)',
      'a-2,45 GBP,,,,,,,,,B 7,60?',
      '',
    ]);
    expect(plan.setAside).toEqual([]);
    expect(problemsOf(folder)).toEqual([]);
  });

  test('a column that the ledger gets has its cell in every row that is there', () => {
    const onto = changed(EMPTY, { 'private/ledger.csv': 'piece,notes\r\nolder,"two\nlines"\r\n\r\nlast,\r\n' });
    const { folder } = bring([draft(2, {}, { ledger: { Fach: 'B 7' } })], onto);
    expect(textOf(folder, 'private/ledger.csv')).toBe(
      'piece,notes,Fach\r\nolder,"two\nlines",\r\n\r\nlast,,\r\na-2,,B 7\r\n',
    );
  });

  test('titles that name another kind than the piece is are told of', () => {
    const { plan } = bring([draft(2, { title: 'Halfpenny token' }), draft(3, { title: 'Sou, bronze' })]);
    expect(plan.remarks).toEqual([
      'row 2: the title names a token, and the kind is coin. Give the rows a column of kinds, or change the files once they are written.',
    ]);
  });

  test('what could not be read stands as it was written, and is told of; a private cell goes to the ledger', () => {
    const unread = [
      { row: 2, heading: 'Gewicht', text: 'ca. 3?', because: 'Write 3 g.', field: 'weight' },
      { row: 2, heading: 'Preis', text: 'viel', because: 'Write 30 EUR.', field: 'cost' },
      { row: 2, heading: 'Paid', text: 'DM 120,-', because: 'Write 120 DEM.', field: 'ledger cost' },
    ];
    const { plan, folder } = bring([draft(2, {}, { unread })]);
    expect(textOf(folder, 'pieces/a-2/piece.md')).toContain('as-written: { weight: ca. 3? }\n');
    expect(textOf(folder, 'pieces/a-2/piece.md')).not.toContain('viel');
    expect(textOf(folder, 'pieces/a-2/piece.md')).not.toContain('DM 120');
    expect(textOf(folder, 'private/ledger.csv')).toContain('Preis,Paid\r\na-2,,,,,,,,,,viel,"DM 120,-"\r\n');
    expect(plan.unread).toEqual(unread);
  });
});

describe('what check would refuse is kept as it was written, with the reason', () => {
  const REFUSED: readonly { what: string; row: Draft; kept: string; because: string }[] = [
    { what: 'a weight without a unit', row: draft(2, { weight: 'heavy' }), kept: 'weight: heavy', because: 'weight' },
    {
      what: 'an axis of a uniface piece',
      row: draft(2, { axis: '6h', faces: 'uniface' }),
      kept: 'axis: 6h',
      because: 'no die axis',
    },
    { what: 'a word no field takes', row: draft(2, { status: 'mine' }), kept: 'status: mine', because: 'is not one of' },
    { what: 'a field no form has', row: draft(2, { colour: 'red' }), kept: 'colour: red', because: 'There is no field' },
    {
      what: 'a doubt about nothing',
      row: draft(2, { sure: { mint: 'probable' } }),
      kept: 'sure.mint: probable',
      because: 'mint is not stated',
    },
  ]; // prettier-ignore
  test.for(REFUSED)('$what', ({ row, kept, because }) => {
    const { plan, folder } = bring([row]);
    expect(textOf(folder, 'pieces/a-2/piece.md')).toContain(`as-written: { ${kept} }`);
    expect(plan.unread.map((cell) => cell.because).join()).toContain(because);
    expect(problemsOf(folder)).toEqual([]);
  });

  test('an exact spot and a private value go to the ledger and stand in no piece', () => {
    const { plan, folder } = bring([
      draft(2, { found: { area: 'SE 603 523, by the beck' } }, { ledger: { seller: 'Old Mill of Nowhere' } }),
      draft(3, { issuer: 'Old Mill of Nowhere' }, { story: 'At 53.95812, -1.08034, under a hedge.' }),
    ]);
    const pieces = `${textOf(folder, 'pieces/a-2/piece.md')}${textOf(folder, 'pieces/a-3/piece.md')}`;
    expect(pieces).not.toMatch(/SE 603|Old Mill|53\.95/);
    expect(textOf(folder, 'private/ledger.csv')).toMatch(/SE 603 523, by the beck/);
    expect(textOf(folder, 'private/ledger.csv')).toMatch(/At 53\.95812, -1\.08034, under a hedge\./);
    expect(plan.unread.map(({ row }) => row)).toEqual([2, 3, 3]);
    expect(problemsOf(folder)).toEqual([]);
  });

  test('a row that cannot do without what is wrong is set aside with the reason', () => {
    const { plan } = bring([draft(2, { kind: 'coyn' }), draft(3)]);
    expect(plan.pieces.map(({ id }) => id)).toEqual(['a-3']);
    expect(plan.setAside).toMatchObject([{ row: 2, text: 'A.2 · Coin A.2' }]);
    expect(plan.setAside[0]?.because).toContain('Write coin.');
  });
});

describe('numbers and folders', () => {
  test('two numbers that make one folder get two, and each keeps its own', () => {
    const { plan } = bring([draft(2, { number: 'A.1' }), draft(3, { number: 'A-1' }), draft(4, { number: 'Ä1' })]);
    expect(plan.pieces.map(({ id, number }) => [id, number])).toEqual([['a-1', 'A.1'], ['a-1-2', 'A-1'], ['a1', 'Ä1']]); // prettier-ignore
  });
  test('accents in two pieces and in one are the same number', () => {
    const first = bring([draft(2, { number: 'Ä1'.normalize('NFD') })]);
    expect(first.plan.pieces[0]?.number).toBe('Ä1'.normalize('NFC'));
    const { plan } = bring([draft(2, { number: 'Ä1' })], first.folder, { before: first.before });
    expect(plan.pieces.map(({ state }) => state)).toEqual(['same']);
  });
  test('a piece that did not come from this sheet is never written over', () => {
    const first = bring([draft(2, { weight: '1 g' })]);
    const { plan } = bring([draft(2, { weight: '2 g' })], first.folder);
    expect(plan.pieces).toEqual([]);
    expect(plan.setAside[0]?.because).toContain('already belongs to the piece a-2');
  });
  test('a ruler whose file was taken away, and whose name was taken out of a hidden piece, does not come back', () => {
    const rows = [draft(2, {}, { names: { ruler: [{ name: 'Gallienus' }] } })];
    const first = bring(rows);
    expect(first.plan.lists.map(({ file }) => file)).toEqual(['rulers/gallienus.yaml']);
    const piece = textOf(first.folder, 'pieces/a-2/piece.md');
    const hidden = piece.replace('ruler: gallienus\n', 'publish: no\n');
    expect(hidden).toContain('publish: no');
    const files = first.folder.files
      .filter(({ file }) => file !== 'rulers/gallienus.yaml')
      .map((one) => (one.file === 'pieces/a-2/piece.md' ? { ...one, text: hidden } : one));
    const { plan } = bring(rows, { ...first.folder, files }, { before: first.before });
    expect(plan.pieces.map(({ state }) => state)).toEqual(['same']);
    expect(plan.lists).toEqual([]);
  });
  test('an id that was given up and leads on is not given again', () => {
    const old = '---\nnumber: X\ntitle: X\nkind: coin\nformerly: a-2\n---\n';
    const { plan } = bring([draft(2)], { ...EMPTY, files: [...EMPTY.files, { file: 'pieces/x/piece.md', text: old }] });
    expect(plan.pieces.map(({ id }) => id)).toEqual(['a-2-2']);
  });
});

/** Rows with anything in any field, of the form or not. */
const anything = fc.record({
  facts: fc.dictionary(
    fc.constantFrom('weight', 'date', 'axis', 'metal', 'grade', 'issuer', 'publish', 'tags', 'references', 'faces', 'sure', 'prefer', 'colour'),
    fc.oneof(texts, fc.array(texts, { maxLength: 3 }), fc.constantFrom('1.38 g', '1279', '6h', 'VF', 'uniface', 'no')),
  ),
  ruler: fc.option(texts, { nil: undefined }),
  years: fc.constantFrom(undefined, '1272-1307', '1307-1272', '??'),
  story: texts,
  ledger: fc.dictionary(fc.oneof(texts, fc.constantFrom('cost', 'seller', 'piece', 'Notes', 'acquired')), texts, { maxKeys: 4 }),
}); // prettier-ignore

test(
  'Whatever a sheet says, the cabinet has no problem afterwards, every row is counted, and it comes to the same again',
  { timeout: 180_000 },
  () => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 4 }), (rows) => {
        const drafts = rows.map(({ facts, ruler, years, story, ledger }, at) => {
          const named =
            ruler === undefined ? {} : { ruler: [{ name: ruler, ...(years === undefined ? {} : { years }) }] };
          return draft(at + 2, facts, { names: named, story, ledger });
        });
        const first = bring(drafts);
        expect(problemsOf(first.folder)).toEqual([]);
        expect(first.plan.pieces.length + first.plan.setAside.length).toBe(drafts.length);
        const said = { rulers: {}, mints: {}, denominations: {}, works: {} };
        for (const { kind, id, spelled } of first.plan.questions) Object.assign(said[kind], { [id]: spelled });
        // Written and stopped before it was noted down, then begun anew; and once more after that.
        for (const before of [[], first.before]) {
          const again = bring(drafts, first.folder, { before, said });
          expect(again.plan.pieces.filter(({ state }) => state !== 'same')).toEqual([]);
          expect(again.plan.setAside).toEqual(first.plan.setAside);
          expect(again.folder).toEqual(first.folder);
        }
      }),
      { numRuns: tries(100, 10) },
    );
  },
);
