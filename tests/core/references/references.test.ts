import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  compareNumbers,
  compareReferences,
  formatReference,
  isEntry,
  plainVolume,
} from '../../../src/core/references/reference.ts';
import { REFERENCE_EXAMPLES, parseReference, parseReferences } from '../../../src/core/references/parse-reference.ts';
import type { Reference, Relation } from '../../../src/core/references/reference.ts';
import {
  NUMBERS_TO_PART,
  PLATES_WITH_FIGURES,
  REFERENCE_QUESTIONS,
  REFERENCE_WORDINGS,
  UNLISTED_WORDINGS,
  VOLUME_PARTS,
} from '../../published/reference-wordings.ts';
import { BOOK_ORDERS, RANGES } from '../../published/reference-orders.ts';
import { tries } from '../../tries.ts';

const WORKS = [
  { id: 'north', names: ['North', 'N.'] },
  { id: 'ric-2-1', names: ['RIC II.1'] },
  { id: 'ric-2', names: ['RIC II'] },
];

function read(text: string, works: Parameters<typeof parseReference>[1] = []) {
  const outcome = parseReference(text, works);
  if (!outcome.ok) return outcome.problem;
  const { work, number, relation, to } = outcome.value;
  return [work, number, relation, ...(to === undefined ? [] : [to])];
}

describe('A reference is read', () => {
  test.for([
    ['north 1018', ['north', '1018', 'is']],
    ['cf. north 176', ['north', '176', 'cf.']],
    ['cf north 176', ['north', '176', 'cf.']],
    ['north 1018 var.', ['north', '1018', 'var.']],
    ['var. of north 1018', ['north', '1018', 'var.']],
    ['north 1018 (var.)', ['north', '1018', 'var.']],
    ['north unlisted', ['north', '', 'unlisted']],
    ['unlisted in north', ['north', '', 'unlisted']],
    ['north —', ['north', '', 'unlisted']],
    ['cf. north 1018, unlisted', ['north', '1018', 'unlisted']],
    ['ric-6 London 121a', ['ric-6', 'London 121a', 'is']],
    ['withers 23a', ['withers', '23a', 'is']],
    ['North no. 1018', ['north', '1018', 'is']],
    ['KM# 12.1', ['km', '12.1', 'is']],
    ['S.1380', ['s', '1380', 'is']],
    ['Dalton & Hamer Devon 2', ['dalton-hamer', 'Devon 2', 'is']],
    ['wie North 1018', ['north', '1018', 'cf.']],
    ['North – (cf. 1018)', ['north', '1018', 'unlisted']],
    ['RIC -, cf. 45', ['ric', '45', 'unlisted']],
    ['Kellner Typ B', ['kellner', 'Typ B', 'is']],
    ['Kellner Type IV', ['kellner', 'Type IV', 'is']],
  ] as const)('%s (forms of the trade, common practice)', ([text, reading]) => {
    expect(read(text)).toEqual(reading);
  });

  test('by the longest name of a work in the list', () => {
    expect(read('RIC II.1 42', WORKS)).toEqual(['ric-2-1', '42', 'is']);
    expect(read('RIC II 42', WORKS)).toEqual(['ric-2', '42', 'is']);
    expect(read('N. 176', WORKS)).toEqual(['north', '176', 'is']);
  });

  test.for([
    ['', 'is empty'],
    ['north', 'without a number'],
    ['1018', 'does not begin with a work'],
    ['cf. north 12 var.', 'Write north 12 var., or cf. north 12.'],
    ['North 1018; Spink 1380', 'references: [North 1018, Spink 1380]'],
    ['North 1018 = Spink 1380', 'references: [North 1018, Spink 1380]'],
    ['north ***', 'is not a number'],
    ['Williamson 900ish', 'Write the number as printed, or cf. Williamson 900.'],
    ['Williamson 900-odd', 'gives no number'],
  ] as const)('and refused: %s', ([text, says]) => {
    expect(read(text)).toContain(says);
  });

  test('a plate or a die behind a semicolon is no second book', () => {
    expect(read('North 1018 (pl. 5; die A2)')).toEqual(['north', '1018', 'is']);
    expect(read('North 1018; N. 2', WORKS)).toContain('references: [North 1018, N. 2]');
    expect(read('North 18 = obv. 19', WORKS)).not.toContain('two books');
  });

  test('a part of a volume is not taken for a number in the volume', () => {
    const volumes = [{ id: 'ric-5', names: ['RIC V'] }];
    expect(read('RIC V 123', volumes)).toEqual(['ric-5', '123', 'is']);
    expect(read('RIC V/1, 123', volumes)).toContain('begins with no work');
    expect(read('RIC V.1 123', volumes)).toContain('begins with no work');
  });

  test('a name with "&" may be written with "and"', () => {
    const works = [{ id: 'dalton-hamer', names: ['Dalton & Hamer'] }];
    expect(read('Dalton and Hamer Devon 2', works)).toEqual(['dalton-hamer', 'Devon 2', 'is']);
  });

  test('a work that is not in the list is refused with those that are', () => {
    expect(read('nroth 12', WORKS)).toContain('Write one of north, ric-2-1, ric-2');
    expect(read('northern 12', WORKS)).toContain('begins with no work');
  });
});

