import { describe, expect, test } from 'vitest';
import { figureOf, shiftFigure } from '../../../../src/import/sheets/formats/figure.ts';
import { numberFormat, showCell } from '../../../../src/import/sheets/formats/show-cell.ts';
import { builtInFormat } from '../../../../src/import/sheets/xlsx/workbook.ts';
import FORMATS from '../../../published/sheets/number-formats.json' with { type: 'json' };

const shown = (number: number, code: string, is1904 = false) => showCell(number, numberFormat(code), is1904);

/**
 * Where LibreOffice and the standard part: it counts days from 30 December 1899, so that its dates before March 1900 are
 * others; half a per cent of 1.005 falls the other way in binary; and it shows no time below nought.
 */
function isKnownDeparture(format: string, number: number): boolean {
  const isDate = /[ymd]/.test(format.replace(/\[\$[^\]]*\]|"[^"]*"|\[Red\]/g, '').replace(/General/, ''));
  if (isDate && number >= 0 && number < 60 && /y|d/.test(format)) return true;
  return (format === '0%' && number === 1.005) || (format.startsWith('[h]') && number < 0);
}

test.for(FORMATS)('$format shows numbers as LibreOffice shows them', ({ format, shown: table }) => {
  const rows = table.flatMap(([number, text]) => (isKnownDeparture(format, Number(number)) ? [] : [[number, text]]));
  expect(rows.map(([number]) => [number, shown(Number(number), format).text])).toEqual(rows);
});

test('all but a few of those numbers are compared', () => {
  const all = FORMATS.flatMap(({ format, shown: table }) =>
    table.map(([number]) => isKnownDeparture(format, Number(number))),
  );
  expect(all).toHaveLength(678);
  expect(all.filter((departs) => departs).length).toBeLessThan(50);
});

describe('days', () => {
  // ECMA-376 part 1, 18.17.4.1: the date systems and their limits, with the examples of that clause, from memory.
  test.for([
    [1, false, '1900-01-01'],
    [59, false, '1900-02-28'],
    [61, false, '1900-03-01'],
    [3687, false, '1910-02-03'],
    [38749, false, '2006-02-01'],
    [2_958_465, false, '9999-12-31'],
    [0, true, '1904-01-01'],
    [2225, true, '1910-02-03'],
    [37287, true, '2006-02-01'],
  ] as const)('the serial number %d (1904: %s) is %s', ([serial, is1904, iso]) => {
    expect(shown(serial, 'yyyy-mm-dd', is1904)).toEqual({ text: iso, value: { kind: 'day', iso } });
  });

  test('29 February 1900 is shown, and is no day', () => {
    expect(shown(60, 'd mmm yyyy')).toEqual({ text: '29 Feb 1900' });
  });

  test('a year or a month alone is not a day, whatever lies beneath', () => {
    expect(shown(40677, 'yyyy')).toEqual({ text: '2011' });
    expect(shown(40677, 'mmm yyyy')).toEqual({ text: 'May 2011' });
    expect(shown(0.5, 'h:mm AM/PM')).toEqual({ text: '12:00 PM' });
  });

  test('a day before 1900 is a text as it is shown', () => {
    expect(shown(-226_754, 'dd/mm/yyyy')).toEqual({ text: '22/02/1279' });
  });
});

describe('currencies', () => {
  test.for([
    ['[$£-809]#,##0.00', 'GBP'],
    ['"£"#,##0.00', 'GBP'],
    ['#,##0.00\\ [$€-407]', 'EUR'],
    ['_-* #,##0.00\\ "€"_-;\\-* #,##0.00\\ "€"_-', 'EUR'],
    ['#,##0.00\\ [$kr-414]', 'NOK'],
    ['#,##0.00\\ [$kr-41D]', 'SEK'],
    ['[$$-409]#,##0.00', 'USD'],
    ['[$$-1009]#,##0.00', 'CAD'],
    ['[$CHF] 0.00', 'CHF'],
    ['#,##0.00\\ "zł"', 'PLN'],
    ['[$¥-411]#,##0', 'JPY'],
    ['$#,##0.00', null],
    ['#,##0.00\\ "kr"', null],
    ['0.00" g"', null],
  ] as const)('%s is a sum in %s', ([format, currency]) => {
    expect(shown(12.5, format).value).toEqual(
      currency === null ? { kind: 'number', figure: '12.5' } : { kind: 'money', figure: '12.5', currency },
    );
  });
});

test('a number hidden by its format is kept, a nought shown as nothing is nothing', () => {
  expect(shown(2011, ';;;')).toEqual({ text: '2011', value: { kind: 'number', figure: '2011' } });
  expect(shown(0, '#')).toEqual({ text: '' });
});

// ECMA-376 part 1, 18.8.30: formats named by number alone.
test.for([
  [1.38, 2, '1.38'],
  [1234.5, 4, '1,234.50'],
  [0.925, 10, '92.50%'],
  [0.25, 12, '1/4'],
  [40677, 15, '14-May-11'],
  [0.5, 20, '12:00'],
  [1.5, 46, '36:00:00'],
] as const)('%d in the built-in format %d is %s', ([number, id, text]) => {
  expect(shown(number, builtInFormat(id)).text).toBe(text);
});

test('figures are written in full', () => {
  expect([0.1 + 0.2, 1e21, 1e-7, -0, 1.38, 1.2345678901234568e17].map(figureOf)).toEqual([
    '0.3',
    '1000000000000000000000',
    '0.0000001',
    '0',
    '1.38',
    '123456789012346000',
  ]);
  expect([shiftFigure('0.925', 2), shiftFigure('1234567', -3), shiftFigure('5', -3)]).toEqual([
    '92.5',
    '1234.567',
    '0.005',
  ]);
});
