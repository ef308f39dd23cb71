import { expect, test } from 'vitest';
import { bring, draft, textOf } from '../plan/bring.ts';

const LENT = {
  at: '/program',
  files: [
    { file: 'cabinet.yaml', text: 'title: Lists\nkeeper: A keeper\n' },
    {
      file: 'rulers/john.yaml',
      text: 'name: John\nrealm: England\nreigns:\n  - from: 1199-05-27\n    to: 1216-10-19\n    with: [henry-iii]\n',
    },
    { file: 'mints/york.yaml', text: 'name: York\narea: Yorkshire, England\ncoordinates: 53.9583, -1.0803\n' },
  ],
};
const coin = (row: number, ruler: string, date: string, more: object = {}) =>
  draft(row, { date }, { names: { ruler: [{ name: ruler }], mint: { name: 'York' }, ...more } });

test('a name of the lists that come with the program is offered, and taken with reign and coordinates only when that is said', () => {
  const drafts = [coin(2, 'John', '1205'), coin(3, 'John', 'AD 1200-1210')];
  const offered = bring(drafts, undefined, { lent: LENT });
  expect(offered.plan.offers.map(({ file, says }) => `${file}: ${says}`)).toEqual([
    'rulers/john.yaml: England, 1199-1216',
    'mints/york.yaml: Yorkshire, England with coordinates',
  ]);
  expect(textOf(offered.folder, 'rulers/john.yaml')).toBe('name: John\n');
  const taken = bring(drafts, undefined, { lent: LENT, takesOffers: true });
  expect(textOf(taken.folder, 'rulers/john.yaml')).toContain('from: 1199-05-27');
  expect(textOf(taken.folder, 'rulers/john.yaml')).not.toContain('with:');
  expect(textOf(taken.folder, 'mints/york.yaml')).toContain('coordinates: 53.9583, -1.0803');
});

// John of Bohemia reigned 1310 to 1346; York in Pennsylvania struck no coin.
test.for([
  ['a piece far from the reign', coin(2, 'John', '1320'), 'mints'],
  ['a piece without a date', draft(2, {}, { names: { ruler: [{ name: 'John' }] } }), ''],
  ['another realm', coin(2, 'John', '1205', { realm: 'Bohemia' }), 'mints'],
  ['another region', coin(2, 'John', '1205', { mintArea: 'Pennsylvania' }), 'rulers'],
] as const)('%s speaks against a file of the same name', ([, one, kinds]) => {
  const { plan } = bring([one], undefined, { lent: LENT });
  expect(plan.offers.map(({ kind }) => kind).join(' ')).toBe(kinds);
});
