import { describe, expect, test, vi } from 'vitest';
import { NO_ADDRESSES } from '../../../../src/catalogue/addresses.ts';
import { readFolder } from '../../../../src/catalogue/files.ts';
import { handOver } from '../../../../src/catalogue/handed-over.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { known } from '../../../../src/catalogue/schema/fields.ts';
import { loadCabinet } from '../../../../src/site/cabinet.ts';
import { pieceRow } from '../../../../src/site/models/charts/timed.ts';
import { mintIds, mintPaths } from '../../../../src/site/models/mints/mint-page.ts';
import { boardOf } from '../../../../src/site/models/shared/board.ts';
import { ticketOf } from '../../../../src/site/models/shared/ticket.ts';

// The rule of the house: doubt is printed and never smoothed. The words in which it is said are plain English.
const SAYS_DOUBT = /\b(?:about|perhaps|possibly|probably|before|after|until)\b/;
vi.stubEnv('SITE', 'https://example.org');
const files = (await readFolder('content')) ?? expect.fail('no demo');
handOver({ records: readCabinet(files).records, photographs: '', hasAddress: true, addresses: NO_ADDRESSES });
const cabinet = await loadCabinet();
const unsure = cabinet.listed.filter(
  ({ sure, date }) => (sure.date ?? 'certain') !== 'certain' && known(date) !== null,
);

describe('a date that is not certain', () => {
  test('is so in some pieces of the demo', () => {
    expect(unsure.length).toBeGreaterThan(2);
  });

  test('is said on the ticket, under the picture and in a row of a chart', async () => {
    const { laid } = await boardOf(unsure);
    for (const [at, piece] of unsure.entries()) {
      expect(ticketOf(piece).lines.some((line) => SAYS_DOUBT.test(line))).toBe(true);
      expect(laid[at]?.line).toMatch(SAYS_DOUBT);
      expect(pieceRow(piece).years).toMatch(SAYS_DOUBT);
    }
  });

  test('and a hollow bar never stands beside bare years', async () => {
    const pages = await Promise.all((await mintPaths()).map(async ({ props }) => await props.page()));
    expect(pages).toHaveLength(mintIds(cabinet).length);
    const rows = pages.flatMap(({ names, made }) => [...(names?.rows ?? []), ...(made?.rows ?? [])]);
    const hollow = rows.filter(({ bars }) => bars.some(({ kind }) => kind === 'unsure'));
    expect(hollow.length).toBeGreaterThan(10);
    expect(hollow.filter(({ years }) => !SAYS_DOUBT.test(years)).map(({ name }) => name)).toEqual([]);
  });
});
