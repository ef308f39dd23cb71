import { describe, expect, test } from 'vitest';
import { joinNames } from '../../../src/import/names/join-names.ts';
import type { KnownName } from '../../../src/import/names/name.ts';
import { bring, cited, draft, EMPTY, textOf } from '../plan/bring.ts';
import { changed } from '../../catalogue/small-cabinet.ts';

function join(names: readonly string[], known: readonly KnownName[] = [], said = {}) {
  const uses = names.map((name, at) => ({ name, row: at + 2, made: null }));
  const { questions, idOf } = joinNames('works', uses, known, said);
  const ids = uses.map((use) => {
    const found = idOf(use);
    return 'id' in found ? found.id : null;
  });
  return { ids, asked: Object.fromEntries(questions.map(({ id, spelled }) => [id, spelled])) };
}

// How lists shorten the books: North, English Hammered Coinage; Roman Imperial Coinage; British Museum Catalogue; Davenport; Dalton and
// Hamer, The Provincial Token-Coinage. Common practice.
describe('a book whose name is shortened', () => {
  test.for<readonly [string, readonly string[], readonly string[]]>([
    ['to its first letter', ['North', 'N', 'N.'], ['north', 'n', 'n']],
    ['to its beginning', ['Dav.', 'Davenport'], ['dav', 'davenport']],
    ['to its initials', ['Roman Imperial Coinage', 'RIC', 'R.I.C.'], ['roman-imperial-coinage', 'ric', 'ric']],
    ['to the initials of two', ['Dalton and Hamer', 'D&H', 'DH'], ['dalton-and-hamer', 'd-h', 'd-h']],
    ['and stands nowhere in full', ['RIC', 'RPC', 'BMC'], ['ric', 'rpc', 'bmc']],
    ['with points or without', ['RIC', 'RIC', 'R.I.C.'], ['ric', 'ric', 'ric']],
    ['and could be one of two', ['Spink', 'Seaby', 'S'], ['spink', 'seaby', 's']],
    ['beside a longer one of its letters', ['RIC', 'RIC Supplement'], ['ric', 'ric-supplement']],
  ])('%s: %j', ([, names, ids]) => {
    expect(join(names).ids).toEqual(ids);
  }); // prettier-ignore

  test('is asked about, and stays apart until somebody says', () => {
    expect(join(['North', 'N', 'N']).asked).toEqual({ n: ['N'], north: ['North'] });
    expect(join(['Spink', 'Seaby', 'S']).asked).toEqual({ s: ['S'], spink: ['Spink'], seaby: ['Seaby'] });
    expect(join(['RIC', 'RPC']).asked).toEqual({});
  });

  test('is one of the list, under its title or its short name, and what the keeper says it is', () => {
    const north: KnownName = { id: 'north', names: ['English Hammered Coinage', 'North'], reigns: [] };
    expect(join(['North', 'E.H.C.', 'English Hammered Coinage'], [north]).ids).toEqual(['north', 'ehc', 'north']);
    expect(join(['N', 'EHC'], [north])).toEqual({ ids: ['n', 'ehc'], asked: { n: ['N'], ehc: ['EHC'] } });
    const notes: KnownName = { id: 'oak', names: ['Notes on the Mint of Nowhere', 'Oak'], reigns: [] };
    expect(join(['N'], [north, notes], { north: ['N'] }).ids).toEqual(['north']);
    expect(join(['N', 'North'], [], { nieuw: ['N'], north: ['North'] })).toEqual({
      ids: ['nieuw', 'north'],
      asked: {},
    });
  });

  test('takes its volume with it where the list has that as a book, and else leaves it to the number', () => {
    const lists = changed(EMPTY, {
      'works/ric-6.yaml': 'title: "The Roman Imperial Coinage, volume VI"\nshort: RIC VI\n',
    });
    const row = (at: number, number: string) => draft(at, {}, { names: { references: cited(`RIC ${number}`) } });
    const { folder } = bring([row(2, 'VI 229'), row(3, 'II 234'), row(4, '777')], lists);
    expect([2, 3, 4].map((at) => /references: .*/.exec(textOf(folder, `pieces/a-${at}/piece.md`))?.[0])).toEqual([
      'references: [ric-6 229]',
      'references: [ric II 234]',
      'references: [ric 777]',
    ]);
  });
});