test.for([...REFERENCE_WORDINGS, ...UNLISTED_WORDINGS])('$text ($source)', ({ text, reads }) => {
  const outcome = parseReferences(text);
  expect(outcome).toMatchObject({ ok: true, value: reads });
  if (!outcome.ok) return;
  // Nothing was read that the table does not name.
  for (const [at, one] of outcome.value.entries())
    expect({ relation: 'is', ...reads[at] }).toEqual({ ...one, text: undefined, named: undefined });
});

test.for(REFERENCE_QUESTIONS)('$text is asked about ($source)', ({ text, says }) => {
  const outcome = parseReferences(text);
  expect(outcome.ok ? outcome.value : outcome.problem).toContain(says);
});

test.for(UNLISTED_WORDINGS)('$text is printed so that it reads back', ({ text }) => {
  const outcome = parseReferences(text);
  for (const one of outcome.ok ? outcome.value : []) {
    const printed = formatReference(one, one.named);
    expect(parseReferences(printed)).toMatchObject({ ok: true, value: [{ ...one, text: printed }] });
  }
});

test.for(['Unpublished', 'inédit', 'unpublished?'])('%s asks in which work', (text) => {
  expect(read(text)).toContain('does not say in which work');
});

test('what a question about a number offers is read as it says', () => {
  expect(read('North no. 123f')).toEqual(['north', '123f', 'is']);
  expect(read('North no. 1018i-iii')).toEqual(['north', '1018i-iii', 'is']);
  expect(read('North 123 (and following)')).toEqual(['north', '123', 'is']);
  expect(read('SNG Cop 1198-1205')).toEqual(['sng', 'Cop 1198', 'is', 'Cop 1205']);
  expect(read('RIC 123R')).toEqual(['ric', '123R', 'is']);
  for (const number of ['123f', '2-345', '01-23', '12/13', '1018i-iii', '1198-05', '123 f', '52-1', '44/5-6/7'])
    expect(read(formatReference({ work: 'north', number, relation: 'is' })), number).toEqual(['north', number, 'is']);
});

describe('With the works of a cabinet', () => {
  const works = [
    { id: 'ric-2', names: ['RIC II'] },
    { id: 'ric-2-1', names: ['RIC II.1²'] },
    { id: 'mec-8', names: ['MEC 8'] },
    { id: 'spink', names: ['S.'] },
    { id: 'allen-2005', names: ['Allen 2005'] },
    { id: 'dalton-hamer', names: ['D&H'] },
  ];
  test.for([
    ['RIC II.1 (2nd ed.) 123', 'ric-2-1', '123'],
    ['RIC II.1² 123', 'ric-2-1', '123'],
    ['RIC vol. II 123', 'ric-2', '123'],
    ['ric-2-1 123', 'ric-2-1', '123'],
    ['MEC VIII 45', 'mec-8', '45'],
    ['MEC vol. 8, 45', 'mec-8', '45'],
    ['MEC 8, 45', 'mec-8', '45'],
    ['S-1492', 'spink', '1492'],
    ['S1492', 'spink', '1492'],
    ['Allen 2005 12', 'allen-2005', '12'],
    ['D & H Devon 2', 'dalton-hamer', 'Devon 2'],
    ['D. & H. Devon 2', 'dalton-hamer', 'Devon 2'],
  ] as const)('%s is number %s', ([text, work, number]) => {
    expect(read(text, works)).toEqual([work, number, 'is']);
  });

  test('an edition that the list has not asked for is asked about', () => {
    expect(read('RIC II.1 123', works)).toContain('does not say which edition');
  });
});

