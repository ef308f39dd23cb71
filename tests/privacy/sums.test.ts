import { expect, test } from 'vitest';
import { parseMoney } from '../../src/core/money/money.ts';
import { lettersOf } from '../../src/privacy/letters.ts';
import { sumsFor, sumsIn } from '../../src/privacy/sums.ts';
import { currencyOf } from '../../src/privacy/written-currencies.ts';

const sumOf = (cell: string) => {
  const money = parseMoney(cell, { dollar: 'USD' });
  if (!money.ok) throw new Error(money.problem);
  return { money: money.value, from: 'private/ledger.csv', column: 'cost', line: 2 };
};
/** The sums of these cells that a text tells, by their cells. */
const told = (cells: readonly string[], text: string) =>
  sumsIn(lettersOf(text), sumsFor(cells.map(sumOf))).map(({ sum }) => sum.money.text);

/** How amounts of each currency are written: the signs of Unicode CLDR, narrow and wide, and common usage, from memory. */
const WAYS: Readonly<Record<string, readonly string[]>> = {
  GBP: ['£250', '250 £', 'UK£250', 'UKP 250', '250 stg', '250 quid', '250 sterling', 'paid 250 pounds', '250 pounds at the fair'],
  EUR: ['€250', '250 €', '250 euro', '250 Euros'],
  USD: ['$250', 'US$250', '250 dollars', '250 dollar', '250 bucks'],
  CAD: ['$250', 'C$250', 'CA$250', '250 dollars'],
  AUD: ['$250', 'A$250', 'AU$250', '250 dollars'],
  NZD: ['$250', 'NZ$250', '250 dollars'],
  HKD: ['$250', 'HK$250', '250 dollars'],
  CHF: ['SFr. 250', '250 sFrs', 'Fr. 250.–', '250 Franken', '250 francs', '250 franchi'],
  DEM: ['DM 250', '250 DM', 'D-Mark 250', '250 Mark', '250 Marks'],
  FRF: ['250 FF', '250 francs'],
  JPY: ['¥250', '250円', '250 yen'],
  CNY: ['¥250', 'RMB 250', '250元', '250 yuan'],
  SEK: ['250 kr', '250 skr', '250 kronor'],
  DKK: ['250 kr.', '250 dkr', '250 kroner'],
  NOK: ['kr 250', 'nkr 250', '250 kroner'],
  INR: ['₹250', 'Rs. 250', '250 rupees'],
  PLN: ['250 zł', '250 zloty', '250 zlotys', '250 zlotych'],
  CZK: ['250 Kč', '250 korun'],
  HUF: ['250 Ft', '250 forint'],
  NLG: ['fl. 250', 'hfl 250', '250 guilders', '250 gulden'],
}; // prettier-ignore
test.for(Object.entries(WAYS).flatMap(([code, ways]) => [`${code} 250`, `250 ${code}`, ...ways].map((way) => [code, way] as const)))(
  '250 %s is told by “%s”, and by no other currency’s sign',
  ([code, way]) => {
    expect(told([`250 ${code}`], `It was ${way}, then.`)).toHaveLength(1);
    expect(told([`251 ${code}`], `It was ${way}, then.`)).toEqual([]);
  },
); // prettier-ignore

test('a currency that is in no table goes by its code, and no sign stands within a word', () => {
  expect(told(['250 ISK'], 'It was ISK 250.')).toHaveLength(1);
  expect(told(['250 ISK'], 'It was 250 krona.')).toEqual([]);
  for (const text of ['250 frames', '250 quiddities', 'offr 250', '250 bucksaw', '250 dmx']) expect(told(['250 CHF', '250 GBP', '250 USD', '250 DEM'], text)).toEqual([]); // prettier-ignore
  expect(currencyOf('GBP')).toBe(currencyOf('GBP'));
});

