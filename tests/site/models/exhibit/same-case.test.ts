import { expect, test } from 'vitest';
import { readExhibit } from '../../../../src/catalogue/exhibits/exhibit-texts.ts';
import { readFolder } from '../../../../src/catalogue/files.ts';
import { linkRecords } from '../../../../src/catalogue/link.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { caseToSet } from '../../../../src/site/models/exhibit/planned-case.ts';
import { shownExhibit } from '../../../../src/site/models/exhibit/shown-exhibit.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

// `check` speaks of the cases of the catalogue, a page draws those of the public pieces: they must be the same.
test('the case that check speaks of is the case that a page draws', async () => {
  const folder = await readFolder('content');
  if (folder === null) throw new Error('There is no demo.');
  const catalogue = linkRecords(readCabinet(folder).records);
  const cabinet = await wholeCabinet('content');
  expect(cabinet.lists.exhibits.length).toBeGreaterThan(0);
  for (const exhibit of cabinet.lists.exhibits)
    expect(readExhibit(exhibit, catalogue).cases).toEqual(shownExhibit(cabinet, exhibit).cases.map(caseToSet));
});