describe('Whether one entry is another', () => {
  const one = (text: string): Reference => {
    const outcome = parseReference(text, []);
    if (!outcome.ok) throw new Error(outcome.problem);
    return outcome.value;
  };
  test.for([
    ['north 1018', 'north 1018', 'yes'],
    ['North 1018 a', 'north 1018a', 'yes'],
    ['North 1018 A', 'north 1018a', 'maybe'],
    ['north 10.18', 'north 10/18', 'no'],
    ['north 1018', 'north 1019', 'no'],
    ['north 1018', 'spink 1018', 'no'],
    ['north 1018?', 'north 1018', 'maybe'],
    ['cf. north 1018', 'north 1018', 'maybe'],
    ['north 1018 var.', 'north 1018', 'maybe'],
    ['north 1018 (this coin)', 'north 1018', 'yes'],
    ['north 1018-1020', 'north 1019', 'maybe'],
    ['north 1019', 'north 1018-1020', 'yes'],
    ['north 1021', 'north 1018-1020', 'no'],
    ['north unlisted', 'north 1018', 'no'],
    ['ric II 12', 'ric III 12', 'no'],
    ['ric II.1 12', 'ric II/1 12', 'yes'],
  ] as const)('%s against %s: %s', ([stated, asked, answer]) => {
    expect(isEntry(one(stated), one(asked))).toBe(answer);
  });
});

test.for(RANGES)('$printed runs from $from to $to ($source)', ({ printed, from, to }) => {
  expect(read(`work ${printed}`)).toEqual(['work', from, 'is', to]);
});

test('what does not run forward is a number of a book that numbers so (Van Arsdell 52-1)', () => {
  expect(read('van-arsdell 52-1')).toEqual(['van-arsdell', '52-1', 'is']);
});

test.for(BOOK_ORDERS)('the order of the book: $source', ({ numbers }) => {
  for (const turned of [[...numbers].reverse(), [...numbers].sort()])
    expect(turned.sort(compareNumbers)).toEqual(numbers);
});

test('plain numbers fall in the order of the Unicode collation with figures by value', () => {
  const collator = new Intl.Collator('en', { numeric: true });
  fc.assert(
    fc.property(
      fc.nat(9999),
      fc.nat(9999),
      fc.constantFrom('', 'a', 'b'),
      fc.constantFrom('', 'a', 'b'),
      (n, m, a, b) => {
        expect(Math.sign(compareNumbers(`${n}${a}`, `${m}${b}`))).toBe(
          Math.sign(collator.compare(`${n}${a}`, `${m}${b}`)),
        );
      },
    ),
  );
});

const anyNumber = fc.stringMatching(/^(?:[A-Z][a-z]{3,5} )?[1-9][0-9]{0,3}[a-d]?$/);
const anyReference = fc.record(
  {
    work: fc.constantFrom('north', 'withers', 'price'),
    number: anyNumber,
    relation: fc.constantFrom<Relation>('is', 'cf.', 'var.', 'corr.', 'this coin', 'unlisted'),
    edition: fc.constantFrom(1, 2, 3, 4),
    volume: fc.constantFrom('II', 'V/1', 'X', '2', '12'),
    doubtful: fc.constant(true as const),
    class: fc.constantFrom('4', '3b', 'IV'),
    page: fc.constantFrom('446', 'xii', '44-46'),
    plate: fc.constantFrom('5, 3', 'V.3', 'XII'),
    rarity: fc.constantFrom('R2', 'RRR', 'scarce'),
    note: fc.constantFrom('bust left', 'die A2'),
  },
  { requiredKeys: ['work', 'number', 'relation'] },
);

test('there and back, for every relation and range', () => {
  fc.assert(
    fc.property(anyReference, (reference) => {
      const works = ['north', 'withers', 'price'].map((id) => ({ id }));
      expect(parseReference(formatReference(reference), works)).toMatchObject({ ok: true, value: reference });
    }),
  );
  const ranges = [
    ['223', '225'],
    ['London 121', 'London 123'],
    ['44/5', '44/7'],
    ['494/23a', '494/23c'],
  ] as const;
  for (const [number, to] of ranges) {
    const range = { work: 'north', number, to, relation: 'is' } as const;
    expect(parseReference(formatReference(range), [])).toMatchObject({ ok: true, value: range });
  }
});

test('the order is one order: it never runs in a circle', () => {
  fc.assert(
    fc.property(anyReference, anyReference, anyReference, (a, b, c) => {
      expect(Math.sign(compareReferences(a, b))).toBe(-Math.sign(compareReferences(b, a)) || 0);
      if (compareReferences(a, b) <= 0 && compareReferences(b, c) <= 0)
        expect(compareReferences(a, c)).toBeLessThanOrEqual(0);
    }),
    { numRuns: tries(2000) },
  );
});

test('the table for visitors is read as it says', () => {
  expect(REFERENCE_EXAMPLES.map(({ write }) => read(write)[2])).toEqual([
    'is', 'cf.', 'var.', 'unlisted', 'is', 'this coin', 'is', 'is', 'is', 'is',
  ]); // prettier-ignore
});