// How people say what they paid, and what they say of a fine, a wage or a weight: common usage, from memory.
const PAID = [
  'I paid 250 for it', 'to pay 250 for it', 'it cost 250', 'it costs 250', 'costing 250', 'a price of 250', 'priced at 250', 'I gave 250 for it',
  'giving 250', 'it is worth 250', 'kostete 250', 'bezahlt: 250', 'gezahlt 250', 'Preis 250', 'prix 250', 'payé 250', 'coûté 250', 'bought for 250',
  'bought it for 250', 'sold at 250', 'purchased for 250', 'insured for 250', 'valued at 250', 'value of 250', 'valuation of 250',
  'estimated at 250', 'estimate of 250', 'hammer price 250', 'it cost me 250', 'cost us 250', 'cost him 250', 'cost her 250', 'cost them 250',
  'paid only 250', 'paid about 250', 'paid just 250', 'paid some 250', 'worth over 250', 'worth under 250', 'paid around 250', 'paid roughly 250',
  'paid nearly 250', 'paid almost 250', 'paid the sum of 250', 'the price was 250', 'prices were 250', 'priced then at 250', 'paid "250"', 'the price = 250',
  'paid 250; then', 'paid 250!', 'paid 250?', 'paid 250: much', 'paid 250, in all', 'paid 250.', '(paid 250)', 'paid 250 in all', 'paid 250 at last',
  'paid 250 to him', 'paid 250 from it', 'paid 250 when new', 'paid 250 then', 'paid 250 and more', 'paid 250 plus', 'paid 250 on it', 'paid 250 by post',
  'paid 250 the lot', 'paid 250 including all', 'paid two hundred and fifty for it', 'paid 0.25k for it',
]; // prettier-ignore
test.for(PAID)('“%s” tells what was paid, without a currency', (text) => {
  expect(told(['£250'], text)).toEqual(['£250']);
});
test.for([
  'the year 250 in all',
  'the mint made 250 in all', 'paid 250 grains', 'weighing 250 in all', 'number 250, of a set', 'worth 250 denarii', 'paid 2500 for it', 'paid 1250 for it',
  'paid 250.75 for it', 'paid 250,75 for it', 'paid 1,250 for it', 'paid 3.250 for it', "paid 250'000 for it", 'repaid 250 for it', 'paid on day 250 for it',
])('“%s” tells nothing of 250', (text) => {
  expect(told(['£250'], text)).toEqual([]);
}); // prettier-ignore
const OF_THE_TIME = [
  'fine of', 'fined', 'fines of', 'penalty of', 'penalties up to', 'forfeiting', 'a reward of', 'rewards of', 'a wage of', 'wages of', 'a salary of about', 'a tax of',
  'taxes of', 'a ransom of', 'ransoms of', 'weighs', 'weighing', 'weighed', 'weigh', 'weight of', 'coined', 'struck', 'into', 'by tale',
  'fined not more than', 'fined not less than', 'fined from', 'fined in', 'fined a', 'fined the', 'was fined at', 'fined over', 'fined under', 'fined only', 'fined just', 'fined for', 'fine was', 'fines were',
]; // prettier-ignore
test.for(OF_THE_TIME)('“%s 250 pounds” is of the time, and no price', (words) => {
  expect(told(['£250'], `They were ${words} 250 pounds then.`)).toEqual([]);
  expect(told(['£250'], `They were ${words} £250 then.`)).toEqual(['£250']);
});
test.for(['of silver', 'in gold', 'of copper', 'of metal', 'in weight', 'weight', 'troy', 'tower'])('250 pounds %s are a weight', (words) => {
  expect(told(['£250'], `It was 250 pounds ${words} then.`)).toEqual([]);
}); // prettier-ignore

