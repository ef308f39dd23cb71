import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatMoney } from '../../../src/core/money/format-money.ts';
import { parseMoney } from '../../../src/core/money/parse-money.ts';

const ISO = 'ISO 4217, list one: minor unit';
const ACT = 'Decimal Currency Act 1969 (c. 19), s. 1 and sch. 1: 240 old pence to the pound of 100';

test.for([
  ['£5.00', 500, 'GBP', ISO],
  ['GBP 5', 500, 'GBP', ISO],
  ['5 gbp', 500, 'GBP', ISO],
  ['US$ 19.99', 1999, 'USD', ISO],
  ['€1.234,50', 123_450, 'EUR', ISO],
  ['1,234.50 USD', 123_450, 'USD', ISO],
  ['£1,234', 123_400, 'GBP', ISO],
  ["CHF 1'200.50", 120_050, 'CHF', ISO],
  ['1 234,50 €', 123_450, 'EUR', ISO],
  ['JPY 500', 500, 'JPY', ISO],
  ['KWD 1.250', 1250, 'KWD', ISO],
  ['A$12', 1200, 'AUD', ISO],
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
  ['XYZ 5', 'three letters'],
  ['£', 'no amount'],
  ['', 'no amount'],
  ['£1.234', 'not clear'],
  ['£5.001', 'not clear'],
  ['£5.0001', 'Write GBP 5.00'],
  ['JPY 5.5', 'no decimal places'],
  ['-£5', 'less than nothing'],
  ['£5 USD', 'two currencies'],
  ['5/6', '£0.275'],
  ['£1 2s 6d', '£1.125'],
  ['£1 25s', 'twenty shillings'],
  ['2s 13d', 'twelve pence'],
  [`£${'9'.repeat(20)}`, 'more money than there is'],
] as const)('%s asks: %s', ([text, says]) => {
  const outcome = parseMoney(text);
  expect(outcome.ok ? 'read' : outcome.problem).toContain(says);
});

test('there and back, in currencies of two, three and no places', () => {
  fc.assert(
    fc.property(fc.nat(2_000_000_000), fc.constantFrom('GBP', 'USD', 'EUR', 'JPY', 'KWD'), (minor, currency) => {
      expect(parseMoney(formatMoney({ minor, currency }))).toMatchObject({ ok: true, value: { minor, currency } });
    }),
  );
});
