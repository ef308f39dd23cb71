import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fileId } from '../../../src/core/file-id.ts';
import { joinNames } from '../../../src/import/names/join-names.ts';
import type { KnownName, NameUse } from '../../../src/import/names/name.ts';
import { reignIn } from '../../../src/import/names/reign.ts';
import type { ListKind } from '../../../src/catalogue/write/write-piece.ts';

type Row = readonly [name: string, years?: string | null | undefined, made?: number | null];

const usesOf = (rows: readonly Row[]): readonly NameUse[] =>
  rows.map(([name, years, made], at) => ({
    name,
    ...(typeof years === 'string' ? { years } : {}),
    row: at + 2,
    made: typeof made === 'number' ? { low: made, high: made } : null,
  }));

function join(kind: ListKind, rows: readonly Row[], known: readonly KnownName[] = [], said = {}) {
  const uses = usesOf(rows);
  const { created, questions, idOf } = joinNames(kind, uses, known, said);
  const ids = uses.map((use) => {
    const found = idOf(use);
    return 'id' in found ? found.id : null;
  });
  return { created, questions: questions.map(({ id, spelled }) => ({ id, spelled })), ids };
}

// The reigns are those of the Handbook of British Chronology, 3rd edition (1986), to the year.
const EDWARD: KnownName = { id: 'edward-i', names: ['Edward I'], reigns: [{ low: 1272, high: 1307 }] };
const ENGLAND: KnownName = { id: 'aethelred-ii', names: ['Æthelred II'], reigns: [{ low: 978, high: 1016 }] };
const NORTHUMBRIA: KnownName = {
  id: 'aethelred-ii-of-northumbria',
  names: ['Æthelred II'],
  reigns: [{ low: 841, high: 849 }],
};

describe('names that are nearly the same', () => {
  // Common practice: how one list shortens, numbers and counts what another line of it writes in full.
  test.for([
    ['rulers', 'Vitt. Em. II', 'Vittorio Emanuele II', true],
    ['rulers', 'M. Aurelio', 'Marco Aurelio', true],
    ['rulers', 'Vitt. Em. II', 'Vittorio Emanuele III', false],
    ['rulers', 'M. Aurelio', 'Antonino Aurelio', false],
    ['rulers', 'Constantine', 'Constantine I', true],
    ['rulers', 'Constantine I', 'Constantine II', false],
    ['denominations', '1/2 penny', 'halfpenny', true],
    ['denominations', 'one penny', 'penny', true],
    ['denominations', '1 penny', '2 penny', false],
    ['denominations', '1 penny', '10 penny', false],
  ] as const)('of %s, "%s" and "%s" stay two files; asked: %s', ([kind, one, other, isAsked]) => {
    const { created, questions } = joinNames(kind, usesOf([[one], [other]]), [], {});
    expect(created).toHaveLength(2);
    expect(questions.some(({ like }) => like.length > 0)).toBe(isAsked);
  });

  test('a name without its blanks is the same', () => {
    expect(join('rulers', [['Vitt. Em. II'], ['Vitt.Em.II']]).created).toHaveLength(1);
  });
});

describe('spellings of one ruler', () => {
  test('become one file under the fullest spelling, and are asked about', () => {
    const rows: readonly Row[] = [
      ['Edw. I'],
      ['EDWARD I'],
      ['Edward the First'],
      ['Edward I', '1272-1307'],
      ['edward i'],
    ];
    expect(join('rulers', rows)).toEqual({
      created: [{ id: 'edward-i', name: 'Edward I', otherNames: ['Edward the First'], years: '1272-1307' }],
      questions: [
        {
          id: 'edward-i',
          spelled: ['Edw. I', 'EDWARD I', 'Edward the First', 'Edward I (1272-1307)', 'edward i'],
        },
      ].map((one) => ({ ...one, spelled: expect.arrayContaining(one.spelled) as string[] })),
      ids: Array.from({ length: 5 }, () => 'edward-i'),
    });
  });
  test('that differ in capitals, accents and points alone are not asked about', () => {
    expect(join('rulers', [['Æthelred II'], ['AETHELRED II'], ['Aethelred  II.']]).questions).toEqual([]);
  });
  test('are those of a file that is there, when its reign agrees', () => {
    expect(
      join('rulers', [['Edward I'], ['edward-i'], ['Edw. I'], ['Eduard I.', '1272-1307']], [EDWARD]),
    ).toMatchObject({
      created: [{ id: 'eduard-i' }],
      questions: [
        { id: 'edward-i', spelled: ['Edw. I'] },
        { id: 'eduard-i', spelled: ['Eduard I. (1272-1307)'] },
      ],
      ids: ['edward-i', 'edward-i', 'edward-i', 'eduard-i'],
    });
  });
  test('are what the keeper says, and nothing is asked', () => {
    const said = { longshanks: ['Edw. I', 'Edward I'], 'other-edward': ['Edward the First'] };
    expect(join('rulers', [['Edw. I'], ['Edward I'], ['Edward the First']], [], said)).toMatchObject({
      created: [{ id: 'longshanks', name: 'Edward I' }, { id: 'other-edward', name: 'Edward the First' }],
      questions: [],
      ids: ['longshanks', 'longshanks', 'other-edward'],
    }); // prettier-ignore
  });
});

