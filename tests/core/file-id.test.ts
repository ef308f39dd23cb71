import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileId } from '../../src/core/file-id.ts';

// Names that Windows keeps for devices: Microsoft, "Naming Files, Paths, and Namespaces".
test.for(['con', 'PRN', 'Aux', 'nul', 'COM1', 'lpt9', 'constructor', '__proto__', 'prototype'])('%s gets a name that every system takes', (name) => {
  expect(fileId(name)).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d|constructor|prototype|__proto__)$/);
}); // prettier-ignore

test.for([
  ['σίδηρος', 'sideros'],
  ['Copper alloy', 'copper-alloy'],
  ['鉄', 'u9244'],
  ['…', 'u2026'],
] as const)('%s is %s', ([name, id]) => {
  expect(fileId(name)).toBe(id);
});

test('any text gets a name of 1 to 80 small letters, figures and single hyphens, and the same one each time', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'grapheme', minLength: 1 }), fc.string({ minLength: 60, maxLength: 400 })), (name) => {
      fc.pre(name.trim() !== '');
      const id = fileId(name);
      expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(id.length).toBeLessThanOrEqual(80);
      expect(fileId(name)).toBe(id);
      expect(fileId(name.normalize('NFD'))).toBe(id);
      expect(fileId(name.normalize('NFC'))).toBe(id);
    }),
  );
}); // prettier-ignore

test('two long names that begin alike stay two', () => {
  const long = 'a mint whose name goes on and on '.repeat(4);
  expect(fileId(`${long} north`)).not.toBe(fileId(`${long} south`));
});
