import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { placesIn } from '../../src/catalogue/rules/rule.ts';
import { checkTypes } from '../../src/catalogue/rules/types.ts';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { readFolder } from '../../src/catalogue/files.ts';
import type { Problem } from '../../src/catalogue/problem.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { typeRemarks } from '../../src/catalogue/types/remarks.ts';
import { changed, TODAY } from './small-cabinet.ts';

const FOLDER = 'types/edward-i-pence';
const TABLES = ['types', 'concordance', 'specimens', 'dies', 'die-states'] as const;

let demo: CabinetFolder;
beforeAll(async () => {
  const folder = await readFolder('content');
  if (folder === null) throw new Error('The demo is not there.');
  // The lists and the series alone: what is tried here is the reading of the tables.
  demo = { ...folder, files: folder.files.filter(({ file }) => !/^(?:pieces|private|exhibits|sets)\//.test(file)) };
});

const textOf = (table: string): string => demo.files.find(({ file }) => file === `${FOLDER}/${table}.csv`)?.text ?? '';

function problemsWith(table: string, text: string): readonly Problem[] {
  const folder = changed(demo, { [`${FOLDER}/${table}.csv`]: text });
  const { records, problems } = readCabinet(folder);
  typeRemarks(records);
  return [...problems, ...checkTypes(records, placesIn(folder), TODAY)];
}

describe('a slip in a table of a series is told with its file, line and column', () => {
  test.for([
    ['types', 'lc-1a,nowhere,variety,Class 1a', 'broader', /There is no type nowhere/],
    ['types', 'lc-1b,lc-1,variety,Twice\nlc-1b,lc-1,variety,Twice', 'id', /twice/],
    ['types', 'lc-1a,lc-1,subvariety,Class 1a', 'level', /no level "subvariety"/],
    ['types', 'lc-1a,lc-1,variety,Class 1a,some day', 'date', /./],
    ['types', 'lc-1a,lc-1,variety,Class 1a,,rax', 'name', /"rax" is no state/],
    ['types', ',lc-1,variety,Nameless', 'id', /has no id/],
    ['types', 'lc-1a,lc-1,class,Class 1a', 'level', /from the broadest/],
    ['specimens', 'lc-1a,York 1,VF,uk,,,,York 2', 'same as', /neither a specimen of this table nor a piece/],
    ['specimens', 'lc-1a,York 1,VF,uk\nlc-1b,York 1,VF,uk', 'specimen', /stands here twice/],
    ['dies', 'A1,a1,lc-1a,,0,', 'coins', /whole numbers; this says "0"/],
    ['concordance', 'lc-99,equal,north 1,,,', 'type', /There is no type lc-99/],
    ['concordance', 'lc-1a,equals,north 1,,,', 'relation', /"equals" is no relation/],
    ['concordance', 'lc-1a,equal,north 1,surely,,', 'sure', /"surely"/],
    ['concordance', 'lc-1a,equal,,,,', 'reference', /has no reference/],
    ['concordance', 'lc-1a,equal,north 1; fox 2,,,', 'reference', /one number of one book/],
    ['specimens', 'lc-1a,York 1,VF,lunar,,,,', 'grade scale', /no grade scale called "lunar"/],
    ['specimens', 'lc-1a,York 1,splendidish,uk,,,,', 'grade', /./],
    ['specimens', 'lc-1a,,VF,uk,,,,', 'specimen', /has no specimen/],
    ['dies', 'A1,a1,lc-1a,,some,', 'coins', /whole numbers; this says "some"/],
    ['dies', 'A1,a1,lc-99,,1,', 'type', /There is no type lc-99/],
    ['dies', 'A1,,lc-1a,,1,', 'reverse', /has no reverse/],
    ['dies', 'A1,a1,lc-1a,nowhere,1,', 'mint', /nowhere/],
    ['die-states', 'A1,,,sharp', 'state', /has no state/],
  ] as const)('%s: %s', ([table, rows, column, says]) => {
    const heading = textOf(table).split('\n')[0] ?? '';
    const own = table === 'types' ? `${heading}\nlc-1,,class,Class 1\n` : `${heading}\n`;
    const text = `${own}${rows}\n`;
    const last = text.trimEnd().split('\n').length;
    const found = problemsWith(table, text).filter(
      ({ file, field }) => file === `${FOLDER}/${table}.csv` && field === column,
    );
    expect(found.map((one) => one.says).join('\n')).toMatch(says);
    expect(found.map(({ line }) => line)).toContain(last);
  });
});

test('4,000 types one above the other, or in a circle, are told and end', () => {
  const rows = (first: string): string =>
    `id,broader\n${Array.from({ length: 4000 }, (_, at) => `t${at},${at === 0 ? first : `t${at - 1}`}`).join('\n')}\n`;
  const says = (first: string): string => problemsWith('types', rows(first)).map((one) => one.says).join('\n'); // prettier-ignore
  expect(says('')).toContain('t20 is under 20 types, one above the other');
  const circle = says('t3999');
  expect(circle).toContain('t0 is under t3999 is under t3998 is under t3997 is under t3996 is under … is under t1 is under t0: a circle');
}, 30_000); // prettier-ignore

test('rows garbled at random never stop the reading, and whatever is told has a file that is there and a line in it', () => {
  const garbled = fc.record({
    table: fc.constantFrom(...TABLES),
    cuts: fc.array(
      fc.record({
        at: fc.double({ min: 0, max: 0.999, noNaN: true }),
        long: fc.integer({ min: 0, max: 30 }),
        by: fc.oneof(
          fc.constantFrom('', ',', '\n', '"', ';', '/', '?', '-', '\r', '\0', ' , ,', 'lc-3b', 'equal', '1/0', '٣'),
          fc.string({ maxLength: 12 }),
        ),
      }),
      { minLength: 1, maxLength: 6 },
    ),
  });
  fc.assert(
    fc.property(garbled, ({ table, cuts }) => {
      let text = textOf(table);
      for (const { at, long, by } of cuts) {
        const from = Math.floor(at * text.length);
        text = text.slice(0, from) + by + text.slice(from + long);
      }
      const lines = text.split('\n').length + 1;
      for (const { file, line } of problemsWith(table, text)) {
        expect(demo.files.map((one) => one.file)).toContain(file);
        if (file.endsWith(`/${table}.csv`)) expect(line ?? 1).toBeLessThanOrEqual(lines);
        expect(line ?? 1).toBeGreaterThan(0);
      }
    }),
    { numRuns: 60 },
  );
});
