import { describe, expect, test } from 'vitest';
import { formatBroughtIn, parseBroughtIn } from '../../src/import/reimport/last-import.ts';
import type { Draft } from '../../src/import/plan/draft.ts';
import { changed, problemsOf } from '../catalogue/small-cabinet.ts';
import { bring, draft, textOf } from './plan/bring.ts';

const FILE = 'pieces/a-2/piece.md';
const LEDGER = 'private/ledger.csv';
/** A piece as it is brought in the first time, with a cell that cannot be read. */
const FIRST = draft(2, { weight: '1.38 g', metal: 'silver', obverse: { legend: '+EDW R', design: 'Bust' } }, {
  story: 'Told.',
  ledger: { cost: '45 GBP', storage: 'MARK-BOX of oak' },
  unread: [{ row: 2, heading: 'Axis', text: '6:30', because: 'Write 6h.', field: 'axis' }],
}); // prettier-ignore
const first = bring([FIRST, draft(3)]);

/** The sheet a year later, a hand having been in the file and the ledger in between. */
function later(row: Draft, hand: (text: string) => string = (text) => text, ledger: (text: string) => string = (text) => text, prefer: 'sheet' | 'file' | null = null) {
  const folder = changed(first.folder, { [FILE]: hand, [LEDGER]: ledger });
  const brought = bring([row, draft(3)], folder, { before: parseBroughtIn(formatBroughtIn(first.before)), prefer });
  const piece = brought.plan.pieces.find(({ id }) => id === 'a-2');
  return { ...brought, folder, text: textOf(brought.folder, FILE), was: textOf(folder, FILE), piece };
} // prettier-ignore

const with_ = (facts: Draft['facts'], rest: Partial<Draft> = {}): Draft => ({
  ...FIRST,
  ...rest,
  facts: { ...FIRST.facts, ...facts },
});