describe('two rulers of one name', () => {
  const rows: readonly Row[] = [
    ['Æthelred II', '978-1016'],
    ['Æthelred II', '841-849'],
    ['Æthelred II', null, 990],
    ['Æthelred II', null, 845],
    ['Æthelred II', null, 1300],
    ['Æthelred II'],
  ];
  test('are kept apart by their reigns, and a piece goes with the reign it was made in', () => {
    const { created, ids } = join('rulers', rows);
    expect(created).toEqual([
      { id: 'aethelred-ii-978', name: 'Æthelred II', otherNames: [], years: '978-1016' },
      { id: 'aethelred-ii-841', name: 'Æthelred II', otherNames: [], years: '841-849' },
    ]);
    expect(ids).toEqual(['aethelred-ii-978', 'aethelred-ii-841', 'aethelred-ii-978', 'aethelred-ii-841', null, null]);
  });
  test('so too when both have a file', () => {
    expect(join('rulers', rows, [ENGLAND, NORTHUMBRIA])).toEqual({
      created: [],
      questions: [],
      ids: ['aethelred-ii', 'aethelred-ii-of-northumbria', 'aethelred-ii', 'aethelred-ii-of-northumbria', null, null],
    });
  });
  test('a reign that no file has makes a new ruler beside the one that is there', () => {
    expect(join('rulers', [['Edward I', '899-924']], [EDWARD])).toMatchObject({
      created: [{ id: 'edward-i-899' }],
      ids: ['edward-i-899'],
    });
  });
  test('the sentence names the files', () => {
    const [use] = usesOf([['Æthelred II']]);
    const { idOf } = joinNames('rulers', usesOf([['Æthelred II']]), [ENGLAND, NORTHUMBRIA], {});
    expect(use === undefined ? null : idOf(use)).toEqual({
      because:
        'Nothing in this row says which of 2 rulers called Æthelred II is meant: aethelred-ii-of-northumbria (841-849), aethelred-ii (978-1016). Write one of these, as it stands before the brackets, in the cell.',
    });
  });
});

describe('mints, denominations and books', () => {
  test('one letter astray in a long word is asked about; a figure is never astray', () => {
    const mints: readonly Row[] = [['Canterbury'], ['Canterbury'], ['Cantebury'], ['Rome'], ['Roma']];
    expect(join('mints', mints)).toMatchObject({
      questions: [
        { id: 'canterbury', spelled: ['Canterbury'] },
        { id: 'cantebury', spelled: ['Cantebury'] },
      ],
      ids: ['canterbury', 'canterbury', 'cantebury', 'rome', 'roma'],
    });
    expect(join('denominations', [['10 Euro'], ['20 Euro'], ['100 Euro']]).ids).toEqual([
      '10-euro',
      '20-euro',
      '100-euro',
    ]);
  });
  test('where a sheet gives the names of files, the files are called so', () => {
    const uses = usesOf([['edward-i'], ['anlaf-guthfrithsson']]);
    expect(joinNames('rulers', uses, [], {}, true).created).toMatchObject([
      { id: 'edward-i', name: 'Edward I' },
      { id: 'anlaf-guthfrithsson', name: 'Anlaf Guthfrithsson' },
    ]);
  });
});

test('Joined again with the files it has made, a sheet comes to the same', () => {
  const name = fc.constantFrom(
    'Edward I',
    'Edw. I',
    'EDWARD I',
    'Edward the First',
    'Henry',
    'Henri II',
    'Æthelred II',
    'Karl II.',
    'Charles II',
    '林',
    'constructor',
  );
  const years = fc.constantFrom(undefined, '841-849', '978-1016', '1272-1307', '1660-1685');
  fc.assert(
    fc.property(fc.array(fc.tuple(name, years, fc.constantFrom(null, 845, 1280)), { maxLength: 12 }), (rows) => {
      const uses = usesOf(rows);
      const first = joinNames('rulers', uses, [], {});
      // As the names file has it: what is asked of one file stands in one line.
      const said = Object.fromEntries(
        first.questions.map(({ id }) => [
          id,
          first.questions.filter((one) => one.id === id).flatMap(({ spelled }) => spelled),
        ]),
      );
      const known = first.created.map((one): KnownName => {
        const reign = one.years === null ? null : reignIn(one.years);
        return { id: one.id, names: [one.name, ...one.otherNames], reigns: reign === null ? [] : [reign.span] };
      });
      const second = joinNames('rulers', uses, known, said);
      expect(second.created).toEqual([]);
      expect(uses.map(second.idOf)).toEqual(uses.map(first.idOf));
    }),
  ); // prettier-ignore
});

test('Whatever it is called, a file’s name is one that a cabinet takes, and the same each time', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), (name) => {
      fc.pre(name.trim() !== '');
      expect(fileId(name)).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(fileId(name.normalize('NFD'))).toBe(fileId(name.normalize('NFC')));
    }),
  );
  const NAMES = [['1987.46.35', '1987-46-35'], ['A/12 b', 'a-12-b'], ['Æthelred II', 'aethelred-ii'], ['Пётр I', 'petr-i'], ['Münze №7', 'munze-no7']] as const; // prettier-ignore
  expect(NAMES.map(([name]) => fileId(name))).toEqual(NAMES.map(([, id]) => id));
});

// Reigns of the rulers as the handbooks have them: Edward I, Æthelred II, Henry V, Augustus, Cleopatra VII; common practice in writing them.
test.for([
  ['1272-1307', { from: '1272', to: '1307', span: { low: 1272, high: 1307 } }],
  ['978–1016', { from: '0978', to: '1016', span: { low: 978, high: 1016 } }],
  ['1413-22', { from: '1413', to: '1422', span: { low: 1413, high: 1422 } }],
  ['27 BC - AD 14', { from: '27 BC', to: 'AD 14', span: { low: -26, high: 14 } }],
  ['51-30 BC', { from: '51 BC', to: '30 BC', span: { low: -50, high: -29 } }],
  ['r. 841-849', { from: '0841', to: '0849', span: { low: 841, high: 849 } }],
  ['1307-1272', null],
  ['long ago', null],
] as const)('the reign %s is read', ([text, reign]) => {
  expect(reignIn(text)).toEqual(reign);
});
