import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readOpenDataId } from '../../../src/core/references/open-data-id.ts';
import { parseReferences } from '../../../src/core/references/parse-reference.ts';
import { formatReference } from '../../../src/core/references/reference.ts';

const cited = (id: string): string | null => {
  const read = readOpenDataId(id);
  return read?.ok === true ? formatReference(read.value, read.value.named) : null;
};

// Ids and what they are of, from one museum's export (tests/published/sheets); the books' own headings are common practice.
test.for([
  ['http://numismatics.org/ocre/id/ric.5.gall(1).209', 'RIC V Gallienus Joint Reign 209'],
  ['http://numismatics.org/ocre/id/ric.6.nic.72b', 'RIC VI Nicomedia 72b'],
  ['ric.2_1(2).ves.767_dupondius', 'RIC (2nd ed.) II.1 Vespasian 767 (dupondius)'],
  ['ric.1(2).ner.12', 'RIC (2nd ed.) I Nero 12'],
  ['ric.2.ner.13_aureus', 'RIC II Nerva 13 (aureus)'],
  ['ric.10.maj_w.2604', 'RIC X 2604'],
  ['rrc-353.1a', 'RRC 353/1a'],
  ['sc.1.1641.8c', 'SC 1641.8c'],
] as const)('the id %s is %s', ([id, reference]) => {
  expect(cited(id)).toBe(reference);
});

test.for(['ric.5.car.58', 'ric.5.nobody.3', 'ric.12.tr.3', 'price.P181', 'newell.demetrius.23'])(
  'the id %s is asked about or left to other readers',
  (id) => {
    expect(readOpenDataId(id)?.ok ?? false).toBe(false);
  },
);

test('every id of a museum that is read reads back to the same entry', () => {
  const sheet = readFileSync('tests/published/sheets/museum-roman-excerpt.csv', 'utf8');
  const read = [...sheet.matchAll(/http:\/\/numismatics\.org\/\S+?(?=,|\n)/g)].flatMap(([id]) => {
    const one = readOpenDataId(id);
    return one?.ok === true ? [one.value] : [];
  });
  expect(read.length).toBeGreaterThan(3);
  for (const one of read) {
    const back = parseReferences(formatReference(one), { works: [{ id: one.work, names: [one.named] }] });
    const { number, volume = null } = one;
    expect(back.ok && back.value.map((each) => [each.number, each.volume ?? null])).toEqual([[number, volume]]);
  }
});
