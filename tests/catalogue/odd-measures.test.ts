import { describe, expect, test } from 'vitest';
import { formatImprovement, improvementsOf } from '../../src/catalogue/improvements.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { bring, draft, EMPTY } from '../import/plan/bring.ts';
import { changed } from './small-cabinet.ts';

// 243 pence to the Tower pound from 1279, 1.44 g (Allen, NC 165); the sovereign's 7.98805 g (Coinage Act 1870, First Schedule). Usual widths:
// common practice.
const LISTS = changed(EMPTY, {
  'denominations/penny.yaml':
    'name: penny\nstandards: [{ from: 1279, to: 1345, weight: 1.44 g, fineness: 925/1000, diameter: 18-20 mm, source: Allen }, { from: 1816, to: 1919, weight: 0.4713 g, fineness: 925/1000, source: Coinage Act 1816 }]\n',
  'denominations/sovereign.yaml': 'name: sovereign\nstandards: [{ from: 1817, to: 1932, weight: 7.98805 g, metal: gold, source: Coinage Act 1870 }]\n',
}); // prettier-ignore

type Facts = Parameters<typeof draft>[1];
const told = (facts: Facts): readonly string[] => {
  const { folder } = bring([draft(2, { date: '1280', metal: 'silver', ...facts })], LISTS);
  const { records } = readCabinet(folder);
  return improvementsOf(records)
    .filter(({ wanted }) => wanted === 'likely weight or diameter')
    .map((one) => formatImprovement(one));
};

describe('a measure that can hardly be right', () => {
  test.for<readonly [string, Facts, string]>([
    ['a penny with its point left out', { denomination: 'penny', weight: '138 g' }, '138 g is 96 times the standard of a penny, 1.44 g.'],
    ['a penny with its point astray', { denomination: 'penny', weight: '0.0138 g' }, '0.0138 g is 1 % of the standard of a penny, 1.44 g.'],
    ['a penny of grains taken for grams', { denomination: 'penny', weight: '22.2 g' }, '22.2 g is 15 times the standard'],
    ['a penny in centimetres', { denomination: 'penny', diameter: '190 mm' }, '190 mm is 10 times the usual width of a penny, 18-20 mm.'],
    ['a silver penny of a bronze one’s weight', { date: '1862', denomination: 'penny', weight: '9.45 g' }, '9.45 g is 20 times the standard of a penny, 0.4713 g. Look whether a point or the unit is wrong, or the metal or denomination is another.'],
    ['a piedfort of four', { denomination: 'penny', weight: '5.76 g' }, '5.76 g is 4 times the standard'],
    ['a half that nothing says is one', { denomination: 'penny', weight: '0.5 g' }, '0.5 g is 35 % of the standard'],
    ['a sovereign of no known date', { date: 'unknown', denomination: 'sovereign', metal: 'gold', weight: '79.8 g' }, '10 times the standard of a sovereign'],
    ['a coin of no known standard', { weight: '0.02835 g' }, '0.02835 g is less than what nearly every struck coin has: 0.05 to 100 g.'],
    ['a coin as wide as a plate', { diameter: '310 mm' }, '310 mm is more than what nearly every struck coin has: 4 to 100 mm.'],
    ['a coin too heavy for its width', { weight: '98 g', diameter: '18.5 mm' }, '98 g at 18.5 mm across would be thicker than any coin.'],
    ['a coin too light for its width', { weight: '0.3 g', diameter: '38 mm' }, '0.3 g at 38 mm across would be thinner than foil.'],
  ])('%s: told', ([, facts, says]) => {
    expect(told(facts).join()).toContain(says);
  }); // prettier-ignore

  // Weights of what is rare and right. The twopence of 1797: two ounces avoirdupois, 41 mm; a cut quarter; a kilo in a medal; a cast as of
  // the libral standard, about 320 g, 66 mm; an ingot. From memory.
  test.for<readonly [string, Facts]>([
    ['a penny', { denomination: 'penny', weight: '1.38 g', diameter: '18.6 mm' }],
    ['a cut quarter of one', { denomination: 'penny', weight: '0.32 g', diameter: '10 x 9 mm' }],
    ['a worn one', { denomination: 'penny', weight: '0.7 g', diameter: '14 mm' }],
    ['a clipped one', { denomination: 'penny', weight: '0.5 g', diameter: '14 mm', problem: 'clipped' }],
    ['a coin of a time without a standard', { date: '1180', denomination: 'penny', weight: '9.8 g' }],
    // The bronze penny was 145.83 grains, 9.45 g (Coinage Act 1870, First Schedule), and is called as the silver one of the Maundy.
    ['a bronze penny', { date: '1862', metal: 'bronze', denomination: 'penny', weight: '9.45 g', diameter: '31 mm' }],
    ['a penny of a metal nobody noted', { date: '1862', metal: 'unknown', denomination: 'penny', weight: '9.45 g' }],
    ['the twopence of 1797', { date: '1797', weight: '56.7 g', diameter: '41 mm' }],
    ['an obol', { date: '450 BC', weight: '0.72 g', diameter: '9 mm' }],
    ['an aluminium coin', { date: '1955', weight: '1 g', diameter: '20 mm' }],
    ['a medal', { kind: 'medal', weight: '1000 g', diameter: '100 mm' }],
    ['a cast as', { date: '240 BC', made: 'cast', weight: '320 g', diameter: '66 mm' }],
    ['an ingot', { kind: 'ingot', weight: '12500 g' }],
    ['one not weighed', {}],
    ['one whose weight is not known', { weight: 'unknown' }],
  ])('%s: not a word', ([, facts]) => {
    expect(told(facts)).toEqual([]);
  });

  test('where no metal is noted, a name that went over to copper is given its due', () => {
    const oddly = (weight: string) => bring([draft(2, { date: '1862', denomination: 'penny', weight })], LISTS).plan.remarks.length; // prettier-ignore
    expect([oddly('9.45 g'), oddly('94.5 g')]).toEqual([0, 1]);
  });

  test('is told in the trial with its row and column, and written all the same', () => {
    const rows = [
      draft(2, { date: '1280', metal: 'silver', denomination: 'penny', weight: '138 g' }),
      draft(3, { weight: '1.4 g' }),
    ];
    const { plan } = bring(rows, LISTS, { headings: new Map([['weight', 'Wt']]) });
    expect(plan.remarks).toEqual([
      'row 2, Wt: 138 g is 96 times the standard of a penny, 1.44 g. Look whether a point or the unit is wrong, or the metal or denomination is another.',
    ]);
    expect(plan.unread).toEqual([]);
    expect(plan.pieces[0]?.text).toContain('weight: 138 g\n');
  });
});
