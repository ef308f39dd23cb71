import { describe, expect, test } from 'vitest';
import { abbreviationsOf } from '../../../src/catalogue/exhibits/abbreviations.ts';
import type { LabelledPiece } from '../../../src/catalogue/exhibits/label-text.ts';
import { labelText, USUAL_FACTS } from '../../../src/catalogue/exhibits/label-text.ts';
import { LABEL_FACTS } from '../../../src/catalogue/schema/exhibit.ts';
import { setLabel } from '../../../src/core/cases/card.ts';
import { lineText } from '../../../src/core/cases/typeset-text.ts';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { parseSize } from '../../../src/core/measures/parse-size.ts';
import { parseWeight } from '../../../src/core/measures/parse-weight.ts';
import { textMarks } from '../../../src/site/models/paper/marks.ts';
import type { Outcome } from '../../../src/core/outcome.ts';

const read = <T>(outcome: Outcome<T>): T => (outcome.ok ? outcome.value : expect.fail(outcome.problem));
const PENNY: LabelledPiece = {
  sure: {},
  title: 'Penny of Edward I',
  number: '12',
  kind: 'coin',
  rulers: [{ name: 'Edward I' }],
  issuer: 'Archbishop of York',
  mint: { name: 'York' },
  makers: [],
  denomination: { name: 'Penny' },
  date: read(parseDate('1279/1281')),
  dated: null,
  metal: 'silver',
  weight: read(parseWeight('1.38 g')),
  size: read(parseSize('18.6 mm')),
  axis: { hours: 6 },
  references: [
    { work: 'north', named: 'north', number: '1018', relation: 'is', text: 'north 1018', cited: 'North' },
    { work: 'withers', named: 'withers', number: '23a', relation: 'cf.', text: 'cf. withers 23a', cited: 'Withers' },
  ],
};
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('a label made from a piece', () => {
  test('tells the facts in the order the keeper gives', () => {
    expect(
      plain(labelText(PENNY, undefined, { facts: ['mint', 'date', 'weight', 'metal', 'axis', 'references'] }).label),
    ).toBe('York. 1279–81. 1.38 g, silver, axis 6h. North 1018; cf. Withers 23a.');
  });

  // Museum practice: what is not certain is said so on the label.
  test('says of each fact how sure it is', () => {
    const doubted = { ...PENNY, sure: { mint: 'possible', date: 'probable', metal: 'possible', references: 'probable' } } as const;
    expect(plain(labelText(doubted, undefined, { facts: ['mint', 'date', 'metal', 'weight', 'reference'] }).label)).toBe(
      'Possibly York. Probably 1279–81. Possibly silver, 1.38 g. Probably North 1018.',
    );
  }); // prettier-ignore

  test('a title that names as certain what is not keeps the doubt; one that says so is left alone', () => {
    const of = (title: string) => labelText({ ...PENNY, title, sure: { mint: 'probable' } }, undefined, { facts: ['what'] }).label;
    expect(plain(of('Penny of Edward I, York'))).toBe('Penny of Edward I, York (mint probable).');
    expect(plain(of('Penny of Edward I, probably York'))).toBe('Penny of Edward I, probably York.');
    expect(plain(of('Penny of Edward I'))).toBe('Penny of Edward I.');
  }); // prettier-ignore

  test.for(LABEL_FACTS)('of the fact “%s” alone says something', (fact) => {
    expect(labelText(PENNY, undefined, { facts: [fact] }).label.length).toBeGreaterThan(1);
  });

  test('leaves facts out from the end until it is low enough, and never the first', () => {
    const says = labelText(PENNY, undefined, { facts: ['what', 'date', 'metal', 'reference'] });
    const set = (most: number | null) => {
      const { lines, height } = setLabel(says, 60, 18, most);
      return { says: plain(lines.map(lineText).join(' ')), height };
    };
    // A line of 18 pt is 18 × 25.4 / 72 × 1.25 = 7.94 mm high, a card 6 mm more than its lines.
    expect(set(null).says).toBe('Penny of Edward I. 1279–81. Silver. North 1018.');
    expect(set(22).says).toBe('Penny of Edward I. 1279–81. Silver.');
    expect(set(22).height).toBeCloseTo(21.875, 3);
    expect(set(5).says).toBe('Penny of Edward I.');
  });

  test('is never cut where the keeper wrote it', () => {
    const own = labelText(PENNY, 'Words of my own that go on for a while.');
    expect(setLabel(own, 40, 18, 10).lines.map(lineText).join(' ')).toBe('Words of my own that go on for a while.');
  });

  // Common practice; for what is sold in the United States, 16 CFR 304.
  test.for([
    ['replica', 'A modern copy. Penny of Edward I.'],
    ['counterfeit', 'A counterfeit. Penny of Edward I.'],
    ['coin', 'Penny of Edward I.'],
  ] as const)('calls a %s what it is', ([kind, label]) => {
    expect(labelText({ ...PENNY, kind }, undefined, { facts: ['what'] }).label).toBe(label);
  });
});

