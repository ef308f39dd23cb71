import { expect, test } from 'vitest';
import { readFolder } from '../../src/catalogue/files.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { inspectedWith } from '../../src/privacy/guard.ts';

test.for([
  ['tests/cabinets/marked', 'every byte inspected, nothing private in it'],
  ['tests/cabinets/altered/content', 'every byte inspected, but private/ holds nothing to look for in it'],
] as const)('a site of %s: %s', async ([at, says]) => {
  const folder = (await readFolder(at)) ?? { at, files: [] };
  expect(inspectedWith(folder, readCabinet(folder).records)).toBe(says);
});
