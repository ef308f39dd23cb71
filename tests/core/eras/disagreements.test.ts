import { expect, test } from 'vitest';
import { disagreements } from '../../../src/core/eras/disagreements.ts';
import { ERA_SCHEMES, eraScheme } from '../../published/era-schemes.ts';

const secondCoinage = { id: 'groat', interval: { low: 1526, high: 1544 } };

test('two schemes that end the Middle Ages in different years disagree over a piece between them, each with its bounds', () => {
  const [disagreement] = disagreements([secondCoinage], [eraScheme('heritage-ages'), eraScheme('arena-denmark')]);
  expect(disagreement?.because).toEqual([
    '“Medieval” is 1066–1540 in Heritage Data, ages and includes 76 % of its years; it is 1050–1536 in ARENA, Denmark and includes 55 %.',
    '“Post Medieval” is 1540–1901 in Heritage Data, ages and includes 24 % of its years; it is 1536–1660 in ARENA, Denmark and includes 45 %.',
  ]);
  expect(disagreement?.claims.map(({ source }) => source)).toEqual([
    'Heritage Data, Linked Data Vocabularies for Cultural Heritage',
    'ARENA - The ARENA Portal',
  ]);
});

test('“Post-Medieval” and “Post Medieval” are one name', () => {
  const [disagreement] = disagreements([secondCoinage], [eraScheme('finds-database'), eraScheme('heritage-ages')]);
  expect(disagreement?.because.at(-1)).toBe(
    '“Post-Medieval” is 1500–1900 in Periods used on the database and includes all of its years; it is 1540–1901 in Heritage Data, ages and includes 24 %.',
  );
});

test('schemes that know no common name disagree when one cuts through what the other holds whole', () => {
  const [disagreement] = disagreements([secondCoinage], [eraScheme('heritage-ages'), eraScheme('heritage-dynasties')]);
  expect(disagreement?.because).toEqual([
    'Heritage Data, ages splits it between “Medieval” (1066–1540) and “Post Medieval” (1540–1901); Heritage Data, dynasties places it in “Tudor” (1485–1603).',
  ]);
});

test('schemes that hold a piece whole under different names, and an undated piece, are no disagreement', () => {
  expect(
    disagreements(
      [{ id: 'penny', interval: { low: 1550, high: 1553 } }],
      [eraScheme('heritage-ages'), eraScheme('netherlands')],
    ),
  ).toEqual([]);
  expect(disagreements([{ id: 'undated', interval: null }], ERA_SCHEMES)).toEqual([]);
});
