import { describe, expect, test } from 'vitest';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { certificatesIn } from '../../src/privacy/private-cells.ts';
import { privateValues } from '../../src/privacy/private-values.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { changed, markedCabinet, problemsOf } from '../catalogue/small-cabinet.ts';

const LEDGER = 'private/ledger.csv';
const PENNY = 'pieces/plain-penny/piece.md';

/** The marked cabinet with columns of the keeper's own in its ledger, one row for each list of cells. */
async function withOwn(headings: string, ...rows: readonly string[]) {
  const lines = [`piece,${headings}`, ...rows.map((row) => `plain-penny,${row}`)];
  return changed(await markedCabinet(), { [LEDGER]: `${lines.join('\n')}\n` });
}

/** The values of the ledger that are looked for. */
function inLedger(folder: CabinetFolder) {
  return privateValues(folder, readCabinet(folder).records).filter(({ from }) => from === LEDGER);
}

describe('a column of the ledger that is nobody’s but the keeper’s', () => {
  test('is no problem, unless its heading is a slip in the name of one that is read', async () => {
    expect(problemsOf(await withOwn('Schrank,Laufende Nr.', 'B,7'))).toEqual([]);
    const slips = problemsOf(await withOwn('Storage,coast', 'B,7 GBP'));
    expect(slips.map(({ says }) => says.split('. ').at(-1))).toEqual(['Write cost.', 'Write storage.']);
  });

  const ROWS: readonly { why: string; cells: readonly string[]; column?: string; found: boolean }[] = [
    { why: 'a note that nobody else has', cells: ['from the widow in Gillygate'], found: true },
    { why: 'a number with letters', cells: ['K-4711/x'], found: true },
    { why: 'a short word of the trade', cells: ['silver'], found: false },
    { why: 'a bare number', cells: ['19472011'], found: false },
    { why: 'words in the title of a published piece', cells: ['a Plain King'], found: false },
    { why: 'what stands in four rows, as a category does', cells: ['Sammlung Süd', 'Sammlung Süd', 'Sammlung Süd', 'Sammlung Süd'], found: false },
    { why: 'what stands in three rows', cells: ['Sammlung Süd', 'Sammlung Süd', 'Sammlung Süd'], found: true },
    { why: 'a note in the column notes, of the trade', cells: ['a Plain King'], column: 'notes', found: false },
    { why: 'a note in the column notes that nobody else has', cells: ['from the widow'], column: 'notes', found: true },
    { why: 'the name of a mint in the column seller', cells: ['Plain Town'], column: 'seller', found: false },
    { why: 'one common word in the column storage', cells: ['Cabinet'], column: 'storage', found: false },
  ]; // prettier-ignore
  test.for(ROWS)('$why: looked for, $found', async ({ cells, column, found }) => {
    const folder = await withOwn(column ?? 'Bemerkung', ...cells);
    const values = inLedger(folder);
    expect(values.map(({ value }) => value)).toEqual(found ? expect.arrayContaining([cells[0]?.toLowerCase()]) : []);
  });

  test('sets off the alarm where a distinctive value of it stands in a story, at its line', async () => {
    const folder = changed(await withOwn('Bemerkung', 'from the widow in Gillygate'), {
      [PENNY]: (text) => `${text}\n\nBought from the widow in Gillygate.`,
    });
    expect(problemsOf(folder)).toMatchObject([{ kind: 'private-in-text', file: PENNY }]);
  });
});

test('A piece that is not published makes no word public', async () => {
  const folder = await withOwn('Remark', 'hidden noble of the wall');
  const hidden = changed(folder, {
    'pieces/hidden-noble/piece.md': (text) => text.replace(/^title:.*$/m, 'title: Hidden noble of the wall'),
  });
  expect(inLedger(hidden)).toHaveLength(1);
});

// How sums are written: the sign before or after, thousands parted by comma, point, blank or apostrophe (Unicode CLDR, number patterns of en, de, fr, de-CH).
const SUMS = [
  ['£77', 'I paid £77 for it.', true],
  ['£77', 'Penny £77', true],
  ['77 GBP', 'It cost £ 77, then.', true],
  ['£77.00', 'paid £77', true],
  ['£1200', 'worth £1,200 now', true],
  ['1200 GBP', 'worth £1,200.00 now', true],
  ['€1200', 'kostete 1.200 €', true],
  ['1200 EUR', 'coûta 1 200 €', true],
  ['€77.50', 'für 77,50 €', true],
  ['£777', 'for £777', true],
  ['£77', 'weighs 77 grains', false],
  ['£77', 'a sum of £775', false],
  ['£77', 'a sum of £77.50', false],
  ['£5', 'a note for £5', false],
  ['£1250', 'it went for £1\u2009250', true],
  ['£1250', 'it went for £1\u202f250', true],
  ['£1250', 'it went for £ 1,250', true],
  ['£1250', 'it went for £*1,250*', true],
  ['£1250', 'it went for &pound;1,250', true],
  ['£1250', 'it went for GBP1250', true],
  ['£1250', 'it went for 1250 quid', true],
  ['£1250', 'it went for £1.25k', true],
  ['£1250', 'it went for twelve hundred and fifty pounds', true],
  ['£1250', 'it went for One thousand, two hundred and fifty pounds', true],
  ['£45', '45 pounds at the fair', true],
  ['£45', 'forty-five pounds at the fair', true],
  ['£45', 'a fine of 45 pounds', false],
  ['£1250', 'I paid 1,250 for it', true],
  ['£1250', 'I gave twelve hundred and fifty for it', true],
  ['£1250', 'in the year 1250 it cost 3 pence', false],
  ['£1250', 'it cost £12,500', false],
  ['€1250', 'kostete 1250,- Euro', true],
  ['CHF 1250', 'für Fr. 1’250.–', true],
  ['JPY 12500', 'for ¥12,500', true],
  ['CAD 1250', 'for $1,250', true],
  ['DEM 850', 'für 850 Mark', true],
  ['£1 2s 6d', 'I paid £1 2s 6d for it', true],
  ['£1 2s 6d', 'I paid £1/2/6 for it', true],
  ['12½ gns', 'I paid 12½ gns for it', true],
  ['12½ gns', 'it cost £13.125', true],
  // A decade is no sum, unless a price is spoken of.
  ['£43', 'lost in the fighting of the 860s', false],
  ['£4.50', 'a man in his 90s found it', false],
  ['£43', 'I paid 860s for it', true],
  ['£4.50', 'I paid 90s for it', true],
] as const;

test.for(SUMS)('a cost of %s, in a story that says “%s”: found, %s', async ([cost, story, isFound]) => {
  const folder = changed(await withOwn('cost', `"${cost}"`), {
    [PENNY]: (text) =>
      text.replace(/---\n[^]*?\n---\n/, (facts) => `${facts}${story}\n`).replace(/(\n---\n[^\n]*\n)[^]*$/, '$1'),
  });
  const kinds = problemsOf(folder).map(({ kind }) => kind);
  expect(kinds.includes('private-in-text')).toBe(isFound);
});

test('a certificate is sought parted, but not where its parts may be a year and a count', () => {
  expect(certificatesIn('UG-12345678')).toContain('1234 5678');
  expect(certificatesIn('100111')).toContain('100 111');
  expect(certificatesIn('UG-100810')).not.toContain('100 810');
});
