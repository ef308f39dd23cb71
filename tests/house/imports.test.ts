import { describe, expect, test } from 'vitest';
import { circlesIn, importsIn, importsOfSource } from './imports-of.ts';
import mayImport from './may-import.json' with { type: 'json' };

const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = mayImport;
const imports = importsOfSource();
const moduleOf = (file: string): string => file.split('/')[1] ?? '';

describe('who imports whom', () => {
  test('no files import each other in a circle, type imports included', () => {
    expect(circlesIn(imports)).toEqual([]);
  });

  test('every module has its row, and imports only what the row allows', () => {
    const modules = new Set([...imports.keys()].filter((file) => file.split('/').length > 2).map(moduleOf));
    expect([...modules].toSorted()).toEqual(Object.keys(MAY_IMPORT).toSorted());
    const wrong = [...imports].flatMap(([file, imported]) => {
      const below = MAY_IMPORT[moduleOf(file)];
      if (below === undefined) return [];
      return imported
        .filter((other) => moduleOf(other) !== moduleOf(file) && !below.includes(moduleOf(other)))
        .map((other) => `${file} imports ${other}`);
    });
    expect(wrong).toEqual([]);
  });

  test('nothing points back: a row names only modules whose own rows do not lead to it', () => {
    expect(circlesIn(new Map(Object.entries(MAY_IMPORT)))).toEqual([]);
  });
});

describe('how imports are found', () => {
  const astro = "---\nimport A from './A.astro';\n---\n<A />\n<script>\n  import './b.ts';\n</script>\n";
  test.for([
    ['src/a/b.ts', "import type { C } from './c.ts';", ['src/a/c.ts']],
    ['src/a/b.ts', "export { c } from '../c.ts';\nimport d from 'd';", ['src/c.ts']],
    [
      'src/a/b.ts',
      "import {\n  type C,\n} from './c.ts';\nconst e = await import('./e.ts');",
      ['src/a/c.ts', 'src/a/e.ts'],
    ],
    ['src/a/b.ts', "const d = `import x from './d.ts'`; // import './e.ts'", []],
    ['src/a/b.astro', astro, ['src/a/A.astro', 'src/a/b.ts']],
    ['src/a/b.ts', "import css from './c.css?raw';", ['src/a/c.css']],
  ] as const)('%s: %s', ([file, text, found]) => {
    expect(importsIn(file, text)).toEqual(found);
  });

  test('a circle of three and a file that imports itself are found, a diamond is none', () => {
    const graph = { a: ['b'], b: ['c'], c: ['a', 'd'], d: ['d'], e: ['f', 'g'], f: ['h'], g: ['h'], h: [] };
    const found = circlesIn(new Map(Object.entries(graph))).map((circle) => circle.toSorted().join(' '));
    expect(found.toSorted()).toEqual(['a b c', 'd']);
  });
});