describe('A volume in parts, plates with several figures, and two numbers', () => {
  test.for(VOLUME_PARTS)('%s is volume IV.3', (text) => {
    const [one] = readAll(text);
    expect(plainVolume(one?.volume ?? '')).toBe('4.3');
    expect(one?.number).toBe('123');
    const parted = [
      { id: 'ric-4-3', names: ['RIC IV.3'] },
      { id: 'ric-4-1', names: ['RIC IV.1'] },
    ];
    expect(read(text, parted)).toEqual(['ric-4-3', '123', 'is']);
  });

  test.for(PLATES_WITH_FIGURES)('%s', ([text, number, plate]) => {
    const [one, ...more] = readAll(text);
    expect([one?.number, one?.plate, more.length]).toEqual([number, plate, 0]);
    expect(readAll(formatReference(one ?? expect.fail(text)))[0]).toMatchObject({ number, plate });
  });

  test.for(NUMBERS_TO_PART)('%s asks: %s', ([text, says]) => {
    const outcome = parseReferences(text);
    expect(outcome.ok ? 'read' : outcome.problem).toContain(says);
    if (says.endsWith('.')) expect(readAll(says.replace(/^Write |\.$/gu, ''))).toHaveLength(2);
  });
});

describe('A book numbers as its file says', () => {
  const numbered = (numbers: 'straight' | 'by-volume' | 'with-strokes' | 'with-hyphens') => [
    { id: 'book', names: ['Book'], numbers },
  ];
  test.for([
    ['straight', 'Book 1022/3', ['book', '1022', 'is', '1023']],
    ['straight', 'Book 12/13', ['book', '12', 'is', '13']],
    ['straight', 'Book 1018/2', ['book', '1018/2', 'is']],
    ['straight', 'Book 223-5', ['book', '223', 'is', '225']],
    ['with-strokes', 'Book 44/5', ['book', '44/5', 'is']],
    ['with-strokes', 'Book 44/5-7', ['book', '44/5', 'is', '44/7']],
    ['with-hyphens', 'Book 84-7', ['book', '84-7', 'is']],
    ['with-hyphens', 'Book 52-1', ['book', '52-1', 'is']],
    ['by-volume', 'Book IIa 12', ['book', '12', 'is']],
    [
      'by-volume',
      'Book 12',
      '"Book 12" does not say which volume, and the work counts afresh in each. Write Book II 12.',
    ],
  ] as const)('%s: %s', ([numbers, text, reads]) => {
    expect(read(text, numbered(numbers))).toEqual(reads);
  });
});

function readAll(text: string): readonly Reference[] {
  const outcome = parseReferences(text);
  return outcome.ok ? outcome.value : expect.fail(outcome.problem);
}

// In The Roman Imperial Coinage small letters mark varieties of a number, in other books large ones; from memory.
describe('a letter at a figure', () => {
  const book = (letters?: 'apart' | 'alike') => [
    { id: 'ric', names: ['RIC'], ...(letters === undefined ? {} : { letters }) },
  ];
  const entry = (text: string, letters?: 'apart' | 'alike') => {
    const read = parseReference(text, book(letters));
    return read.ok ? read.value : expect.fail(read.problem);
  };
  test.for([
    [undefined, 'RIC 8a', 'RIC 8A', 'maybe'],
    ['apart', 'RIC 8a', 'RIC 8A', 'no'],
    ['alike', 'RIC 8a', 'RIC 8A', 'yes'],
    [undefined, 'RIC 8a', 'RIC 8a', 'yes'],
    [undefined, 'RIC 8a', 'RIC 8b', 'no'],
    ['apart', 'RIC LONDON 121a', 'RIC London 121a', 'yes'],
    [undefined, 'RIC London 121A', 'RIC London 121a', 'maybe'],
  ] as const)('in a book whose letters are %s, %s is %s: %s', ([letters, one, other, is]) => {
    expect(isEntry(entry(one, letters), entry(other, letters))).toBe(is);
  });
});

test('a number with a stroke is printed plain where its book numbers so', () => {
  for (const [numbers, text] of [
    ['with-strokes', 'Book 44/5'],
    ['with-hyphens', 'Book 84-7'],
  ] as const) {
    const works = [{ id: 'book', names: ['Book'], numbers }];
    const read = parseReference(text, works);
    if (!read.ok) expect.fail(read.problem);
    expect(formatReference(read.value, 'Book')).toBe(text);
    expect(parseReference(formatReference(read.value, 'Book'), works)).toMatchObject({
      ok: true,
      value: { number: read.value.number },
    });
  }
  expect(formatReference({ work: 'north', number: '44/5', relation: 'is' }, 'North')).toBe('North no. 44/5');
});