describe('the same sheet a year later', () => {
  test('changes nothing where nothing has changed, though hands have', () => {
    const { text, was, plan } = later(FIRST, (text) => text.replace('metal: silver', 'metal: billon # by touch'));
    expect(text).toBe(was);
    expect(plan.pieces.map(({ state }) => state)).toEqual(['same', 'same']);
    expect(plan.ledger).toBe(null);
  });

  test('changes a field that the sheet has changed, on its line alone', () => {
    const hand = (text: string): string =>
      text
        .replace('weight: 1.38 g', 'weight: 1.38 g # on the old scales')
        .replace('kind: coin', '# of the hoard\nkind: coin');
    const { text, was, piece } = later(with_({ weight: '1.41 g' }), hand);
    expect(text).toBe(was.replace('1.38 g #', '1.41 g #'));
    expect(piece?.changed).toEqual(['weight']);
  });

  test('puts in what the sheet has new, where the form has it', () => {
    const { text, was } = later(
      with_({ diameter: '18 mm', obverse: { legend: '+EDW R', design: 'Bust', reading: 'Edwardus' } }),
    );
    expect(text).toBe(
      was
        .replace('weight: 1.38 g\n', 'weight: 1.38 g\ndiameter: 18 mm\n')
        .replace('design: Bust }', 'design: Bust, reading: Edwardus }'),
    );
  });

  test('tells of a field that both have changed, and leaves it until somebody says', () => {
    const hand = (text: string): string => text.replace('1.38 g', '1.40 g');
    const sheet = with_({ weight: '1.41 g' });
    const conflict = [{ path: 'weight', was: '1.38 g', inSheet: '1.41 g', inFile: '1.40 g' }];
    const left = later(sheet, hand);
    expect([left.text, left.piece?.conflicts]).toEqual([left.was, conflict]);
    // Told again the next time, for nobody has decided.
    const again = bring([sheet, draft(3)], left.folder, { before: left.before });
    expect(again.plan.pieces[0]?.conflicts).toEqual(conflict);
    expect(later(sheet, hand, undefined, 'sheet').text).toContain('weight: 1.41 g\n');
    const kept = later(sheet, hand, undefined, 'file');
    expect(kept.text).toBe(kept.was);
    expect(bring([sheet, draft(3)], kept.folder, { before: kept.before }).plan.pieces[0]?.conflicts).toEqual([]);
  });

  test('is no conflict where the hand wrote what the sheet says now', () => {
    const { text, was, piece } = later(with_({ weight: '1.41 g' }), (text) => text.replace('1.38 g', '1.41 g'));
    expect([text, piece?.conflicts, piece?.state]).toEqual([was, [], 'same']);
  });

  test('deletes nothing: an emptied cell and a vanished row are told of', () => {
    const facts = Object.fromEntries(Object.entries(FIRST.facts).filter(([field]) => field !== 'metal'));
    const { text, was, piece } = later({ ...FIRST, facts });
    expect([text, piece?.emptied]).toEqual([was, ['metal']]);
    const { plan, folder } = bring([draft(3)], first.folder, { before: first.before });
    expect(plan.vanished.map(({ id }) => id)).toEqual(['a-2']);
    expect(textOf(folder, FILE)).toBe(textOf(first.folder, FILE));
  });

  test('takes out what stood as it was written once it can be read', () => {
    const { text, was } = later({ ...with_({ axis: '6h' }), unread: [] });
    expect(text).toBe(
      was
        .replace('as-written: { axis: "6:30" }\n', '')
        .replace('metal: silver\nweight: 1.38 g\n', 'metal: silver\nweight: 1.38 g\naxis: 6h\n'),
    );
    expect(text).toContain('axis: 6h');
  });

  test('changes a story that no hand has changed', () => {
    expect(later({ ...FIRST, story: 'Told better.' }).text).toContain('---\n\nTold better.\n');
    const { text, was, piece } = later({ ...FIRST, story: 'Told better.' }, (text) =>
      text.replace('Told.', 'Told by hand.'),
    );
    expect([text, piece?.conflicts.map(({ path }) => path)]).toEqual([was, ['(story)']]);
  });

  test('changes a cell of the ledger that no hand has changed, and no other row of it', () => {
    const ledger = (text: string): string => `${text}another,"a, b",,,,,,,,\r\n`;
    const { plan, folder } = later(
      { ...FIRST, ledger: { cost: '50 GBP', storage: 'MARK-BOX of oak' } },
      undefined,
      ledger,
    );
    expect(plan.ledger).toBe(textOf(folder, LEDGER).replace('45 GBP', '50 GBP'));
    const hand = (text: string): string => text.replace('45 GBP', '47 GBP');
    const both = later({ ...FIRST, ledger: { cost: '50 GBP', storage: 'MARK-BOX of oak' } }, undefined, hand);
    expect(both.plan.ledger).toBe(null);
    expect(both.piece?.conflicts.map(({ path }) => path)).toEqual(['ledger: cost']);
  });

  test('finds a piece that a hand has renamed, and does not bring back one that a hand has removed', () => {
    const text = textOf(first.folder, FILE).replace('kind: coin\n', 'kind: coin\nformerly: a-2\n');
    const renamed = changed(first.folder, { [FILE]: null, 'pieces/penny/piece.md': text });
    const brought = bring([with_({ weight: '1.41 g' }), draft(3)], renamed, { before: first.before });
    expect(textOf(brought.folder, 'pieces/penny/piece.md')).toBe(text.replace('1.38 g', '1.41 g'));
    expect(brought.plan.vanished).toEqual([]);
    const removed = changed(first.folder, { [FILE]: null });
    const { plan } = bring([FIRST, draft(3)], removed, { before: first.before });
    expect(plan.setAside[0]?.because).toContain('was taken out of the cabinet');
  });

  test('keeps what check refuses out of a file that is there', () => {
    const { folder, text } = later(with_({ weight: 'heavy' }));
    const after = changed(folder, { [FILE]: text });
    expect(text).toContain('weight: 1.38 g\n');
    expect(text).toContain('weight: heavy');
    expect(problemsOf(after)).toEqual([]);
  });
});

test('Rows without a number are known by their cells, wherever they stand', () => {
  const row = (at: number, title: string): Draft => draft(at, { number: `row-${at}`, title });
  const cells = (...rows: readonly (readonly string[])[]) => new Map(rows.map((one, at) => [at + 2, one]));
  const before = bring([row(2, 'Penny'), row(3, 'Groat')], undefined, {
    cells: cells(['Penny', 'York', '1.38'], ['Groat', 'London', '5.1']),
  });
  const after = bring([row(2, 'Noble'), row(3, 'Penny'), row(4, 'Groat')], before.folder, {
    before: before.before,
    cells: cells(['Noble', 'Calais', '7.7'], ['Penny', 'York', '1.38'], ['Groat', 'London', '5.2']),
  });
  expect(after.plan.pieces.map(({ id, state }) => [id, state])).toEqual([
    ['row-4', 'new'],
    ['row-2', 'same'],
    ['row-3', 'same'],
  ]);
});
