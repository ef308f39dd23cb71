import { expect, test } from 'vitest';
import { readFolder } from '../../src/catalogue/files.ts';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { readRows } from '../../src/import/cells/read-rows.ts';
import { suggestMapping } from '../../src/import/columns/suggest-mapping.ts';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { readSheets } from '../../src/import/sheets/read-sheets.ts';
import { piecesCsv } from '../../src/publish/pieces-csv.ts';
import { publicFacts } from '../../src/publish/public-facts.ts';
import type { PublicFacts } from '../../src/publish/public-facts.ts';
import { publicPieces } from '../../src/publish/public-piece.ts';
import { bring, EMPTY } from '../import/plan/bring.ts';
import { problemsOf } from '../catalogue/small-cabinet.ts';

/** What `pieces.json` holds of every listed piece. */
function factsOf(folder: CabinetFolder): readonly PublicFacts[] {
  return publicPieces(linkRecords(readCabinet(folder).records))
    .filter(({ listed }) => listed)
    .map((piece) => publicFacts(piece, `https://example.org/pieces/${piece.id}/`));
}

test('The table of the demo, brought into an empty cabinet, gives the same public facts of every piece', async () => {
  const demo = await readFolder('content');
  const facts = factsOf(demo ?? EMPTY);
  expect(facts.length).toBeGreaterThan(70);
  const read = await readSheets(new TextEncoder().encode(piecesCsv(facts)), 'pieces.csv');
  const [sheet] = read.ok ? read.value.sheets : [];
  if (sheet === undefined) throw new Error('The table has no sheet.');
  const { mapping, questions } = suggestMapping(sheet, { rulers: [], mints: [], denominations: [], works: [] });
  expect(questions).toEqual([]);
  const { plan, folder } = bring(readRows(sheet, mapping).drafts);
  expect([plan.setAside, plan.unread, plan.questions]).toEqual([[], [], []]);
  expect(problemsOf(folder)).toEqual([]);
  const back = new Map(factsOf(folder).map((piece) => [piece.id, piece]));
  for (const { eras, ...fact } of facts) {
    // The schemes and the series of types are lists of the cabinet and no facts of a piece: an empty cabinet has none of them.
    const piece = { ...fact };
    delete piece.type;
    delete piece.afterType;
    const { eras: none, ...same } = back.get(piece.id) ?? { id: '', eras: undefined };
    expect(same).toEqual(piece);
    expect(none).toEqual({});
    expect(eras).not.toEqual({});
  }
});