describe('the key to abbreviations', () => {
  const works = [
    { short: 'North', author: 'J. J. North', title: 'English Hammered Coinage', year: '1994' },
    { short: 'MEC 8', author: 'R. Naismith', title: 'Medieval European Coinage 8', year: '2017' },
  ];

  test('lists the books and signs that are in the texts, and the keeper’s own', () => {
    expect(abbreviationsOf(['cf. North 1018, c. 1280, obv. worn, axis 6h.'], works, { 'cl.': 'class' })).toEqual([
      { short: 'c.', means: 'about (Latin circa)' },
      { short: 'cf.', means: 'compare: like it, not the same' },
      { short: 'cl.', means: 'class' },
      { short: 'h', means: 'die axis: where the top of the reverse points, as on a clock' },
      { short: 'North', means: 'J. J. North, English Hammered Coinage, 1994' },
      { short: 'obv.', means: 'obverse, the face with the ruler' },
    ]);
  });

  test('takes the keeper’s words where both explain one', () => {
    expect(abbreviationsOf(['rev. of North 1'], works, { North: 'my red book' })).toContainEqual({
      short: 'North',
      means: 'my red book',
    });
  });

  test('takes no part of a word for a sign', () => {
    expect(abbreviationsOf(['A Northern penny of Æthelred, var. in Ramah.'], works, {})).toEqual([
      { short: 'var.', means: 'a variety of it' },
    ]);
  });
});

describe('Above the keeper’s own words', () => {
  const above = (own: string): string => plain(labelText(PENNY, own, { identity: USUAL_FACTS }).identity.join(' '));

  test('stands what a judge looks for: what it is, when, of what, how heavy, which book', () => {
    const said = above('The bishop’s own mark is in the king’s hand.');
    expect(said).toContain(plain(labelText(PENNY, undefined, { facts: ['what'] }).label));
    expect(said).toContain(plain(labelText(PENNY, undefined, { facts: ['weight'] }).label).replace(/\.$/, ''));
  });

  test('nothing that the words say themselves', () => {
    const date = plain(labelText(PENNY, undefined, { facts: ['date'] }).label).replace(/\.$/, '');
    expect(above(`Struck ${date}, and worn since.`)).not.toContain(date);
  });

  test('nothing at all where it was not asked for, or where the label is made of facts', () => {
    expect(labelText(PENNY, 'My words.').identity).toEqual([]);
    expect(labelText(PENNY, undefined, { identity: USUAL_FACTS }).identity).toEqual([]);
  });

  // UAX #9, rule P2: the first letter of each paragraph decides which way it runs.
  test('a text of its own, which runs its own way', () => {
    const card = setLabel({ label: 'שקל ישראל', facts: null, identity: ['Shekel of a year.'] }, 90, 18, null);
    const marks = textMarks(card.lines, 0, 0, 18, { width: 84, above: card.above });
    expect(marks.map((mark) => mark.kind === 'text' && mark.isLeftward)).toEqual([false, true]);
  });
});
