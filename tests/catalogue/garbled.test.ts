import fc from 'fast-check';
import process from 'node:process';
import { expect, test } from 'vitest';
import { readFolder } from '../../src/catalogue/files.ts';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { readTypes } from '../../src/catalogue/types/types-of.ts';
import { readGuide } from '../../src/commands/plan/read-guide.ts';
import { publicPieces } from '../../src/publish/public-piece.ts';
import { setStates } from '../../src/publish/set-states.ts';
import { changed, markedCabinet, problemsIn, problemsOf } from './small-cabinet.ts';

/** The long form: `SAFETY=long`, or in parts, each with a draw of its own: `SAFETY=1000`. */
const SAFETY = process.env['SAFETY'];
const RUNS = SAFETY === 'long' ? 10_000 : Number(SAFETY ?? 50);

const marked = await markedCabinet();
/** The first lines of the tables of the demo. */
const demo = ((await readFolder('content'))?.files ?? [])
  .filter(({ file }) => /^private\/(guide|life|prices|fees|indices)\.csv$/.test(file))
  .map(({ file, text }) => [file, (text ?? '').split('\n').slice(0, 6).join('\n')] as const);
const whole = changed(marked, {
  ...Object.fromEntries(demo),
  'types/pence/series.yaml': 'title: Plain pence\nshared: { metal: silver }\nlevels: [class]\ncharacters:\n  - { id: crown, states: [a, b] }\n',
  'types/pence/types.csv': 'id,broader,level,label,mint,date,crown\n3,,class,Class 3,plain-town,1280/1282,a/b\n',
  'types/pence/concordance.csv': 'type,relation,reference,sure\n3,equal,plain-book 10,\n',
}); // prettier-ignore
const tables = whole.files.filter(({ file }) => file.endsWith('.csv')).map(({ file }) => file);
const texts = whole.files.filter(({ text }) => text !== null).map(({ file }) => file);

/** What a slip, a broken disk or a word processor may put into a file; YAML 1.2 and RFC 4180 give the signs that mean something. */
const SPLICES = [
  '', '"', "'", '“', '”', ',', ';', '\t', '\n', '\r\n', '\n\n', '---', '\n---\n', ': ', '- ', '\n  ', '{', '}', '[', ']', '#', '|', '>', '&a ', '*a', '<<: *a',
  '!!js/function x', '? x', '%YAML 9', '@', '`', '\\', '\u0000', '\u0085', '\u2028', '\u202e', '\ufeff', '\ud800', '٣', 'ſ', '__proto__', 'constructor', 'toString',
  'null', '~', 'NaN', '-0', '1e999', '9'.repeat(400), '0x1F', '2024-02-30', '..', '/', '../../x', 'x'.repeat(40_000), '(', '))))', '[[[[', '½', '£', '%', '=1+1',
]; // prettier-ignore
const edit = fc.record({
  at: fc.nat(9_999),
  gone: fc.constantFrom(0, 0, 1, 3, 20, 400, 1e6),
  put: fc.constantFrom(...SPLICES),
});
function garble(text: string, edits: readonly { readonly at: number; readonly gone: number; readonly put: string }[]): string {
  return edits.reduce((held, { at, gone, put }) => {
    const from = Math.floor((at / 10_000) * (held.length + 1));
    return held.slice(0, from) + put + held.slice(from + gone);
  }, text);
} // prettier-ignore
const edits = fc.array(edit, { minLength: 1, maxLength: 4 });

test('a cabinet with a garbled file is told of in sentences, by file and line, and what can be read goes through to the pages', () => {
  fc.assert(
    fc.property(fc.constantFrom(...texts), edits, (file, slips) => {
      const folder = changed(whole, { [file]: (text) => garble(text, slips) });
      const read = readCabinet(folder);
      const problems = problemsIn(folder, read);
      for (const { says, line } of problems) {
        expect(says).toMatch(/\S.*[.”")]$/su);
        if (line !== null) expect(line).toBeGreaterThan(0);
      }
      const linked = linkRecords(read.records);
      readTypes(read.records);
      // What check has nothing against goes on to the pages.
      if (problems.length === 0) setStates(linked, publicPieces(linked));
    }),
    { numRuns: RUNS },
  );
}, 7_200_000);

test('a garbled ledger, guide or other table of private/ is told of by its lines', () => {
  fc.assert(
    fc.property(fc.constantFrom(...tables), edits, (file, slips) => {
      const folder = changed(whole, { [file]: (text) => garble(text, slips) });
      for (const { says } of problemsOf(folder)) expect(says).toMatch(/\S.*[.”")]$/su);
      readGuide(folder.files.find((one) => one.file === file)?.text ?? '', () => 'uk');
    }),
    { numRuns: RUNS },
  );
}, 7_200_000);

test.for(['title', 'short', 'author'])('a book with a %s of 40,000 letters is no fault of the program', (field) => {
  const folder = changed(whole, {
    'works/long-book.yaml': `title: Long\n${field}: plain${'x'.repeat(40_000)}\n`.replace(
      /^title: Long\n(?=title)/,
      '',
    ),
  });
  for (const { says } of problemsOf(folder)) expect(says).toMatch(/\S.*[.”")]$/su);
});