const FORMS: readonly (readonly [cell: string, text: string, found: boolean])[] = [
  // The least that is looked for as a whole figure, and the least without a currency.
  ['£9', 'at £9', false], ['£9', 'at £9.00', true], ['£9.50', 'at £9.50', true], ['£9.50', 'at £9.5', true], ['£9.05', 'at £9.05', true], ['£9.00', 'at 9.00 pounds', false], ['£10', 'at £10', true],
  ['£99', 'paid 99 for it', false], ['£100', 'paid 100 for it', true],
  // How figures are parted.
  ['£1250', 'at £1250', true], ['£1250', 'at £1,250', true], ['£1250', 'at £1.250', true], ["CHF 1250", "at CHF 1'250", true], ['£1250', 'at £1 250', true], ['£1250', 'at £1,250.00', true],
  ['€1250', '1.250,00 €', true], ['£1250.50', 'at £1,250.50', true], ['£1250.50', 'at £1250.5', true], ['€1250.50', '1250,5 €', true], ['£1250', 'at £1.25', false], ['£1.25', 'at £1.25', true],
  ['£1250', 'at £12 50', false], ['£12.50', 'at £12.50', true], ['£12.50', 'at £1250', false], ['£1250000', 'at £1 250 000', true], ['£1250', '12 £1250', true], ['£250', '12 250 £', true], ['£12', '£12 250', true],
  ['JPY 1250', '¥1250', true], ['JPY 1250', '¥12.50', false],
  ['£1250', 'at £1.25k', true], ['£1250', 'at £1,25k', true], ['£2000', 'at £2 thousand', true], ['£2000', '2 grand for £', false], ['£2000', 'paid 2 grand for it', true], ['€2000', '2 Tsd €', true], ['€2000', '2 mille €', true], ['£1250', 'paid 1.25km for it', false],
  ['£250', '£ 250', true], ['£250', '250/£', true], ['£250', '250 (GBP)', true], ['£250', '250 [£]', true], ['£250', '250. £', true], ['£250', '£: 250', true], ['£250', '£ of 250', false],
  ['£250', 'the pound. 250 grains', false], ['£250', 'pounds: 250', true],
  // Pounds, shillings and pence, and guineas of 21 shillings.
  ['£1 2s 6d', 'at £1 2s 6d', true], ['£1 2s 6d', 'at £1/2/6', true], ['£1 2s 6d', 'at £ 1/2/6', true], ['£1 2s 6d', 'at 1/2/6', false], ['£1 2s 6d', 'paid 1/2/6 for it', false], ['2s 6d', 'number 2/6', false], ['2s 6d', 'paid 2/6 for it', true], ['2s 6d', 'at 2s. 6d.', true],
  ['2s 6d', 'paid 2/6, then', true], ['2s 6d', 'paid 2/6 - then', true], ['£36 15s', 'at £36/15/- then', true], ['£3 4s', 'at £3 4s - a bargain', true], ['£3 4s', 'at £3 4s/ then', true],
  ['£1 2s 6d', 'at £1.125', true], ['12½ gns', 'at 12½ gns', true], ['12½ gns', 'at 12 1/2 guineas', true], ['12½ gns', 'at 12 1⁄2 gns', true], ['12¼ gns', 'at 12 1⁄4 gns', true], ['12¾ gns', 'at 12 3⁄4 gns', true], ['5 gns', 'at five gns', false], ['5 gns', 'at 5 gns', true], ['10 gns', '10 guineas', true],
  ['£4.50', 'in the 90s', false], ['£4.50', 'paid 90s', true], ['£43', 'of the 860s, then', false], ['£93', 'of the 1860s', false], ['£4 10s', 'at 90s 0d', true], ['€1.05', 'at 1 guinea', false], ['£1.05', 'at 1 guinea', true], ['£1 2s 6d', 'in 2001-£1 2s 6d', true],
]; // prettier-ignore
test.for(FORMS)('%s in “%s”: %s', ([cell, text, found]) => {
  expect(told([cell], text).length > 0).toBe(found);
});

test('sums of the same figures, and of the same worth, are each found by its own writing', () => {
  expect(told(['£12.50', '€1250'], 'at €1,250')).toEqual(['€1250']);
  expect(told(['£12.50', '€1250'], 'at £12.50')).toEqual(['£12.50']);
  expect(told(['£12', '£15'], 'at £15, at £12 and at £12')).toEqual(['£12', '£15'].reverse());
  expect(told([], 'at £15')).toEqual([]);
  const [found] = sumsIn(lettersOf('then £15'), sumsFor([sumOf('£15')]));
  expect(found?.at).toBe(lettersOf('then £15').indexOf('15'));
  const [spelled] = sumsIn('then forty-two pounds fifty'.replace('-', ' '), sumsFor([sumOf('£42.50')]));
  expect(spelled?.at).toBe('then '.length);
});
