import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addMinor, formatMoney, parseMoney } from '../../../src/core/money/money.ts';

const ISO = 'ISO 4217, list one: minor unit';
const ACT = 'Decimal Currency Act 1969 (c. 19), s. 1 and sch. 1: 240 old pence to the pound of 100';

test.for([
  ['£5.00', 500, 'GBP', ISO],
  ['GBP 5', 500, 'GBP', ISO],
  ['5 gbp', 500, 'GBP', ISO],
  ['US$ 19.99', 1999, 'USD', ISO],
  ['€1.234,50', 123_450, 'EUR', ISO],
  ['38 Euro', 3800, 'EUR', 'the name of the currency, Council Regulation (EC) 974/98'],
  ['12,50 euros', 1250, 'EUR', 'its plural in French and Spanish'],
  ['1,234.50 USD', 123_450, 'USD', ISO],
  ['£1,234', 123_400, 'GBP', ISO],
  ['£12,500', 1_250_000, 'GBP', 'common practice: a comma before three figures is of thousands in pounds and dollars'],
  ['USD 12,500', 1_250_000, 'USD', 'common practice, as above'],
  ['€12,345', 1_234_500, 'EUR', 'a cent has no tenth'],
  ['€12,500.00', 1_250_000, 'EUR', ISO],
  ['€1.250.000', 125_000_000, 'EUR', ISO],
  ['€12,50', 1250, 'EUR', ISO],
  ['0,500 EUR', 50, 'EUR', 'no thousands begin with a nought'],
  ['ITL 12.500', 12_500, 'ITL', 'a lira has no hundredths in ISO 4217'],
  ["CHF 1'200.50", 120_050, 'CHF', ISO],
  ['1 234,50 €', 123_450, 'EUR', ISO],
  ['JPY 500', 500, 'JPY', ISO],
  ['KWD 1.250', 1250, 'KWD', ISO],
  ['A$12', 1200, 'AUD', ISO],
  ['2.100,00 öS', 210_000, 'ATS', 'common practice: the Austrian schilling in lists'],
  ['5 sFr', 500, 'CHF', 'common practice: the Swiss franc in German lists'],
  ['sFr. 120,-', 12_000, 'CHF', 'common practice, as above'],
  ['250 hfl', 25_000, 'NLG', 'common practice: the Dutch guilder in lists'],
  ['400 skr', 40_000, 'SEK', 'common practice: the Swedish krona in German lists'],
  ['10s', 50, 'GBP', ACT],
  ['10/-', 50, 'GBP', ACT],
  ['£1 2s', 110, 'GBP', ACT],
  ['£1/4/0', 120, 'GBP', ACT],
  ['2s', 10, 'GBP', ACT],
  ['1/-', 5, 'GBP', ACT],
] as const)('%s is %s of the smallest unit of %s (%s)', ([text, minor, currency]) => {
  expect(parseMoney(text)).toEqual({ ok: true, value: { minor, currency, text } });
});

test.for([
  ['5.00', 'in which currency'],
  ['¥500', 'three letters'],
  ['45 $', 'which dollar'],
  ['XYZ 5', 'three letters'],
  ['£', 'no amount'],
  ['', 'no amount'],
  ['£1.234', 'not clear'],
  ['€12,500', 'Write EUR 12.50, or EUR 12500'],
  ['€12.500', 'Write EUR 12.50, or EUR 12500'],
  ['1.250 DKK', 'Write DKK 1.25, or DKK 1250'],
  ['DM 1,950', 'Write DEM 1.95, or DEM 1950'],
  ['£5.001', 'not clear'],
  ['£5.0001', 'Write GBP 5.00'],
  ['JPY 5.5', 'no decimal places'],
  ['-£5', 'less than nothing'],
  ['£5 USD', 'two currencies'],
  ['£1 25s', 'twenty shillings'],
  ['2s 13d', 'twelve pence'],
  ['1/2d', '½d, or 1s 2d'],
  ['1/4d', '¼d, or 1s 4d'],
  ['3/4d', '¾d, or 3s 4d'],
  [`£${'9'.repeat(20)}`, 'more money than there is'],
] as const)('%s asks: %s', ([text, says]) => {
  const outcome = parseMoney(text);
  expect(outcome.ok ? 'read' : outcome.problem).toContain(says);
});

test.for([
  ['£1 2s 6d', 112.5, '£1 2s 6d'],
  ['1/6d', 7.5, '1s 6d'],
  ['10/6d', 52.5, '10s 6d'],
  ['£1/2/6', 112.5, '£1 2s 6d'],
  ['£1-2-6', 112.5, '£1 2s 6d'],
  ['15s. 6d.', 77.5, '15s 6d'],
  ['2/6', 12.5, '2s 6d'],
  ['5/6', 27.5, '5s 6d'],
  ['1/1½', 5.625, '1s 1½d'],
  ['½d', 10 / 48, '½d'],
  ['2½d.', 50 / 48, '2½d'],
  ['6d', 2.5, '6d'],
  ['18d', 7.5, '1s 6d'],
  ['£1,200 10s 6d', 120_052.5, '£1200 10s 6d'],
  ['12½ gns', 1312.5, '£13 2s 6d'],
  ['12 1/2 guineas', 1312.5, '£13 2s 6d'],
  ['½ guinea', 52.5, '10s 6d'],
  ['21 gns', 2205, 'GBP 22.05'],
  ['£42 0s 0d', 4200, 'GBP 42.00'],
] as const)('%s is exactly %s new pence and printed %s (Decimal Currency Act 1969)', ([text, minor, printed]) => {
  const outcome = parseMoney(text);
  expect(outcome).toMatchObject({ ok: true, value: { minor, currency: 'GBP' } });
  expect(formatMoney({ minor, currency: 'GBP' })).toBe(printed);
});

test('sums of new money and old are exact, whatever the order', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.oneof(
          fc.nat(10_000).map((pence) => pence),
          fc.nat(96_000).map((farthings) => (farthings * 5) / 48),
        ),
      ),
      (amounts) => {
        const forwards = amounts.reduce(addMinor, 0);
        expect([...amounts].reverse().reduce(addMinor, 0)).toBe(forwards);
        expect(parseMoney(formatMoney({ minor: forwards, currency: 'GBP' }))).toMatchObject({
          value: { minor: forwards },
        });
      },
    ),
  );
  // A pound, half a crown and a penny three farthings: 100 + 12½ + 1.75 × 5/12 × … new pence, by the Act.
  expect(formatMoney({ minor: addMinor(addMinor(100, 12.5), (7 * 5) / 48), currency: 'GBP' })).toBe('£1 2s 7¾d');
  expect(formatMoney({ minor: addMinor(401, (14 * 5) / 48), currency: 'GBP' })).toBe('GBP 4.01 and 3½d');
});

test('there and back, in currencies of two, three and no places', () => {
  fc.assert(
    fc.property(fc.nat(2_000_000_000), fc.constantFrom('GBP', 'USD', 'EUR', 'JPY', 'KWD'), (minor, currency) => {
      expect(parseMoney(formatMoney({ minor, currency }))).toMatchObject({ ok: true, value: { minor, currency } });
    }),
  );
});
